package answer_test

import (
	"math"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/known"
	"barkwright/core/units"
)

var systems = []units.System{units.Imperial16, units.Imperial8, units.Metric}

// No result without a basis, a working with the user's numbers, and a source.
func TestEveryResultSaysHowItIsKnown(t *testing.T) {
	bases := map[known.Basis]bool{known.Computed: true, known.Published: true, known.CommonPractice: true,
		known.Estimate: true}
	seen := map[string]bool{}
	for _, n := range answer.All(core.Evaluate(design.Default())) {
		assert.False(t, seen[n.Key], "%s twice", n.Key)
		seen[n.Key] = true
		assert.True(t, bases[n.Basis], "%s has basis %q", n.Key, n.Basis)
		assert.NotEmpty(t, n.Cited, n.Key)
		assert.NotEmpty(t, n.Label(units.Metric), n.Key)
		require.NotNil(t, n.Working, n.Key)
		for _, s := range systems {
			text := n.Working(s)
			assert.NotEmpty(t, text, n.Key)
			assert.NotContains(t, text, "#", n.Key)
			assert.NotEmpty(t, n.Text(s), n.Key)
		}
		assert.False(t, math.IsNaN(n.Value) || math.IsInf(n.Value, 0), n.Key)
		assert.LessOrEqual(t, n.Low, n.High, n.Key)
		if n.Low != n.High && n.Basis != known.Computed {
			assert.Equal(t, known.Estimate, n.Basis, "%s has a range", n.Key)
		}
	}
}

// The headline has room for a few words: each of its numbers is one of the results, with
// a short name.
func TestHeadlineIsNamed(t *testing.T) {
	all := map[string]answer.Number{}
	for _, n := range answer.All(core.Evaluate(design.Default())) {
		all[n.Key] = n
	}
	for _, key := range answer.Headline() {
		n, ok := all[key]
		require.True(t, ok, "headline %s is no result", key)
		assert.NotEmpty(t, n.Short, "headline %s has no short name: add .short(...) where it is worked out", key)
		assert.LessOrEqual(t, len(n.Short), 16, "the short name of %s", key)
	}
}

// Every row of every table fits its columns, and can be written in every system.
func TestTablesAreWhole(t *testing.T) {
	for name, d := range boats() {
		c := core.Evaluate(d)
		for _, key := range answer.TableKeys() {
			table, ok := answer.MakeTable(c, key)
			require.True(t, ok, key)
			assert.Equal(t, key, table.Key)
			assert.NotEmpty(t, table.Rows, "%s: %s", name, key)
			for _, r := range table.Rows {
				require.Len(t, r.Cells, len(table.Columns), "%s: %s", name, key)
				for i, cell := range r.Cells {
					if table.Columns[i].Kind == units.Words {
						require.NotEmpty(t, cell.Text, "%s: %s %s is words and has a number", name, key,
							table.Columns[i].Key)
					}
					assert.False(t, math.IsNaN(cell.Value) || math.IsInf(cell.Value, 0), "%s: %s %s", name, key,
						table.Columns[i].Key)
					for _, s := range systems {
						assert.NotEmpty(t, strings.TrimSpace(table.Columns[i].Format(cell, s)))
					}
				}
			}
		}
	}
	_, ok := answer.MakeTable(core.Canoe{}, "none such")
	assert.False(t, ok)
}

// boats are the default and changes of it that turn a rule the other way.
func boats() map[string]design.Design {
	d := design.Default()
	with := func(key string, v float64) design.Design {
		p, _ := design.Lookup(key)
		return p.Set(d, v)
	}
	return map[string]design.Design{
		"as it opens": d, "an odd rib": with("ribs", 43), "three thwarts": with("thwarts", 3),
		"no paddler": with("paddlers", 0), "a wide sheet": with("sheetWidth", 70*units.Inch),
		"one lamination": with("stemLaminations", 1),
	}
}

// A check's state, word and text agree with the result of the same key.
func TestChecksSayWhatToChange(t *testing.T) {
	d := design.Default()
	p, _ := design.Lookup("stemLaminations")
	states := map[int]answer.State{1: answer.Beyond, 2: answer.Near, 8: answer.Within}
	for n, want := range states {
		found := false
		for _, w := range answer.Checks(core.Evaluate(p.Set(d, float64(n)))) {
			if w.Key == "stem.verdict" {
				found = true
				assert.Equal(t, want, w.State, "%d laminations", n)
				if want != answer.Within {
					assert.Contains(t, w.Text(units.Imperial16), "laminations would be within guide")
				} else {
					assert.Contains(t, w.Text(units.Imperial16), "a trial piece first")
				}
			}
		}
		assert.True(t, found)
	}
}

// The lacing and the seams of a 15 ft boat with 40 ribs, each before waste. Common
// practice, no published source: 400 to 450 ft, 100 to 170 ft and together 500 to 600.
// Tolerance: half of the last printed digit, 5 ft. Roots of the default's narrow sheets
// stand at the upper end; one sheet wide enough takes less.
func TestRootOfAFifteenFootBoat(t *testing.T) {
	d := design.Default()
	for key, v := range map[string]float64{"length": 180 * units.Inch, "ribs": 40} {
		p, _ := design.Lookup(key)
		d = p.Set(d, v)
	}
	require.Empty(t, core.Validate(d))
	feet := map[string]float64{}
	for _, n := range answer.All(core.Evaluate(d)) {
		feet[n.Key] = n.Value / units.Foot
	}
	t.Logf("lacing %.0f ft, seams %.0f ft, together with waste %.0f ft", feet["root.gunwales"], feet["root.seams"],
		feet["root.total"])
	assert.InDelta(t, 425, feet["root.gunwales"], 25+5)
	assert.InDelta(t, 135, feet["root.seams"], 35+5)
	assert.InDelta(t, 550, feet["root.gunwales"]+feet["root.seams"], 50+5)
}

// Nothing is said of one thing as if there were several: the boats have one of what can be
// one, in both systems of units.
func TestOneIsSaidOfOne(t *testing.T) {
	several := regexp.MustCompile(`(^|[^0-9/.] |[(×] ?)1 (turns|rounds|gores|openings|groups|pieces|sheets|strips|ribs|` +
		`strands|roots)\b`)
	for _, pairs := range [][]any{
		{"passes", 1.0, "pegEvery", 1.0}, {"gores", 1.0, "stemLaminations", 1.0}, {"ribsBroken", 1.0, "ribs", 8.0},
		{"length", 8 * 12 * units.Inch, "sheetLength", 10 * 12 * units.Inch, "stemDepth", 0.5 * units.Inch},
	} {
		c := core.Evaluate(check.With(t, pairs...))
		c = c.WithFlat(core.LayFlat(c, bark.ForPicture, nil, nil))
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			for _, n := range answer.All(c) {
				assert.NotRegexp(t, several, n.Text(s)+"; "+n.Working(s), n.Key)
			}
			for _, key := range answer.TableKeys() {
				table, _ := answer.MakeTable(c, key)
				for _, row := range table.Rows {
					for _, cell := range row.Cells {
						assert.NotRegexp(t, several, cell.Text, key)
					}
				}
			}
		}
	}
}

// Where side panels take no more sewing than longer gores would, nothing is said to be
// saved, and no cost is less than zero. Of seam and root the one may be saved and not the other: the
// verdict says what the numbers say.
func TestNarrowBarkCostsNothing(t *testing.T) {
	said := 0
	for _, line := range []string{"barkwright2_B50.5_Bg84_D21.5_N9", "barkwright2_D19.5_Kw29_Zg2",
		"barkwright2_D34_Gn12_Yg0.82_Kt2.4"} {
		d, _, err := design.ReadLine(line)
		require.NoError(t, err)
		c, faults := core.Try(d)
		require.Empty(t, faults)
		c = c.WithFlat(core.LayFlat(c, bark.ForPicture, nil, nil))
		require.NotEmpty(t, c.Bark.Beside)
		costs := map[string]bool{}
		for _, n := range answer.All(c) {
			if n.Key == "bark.narrowSeam" || n.Key == "bark.narrowRoot" {
				assert.GreaterOrEqual(t, n.Value, 0.0)
				costs[n.Key] = !n.Absent
			}
		}
		assert.False(t, costs["bark.narrowSeam"] && costs["bark.narrowRoot"], line)
		for _, w := range answer.Checks(c) {
			if w.Key != "bark.verdict" {
				continue
			}
			text := w.Text(units.Imperial16)
			assert.NotContains(t, text, "−")
			if strings.Contains(text, " wide would ") {
				said++
				assert.Equal(t, costs["bark.narrowSeam"], strings.Contains(text, " of seam"), text)
				assert.Equal(t, costs["bark.narrowRoot"], strings.Contains(text, " of split root"), text)
			}
		}
	}
	assert.Equal(t, 2, said)
}
