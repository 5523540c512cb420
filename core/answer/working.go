package answer

import (
	"strings"

	"barkwright/core/units"
)

// term is one of the user's numbers in a working.
type term struct {
	kind  units.Kind
	value float64
	// name follows the number.
	name     string
	rounding Rounding
}

// rough shows the term as an estimate.
func (t term) rough() term {
	t.rounding = Rough
	return t
}

// atLeast shows the term as one of which too little spoils the work.
func (t term) atLeast() term {
	t.rounding = RoughUp
	return t
}

func length(v float64) term  { return term{kind: units.Length, value: v} }
func small(v float64) term   { return term{kind: units.SmallLength, value: v} }
func thin(v float64) term    { return term{kind: units.Thickness, value: v} }
func run(v float64) term     { return term{kind: units.Run, value: v} }
func ratio(v float64) term   { return term{kind: units.Ratio, value: v} }
func percent(v float64) term { return term{kind: units.Percent, value: v} }
func strain(v float64) term  { return term{kind: units.Strain, value: v} }
func angle(v float64) term   { return term{kind: units.Angle, value: v} }
func area(v float64) term    { return term{kind: units.Area, value: v} }
func mass(v float64) term    { return term{kind: units.Mass, value: v} }
func offset(v float64) term  { return term{kind: units.Offset, value: v} }
func speed(v float64) term   { return term{kind: units.Speed, value: v} }
func power(v float64) term   { return term{kind: units.Power, value: v} }
func count(v int) term       { return term{kind: units.Count, value: float64(v)} }

func (t term) text(s units.System) string {
	return t.kind.Format(t.rounding.of(t.kind, t.value, s), s) + t.name
}

// many is a count of things with their name: 1 seam, 2 seams.
func many(n int, one, more string) term {
	if n == 1 {
		return term{kind: units.Count, value: 1, name: " " + one}
	}
	return term{kind: units.Count, value: float64(n), name: " " + more}
}

// working is a rule whose every # is replaced by the next term as the user reads
// it. A rule with too few or too many terms panics: a mistake in this package.
func working(rule string, terms ...term) func(units.System) string {
	if strings.Count(rule, "#") != len(terms) {
		panic("answer: working and its terms do not match: " + rule)
	}
	return func(s units.System) string { return filled(rule, terms, s) }
}

// filled is a rule with every # replaced by the next term.
func filled(rule string, terms []term, s units.System) string {
	pieces := strings.Split(rule, "#")
	var b strings.Builder
	for i, p := range pieces {
		b.WriteString(p)
		if i < len(terms) {
			b.WriteString(terms[i].text(s))
		}
	}
	return b.String()
}
