package answer

import (
	"strings"

	"barkwright/core/units"
)

// term is one of the user's numbers in a working.
type term struct {
	kind  units.Kind
	value float64
}

func length(v float64) term  { return term{units.Length, v} }
func small(v float64) term   { return term{units.SmallLength, v} }
func thin(v float64) term    { return term{units.Thickness, v} }
func run(v float64) term     { return term{units.Run, v} }
func ratio(v float64) term   { return term{units.Ratio, v} }
func percent(v float64) term { return term{units.Percent, v} }
func strain(v float64) term  { return term{units.Strain, v} }
func angle(v float64) term   { return term{units.Angle, v} }
func area(v float64) term    { return term{units.Area, v} }
func mass(v float64) term    { return term{units.Mass, v} }
func offset(v float64) term  { return term{units.Offset, v} }
func speed(v float64) term   { return term{units.Speed, v} }
func power(v float64) term   { return term{units.Power, v} }
func count(v int) term       { return term{units.Count, float64(v)} }

// working is a rule whose every # is replaced by the next term as the user reads
// it. A rule with too few or too many terms panics: a mistake in this package.
func working(rule string, terms ...term) func(units.System) string {
	if strings.Count(rule, "#") != len(terms) {
		panic("answer: working and its terms do not match: " + rule)
	}
	return func(s units.System) string {
		pieces := strings.Split(rule, "#")
		var b strings.Builder
		for i, p := range pieces {
			b.WriteString(p)
			if i < len(terms) {
				b.WriteString(terms[i].kind.Format(terms[i].value, s))
			}
		}
		return b.String()
	}
}
