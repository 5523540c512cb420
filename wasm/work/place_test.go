package work_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A place is a stage, the shed or all of it; any other name opens the first stage.
func TestPlaces(t *testing.T) {
	assert.Equal(t, work.AtStage(stage.Rib), work.PlaceOf("rib"))
	assert.Equal(t, work.Shed, work.PlaceOf("shed"))
	for _, name := range []string{"", "none", "rib/ribs"} {
		assert.Equal(t, work.AtStage(stage.Choose), work.PlaceOf(name), name)
	}
	assert.True(t, work.AtStage(stage.Rib).Shows("choose rib"))
	assert.False(t, work.AtStage(stage.Rib).Shows("choose"))
	assert.True(t, work.All.Shows("rib"))
	assert.False(t, work.Shed.Shows("rib"))
	assert.False(t, work.All.Shows(""), "what is at home nowhere shows nowhere")
}

// Turning goes from stage to stage and stops at either end.
func TestTurned(t *testing.T) {
	at := work.AtStage(stage.Choose)
	var seen []stage.Key
	for range len(stage.Keys()) + 2 {
		if s, ok := at.Stage(); assert.True(t, ok) && (len(seen) == 0 || seen[len(seen)-1] != s.Key) {
			seen = append(seen, s.Key)
		}
		at = at.Turned(1)
	}
	assert.Equal(t, stage.Keys(), seen)
	assert.Equal(t, work.AtStage(stage.Keep), at)
	assert.Equal(t, work.AtStage(stage.Pitch), at.Turned(-1))
	assert.Equal(t, work.AtStage(stage.Choose), work.AtStage(stage.Choose).Turned(-1))
	assert.Equal(t, work.AtStage(stage.Choose), work.Shed.Turned(1))
}

// Each stage comes with a control in hand that there is.
func TestFirstInHand(t *testing.T) {
	for _, k := range stage.Keys() {
		key := work.AtStage(k).First()
		if k == stage.Keep {
			assert.Empty(t, key, "nothing is set at keeping")
			continue
		}
		_, ok := design.Lookup(key)
		assert.True(t, ok, "%s: %q", k, key)
	}
	assert.Empty(t, work.All.First())
}

// The hand shows the control, its value and what it was before the change under way.
func TestHeld(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	h, ok := w.Held("beam")
	assert.True(t, ok)
	assert.Equal(t, work.Held{Name: "Beam inside the gunwales", Value: `2' 9"`}, h)
	w.Set("beam", 34*units.Inch)
	h, _ = w.Held("beam")
	assert.Equal(t, `2' 10"`, h.Value)
	assert.Equal(t, `was 2' 9"`, h.Was)
	h, _ = w.Held("builtOn")
	assert.Equal(t, "a building frame", h.Value)
	_, ok = w.Held("")
	assert.False(t, ok)
}

// A cell shows its check; that of all of them the worst, and how many more are no better
// than near the limit.
func TestVerdict(t *testing.T) {
	check := func(key string, s answer.State) answer.Warning {
		return answer.Warning{Key: key, Label: key, State: s, Word: s.String()}
	}
	checks := []answer.Warning{check("a", answer.Within), check("b", answer.Near), check("c", answer.Beyond),
		check("d", answer.NotChecked)}
	state, text := work.Verdict(checks, "b", units.Metric)
	assert.Equal(t, answer.Near, state)
	assert.Equal(t, "near the limit", text)
	state, text = work.Verdict(checks, stage.WorstOfAll, units.Metric)
	assert.Equal(t, answer.Beyond, state)
	assert.Equal(t, "c: too tight, and 1 more", text)
	state, text = work.Verdict(checks[:1], stage.WorstOfAll, units.Metric)
	assert.Equal(t, answer.Within, state)
	assert.Equal(t, "all within guide", text)

	real := answer.Checks(core.Evaluate(design.Default()))
	for _, s := range stage.All() {
		if s.Verdict != "" {
			_, text := work.Verdict(real, s.Verdict, units.Imperial16)
			assert.NotEmpty(t, text, s.Key)
		}
	}
}
