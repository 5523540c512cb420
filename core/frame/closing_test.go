package frame_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// The trim line is the end's curve from the heel to the stem head, its length against a
// fine sum of the curve's own points.
func TestTrimLineIsTheEndsCurve(t *testing.T) {
	h, f := build(design.Default())
	c := f.Closing
	sum, last := 0.0, h.End.At(0)
	for i := 1; i <= 20000; i++ {
		q := h.End.At(float64(i) / 20000)
		sum += q.Sub(last).Len()
		last = q
	}
	assert.InDelta(t, sum, c.Trim.Length(), 5e-6, "it is in straight pieces, which fall 3e-6 short")
	points := c.Trim.Points
	assert.Equal(t, geom.Vec2{X: h.HeelX, Y: h.Design.Rocker}, points[0])
	assert.InDelta(t, h.HeadX, points[len(points)-1].X, rounding)
	assert.InDelta(t, h.Design.EndHeight, points[len(points)-1].Y, rounding)
}

// Stitches no farther apart than is set, half a spacing from either end of the seam, and
// as many in each group as stand between its ends, one by one.
func TestStitchesThroughTheStem(t *testing.T) {
	source := rand.New(rand.NewPCG(6, 6))
	for range 60 {
		h := sound(source)
		if frame.Faults(h) != nil {
			continue
		}
		f := frame.Build(h)
		c, d := f.Closing, h.Design
		n := c.Stitches()
		length := c.Trim.Length()
		require.LessOrEqual(t, c.Spacing, d.EndStitch+rounding)
		require.Greater(t, float64(n+1)*c.Spacing, length, "and not one more than that takes")
		require.InDelta(t, length-c.Spacing/2, c.Hole(n-1), rounding)
		last := 0.0
		for _, g := range c.Groups {
			require.GreaterOrEqual(t, g.From, last-rounding, "groups follow one another")
			last = g.To
			inside := 0
			for k := range n {
				if g.From <= c.Hole(k) && c.Hole(k) < g.To {
					inside++
				}
			}
			require.Equal(t, inside, g.Stitches)
		}
		require.LessOrEqual(t, c.ThroughStem(), n)
		for i, l := range c.Lashings {
			require.Greater(t, l.Along, d.StemDepth)
			require.Less(t, l.X, h.HeadX)
			if i > 0 {
				require.Less(t, l.X, c.Lashings[i-1].X)
			}
		}
	}
}

// The default's end by its own numbers: what is sewn below the stem-piece, through its
// solid heel of 4 in and through its laminations.
func TestStitchGroupsOfTheDefault(t *testing.T) {
	_, f := build(design.Default())
	c, s := f.Closing, f.Stem
	require.Len(t, c.Groups, 3)
	assert.Equal(t, []frame.Sewn{frame.BarkAlone, frame.SolidHeel, frame.Laminated},
		[]frame.Sewn{c.Groups[0].Through, c.Groups[1].Through, c.Groups[2].Through})
	assert.InDelta(t, c.Trim.Length()-s.Curve, c.Groups[0].To, rounding)
	assert.InDelta(t, 4*inch, c.Groups[1].To-c.Groups[1].From, rounding)
	assert.InDelta(t, 8, c.Groups[1].Stitches, 1, "4 in at half an inch, one more or fewer as they fall")
	// Holes that stand inboard of the piece go through bark alone.
	_, deep := build(check.With(t, "endBite", 2*inch, "stemDepth", 0.5*inch))
	assert.Zero(t, deep.Closing.ThroughStem())
	assert.Equal(t, c.Stitches(), deep.Closing.Stitches())
}

// Three lashings (Adney and Chapelle 1964, pp. 49-50): inboard of the stem-piece, at the
// middle of the flap and about 6 in farther in, along the bark's edge from the stem head.
func TestOutwaleLashings(t *testing.T) {
	// Twenty thousand chords and the program's table of the edge agree so nearly, m.
	const chords = 5e-9
	h, f := build(design.Default())
	d, l := h.Design, f.Closing.Lashings
	fromHead := func(x float64) float64 {
		sum, last := 0.0, edgeAt(h, h.HeadX)
		for i := 1; i <= 20000; i++ {
			q := edgeAt(h, h.HeadX+(x-h.HeadX)*float64(i)/20000)
			sum += q.Sub(last).Len()
			last = q
		}
		return sum
	}
	for _, one := range l {
		assert.InDelta(t, fromHead(one.X), one.Along, chords)
	}
	assert.InDelta(t, d.StemDepth+d.BarkThickness+0.5*inch, l[0].Along, rounding)
	assert.InDelta(t, fromHead(h.GunwaleX)/2, l[1].Along, chords)
	assert.InDelta(t, 6*inch, l[2].Along-l[1].Along, rounding)
}

func edgeAt(h *hull.Hull, x float64) geom.Vec3 {
	return geom.Vec3{X: x, Y: h.SkinHalfBreadth(x), Z: h.TopEdge(x)}
}
