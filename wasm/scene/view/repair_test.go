package view

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// mended is a repair of the boat's log.
func mended(c core.Canoe, d tally.Damage) []answer.Mended {
	return answer.Repairs(c, plan.NewSeason(), tally.Log{}.Repair("keep", "2027-06-14", d))
}

// A repair aft and to port is marked left of the middle in both views, above the centre line from
// above, and read out; one that is on the bed is not drawn.
func TestRepairsAreMarked(t *testing.T) {
	c := core.Evaluate(design.Default())
	v := scene.View{State: scene.Finished, Zoom: 1, Repairs: mended(c, tally.Damage{Kind: tally.Hole,
		At: -3 * units.Foot, Up: 10 * units.Inch, Along: 4 * units.Inch, Round: 4 * units.Inch})}
	size := draw.Size{Width: 1200, Height: 800}
	l := fit(c, v, size)
	find := func(v scene.View) (out []draw.Box) {
		for _, part := range Draw(c, v, size).Parts {
			if part.Name == scene.RepairPart(0) {
				out = append(out, draw.BoxOf(part.Points))
			}
		}
		return out
	}
	boxes := find(v)
	require.Len(t, boxes, 2)
	top, side := l.top.At(-3*units.Foot, 0), l.side.At(-3*units.Foot, 0)
	assert.Less(t, boxes[0].Right, l.top.At(0, 0).X)
	assert.Less(t, boxes[0].Bottom, top.Y, "port is up")
	// Seven inches of patch along the gunwale: four and a lap on each side.
	from, to := c.Hull.StationAt(3*units.Foot-3.5*units.Inch), c.Hull.StationAt(3*units.Foot+3.5*units.Inch)
	assert.InEpsilon(t, (to-from)*l.top.Scale, boxes[0].Width(), 1e-9)
	assert.Less(t, boxes[1].Left, side.X)
	assert.Greater(t, boxes[1].Right, side.X)
	assert.Contains(t, ReadRepair(v.Repairs, scene.RepairPart(0), tally.Dates{}, units.Imperial16), "hole of 4\" along the boat")
	assert.Empty(t, ReadRepair(v.Repairs, "rib.1", tally.Dates{}, units.Imperial16))
	v.State = scene.OnTheBed
	assert.Empty(t, find(v))
}

// A broken rib is drawn and read out where the boat has one: the nearest to the place entered.
func TestBrokenRibIsMarkedAtTheNearest(t *testing.T) {
	c := core.Evaluate(design.Default())
	ribs := c.Frame.Ribs
	rib, next := ribs[4], ribs[5]
	size := draw.Size{Width: 1200, Height: 800}
	for _, side := range []float64{1, -1} {
		at := side * (0.6*rib.Run + 0.4*next.Run)
		v := scene.View{State: scene.Finished, Zoom: 1, Repairs: mended(c, tally.Damage{Kind: tally.BrokenRib, At: at})}
		l := fit(c, v, size)
		station := side * c.Hull.StationAt(rib.Run)
		var boxes []draw.Box
		for _, part := range Draw(c, v, size).Parts {
			if part.Name == scene.RepairPart(0) {
				boxes = append(boxes, draw.BoxOf(part.Points))
			}
		}
		require.Len(t, boxes, 2)
		assert.InDelta(t, l.top.At(station, 0).X, (boxes[0].Left+boxes[0].Right)/2, 1e-9)
		text := ReadRepair(v.Repairs, scene.RepairPart(0), tally.Dates{}, units.Metric)
		where := map[float64]string{1: "forward", -1: "aft"}[side]
		assert.Contains(t, text, "broken rib: rib "+strconv.Itoa(rib.Number)+" "+where+", ")
		assert.Contains(t, text, units.Length.Format(rib.Run, units.Metric)+" "+where+" of the middle")
	}
}
