package lines_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

func changesOf(all []lines.Changes, name string) (lines.Changes, bool) {
	for _, c := range all {
		if c.Name == name {
			return c, true
		}
	}
	return lines.Changes{}, false
}

// Gunwales' ends two inches higher want end posts two inches longer, and none of another post as much.
func TestChangedPosts(t *testing.T) {
	d := design.Default()
	before := core.Evaluate(d)
	after := core.Evaluate(check.With(t, "gunwaleEndHeight", d.GunwaleEndHeight+2*units.Inch))
	posts := list(t, before, "Posts to cut")
	of := func(log tally.Log, from stage.Key) (lines.Changes, bool) {
		return changesOf(lines.Changed(before, after, from, log, units.Imperial16), posts.Name)
	}
	c, ok := of(nil, stage.Choose)
	require.True(t, ok)
	assert.InDelta(t, 2*units.Inch, c.Most, 1e-9)
	assert.False(t, c.Others)
	assert.Contains(t, c.Text(units.Imperial16), `by up to 2"`)
	end := posts.Lines[len(posts.Lines)-1]
	require.NotEmpty(t, c.Each)
	last := c.Each[len(c.Each)-1]
	assert.True(t, strings.HasPrefix(last, end.What+": "+end.Figure+", then "), last)

	// What is made already no longer changes: one line, or the whole step.
	fewer, ok := of(tally.Log{}.Tick(posts.Step, end.Key, "2027-06-01", true), stage.Choose)
	require.True(t, ok)
	assert.Len(t, fewer.Each, len(c.Each)-1)
	_, ok = of(tally.Log{}.Tick(posts.Step, "", "2027-06-01", true), stage.Choose)
	assert.False(t, ok)
	// A boat beside itself changes nothing, and the last stage has nothing of posts.
	assert.Empty(t, lines.Changed(before, before, stage.Choose, nil, units.Metric))
	_, ok = of(nil, stage.Keep)
	assert.False(t, ok)
}

// Two ribs more are two lines that only the later boat has.
func TestChangedRibs(t *testing.T) {
	before, after := core.Evaluate(design.Default()), core.Evaluate(check.With(t, "ribs", 46.0))
	c, ok := changesOf(lines.Changed(before, after, stage.Rib, nil, units.Metric), "Ribs to fit")
	require.True(t, ok)
	assert.True(t, c.Others)
	news := 0
	for _, each := range c.Each {
		if strings.HasSuffix(each, ", new") {
			news++
		}
	}
	assert.Equal(t, 2, news)
}
