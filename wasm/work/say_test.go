package work_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// told is what is spoken of a step that sets a parameter, in inches.
func told(t *testing.T, s *work.Speaker, n *work.Numbers, w *work.Work, key string, v float64) string {
	t.Helper()
	w.Set(key, v*inch)
	text, speak := s.Say(w, n.Update(w))
	require.True(t, speak)
	return text
}

// A changed verdict is said before the numbers, and only once.
func TestVerdictIsSaidFirst(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	var s work.Speaker
	var n work.Numbers
	_, speak := s.Say(w, n.Update(w))
	assert.True(t, speak)
	text := told(t, &s, &n, w, "ribThickness", 0.5)
	const changed = "Ribs: tighter than most published"
	assert.True(t, strings.HasPrefix(text, changed), text)
	_, speak = s.Say(w, n.Update(w))
	assert.False(t, speak, "nothing has changed since")
	text = told(t, &s, &n, w, "ribThickness", 0.52)
	assert.NotContains(t, text, changed, "the verdict is as it was")
}

func TestHeadlineNumbersAreSaid(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	var s work.Speaker
	var n work.Numbers
	s.Say(w, n.Update(w))
	text := told(t, &s, &n, w, "gunwaleEndHeight", 19)
	assert.Contains(t, text, `Sheer, ends 1' 7"`)
}

func TestFaultIsSaid(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	var s work.Speaker
	var n work.Numbers
	s.Say(w, n.Update(w))
	text := told(t, &s, &n, w, "beam", 400)
	require.NotEmpty(t, w.Faults)
	assert.Equal(t, "Not changed: "+work.LabelOf(w.Faults[0].Key)+": "+w.Faults[0].Message(w.System), text)
	assert.Equal(t, "Beam: no", work.Wrong("Beam", "no", "other"))
	assert.NotEqual(t, "Beam: no", work.Wrong("Beam", "no", "Beam: no"), "the same text would not be spoken again")
}

func TestNotBuiltSaysWhatIsShown(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	_, at := w.NotBuilt()
	assert.False(t, at)
	w.Set("beam", 400*inch)
	said, at := w.NotBuilt()
	assert.True(t, at)
	assert.Equal(t, w.Faults[0].Key, said.Key)
	assert.Equal(t, w.Faults[0].Message(w.System), said.Message)
	assert.Contains(t, said.More, "the last one that could be")

	w = work.New(design.Default(), units.Imperial16)
	w.SetText("name", strings.Repeat("x", design.MaxName+1))
	said, _ = w.NotBuilt()
	assert.Equal(t, "name", said.Key)
	assert.Equal(t, " The boat shown has it cut short.", said.More)

	d := design.Default()
	d.Beam = -1
	w = work.Open(file.Boat{Design: d}, units.Imperial16)
	require.True(t, w.None)
	said, _ = w.NotBuilt()
	assert.Contains(t, said.More, "No boat is shown")
	assert.Empty(t, w.Checks())
	var n work.Numbers
	for _, s := range n.Update(w) {
		assert.Equal(t, "–", s.Text())
		assert.Empty(t, s.SI())
	}
}

func TestShownNumbers(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	var n work.Numbers
	for _, s := range n.Update(w) {
		assert.Empty(t, s.Change(), s.Key)
		assert.Equal(t, s.Absent, s.SI() == "", s.Key)
	}
	w.Set("beam", 34*inch)
	changed := 0
	for _, s := range n.Update(w) {
		if s.Change() != "" {
			changed++
		}
	}
	assert.Greater(t, changed, 5)
	assert.Nil(t, w.Water(), "nothing is worked out yet")
	w.Known().Need(pipeline.Water)
	assert.NotEmpty(t, w.Water())
}

func TestUnitsHaveNames(t *testing.T) {
	for _, s := range []units.System{units.Imperial16, units.Imperial8, units.Metric} {
		assert.Equal(t, s, work.UnitsOf(work.UnitsID(s)))
	}
	assert.Equal(t, units.Imperial16, work.UnitsOf("furlongs"))
}

func TestRowByKey(t *testing.T) {
	for _, c := range []struct {
		key    string
		at, to int
		ok     bool
	}{
		{"ArrowDown", 0, 1, true}, {"ArrowDown", 4, 4, true}, {"ArrowUp", 3, 2, true}, {"ArrowUp", 0, 0, true},
		{"Home", 3, 0, true}, {"End", 1, 4, true}, {"a", 2, 2, false},
	} {
		to, ok := work.RowByKey(c.key, c.at, 5)
		assert.Equal(t, c.ok, ok, c.key)
		assert.Equal(t, c.to, to, c.key)
	}
}
