package hull_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// skin returns the grid of the quarter skin on columns at the places, with rows rows from the bottom to the top edge.
func skin(h *hull.Hull, places []float64, rows int) geom.Grid {
	g := geom.Grid{Cols: len(places), Rows: rows, At: make([]geom.Vec3, 0, len(places)*rows)}
	for _, v := range places {
		g.At = append(g.At, h.Column(v).Points(rows-1)...)
	}
	return g
}

// The grid of the quarter skin stands on the centre line, reaches the top edge,
// never crosses the middle, leaves no gap between columns and faces outward
// everywhere.
func TestSkinGrid(t *testing.T) {
	for _, h := range append(buildable(30, 13), hull.New(design.Default())) {
		places := columns(h, 96)
		require.Len(t, places, 97)
		require.Equal(t, 0.0, places[0])
		require.Equal(t, 2.0, places[96])
		g := skin(h, places, 21)
		past := 0
		for _, v := range places {
			if v > 1 {
				past++
			}
		}
		// The foot's pace is at most twice the even one.
		longest := max(2*h.End.Path.Length()/float64(past), 1.5*h.HeelX/float64(96-past)) + 0.002
		for c, v := range places {
			foot, top := g.At[c*21], g.At[c*21+20]
			require.Equal(t, 0.0, foot.Y)
			require.InDelta(t, 0, geom.Vec2{X: foot.X, Y: foot.Z}.Sub(h.Foot(v)).Len(), 1e-12)
			require.InDelta(t, h.SkinHalfBreadth(top.X), top.Y, 1e-9)
			require.InDelta(t, h.TopEdge(top.X), top.Z, 1e-9)
			require.InDelta(t, 0, (v-h.ColumnAtEdge(top.X))*h.Edge.Length(), 1e-3,
				"the edge's table is read both ways to a millimetre")
			for r := range 21 {
				p := g.At[c*21+r]
				require.GreaterOrEqual(t, p.Y, 0.0)
				require.False(t, math.IsNaN(p.X+p.Y+p.Z))
				if c > 0 {
					require.Less(t, p.Sub(g.At[(c-1)*21+r]).Len(), longest, "columns %d and %d at row %d", c-1, c, r)
				}
			}
		}
		require.InDelta(t, 0, g.At[96*21].Sub(geom.Vec3{X: h.HeadX, Z: h.Design.EndHeight}).Len(), 1e-9)
		for c := range 95 {
			for r := range 20 {
				a, b, up := g.At[c*21+r], g.At[(c+1)*21+r], g.At[c*21+r+1]
				across := up.Sub(a).Cross(b.Sub(a))
				// Beyond the gunwale's end the skin is two sides on a thin stem, and a
				// steep edge there was seen to lean cells by up to seven degrees.
				lean := 0.0
				if b.X > h.GunwaleX-0.1 {
					lean = 0.2
				}
				require.GreaterOrEqual(t, across.Y, -lean*up.Sub(a).Len()*b.Sub(a).Len()-1e-12, "cell %d, %d", c, r)
			}
		}
	}
}

// The two ways of making the column at the heel are one.
func TestColumnsJoinAtTheHeel(t *testing.T) {
	for _, h := range buildable(20, 14) {
		a, b := h.Column(1).Points(20), h.Column(1+1e-9).Points(20)
		for i := range a {
			require.InDelta(t, 0, a[i].Sub(b[i]).Len(), 1e-7)
		}
	}
}

// outlineArea is the half section's area, closed along the centre line and the
// level of its top, by the shoelace formula.
func outlineArea(s hull.Station) float64 {
	top := s.Outline[len(s.Outline)-1]
	closed := append([]geom.Vec2{}, s.Outline...)
	return check.Area(append(closed, geom.Vec2{X: 0, Y: top.Y}))
}

func largestStep(stations []hull.Station) float64 {
	most := 0.0
	for i := 1; i < len(stations); i++ {
		most = max(most, math.Abs(outlineArea(stations[i])-outlineArea(stations[i-1])))
	}
	return most
}

func volume(stations []hull.Station) float64 {
	sum := 0.0
	for i := 1; i < len(stations); i++ {
		a, b := stations[i-1], stations[i]
		sum += (b.X - a.X) * (outlineArea(a) + outlineArea(b))
	}
	return sum
}

// Stations run from end to end, the same fore and aft; their outlines stay inside
// the profile and the greatest breadth, their areas change without a step, and the
// volume by trapezoids is that of four times as many within 4 in 1000.
func TestStations(t *testing.T) {
	for _, h := range append(buildable(15, 15), hull.New(design.Default())) {
		d := &h.Design
		all := h.Stations(120, 40)
		n := len(all)
		require.InDelta(t, -d.Length/2, all[0].X, 1e-12)
		require.InDelta(t, d.Length/2, all[n-1].X, 1e-12)
		require.InDelta(t, 0, all[n/2].X, 1e-12)
		breadth := d.OutsideBreadth()/2 + h.Bulge()
		// A jump of area would be as large among more stations.
		require.Less(t, largestStep(h.Stations(480, 40)), 0.5*largestStep(all))
		for i, s := range all {
			require.Equal(t, all[n-1-i].Outline, s.Outline)
			require.InDelta(t, -all[n-1-i].X, s.X, 1e-12)
			if i > 0 {
				require.Greater(t, s.X, all[i-1].X)
			}
			require.NotEmpty(t, s.Outline)
			low := lowest(h, math.Abs(s.X))
			for _, p := range s.Outline {
				require.GreaterOrEqual(t, p.X, 0.0)
				require.LessOrEqual(t, p.X, breadth+1e-6)
				require.LessOrEqual(t, p.Y, d.EndHeight+1e-9)
				// The cut runs straight from column to column and so a little under a
				// hollow; the extremes are one column's foot, good to a column.
				if i > 0 && i < n-1 {
					require.GreaterOrEqual(t, p.Y, low-4e-3)
				}
			}
		}
		assert.InEpsilon(t, volume(h.Stations(480, 40)), volume(all), 4e-3)
	}
}

// lowest is the height of the profile's lower branch at x.
func lowest(h *hull.Hull, x float64) float64 {
	if x <= h.HeelX {
		return h.Bottom(x)
	}
	for i := 1; i <= 4000; i++ {
		if p := h.End.At(float64(i) / 4000); p.X >= x {
			return h.End.At(float64(i-1) / 4000).Y
		}
	}
	return h.End.At(0).Y
}

// Whatever passes the checks gives finite numbers everywhere.
func FuzzBuildable(f *testing.F) {
	for seed := range uint64(3) {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, seed uint64) {
		for _, h := range buildable(3, seed) {
			finite := func(v ...float64) {
				for _, x := range v {
					require.False(t, math.IsNaN(x) || math.IsInf(x, 0), "%v", h.Design)
				}
			}
			finite(h.Gunwale.Length(), h.Edge.Length(), h.End.Path.Length(), h.End.TightestAt, h.Foremost(), h.TurnWidth())
			for i := 0; i <= 50; i++ {
				v := float64(i) / 25
				s := h.Column(v).Section
				radius, at := s.TightestRadius()
				require.Positive(t, radius)
				finite(s.HalfGirth(), s.Turning(), s.Breadth(), at)
				x := h.GunwaleX * float64(i) / 50
				finite(h.HalfBeam(x), h.Sheer(x), h.RunTo(x), h.StationAt(h.RunTo(x)), h.FrameHalfBreadth(x), h.Turn(x))
			}
			for _, s := range h.Stations(60, 20) {
				finite(s.X)
				for _, p := range s.Outline {
					finite(p.X, p.Y)
				}
			}
		}
	})
}
