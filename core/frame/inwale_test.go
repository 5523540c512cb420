package frame_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/internal/check"
)

// The building example's thwarts are as much longer from end to end as the inwale is thick twice, at
// all five: it is not tapered there. Near its ends it is 3/4 by 1 to 1 1/4 in (Adney and Chapelle
// 1964, pp. 38-40).
func TestPublishedInwale(t *testing.T) {
	p := published(t)
	h := example(t, 7.5, 17)
	f := frame.Build(h)
	for i, thwart := range f.Thwarts {
		n := string(rune('0' + i))
		thick, deep := frame.InwaleAt(h, thwart.Run)
		both := p["thwart endToEnd"+n].low - p["thwart shoulder"+n].low
		assert.InDelta(t, both, 2*thick/inch, 0.25, "thwart %d: two lengths, each printed to 1/4 in", i)
		assert.InDelta(t, 1.5, deep/inch, rounding)
	}
	thick, deep := frame.InwaleAt(h, f.Gunwales.Run-3*inch)
	assert.InDelta(t, 0.75, thick/inch, rounding)
	assert.GreaterOrEqual(t, deep/inch, 1.0)
	assert.LessOrEqual(t, deep/inch, 1.25)
}

// An inwale's volume is the sum of its sections as far as the half arrowhead, and half of the rest.
// Its ends lie beyond the end thwart even where that is set as far out as it may be.
func TestInwalesVolume(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), check.With(t, "length", 96*inch, "overhang", 5*inch,
		"beam", 24*inch, "thwarts", 3.0, "thwart1", 0.97)) {
		h, f := build(d)
		const pieces = 20000
		end := max(f.Gunwales.Run-3*inch, f.Thwarts[len(f.Thwarts)-1].Run)
		sum := 0.0
		for i := range pieces {
			thick, deep := frame.InwaleAt(h, end*(float64(i)+0.5)/pieces)
			sum += thick * deep * end / pieces
		}
		sum += d.InwaleThickness / 2 * d.InwaleDepth * 3 / 4 * (f.Gunwales.Run - end) / 2
		assert.InEpsilon(t, 2*sum, frame.InwaleVolume(h), 1e-6, d.Name)
		// Half as wide at its ends.
		assert.InEpsilon(t, f.Gunwales.Cap*d.CapThickness*d.CapWidth*3/4, f.Gunwales.CapVolume(h), 1e-12)
	}
}

// The posts at the gunwale's ends, the headboards and the thwarts meet one inwale: its underside.
func TestUnderTheInwale(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		h, f := build(d)
		assert.InDelta(t, d.Depth-d.InwaleDepth, frame.UnderInwale(h, 0), rounding)
		assert.InDelta(t, d.GunwaleEndHeight-0.75*d.InwaleDepth, frame.UnderInwale(h, h.GunwaleX), rounding)
		post := f.Bed.Posts[len(f.Bed.Posts)-1]
		onBed := frame.BedHeight(h, h.GunwaleX) - frame.BedHeight(h, h.HeelX) + h.Bottom(h.HeelX) + d.BarkThickness
		assert.InDelta(t, frame.UnderInwale(h, h.GunwaleX), onBed+post.Length, rounding)
		b := f.Headboard
		assert.InDelta(t, frame.UnderInwale(h, b.X), b.Stands.Y+b.Height-b.Tenon, byKnots, "its shoulder")
	}
}
