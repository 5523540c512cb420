package raise_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
)

// One press after another shows each moment once, in the order of the work, and back again: nine
// still pictures, eight where no panels are sewn on.
func TestStillsShowEveryMoment(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), with(t, "sheetWidth", 80*units.Inch)) {
		c := core.Evaluate(d)
		moments := raise.Moments(c)
		want := 8
		if len(c.Bark.Beside) > 0 {
			want = 9
		}
		require.Len(t, moments, want, d.Name)
		up := 0.0
		stills := []float64{up}
		for i, m := range moments {
			assert.Equal(t, m.Words, raise.Words(c, up), "%s, picture %d", d.Name, i)
			if i < len(moments)-1 {
				next := raise.Next(c, up, 1)
				assert.Greater(t, next, up)
				up = next
				stills = append(stills, up)
			}
		}
		assert.InDelta(t, 1, up, 0)
		for i := len(stills) - 2; i >= 0; i-- {
			up = raise.Next(c, up, -1)
			assert.InDelta(t, stills[i], up, 1e-12, "%s, back to picture %d", d.Name, i)
		}
		assert.InDelta(t, 0, raise.Next(c, 0, -1), 0)
		assert.InDelta(t, 0, raise.Next(c, 1, 1), 0, "from the end it begins anew")
	}
}

// The words of the moment stand in the picture, and each picture differs from the one before.
func TestMomentsAreSeen(t *testing.T) {
	c := core.Evaluate(design.Default())
	f := core.LayFlat(c, bark.Resolution{Columns: 16, Rows: 5}, nil, nil)
	shown := func(up float64) draw.List {
		return raise.Draw(c, scene.View{State: scene.SidesUp, Zoom: 1, Up: up, Flat: &f}, draw.Size{Width: 1000, Height: 560, Letter: 16})
	}
	var last draw.List
	up := 0.0
	for range raise.Moments(c) {
		l := shown(up)
		said := map[string]bool{}
		for _, op := range l.Ops {
			if text, ok := op.(draw.Text); ok {
				said[text.Text] = true
			}
		}
		assert.True(t, said[raise.Words(c, up)], "%q at %v", raise.Words(c, up), up)
		assert.NotEqual(t, last.Ops, l.Ops)
		last, up = l, raise.Next(c, up, 1)
	}
}

// At the end of the raising stands the finished canoe: every rib can be touched, and none before
// the ribs go in, which they do from the ends to the middle.
func TestRibsGoInFromTheEnds(t *testing.T) {
	c := core.Evaluate(design.Default())
	ribs := func(up float64) map[string]bool {
		found := map[string]bool{}
		l := raise.Draw(c, scene.View{State: scene.SidesUp, Zoom: 1, Up: up, Flat: &bark.Flat{State: 0}},
			draw.Size{Width: 1000, Height: 560, Letter: 16})
		for _, p := range l.Parts {
			if len(p.Name) > 4 && p.Name[:4] == "rib." {
				found[p.Name] = true
			}
		}
		return found
	}
	assert.Empty(t, ribs(0.8))
	half := ribs(0.9)
	assert.True(t, half["rib.22"], "the outermost is in")
	assert.False(t, half["rib.1"], "the middle one is not")
	assert.Len(t, ribs(1), len(c.Frame.Ribs))
}
