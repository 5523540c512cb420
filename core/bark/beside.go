package bark

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Beside is a stretch in which a sheet on the bed is narrower than the boat, so that
// a panel is sewn on there on both sides.
type Beside struct {
	Sheet    int     // its number in the list
	Aft, Bow float64 // along the flat bark, m forward of amidships
	Width    float64 // of the strip that each side takes, with the lap and the bark to trim, m
	From, To float64 // stations of the seam's ends on the hull, m forward of amidships
	Seam     float64 // length of the seam on the hull, m
}

// seamSteps is in how many straight pieces a panel's seam is measured, and its end at
// the end profile looked for between two of them: eight times as many make it longer
// by under a millimetre along the side and by 4 at the ends.
const seamSteps = 48

// besides lists where the sheets on the bed are narrower than the boat, from the bow
// aft by sheet and forward in each.
func (c *Coverage) besides(h hull.Hull, d demand, whole float64) []Beside {
	lap := h.Design.SeamLap
	var out []Beside
	for _, s := range c.Bed {
		short := func(i int) float64 { return (d.full[i] - s.Width) / 2 }
		open := false
		for i, x := range d.along {
			if x < s.Aft || x > s.Bow || short(i) <= 0 {
				open = false
				continue
			}
			if !open {
				out = append(out, Beside{Sheet: s.Sheet, Aft: max(s.Aft, d.crossing(i, i-1, short))})
				open = true
			}
			b := &out[len(out)-1]
			b.Width = max(b.Width, short(i)+lap)
			b.Bow = min(s.Bow, d.crossing(i, i+1, short))
		}
	}
	bottom := bottomRun(h)
	for i := range out {
		out[i].sew(h, bottom, whole, c.widthOf(out[i].Sheet)/2)
	}
	return out
}

// crossing is where what is short from place i on comes to nothing before its
// neighbour, or the neighbour where it does not; the list's end past it.
func (d demand) crossing(i, neighbour int, short func(int) float64) float64 {
	if neighbour < 0 || neighbour >= len(d.along) {
		return d.along[i]
	}
	t := 1.0
	if next := short(neighbour); next < 0 {
		t = short(i) / (short(i) - next)
	}
	return d.along[i] + t*(d.along[neighbour]-d.along[i])
}

func (c *Coverage) widthOf(sheet int) float64 {
	for _, s := range c.Bed {
		if s.Sheet == sheet {
			return s.Width
		}
	}
	return 0
}

// sew measures the seam: on the hull the sheet's edge, half its width out along each
// column, as far as the end profile.
func (b *Beside) sew(h hull.Hull, bottom bottomLine, whole, half float64) {
	column := func(along float64) line { return newLine(h, placeAlong(bottom, math.Abs(along), whole)) }
	var last geom.Vec3
	sewn := false
	add := func(along float64) {
		l := column(along)
		at := l.at(l.girthAt(half))
		at.X = math.Copysign(at.X, along)
		if !sewn {
			b.From = at.X
		} else {
			b.Seam += at.Sub(last).Len()
		}
		b.To, last, sewn = at.X, at, true
	}
	past := func(along float64) float64 { return column(along).lifted - half }
	for i := 0; i <= seamSteps; i++ {
		along := b.Aft + (b.Bow-b.Aft)*float64(i)/seamSteps
		before := b.Aft + (b.Bow-b.Aft)*float64(i-1)/seamSteps
		out := past(along) > 0
		if i > 0 && out != (past(before) > 0) {
			if end, ok := geom.Bisect(past, before, along, placeTolerance); ok {
				add(end)
			}
		}
		if !out {
			add(along)
		}
	}
}
