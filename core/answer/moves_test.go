package answer_test

import (
	"cmp"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// mostMovers is how many parameters are named as moving a number.
const mostMovers = 4

// step is a boat that one step of a parameter's slider makes of the default.
type step struct {
	param design.Param
	boat  core.Canoe
}

// steps are those of every parameter, either way, that make a boat.
func steps() (out []step) {
	d := design.Default()
	for _, p := range design.Params() {
		if p.Options != nil || p.Paddler > 0 {
			continue
		}
		for _, by := range []float64{1, -1} {
			to := math.Max(p.Min, math.Min(p.Max, p.Get(&d)+by*p.Step(units.Imperial16)))
			if c, faults := core.Try(p.Set(d, to)); len(faults) == 0 {
				out = append(out, step{p, c})
			}
		}
	}
	return out
}

// movedMost ranks the parameters whose steps change numbers most, each change as a share of
// the number itself: the lines of moves.
func movedMost(t *testing.T, all []step, numbers func(core.Canoe) []answer.Number) (lines []string) {
	before := numbers(core.Evaluate(design.Default()))
	type mover struct {
		key  string
		most float64
	}
	moved := map[string][]mover{}
	for _, s := range all {
		for i, n := range numbers(s.boat) {
			b := before[i]
			if n.Absent || b.Absent || b.Word != "" {
				continue
			}
			change := math.Abs(n.Value-b.Value) / math.Max(math.Abs(b.Value), 1e-6)
			by := moved[n.Key]
			switch last := len(by) - 1; {
			case last >= 0 && by[last].key == s.param.Key:
				by[last].most = math.Max(by[last].most, change)
			case change > 1e-9:
				moved[n.Key] = append(by, mover{s.param.Key, change})
			}
		}
	}
	for _, n := range before {
		by := moved[n.Key]
		// Alike within rounding, which differs between the targets, they keep the form's order.
		alike := func(m mover) float64 { return math.Round(m.most * 1e8) }
		slices.SortStableFunc(by, func(a, b mover) int { return cmp.Compare(alike(b), alike(a)) })
		var keys []string
		for _, m := range by {
			if len(keys) < mostMovers && m.most > 0.01*by[0].most {
				keys = append(keys, m.key)
			}
		}
		assert.Equal(t, keys, answer.MovedBy(n.Key), n.Key)
		if len(keys) > 0 {
			lines = append(lines, n.Key+": "+strings.Join(keys, " "))
		}
	}
	return lines
}

// What is said to move a number does, and most: each parameter is moved by one step of
// its slider either way, and the number's greatest change, as a share of itself, is ranked.
// What changes it by less than a hundredth of the strongest is not said to.
func TestMovedByWhatMovesIt(t *testing.T) {
	lines := movedMost(t, steps(), func(c core.Canoe) (now []answer.Number) {
		for _, n := range answer.All(c) {
			if !n.NotYet() {
				now = append(now, n)
			}
		}
		return now
	})
	if t.Failed() {
		t.Log("moves:\n" + strings.Join(lines, "\n") + "\n:end")
	}
}

// lateNumbers are the numbers of a boat that follow when the slider rests: of the bark laid
// flat, with the curve of stretch where it is asked for, and on the water.
func lateNumbers(c core.Canoe, res bark.Resolution, curve bool) (all []answer.Number) {
	f := core.LayFlat(c, res, nil, &geom.FlattenWorkspace{})
	laid := c.WithFlat(f)
	if curve {
		var points []bark.CurvePoint
		for n := 0; n <= core.MostCurved; n++ {
			points = append(points, bark.StretchAt(c.Hull, c.Bark, n, bark.ForCurve, &geom.FlattenWorkspace{}))
		}
		laid = laid.WithCurve(points)
	}
	waiting := answer.All(c)
	for i, n := range answer.All(laid) {
		if waiting[i].NotYet() {
			all = append(all, n)
		}
	}
	return append(all, answer.Water(c, core.OnWater(c))...)
}

// The same of the numbers that follow when the slider rests. All of it takes minutes and is
// done where BARKWRIGHT_MOVES is set; otherwise what is said to move each number most does.
func TestLateNumbersAreMoved(t *testing.T) {
	if os.Getenv("BARKWRIGHT_MOVES") != "" {
		lines := movedMost(t, steps(), func(c core.Canoe) []answer.Number {
			return lateNumbers(c, bark.ForFigures, true)
		})
		if t.Failed() {
			t.Log("moves:\n" + strings.Join(lines, "\n") + "\n:end")
		}
		return
	}
	all, before := steps(), lateNumbers(core.Evaluate(design.Default()), bark.ForPicture, false)
	moved := map[string]map[string]bool{} // by parameter, the numbers that its steps change
	for _, n := range before {
		by := answer.MovedBy(n.Key)
		if n.Absent || n.Word != "" {
			continue
		}
		if !assert.NotEmpty(t, by, n.Key) || moved[by[0]] != nil {
			continue
		}
		moved[by[0]] = map[string]bool{}
		for _, s := range all {
			if s.param.Key == by[0] {
				for i, m := range lateNumbers(s.boat, bark.ForPicture, false) {
					if m.Value != before[i].Value {
						moved[by[0]][m.Key] = true
					}
				}
			}
		}
	}
	for _, n := range before {
		if by := answer.MovedBy(n.Key); len(by) > 0 && !n.Absent {
			assert.True(t, moved[by[0]][n.Key], "%s is not moved by %s", n.Key, by[0])
		}
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
