package answer_test

import (
	"barkwright/core/stage"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func set(t testing.TB, d design.Design, key string, v float64) design.Design {
	t.Helper()
	p, ok := design.Lookup(key)
	require.True(t, ok, key)
	return p.Set(d, v)
}

// onWater is every result on the water by key.
func onWater(d design.Design) map[string]answer.Number {
	c := core.Evaluate(d)
	all := map[string]answer.Number{}
	for _, n := range append(answer.All(c), answer.Water(c, core.OnWater(c))...) {
		if n.Home == stage.Pitch {
			all[n.Key] = n
		}
	}
	return all
}

// The results that other parts of the page count on.
func TestKeysOnTheWater(t *testing.T) {
	all := onWater(design.Default())
	for _, key := range []string{"afloat.draught", "afloat.freeboard", "afloat.displacement", "afloat.gm",
		"afloat.maxRightingArm", "afloat.loadAtSixInches", "afloat.speed"} {
		n, ok := all[key]
		require.True(t, ok, key)
		assert.False(t, n.Absent, key)
		assert.Positive(t, n.Value, key)
	}
	for key, n := range all {
		assert.NotEmpty(t, n.Cited, key)
		assert.NotEmpty(t, n.Basis, key)
		for _, s := range systems {
			assert.NotEmpty(t, n.Working(s), key)
			assert.NotContains(t, n.Working(s), "#", key)
		}
	}
}

// Named states show: a number that is not there says why, and one that is there is
// the real one, a negative GM too.
func TestStatesAreNamed(t *testing.T) {
	d := design.Default()
	over := onWater(set(t, d, "cargo", 4000*units.Pound))
	for _, key := range []string{"afloat.draught", "afloat.gm", "afloat.maxRightingArm", "afloat.speed",
		"afloat.push"} {
		assert.True(t, over[key].Absent, key)
		assert.Equal(t, "overloaded", over[key].Text(units.Imperial16), key)
	}
	tender := onWater(set(t, d, "beam", 25*units.Inch))
	assert.Negative(t, tender["afloat.gm"].Value)
	assert.Equal(t, "−", string([]rune(tender["afloat.gm"].Text(units.Imperial16))[0]))
	assert.NotZero(t, tender["afloat.draught"].Value)

	empty := onWater(set(t, set(t, d, "paddlers", 0), "cargo", 0))
	assert.Equal(t, "no paddler", empty["afloat.lean"].Text(units.Metric))
	assert.Equal(t, "no paddler", empty["afloat.day"].Text(units.Metric))
	assert.Positive(t, empty["afloat.push"].Value)
}

// What is wrong with a load is said as it would be in the boat, with what to do.
func TestLoadChecksInWords(t *testing.T) {
	load := func(d design.Design) (word, text string) {
		for _, w := range answer.Checks(core.Evaluate(d)) {
			if w.Key == "afloat.state" {
				return w.Word, w.Text(units.Imperial16)
			}
		}
		return "", ""
	}
	over := set(t, design.Default(), "cargo", 1500*units.Pound)
	_, text := load(over)
	assert.Regexp(t, `^about [0-9]+ lb too much: water would come over the gunwale\.`, text)
	far := set(t, set(t, set(t, design.Default(), "paddlers", 0), "cargo", 400*units.Pound), "cargoPosition",
		80*units.Inch)
	word, text := load(far)
	assert.Equal(t, "will not balance", word)
	assert.Regexp(t, `^its middle is .+ forward; the bow would go under\. Move it aft`, text)
	word, text = load(set(t, far, "cargoPosition", -80*units.Inch))
	assert.Equal(t, "will not balance", word)
	assert.Regexp(t, `^its middle is .+ aft; the stern would go under\. Move it forward`, text)
}

// A freeboard short of what custom keeps is never shown as that much.
func TestScarceFreeboard(t *testing.T) {
	scarce := 0
	for cargo := 150.0; cargo < 300; cargo += 2 {
		c := core.Evaluate(set(t, design.Default(), "cargo", cargo*units.Pound))
		w := barkCheckOf(t, c, "afloat.state")
		if w.State != answer.Near {
			continue
		}
		text := w.Text(units.Imperial16)
		assert.NotContains(t, text, `6" of freeboard: by custom an open canoe keeps 6"`)
		if c.Afloat.Floated.Upright.Freeboard > 5.9*units.Inch {
			scarce++
			assert.Contains(t, text, `a little under the 6" of freeboard`)
		}
	}
	assert.Positive(t, scarce)
}

// What a boat that does not lie afloat would have is not worked out from nothing.
func TestOverloadedHasNoWorking(t *testing.T) {
	d := set(t, design.Default(), "cargo", 2000*units.Pound)
	for _, n := range answer.All(core.Evaluate(d)) {
		if n.Key == "afloat.freeboardAt" || n.Key == "afloat.draught" {
			assert.True(t, n.Absent, n.Key)
			assert.Contains(t, n.Working(units.Imperial16), "too much", n.Key)
		}
	}
}

// With no sheets listed, the results of them say so and what to do.
func TestNoSheetsListed(t *testing.T) {
	n := 0
	for _, r := range answer.All(core.Evaluate(design.Default())) {
		if r.Text(units.Imperial16) == "no sheets listed" {
			n++
			assert.Equal(t, "list your sheets under Bark on hand and this is worked out", r.Working(units.Imperial16),
				r.Key)
		}
	}
	assert.Equal(t, 3, n)
}

// No boat gives a result or a table with NaN or an infinity in it.
func TestRandomBoatsGiveNumbers(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 8))
	for n := 0; n < 40; {
		d := check.NearDesign(r, design.Default(), 0.3)
		if core.Validate(d) != nil {
			continue
		}
		n++
		for key, v := range onWater(d) {
			for _, x := range []float64{v.Value, v.Low, v.High} {
				require.False(t, math.IsNaN(x) || math.IsInf(x, 0), key)
			}
			require.LessOrEqual(t, v.Low, v.High, key)
			require.NotEmpty(t, v.Text(units.Metric), key)
		}
		c := core.Evaluate(d)
		figures, _ := answer.MakeTable(c, "figures")
		for _, table := range append(answer.CurveTables(core.OnWater(c)), figures) {
			require.NotEmpty(t, table.Rows, table.Key)
			for _, row := range table.Rows {
				require.Len(t, row.Cells, len(table.Columns), table.Key)
				for i, cell := range row.Cells {
					require.False(t, math.IsNaN(cell.Value) || math.IsInf(cell.Value, 0), table.Key)
					require.NotEmpty(t, table.Columns[i].Format(cell, units.Imperial16))
				}
			}
		}
		for _, w := range answer.Checks(c) {
			require.NotEmpty(t, w.Text(units.Imperial16), w.Key)
		}
	}
}

// Steadiness in words goes by both ends of the spread: the boat the page opens with is
// steady or stiff, a narrower one hangs on its bottom, a far narrower one falls even at
// its best; and what helps is offered and does.
func TestSteadinessInWords(t *testing.T) {
	d := design.Default()
	states := map[string]answer.State{"stiff": answer.Within, "steady": answer.Within, "tender": answer.Near,
		"would not stay upright": answer.Beyond}
	seen := map[string]bool{}
	for beam := 40.0; beam >= 20; beam-- {
		e := set(t, set(t, d, "beam", beam*units.Inch), "cargo", 0)
		c := core.Evaluate(e)
		w := checkOf(t, e, "afloat.steady")
		if c.Afloat.Floated.Upright.State != afloat.Floats {
			assert.Equal(t, answer.NotChecked, w.State)
			continue
		}
		seen[w.Word] = true
		assert.Equal(t, states[w.Word], w.State, w.Word)
		assert.Equal(t, c.Afloat.GMHigh < -0.125*units.Inch, w.Word == "would not stay upright",
			"what shows as no more than nothing is not below it")
		assert.NotRegexp(t, `to 0": even`, w.Text(units.Imperial16))
		assert.NotContains(t, checkOf(t, e, "afloat.state").Word, "upright", "that is the steadiness's to say")
		assert.Equal(t, c.Afloat.GMLow < 0, w.State != answer.Within)
		if w.State != answer.Within {
			assert.Contains(t, w.Text(units.Imperial16), "sitting on the bottom, GM ")
			low := core.Evaluate(set(t, e, "posture", float64(design.SittingOnBottom)))
			assert.Greater(t, low.Afloat.Floated.GM, c.Afloat.Floated.GM)
		}
	}
	for word := range states {
		assert.True(t, seen[word], word)
	}
	assert.Equal(t, answer.NotChecked, checkOf(t, set(t, d, "cargo", 4000*units.Pound), "afloat.steady").State)
}

// A boat built on its gunwales is told so, with the published one that comes out like it.
func TestGirthsOfABoatBuiltOnItsGunwales(t *testing.T) {
	d := set(t, set(t, design.Default(), "builtOn", float64(design.OnGunwales)), "greatestBeam", 42*units.Inch)
	w := checkOf(t, d, "hull.ease")
	assert.Equal(t, answer.Near, w.State)
	assert.Contains(t, w.Text(units.Imperial16), "published boat")
	assert.NotContains(t, w.Text(units.Imperial16), "widen the frame")
}

// A load that lets water in says at which end, in words and not by a sign.
func TestWaterComesOverAtAnEnd(t *testing.T) {
	for toward, way := range map[string]float64{"forward": 1, "aft": -1} {
		swamped := 0
		for pounds := 300.0; pounds <= 900; pounds += 50 {
			c := core.Evaluate(check.With(t, "cargo", pounds*units.Pound, "cargoPosition", way*30*units.Inch))
			if c.Afloat.Floated.State != afloat.Swamped {
				continue
			}
			swamped++
			for _, w := range answer.Checks(c) {
				if w.Key == "afloat.state" {
					assert.Contains(t, w.Text(units.Imperial16), toward+" of amidships")
					assert.NotContains(t, w.Text(units.Imperial16), "−")
				}
			}
		}
		assert.Positive(t, swamped, toward)
	}
}
