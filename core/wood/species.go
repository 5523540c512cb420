package wood

import (
	"barkwright/core/known"
	"barkwright/core/units"
)

// Species is a wood the bend guide has strength figures for. The zero value is
// northern white-cedar, the wood the guide's bands are written for.
type Species int

const (
	NorthernWhiteCedar Species = iota
	AtlanticWhiteCedar
	WesternRedcedar
	BlackSpruce
	WhiteSpruce
	Tamarack
	WhiteAsh
	PaperBirch
	EasternHophornbeam
)

// Strength is one moisture's row of the strength table: averages of clear,
// straight-grained wood, not design values.
type Strength struct {
	SpecificGravity float64 // oven-dry mass over volume at this moisture, relative to water
	MOR             float64 // modulus of rupture, Pa
	MOE             float64 // modulus of elasticity, centre loading at span over depth 14, Pa
	WorkToMaxLoad   float64 // J/m3
	Crushing        float64 // compression parallel to the grain, greatest, Pa
}

// SpeciesRow is a species with its strength green and at 12 % moisture.
type SpeciesRow struct {
	Species Species
	Name    string
	Green   Strength
	Dry     Strength // 12 % moisture
	known.Source
}

const noSuchSpecies = "wood: no such species"

const (
	handbook = "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-282, 2021, table 5-3b, read in a reproduction"
	alden    = "Alden, Hardwoods of North America, FPL-GTR-83, 1995, Ostrya sheet"
)

// psi is a pound-force on a square inch in pascals, 6894.757. An inch-pound of
// work per cubic inch is the same number of joules per cubic metre.
const psi = units.PoundForce / (units.Inch * units.Inch)

// inchPound is a row as the handbook prints it: psi, millions of psi,
// inch-pounds per cubic inch.
type inchPound struct{ gravity, mor, moeMillions, work, crushing float64 }

func (p inchPound) strength() Strength {
	return Strength{
		SpecificGravity: p.gravity,
		MOR:             p.mor * psi,
		MOE:             p.moeMillions * 1e6 * psi,
		WorkToMaxLoad:   p.work * psi,
		Crushing:        p.crushing * psi,
	}
}

func row(s Species, name string, green, dry inchPound, source string) SpeciesRow {
	return SpeciesRow{Species: s, Name: name, Green: green.strength(), Dry: dry.strength(),
		Source: known.Source{Basis: known.Published, Cited: source}}
}

var speciesRows = [...]SpeciesRow{
	row(NorthernWhiteCedar, "northern white-cedar",
		inchPound{0.29, 4200, 0.64, 5.7, 1990}, inchPound{0.31, 6500, 0.80, 4.8, 3960}, handbook),
	row(AtlanticWhiteCedar, "Atlantic white-cedar",
		inchPound{0.31, 4700, 0.75, 5.9, 2390}, inchPound{0.32, 6800, 0.93, 4.1, 4700}, handbook),
	row(WesternRedcedar, "western redcedar",
		inchPound{0.31, 5200, 0.94, 5.0, 2770}, inchPound{0.32, 7500, 1.11, 5.8, 4560}, handbook),
	row(BlackSpruce, "black spruce",
		inchPound{0.38, 6100, 1.38, 7.4, 2840}, inchPound{0.42, 10800, 1.61, 10.5, 5960}, handbook),
	row(WhiteSpruce, "white spruce",
		inchPound{0.33, 5000, 1.14, 6.0, 2350}, inchPound{0.36, 9400, 1.43, 7.7, 5180}, handbook),
	row(Tamarack, "tamarack",
		inchPound{0.49, 7200, 1.24, 7.2, 3480}, inchPound{0.53, 11600, 1.64, 7.1, 7160}, handbook),
	row(WhiteAsh, "white ash",
		inchPound{0.55, 9500, 1.44, 15.7, 3990}, inchPound{0.60, 15400, 1.74, 16.6, 7410}, handbook),
	row(PaperBirch, "paper birch",
		inchPound{0.48, 6400, 1.17, 16.2, 2360}, inchPound{0.55, 12300, 1.59, 16.0, 5690}, handbook),
	row(EasternHophornbeam, "eastern hophornbeam",
		inchPound{0.63, 8500, 1.15, 13.3, 3570}, inchPound{0.70, 14100, 1.70, 14.0, 7760}, alden),
}

// AllSpecies lists the species in their order; the slice is the caller's own.
func AllSpecies() []SpeciesRow {
	return append([]SpeciesRow(nil), speciesRows[:]...)
}

// Row is the species' strength figures. It panics on a species that is not listed.
func (s Species) Row() SpeciesRow {
	if s < 0 || int(s) >= len(speciesRows) {
		panic(noSuchSpecies)
	}
	return speciesRows[s]
}

// Name is the species' common name.
func (s Species) Name() string { return s.Row().Name }

// RatioAtRupture is the R/t at which the nominal strain reaches MOR/MOE, the
// strain at rupture if the wood stayed elastic: MOE/(2 MOR). Real wood gives
// before it breaks, so it bends somewhat tighter; between species the figure
// tells which bends tighter.
func (m Strength) RatioAtRupture() float64 { return m.MOE / (2 * m.MOR) }

// shearFreeMOE takes the shear deflection out of the printed modulus, which the
// handbook's footnote c to its strength tables puts at 10 %.
const shearFreeMOE = 1.10

// YieldStrain is the compression strain at which the wood starts to give for
// good: crushing strength over the modulus free of shear. It takes the greatest
// crushing stress, not the lower elastic limit, so springback worked from it is
// on the high side.
func (m Strength) YieldStrain() float64 { return m.Crushing / (shearFreeMOE * m.MOE) }
