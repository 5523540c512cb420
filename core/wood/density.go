package wood

import "barkwright/core/known"

// Density is a material's mass per volume in the finished boat, kg/m3, with a
// range and where it comes from.
type Density struct {
	Low, Typical, High float64
	known.Source
}

// Material is what a part of the boat is made of, where the user does not choose
// the species.
type Material int

const (
	Cedar  Material = iota // northern white-cedar
	Spruce                 // black spruce
	Maple                  // sugar maple
	BirchBark
	Root // split spruce root
	Pitch
)

const noSuchMaterial = "wood: no such material"

const (
	// waterDensity relates specific gravity to density, kg/m3: its definition takes
	// water at 4 C.
	waterDensity = 1000
	// inUse is the moisture of wood in a boat that is used, % of oven-dry mass, and
	// usedDry and usedWet its range: from that of wood kept dry under a roof (the
	// table's second figures) nearly to where wood that lies wet stops swelling.
	// Estimate; no moisture of a bark canoe was found.
	inUse, usedDry, usedWet = 20, 12, 28
	// fibreSaturation is the moisture above which wood no longer swells, and
	// swellFactor goes with it: Wood Handbook, FPL-GTR-190, 2010, chapter 4, from
	// memory, high.
	fibreSaturation = 30
	swellFactor     = 0.265
	// barkInUse is the moisture of the outer bark, half that of the wood: it takes up
	// little water. Estimate.
	barkInUse = inUse / 2
	// gravityVariation is the coefficient of variation of specific gravity within
	// a species, Wood Handbook chapter 5, from memory, high.
	gravityVariation = 0.10
	// outerBark is the specific gravity of the dry outer bark of paper birch, between
	// lightBark and heavyBark: no published figure was found, 0.5 to 0.6 is usual (from memory, low).
	// The whole bark of mountain birch has 0.559 (Silva Fennica, abstract).
	outerBark, lightBark, heavyBark = 0.55, 0.5, 0.6
	// rootVariation is judgement: no density of root wood was found.
	rootVariation = 0.2
)

// DensityAt is the density, kg/m3, of wood of the given specific gravity (oven-dry
// mass over volume at that moisture) and moisture in % of oven-dry mass:
// rho = rho_w G (1 + M/100) (Wood Handbook, FPL-GTR-190, 2010, chapter 4).
func DensityAt(specificGravity, moisture float64) float64 {
	return waterDensity * specificGravity * (1 + moisture/100)
}

// GravityAt is the specific gravity at a moisture, % of oven-dry mass, of wood whose
// specific gravity on green volume is given: it swells with moisture up to fibre
// saturation. G = Gb/(1 - 0.265 a Gb), a = (30 - M)/30 (Wood Handbook, FPL-GTR-190,
// 2010, chapter 4, from memory, high).
func GravityAt(green, moisture float64) float64 {
	a := max(0, (fibreSaturation-moisture)/fibreSaturation)
	return green / (1 - swellFactor*a*green)
}

// used is the density of wood in a boat that is used. Low is light wood kept dry, High
// heavy wood that lies wet: one coefficient of variation either way.
func used(green float64, source known.Source) Density {
	at := func(moisture float64) float64 { return DensityAt(GravityAt(green, moisture), moisture) }
	return Density{
		Low: at(usedDry) * (1 - gravityVariation), Typical: at(inUse), High: at(usedWet) * (1 + gravityVariation),
		Source: source,
	}
}

// Density is the species' density in a boat that is used.
func (s Species) Density() Density {
	r := s.Row()
	return used(r.Green.SpecificGravity, r.Source)
}

// Density gives the material's density in the finished boat.
func (m Material) Density() Density {
	switch m {
	case Cedar:
		return NorthernWhiteCedar.Density()
	case Spruce:
		return BlackSpruce.Density()
	case Maple:
		return used(0.56, known.Source{Basis: known.Published, Cited: "Wood Handbook, sugar maple green, from memory, high"})
	case BirchBark:
		return Density{Low: DensityAt(lightBark, barkInUse), Typical: DensityAt(outerBark, barkInUse),
			High: DensityAt(heavyBark, inUse),
			Source: estimate("outer bark of paper birch not found; 0.5 to 0.6 dry, from memory, low; moisture half that of " +
				"the wood, estimate")}
	case Root:
		stem := BlackSpruce.Density().Typical
		return Density{Low: (1 - rootVariation) * stem, Typical: stem, High: (1 + rootVariation) * stem,
			Source: estimate("root not found; as the stem wood of black spruce, a fifth either way")}
	case Pitch:
		return Density{Low: 950, Typical: 1050, High: 1100,
			Source: estimate("rosin 1070 to 1090, from memory, medium, tempered with lighter fat and some charcoal")}
	}
	panic(noSuchMaterial)
}

func estimate(cited string) known.Source { return known.Source{Basis: known.Estimate, Cited: cited} }
