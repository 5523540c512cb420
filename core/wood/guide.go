package wood

// Guide is a condition's pair of R/t thresholds for straight-grained northern
// white-cedar, and what they rest on.
type Guide struct {
	Safe        float64 // from this R/t up: within guide
	Limit       float64 // from this R/t up to Safe: near the limit; under it: too tight
	SafeBasis   string
	LimitBasis  string
	Uncertainty string
}

// Guide gives the condition's thresholds. All four pairs are judgement built on
// the sources named in them.
func (c Condition) Guide() Guide {
	switch c {
	case Boiled:
		return Guide{
			Safe: 30, Limit: 10,
			SafeBasis: "strap called for under about 30 times the thickness (workshop rule, from memory, medium); " +
				"published radii, not under 20 to 30 thicknesses (summary of a university text)",
			LimitBasis: "wood stretches 1 to 2 % when hot (Peck, USDA Agriculture Handbook 125, 1957, from memory): " +
				"8 to 10 times the thickness at 2 % with the neutral axis shifted; ribs measured by this project off drawings " +
				"(Adney and Chapelle, Bulletin 230, 1964, figs. 31, 52, 104), each good to a quarter, come to about 11 to 23",
			Uncertainty: "the limit could be off by 40 % either way; under 20 times the thickness expect some to break",
		}
	case Strapped:
		return Guide{
			Safe: 16, Limit: 10,
			SafeBasis: "about 16 for three in four near-perfect, southern pine " +
				"(Lemoine and Koch, Forest Products Journal 21(4), 1971, abstract)",
			LimitBasis:  "a little beyond the 12 of the same abstract; no softwood evidence found below it",
			Uncertainty: "untested for cedar; the limit is an extrapolation, the weakest number of the guide",
		}
	case Soaked:
		return Guide{
			Safe: 100, Limit: 50,
			SafeBasis: "MOE/(2 MOR) green, 76 to 84, plus about one coefficient of variation",
			LimitBasis: "strain at greatest load, at least 1.55 % from the work to greatest load, " +
				"less one coefficient of variation of 34 % (from memory)",
			Uncertainty: "the first could be off by 20 % either way, the limit by 30 %; " +
				"soaking dry wood may not reach the green condition",
		}
	case Dry:
		return Guide{
			Safe: 125, Limit: 65,
			SafeBasis: "t/R at most 1/125 for softwood laminations (National Design Specification for Wood, " +
				"section 5.3, from memory, high)",
			LimitBasis:  "MOE/(2 MOR) at 12 % moisture: 61.5, or 67.7 with shear taken out",
			Uncertainty: "the first includes a structural margin; the limit could be off by 20 % either way",
		}
	}
	panic(noSuchCondition)
}

// breakageLikely is the R/t under which hot bending without a strap, though it
// has been done, breaks some pieces. Judgement: the published ribs lie about and
// under it.
const breakageLikely = 20

// BendFactor multiplies the guide's R/t for a species other than northern
// white-cedar: its MOE/(2 MOR) over that of northern white-cedar, at 12 % for dry
// wood and green for the rest. Hot it is never under 1: no hot figures were found,
// and a cold one earns no leave to bend tighter (white ash hot is 1; in practice
// it bends better than that).
func (s Species) BendFactor(c Condition) float64 {
	own := Stock{Species: s, Condition: c}.strength().RatioAtRupture()
	cedar := Stock{Condition: c}.strength().RatioAtRupture()
	if c.hot() {
		return max(1, own/cedar)
	}
	return own / cedar
}

// BendFactor multiplies the guide's R/t for grain that runs out: the inverse of
// the share of MOR left at that slope (Wood Handbook, FPL-GTR-190, 2010, table
// 5-12, from memory, high): 93 % at 1 in 20, 81 % at 1 in 10, 55 % at 1 in 5.
// Sawn with visible run-out or kiln-dried is at least 1.25 (judgement).
func (g Grain) BendFactor() float64 {
	switch g {
	case Straight:
		return 1
	case RunOut20:
		return 1 / 0.93
	case RunOut10:
		return 1 / 0.81
	case RunOut5:
		return 1 / 0.55
	case Sawn:
		return 1.25
	}
	panic(noSuchGrain)
}

// Multiplier is what both thresholds of the condition's guide are multiplied by
// for the stock: species times grain.
func (s Stock) Multiplier() float64 {
	return s.Species.BendFactor(s.Condition) * s.Grain.BendFactor()
}
