package wood

import "math"

// Verdict is where a bend falls in the guide. A larger one of the first three is
// a worse one.
type Verdict int

const (
	WithinGuide Verdict = iota
	NearLimit
	TooTight
	NotChecked // for a piece that is not asked to bend; Check never returns it
)

const noSuchVerdict = "wood: no such verdict"

func (v Verdict) String() string {
	switch v {
	case WithinGuide:
		return "within guide"
	case NearLimit:
		return "near the limit"
	case TooTight:
		return "too tight"
	case NotChecked:
		return "not checked"
	}
	panic(noSuchVerdict)
}

// Bend is one piece bent to one radius, with the verdict and the thresholds it
// was judged by.
type Bend struct {
	Radius     float64 // at mid-thickness, m; +Inf for a piece left straight
	Thickness  float64 // m
	Strain     float64 // t/(2R), nominal, at the faces; 0 where straight or WillNotFit
	Ratio      float64 // R/t; +Inf for a piece left straight, 0 where WillNotFit
	Verdict    Verdict
	Safe       float64 // R/t from which it is within guide, multipliers included
	Limit      float64 // R/t under which it is too tight, multipliers included
	WillNotFit bool    // no positive radius is left for the piece: no strain can be given
}

const (
	radiusNotANumber     = "wood: radius not a number"
	thicknessNotPositive = "wood: thickness not positive"
)

// edgeAllowance is the relative slack by which an R/t may miss a threshold and
// still count as on it. A radius and a thickness that make 125 exactly on paper
// make it in floating point to about 1e-15; 1e-9 is far above that and far below
// anything a builder could measure.
const edgeAllowance = 1e-9

// Check judges a piece of the given thickness (m, positive) bent to the given
// radius at its mid-thickness (m). An R/t exactly on a threshold belongs to the
// milder band. A radius of +Inf is a straight piece, within guide. A radius of
// zero or less is too tight and WillNotFit.
func Check(radius, thickness float64, s Stock) Bend {
	if math.IsNaN(radius) {
		panic(radiusNotANumber)
	}
	if !(thickness > 0) {
		panic(thicknessNotPositive)
	}
	guide, k := s.Condition.Guide(), s.Multiplier()
	b := Bend{Radius: radius, Thickness: thickness, Safe: k * guide.Safe, Limit: k * guide.Limit}
	if radius <= 0 {
		b.Verdict, b.WillNotFit = TooTight, true
		return b
	}
	b.Ratio = radius / thickness
	b.Strain = 1 / (2 * b.Ratio)
	b.Verdict = TooTight
	if reaches(b.Ratio, b.Limit) {
		b.Verdict = NearLimit
	}
	if reaches(b.Ratio, b.Safe) {
		b.Verdict = WithinGuide
	}
	return b
}

func reaches(ratio, threshold float64) bool {
	return ratio >= threshold*(1-edgeAllowance)
}

// Advice says what the verdict, whose word stands before it, means for the builder and
// what to change, for the stock the bend was checked with.
func (b Bend) Advice(s Stock) string {
	if b.WillNotFit {
		return "the curve is tighter than the piece is deep; open the curve or make the piece shallower"
	}
	switch b.Verdict {
	case WithinGuide:
		return "it should bend without breaking if the grain is straight; bend a trial piece first"
	case NearLimit:
		return "may break: " + b.remedy(s.Condition)
	case TooTight:
		if s.Condition.hot() {
			return "split thinner or open the curve"
		}
		return "split thinner, open the curve, or bend it hot"
	}
	return "not asked to bend"
}

func (b Bend) remedy(c Condition) string {
	switch c {
	case Boiled:
		if b.Ratio < breakageLikely*b.Safe/c.Guide().Safe {
			return "expect some to break and make spares; heat longer, split thinner, or use a strap with end stops"
		}
		return "soak and heat longer, split thinner, or make spares"
	case Strapped:
		return "heat longer, split thinner, or make spares"
	case Soaked:
		return "soak longer, heat it, split thinner, or make spares"
	}
	return "soak or heat it, split thinner, or make spares"
}
