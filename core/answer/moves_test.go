package answer_test

import (
	"cmp"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
)

// What is said to move a number does, and most: each parameter is moved by one step of
// its slider either way, and the number's greatest change, as a share of itself, is ranked.
// What changes it by less than a hundredth of the strongest is not said to.
func TestMovedByWhatMovesIt(t *testing.T) {
	d := design.Default()
	before := answer.All(core.Evaluate(d))
	type mover struct {
		key  string
		most float64
	}
	moved := map[string][]mover{}
	for _, p := range design.Params() {
		if p.Options != nil || p.Paddler > 0 {
			continue
		}
		most := map[string]float64{}
		for _, by := range []float64{1, -1} {
			to := math.Max(p.Min, math.Min(p.Max, p.Get(&d)+by*p.Step(units.Imperial16)))
			c, faults := core.Try(p.Set(d, to))
			if len(faults) > 0 {
				continue
			}
			for i, n := range answer.All(c) {
				if b := before[i]; !n.Absent && !b.Absent && b.Word == "" {
					most[n.Key] = math.Max(most[n.Key], math.Abs(n.Value-b.Value)/math.Max(math.Abs(b.Value), 1e-6))
				}
			}
		}
		for key, change := range most {
			if change > 1e-9 {
				moved[key] = append(moved[key], mover{p.Key, change})
			}
		}
	}
	var want []string
	for _, n := range before {
		by := moved[n.Key]
		// Alike within rounding, which differs between the targets, they keep the form's order.
		alike := func(m mover) float64 { return math.Round(m.most * 1e8) }
		slices.SortStableFunc(by, func(a, b mover) int { return cmp.Compare(alike(b), alike(a)) })
		var keys []string
		for _, m := range by {
			if len(keys) < answer.MostMovers && m.most > 0.01*by[0].most {
				keys = append(keys, m.key)
			}
		}
		assert.Equal(t, keys, answer.MovedBy(n.Key), n.Key)
		if len(keys) > 0 {
			want = append(want, n.Key+": "+strings.Join(keys, " "))
		}
	}
	if t.Failed() {
		t.Log("moves:\n" + strings.Join(want, "\n") + "\n:end")
	}
}

// A number's table is one there is.
func TestTableOfANumber(t *testing.T) {
	c := core.Evaluate(design.Default())
	tables := answer.TableKeys()
	for _, t := range answer.CurveTables(core.OnWater(c)) {
		tables = append(tables, t.Key)
	}
	there := func(number string) {
		if key := answer.TableOf(number); key != "" {
			assert.Contains(t, tables, key, number)
		}
	}
	for _, n := range answer.All(c) {
		there(n.Key)
	}
	for _, w := range answer.Checks(c) {
		there(w.Key)
	}
	assert.Equal(t, "posts", answer.TableOf("post.middle"))
	assert.Equal(t, "gores", answer.TableOf("bark.goresCut"))
	assert.Empty(t, answer.TableOf("afloat.trim"))
}
