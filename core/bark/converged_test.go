package bark

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

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
		fine := spacedLines(h, 16*plainInside, 16*plainPast)
		assert.InEpsilon(t, meshArea(fine, 25*areaRows), skinArea(lines(h)), 1e-3, d.Name)
		seams, few := panels(h, fine), panels(h, lines(h))
		require.Len(t, few, len(seams), d.Name)
		all, allFew := 0.0, 0.0
		for i, p := range seams {
			all, allFew = all+p.Length, allFew+few[i].Length
			assert.InDelta(t, p.Length, few[i].Length, max(1e-3*p.Length, units.Inch/16), "%s panel %d", d.Name, i)
		}
		assert.InEpsilon(t, all, allFew, 1e-3, d.Name)
	}
}

// meshArea is the area of the skin's triangles.
func meshArea(all []line, rows int) float64 {
	sum := 0.0
	at := func(c, r int) geom.Vec3 { return all[c].at(all[c].girth * float64(r) / float64(rows)) }
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
			areas = append(areas, skinArea(lines(hull.New(p.Set(d, v)))))
		}
		for i := 2; i < len(areas); i++ {
			assert.InDelta(t, 2*areas[i-1], areas[i]+areas[i-2], 1e-4*areas[i], "%s, step %d", key, i)
		}
	}
}
