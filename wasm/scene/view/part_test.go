package view_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
)

// partsNamed are the parts of a name.
func partsNamed(l draw.List, name string) []draw.Part {
	var out []draw.Part
	for _, p := range l.Parts {
		if p.Name == name {
			out = append(out, p)
		}
	}
	return out
}

func middle(p draw.Part) draw.Point {
	var m draw.Point
	for _, q := range p.Points {
		m.X += q.X / float64(len(p.Points))
		m.Y += q.Y / float64(len(p.Points))
	}
	return m
}

// A mark has the same x in both views. The test looks at a group of lacing, whose middle
// is its station, and at a crosspiece, which is drawn in both.
func TestMarksLineUp(t *testing.T) {
	eachPicture(t, func(t *testing.T, c core.Canoe, v scene.View, _ draw.Size, l draw.List) {
		names := []string{"group.2", "group.5", "gore.1"}
		if v.State == scene.OnTheBed {
			names = []string{"crosspiece.1", "crosspiece.2"}
		}
		for _, name := range names {
			places := map[int]int{}
			for _, p := range partsNamed(l, name) {
				places[int(math.Round(middle(p).X))]++
			}
			assert.Len(t, places, 2, "%s stands fore and aft and nowhere else: %v", name, places)
		}
	})
}

func TestEveryPartIsReadAndFound(t *testing.T) {
	eachPicture(t, func(t *testing.T, c core.Canoe, _ scene.View, size draw.Size, l draw.List) {
		if size != sizes[0] {
			t.Skip("parts do not depend on the size")
		}
		names := map[string]bool{}
		for _, p := range l.Parts {
			names[p.Name] = true
		}
		for name := range names {
			assert.NotEmpty(t, view.Readout(c, name, units.Imperial16), name)
		}
		rib := fmt.Sprintf("rib.%d", c.Frame.Ribs[len(c.Frame.Ribs)/2].Number)
		if !names[rib] {
			return
		}
		for _, p := range partsNamed(l, rib) {
			name, ok := l.Hit(middle(p), 22)
			assert.True(t, ok)
			assert.Equal(t, rib, name)
		}
	})
	for _, name := range []string{"", "rib", "rib.999", "rib.-1", "rib.x", "post.99", "gore.99", "sail.1"} {
		assert.Empty(t, view.Readout(boats[0].Canoe, name, units.Metric), name)
	}
}

// The cut at a touched rib is drawn, and the same to both sides of its middle.
func TestSectionIsMirrored(t *testing.T) {
	for _, b := range boats {
		for _, r := range b.Frame.Ribs {
			name := fmt.Sprintf("rib.%d", r.Number)
			l := view.TopAndSide(b.Canoe, scene.View{State: scene.Finished, Zoom: 1, Touched: name},
				draw.Size{Width: 1000, Height: 900, Letter: 16})
			// The section is the one that shows the bend, in many points: from above and
			// from the side a rib is seen along its strip.
			var section []draw.Point
			for _, p := range partsNamed(l, name) {
				if len(p.Points) > len(section) {
					section = p.Points
				}
			}
			assert.Greater(t, len(section), 40, "%s %s", b.name, name)
			left, right := math.Inf(1), math.Inf(-1)
			for _, q := range section {
				left, right = min(left, q.X), max(right, q.X)
			}
			for _, q := range section {
				nearest := math.Inf(1)
				for _, o := range section {
					nearest = min(nearest, math.Hypot(left+right-q.X-o.X, q.Y-o.Y))
				}
				assert.Less(t, nearest, 1e-6, "%s %s", b.name, name)
			}
		}
	}
}

// Whatever a drawing shows of a boat reads out when it is touched. What another part hides does not.
func TestEveryPartReadsOut(t *testing.T) {
	for _, d := range []struct {
		state scene.State
		only  scene.Only
		up    float64
		parts string
		none  string
	}{
		{scene.OnTheBed, scene.TopOnly, 0, "bark bed crosspiece frame gore joint seam stake", ""},
		{scene.OnTheBed, scene.SideOnly, 0, "bark bed block crosspiece frame inwale post stake", ""},
		{scene.OnTheBed, scene.SectionsOnly, 0, "bark bed frame inwale post stake", ""},
		{scene.Finished, scene.TopOnly, 0, "cap group headboard inwale outwale rib sheathing stem thwart", ""},
		{scene.Finished, scene.SideOnly, 0, "bark cap gore group headboard joint outwale seam stem water", ""},
		{scene.Finished, scene.SectionsOnly, 0, "bark cap inwale outwale rib sheathing", ""},
		{scene.Finished, scene.BodyPlan, 0, "rib water", ""},
		{scene.Finished, scene.Details, 0, "bark cap headboard inwale outwale rib sheathing stem", ""},
		{scene.SidesUp, scene.TopOnly, 0.3, "bark bed crosspiece frame gore", ""},
		{scene.SidesUp, scene.SideOnly, 0.7, "bark bed gore group joint outwale seam", "frame post thwart rib sheathing"},
		{scene.SidesUp, scene.RoundOnly, 0.7, "bark bed frame gore group inwale joint outwale post seam thwart", "rib cap"},
		{scene.SidesUp, scene.SideOnly, 1, "bark gore group joint outwale seam", "rib thwart headboard sheathing bed"},
		{scene.InTheRound, scene.Both, 0, "bark cap gore group headboard inwale joint outwale rib seam sheathing stem thwart", ""},
	} {
		c, v := skinned(boats[0].Canoe, bark.ForPicture, scene.View{State: d.state, Only: d.only, Up: d.up})
		v.Load = scene.LoadOf(c)
		found := map[string]bool{}
		for _, p := range view.Draw(c, v, large).Parts {
			kind, _, _ := strings.Cut(p.Name, ".")
			found[kind] = true
			assert.NotEmpty(t, view.Readout(c, p.Name, units.Imperial16), p.Name)
		}
		for _, kind := range strings.Fields(d.parts) {
			assert.True(t, found[kind], "%s %s %v: %s", d.state, v.OnlyName(), d.up, kind)
		}
		for _, kind := range strings.Fields(d.none) {
			assert.False(t, found[kind], "%s %s %v: %s is hidden", d.state, v.OnlyName(), d.up, kind)
		}
	}
}

// In the round the bark's outside reads out where it is touched, and not what it hides; seams on it do.
func TestOutsideIsTouched(t *testing.T) {
	inside := []string{"frame", "crosspiece", "post", "rib", "headboard", "sheathing"}
	for _, v := range []scene.View{{State: scene.InTheRound}, {State: scene.SidesUp, Only: scene.RoundOnly, Up: 0.4},
		{State: scene.SidesUp, Only: scene.RoundOnly, Up: 0.7}, {State: scene.SidesUp, Only: scene.SideOnly, Up: 0.4}} {
		c, v := skinned(boats[0].Canoe, bark.ForPicture, v)
		l := view.Draw(c, v, large)
		tried := map[string]int{}
		for _, p := range l.Parts {
			kind, _, _ := strings.Cut(p.Name, ".")
			n := len(p.Points)
			switch {
			case p.Hides:
				// Half-way between the lower edge of what is seen and the upper one.
				for i := 2; i < n/2-2; i++ {
					a, b := p.Points[i], p.Points[n-1-i]
					at := draw.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
					name, _ := l.Hit(at, 6)
					kind, _, _ := strings.Cut(name, ".")
					if draw.Encloses(p.Points, at) {
						assert.NotContains(t, inside, kind, "%s, raised by %v: %v", v.State, v.Up, at)
						tried["bark"]++
					}
				}
			case kind == "gore" || kind == "joint":
				name, _ := l.Hit(p.Points[n/2], 6)
				assert.Equal(t, p.Name, name, "%s, raised by %v", v.State, v.Up)
				tried["line"]++
			}
		}
		assert.Greater(t, tried["bark"], 10, "%s, raised by %v", v.State, v.Up)
		assert.Positive(t, tried["line"], "%s, raised by %v", v.State, v.Up)
	}
}

// A touched part is hatched and rimmed, fore and aft, not only coloured.
func TestTouchedPartStandsOut(t *testing.T) {
	v := scene.View{State: scene.Finished, Zoom: 1, Touched: "rib.7"}
	hatches, rims := 0, 0
	for _, op := range view.TopAndSide(boats[0].Canoe, v, sizes[0]).Ops {
		switch op := op.(type) {
		case draw.Hatch:
			if op.Role == draw.Mark {
				hatches++
			}
		case draw.Stroke:
			if op.Role == draw.Mark && op.Closed && op.Width >= 3 {
				rims++
			}
		}
	}
	assert.Equal(t, 5, hatches, "fore and aft in both views, and in the section")
	assert.Equal(t, 5, rims)
}
