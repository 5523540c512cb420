package pattern_test

import (
	"cmp"
	"math"
	"slices"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/model"
	"barkwright/core/pattern"
)

// jointsMeet looks that the bark is as broad on both sides of a joint, and the strip behind it as long.
func jointsMeet(t *testing.T, all []pattern.Pattern) {
	pieces := named(all, "kit-bark")
	ends := make([][]float64, len(pieces)-1)
	for i, p := range pieces {
		var joints []pattern.Line
		for _, l := range p.Lines {
			// A joint is a straight cut from edge to edge; slits go from an edge inward.
			if l.Style == pattern.Cut && len(l.Points) == 2 && across(p, l) {
				joints = append(joints, l)
			}
		}
		slices.SortFunc(joints, func(a, b pattern.Line) int {
			return cmp.Compare(a.Points[0].Dot(forward(p)), b.Points[0].Dot(forward(p)))
		})
		require.True(t, len(joints) > 0 || len(pieces) == 1, p.Name)
		if i > 0 {
			ends[i-1] = append(ends[i-1], runOf(joints[:1]))
		}
		if i < len(ends) {
			ends[i] = append(ends[i], runOf(joints[len(joints)-1:]))
		}
	}
	var strips []float64
	for _, p := range named(all, "kit-joints") {
		for _, l := range p.Lines {
			if l.Style == pattern.Cut {
				strips = append(strips, extent(l.Points).Y)
			}
		}
	}
	require.Len(t, strips, len(ends))
	for i, strip := range strips {
		assert.InDelta(t, ends[i][0], ends[i][1], 1e-9, "joint %d", i+1)
		assert.InDelta(t, ends[i][0], strip, 1e-9, "joint %d", i+1)
	}
}

// label is where a piece is lettered so.
func label(p pattern.Pattern, text string) (geom.Vec2, bool) {
	for _, l := range p.Labels {
		if l.Text == text {
			return l.At, true
		}
	}
	return geom.Vec2{}, false
}

// forward is the way to the bow on a piece.
func forward(p pattern.Pattern) geom.Vec2 {
	bow, _ := label(p, "to the bow")
	stern, _ := label(p, "to the stern")
	d := bow.Sub(stern)
	if math.Abs(d.X) > math.Abs(d.Y) {
		return geom.Vec2{X: math.Copysign(1, d.X)}
	}
	return geom.Vec2{Y: math.Copysign(1, d.Y)}
}

// across tells whether a line goes over most of a piece's breadth, square to its length.
func across(p pattern.Pattern, l pattern.Line) bool {
	d, f := l.Points[1].Sub(l.Points[0]), forward(p)
	return math.Abs(d.Dot(f)) < 1e-6 && math.Abs(d.Cross(f)) > 0.4*math.Abs(p.Size.Cross(f))
}

// piecesAreTold looks that every piece says where the bow is, and port on the left of who looks to the
// bow at its inside, and that every slit that is to be read has its number.
func piecesAreTold(t *testing.T, b model.Boat, all []pattern.Pattern) {
	numbers := map[string]int{}
	for _, p := range named(all, "kit-bark") {
		for _, text := range []string{"to the bow", "to the stern", "port", "starboard"} {
			_, ok := label(p, text)
			assert.True(t, ok, "%s says %s", p.Name, text)
		}
		port, _ := label(p, "port")
		starboard, _ := label(p, "starboard")
		f := forward(p)
		// Down the paper is positive: the left of a way is a quarter turn against the clock as seen.
		assert.Positive(t, port.Sub(starboard).Dot(geom.Vec2{X: f.Y, Y: -f.X}), p.Name)
		for _, l := range p.Labels {
			numbers[l.Text]++
		}
	}
	for i, g := range b.Skin.Flat.Gores {
		if number := i - len(b.Skin.Flat.Gores)/2; number >= 0 && g.State == bark.GoreCut {
			want := 4
			if number == 0 {
				want = 2
			}
			assert.Equal(t, want, numbers[strconv.Itoa(number)], "slit %d", number)
		}
	}
}
