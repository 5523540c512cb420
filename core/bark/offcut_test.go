package bark

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// A sheet ten inches wider than the boat under it leaves five along either side, and one
// two feet longer than its place two feet off its end; a sheet that does not lie on the
// bed is left whole.
func TestWhatABedLeaves(t *testing.T) {
	h := hull.New(design.Default())
	all := plainColumns(h)
	d := newDemand(h, all, bottomRun(h), 5)
	wide := d.most(d.full, -1, 1)
	l := &laying{d: &d, bed: []Laid{{Sheet: 1, Aft: -1, Bow: 1}},
		sheets: []Sheet{{Width: 0.3, Length: 1.5}, {Width: wide + 10*units.Inch, Length: 2 + 2*units.Foot}}}
	sides, ends, whole := 0, 0, 0
	for _, o := range l.left() {
		switch {
		case o.Sheet == 0:
			whole++
			assert.Equal(t, l.sheets[0], Sheet{Width: o.Width, Length: o.Length})
		case o.from == FromSide:
			sides++
			assert.InDelta(t, 5*units.Inch, o.Width, 1e-9)
			assert.InDelta(t, 2, o.Length, 1e-9)
		case o.from == FromEnd:
			ends++
			assert.InDelta(t, 2*units.Foot, o.Length, 1e-9)
			assert.InDelta(t, wide+10*units.Inch, o.Width, 1e-9)
		}
	}
	require.Equal(t, [3]int{2, 1, 1}, [3]int{sides, ends, whole})
}

// Whatever sheets there are, what is cut from each and what is left of it lie side by side in
// it, and together are all of it: areas add up.
func TestEverySheetIsAccountedFor(t *testing.T) {
	h := hull.New(design.Default())
	inches := func(all ...float64) (out []Sheet) {
		for i := 0; i < len(all); i += 2 {
			out = append(out, Sheet{Width: all[i] * units.Inch, Length: all[i+1] * units.Inch})
		}
		return out
	}
	for _, list := range [][]Sheet{nil, inches(57, 210), inches(40, 108, 40, 108), inches(48, 120, 40, 100, 20, 60, 12, 90),
		inches(17, 108), inches(60, 90, 30, 150, 44, 130), inches(50, 240, 10, 200)} {
		l := PlanWith(h, list)
		spare := 0.0
		for i, s := range l.Sheets {
			type box struct{ x, y, length, width float64 }
			var boxes []box
			for _, p := range l.Bed {
				if p.Sheet != i {
					continue
				}
				d := newDemand(h, l.columns, bottomRun(h), l.FlatLength)
				spare = max(0, (s.Width-d.most(d.full, p.Aft, p.Bow))/2)
				if spare <= samePlace {
					spare = 0
				}
				boxes = append(boxes, box{p.Cut.Along, p.Cut.Across + spare, p.Length(), p.Width - 2*spare})
			}
			for _, p := range append(append([]Laid{}, l.Port...), l.Star...) {
				if p.Sheet == i {
					boxes = append(boxes, box{p.Cut.Along, p.Cut.Across, p.Length(), p.Width})
				}
			}
			for _, o := range l.Over {
				if o.Sheet == i {
					boxes = append(boxes, box{o.At.Along, o.At.Across, o.Length, o.Width})
				}
			}
			area := 0.0
			for k, a := range boxes {
				area += a.length * a.width
				require.True(t, a.x > -1e-9 && a.y > -1e-9 && a.x+a.length < s.Length+1e-6 && a.y+a.width < s.Width+1e-6,
					"%v sheet %d: %v leaves it", list, i, a)
				for _, b := range boxes[:k] {
					apart := a.x+a.length <= b.x+1e-6 || b.x+b.length <= a.x+1e-6 || a.y+a.width <= b.y+1e-6 ||
						b.y+b.width <= a.y+1e-6
					require.True(t, apart, "%v sheet %d: %v lies over %v", list, i, a, b)
				}
			}
			// Strips under samePlace broad are not kept.
			require.InDelta(t, s.Length*s.Width, area, 1e-5, "%v sheet %d", list, i)
		}
	}
}
