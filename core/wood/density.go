package wood

// Density is a material's mass per volume in the finished boat, kg/m3, with a
// range and where it comes from.
type Density struct {
	Low, Typical, High float64
	Basis              string // published, from memory, or estimate
	Source             string
}

// Material is what a part of the boat is made of, where the user does not choose
// the species.
type Material int

const (
	Cedar  Material = iota // northern white-cedar, air-dry
	Spruce                 // black spruce, air-dry
	Maple                  // sugar maple, air-dry
	BirchBark
	Root // split spruce root, dry
	Pitch
)

const noSuchMaterial = "wood: no such material"

const (
	// waterDensity relates specific gravity to density, kg/m3: its definition takes
	// water at 4 C.
	waterDensity = 1000
	// airDry is the moisture of wood in a finished, dry boat, % of oven-dry mass:
	// that of the table's second figures.
	airDry = 12
	// gravityVariation is the coefficient of variation of specific gravity within
	// a species, Wood Handbook chapter 5, from memory, high.
	gravityVariation = 0.10
	// birchBarkGravity is the basic specific gravity of the whole bark of mountain
	// birch (559 kg/m3 oven-dry on green volume, Silva Fennica abstract): not paper
	// birch and not outer bark alone.
	birchBarkGravity = 0.559
	// rootVariation is judgement: no density of root wood was found.
	rootVariation = 0.2
)

// DensityAt is the density, kg/m3, of wood of the given specific gravity (oven-dry
// mass over volume at that moisture) and moisture in % of oven-dry mass:
// rho = rho_w G (1 + M/100) (Wood Handbook, FPL-GTR-190, 2010, chapter 4).
func DensityAt(specificGravity, moisture float64) float64 {
	return waterDensity * specificGravity * (1 + moisture/100)
}

// airDryDensity gives the range of one coefficient of variation either way.
func airDryDensity(specificGravity float64, basis, source string) Density {
	typical := DensityAt(specificGravity, airDry)
	return Density{
		Low: typical * (1 - gravityVariation), Typical: typical, High: typical * (1 + gravityVariation),
		Basis: basis, Source: source,
	}
}

// Density is the species' density at 12 % moisture.
func (s Species) Density() Density {
	r := s.Row()
	return airDryDensity(r.Dry.SpecificGravity, "published", r.Source)
}

// Density gives the material's density in the finished boat.
func (m Material) Density() Density {
	switch m {
	case Cedar:
		return NorthernWhiteCedar.Density()
	case Spruce:
		return BlackSpruce.Density()
	case Maple:
		return airDryDensity(0.63, "from memory", "Wood Handbook, sugar maple at 12 %, from memory, high")
	case BirchBark:
		return Density{Low: 500, Typical: 550, High: DensityAt(birchBarkGravity, airDry), Basis: "estimate",
			Source: "outer bark of paper birch not found; 0.5 to 0.6 dry, from memory, low; " +
				"high: whole bark of mountain birch with 12 % moisture (Silva Fennica, abstract)"}
	case Root:
		stem := BlackSpruce.Density().Typical
		return Density{Low: (1 - rootVariation) * stem, Typical: stem, High: (1 + rootVariation) * stem,
			Basis: "estimate", Source: "root not found; as the stem wood of black spruce, a fifth either way"}
	case Pitch:
		return Density{Low: 950, Typical: 1050, High: 1100, Basis: "estimate",
			Source: "rosin 1070 to 1090, from memory, medium, tempered with lighter fat and some charcoal"}
	}
	panic(noSuchMaterial)
}
