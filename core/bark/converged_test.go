package bark

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Skin and panel seams are within 0.1 % of those on 16 times as many columns and, for
// the skin, 25 times as many rows; a panel a hand long within a sixteenth of an inch.
func TestSkinAndSeamsAreConverged(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		h := hull.New(d)
		fine := spacedColumns(h, 16*plainInside, 16*plainPast)
		assert.InEpsilon(t, meshArea(fine, 25*areaRows), skinArea(plainColumns(h)), 1e-3, d.Name)
		l := Plan(h)
		bottom := bottomRun(h)
		exact := newDemand(h, fine, bottom, l.FlatLength)
		all, allFew := 0.0, 0.0
		for i, b := range l.Beside {
			want := pathLength(exact.edge(l.Bed[b.Piece].Width/2).path(b.Aft, b.Bow))
			all, allFew = all+want, allFew+b.Seam
			assert.InDelta(t, want, b.Seam, max(1e-3*want, units.Inch/16), "%s panel %d", d.Name, i)
		}
		assert.InEpsilon(t, all, allFew, 1e-3, d.Name)
		assert.InDelta(t, sidesLacking(&exact, l.Bed), sidesLacking(newCoarse(h, l), l.Bed), 1e-3*l.FlatLength, d.Name)
	}
}

func newCoarse(h *hull.Hull, l Layout) *demand {
	d := newDemand(h, l.columns, bottomRun(h), l.FlatLength)
	return &d
}

// sidesLacking is how long the stretches are that side panels cover.
func sidesLacking(d *demand, bed []Laid) float64 {
	b := beside{d, bed}
	stretches, _ := b.stretches()
	sum := 0.0
	for _, s := range stretches {
		sum += s.bow - s.aft
	}
	return sum
}

// meshArea is the area of the skin's triangles.
func meshArea(all []column, rows int) float64 {
	sum := 0.0
	at := func(c, r int) geom.Vec3 { return all[c].At(all[c].girth * float64(r) / float64(rows)) }
	for c := 1; c < len(all); c++ {
		for r := 1; r <= rows; r++ {
			p, q := at(c-1, r-1), at(c, r)
			for k := range 2 {
				corner := at(c-k, r-1+k)
				sum += p.Sub(corner).Cross(q.Sub(corner)).Len() / 2
			}
		}
	}
	return 4 * sum
}

// The skin follows a slider without a jump: one step that moved the number of columns
// past the heel made it half a percent larger, and the next one was as before.
func TestSkinAreaDoesNotJump(t *testing.T) {
	for _, key := range []string{"heelLength", "overhang"} {
		p, _ := design.Lookup(key)
		setback, _ := design.Lookup("headSetback")
		d := setback.Set(design.Default(), 1*units.Inch)
		var areas []float64
		for v := 8 * units.Inch; v <= 20*units.Inch; v += p.StepInch {
			areas = append(areas, skinArea(plainColumns(hull.New(p.Set(d, v)))))
		}
		for i := 2; i < len(areas); i++ {
			assert.InDelta(t, 2*areas[i-1], areas[i]+areas[i-2], 1e-4*areas[i], "%s, step %d", key, i)
		}
	}
}
