package refit

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
)

// drawn is a random boat that can be built; invented.
func drawn(r *rand.Rand) design.Design {
	for {
		d := design.Default()
		for _, p := range []struct {
			key    string
			lo, hi float64
		}{
			{"length", 140 * inch, 260 * inch}, {"overhang", 4 * inch, 12 * inch}, {"beam", 26 * inch, 40 * inch},
			{"beamFull", 1.4, 3}, {"beamFine", 0.95, 1.9}, {"depth", 10 * inch, 18 * inch}, {"sheerSweep", 2, 7},
			{"rocker", 0, 3 * inch}, {"rockerSpread", 2.5, 6}, {"heelLength", 14 * inch, 26 * inch}, {"endFull", 0.4, 0.8},
		} {
			d = parameter(p.key).Set(d, p.lo+(p.hi-p.lo)*r.Float64())
		}
		d = parameter("gunwaleEndHeight").Set(d, d.Depth+(4+6*r.Float64())*inch)
		d = parameter("endHeight").Set(d, d.GunwaleEndHeight+(4+3*r.Float64())*inch)
		if len(design.Validate(d)) > 0 {
			continue
		}
		if h := hull.New(d); len(h.Faults()) == 0 {
			return d
		}
	}
}

// places is at how many stations each curve of a known boat is measured. With as few
// as parameters the errors of a curve can add up past those of its figures.
const places = 12

// measured is a thorough record of a boat, each figure off by anything inside its
// tolerance.
func measured(d design.Design, r *rand.Rand) record.Record {
	h := hull.New(d)
	var rec record.Record
	off := func(k record.Kind) float64 { return k.UsualTolerance() * (2*r.Float64() - 1) }
	add := func(k record.Kind, x, v float64) {
		rec.Data = append(rec.Data, record.Datum{Kind: k, At: record.Place{Distance: x}, Value: v})
	}
	add(record.LengthOverall, 0, d.Length)
	add(record.LengthOverGunwales, 0, 2*d.HalfGunwale())
	add(record.BeamInside, 0, d.Beam)
	add(record.DepthInwale, 0, d.Depth)
	add(record.EndHeight, 0, d.EndHeight)
	for i := 1; i <= places; i++ {
		x := h.GunwaleX * float64(i) / (places + 0.3)
		if width := 2 * h.HalfBeam(x); width > record.ClearWidth.UsualTolerance() {
			add(record.ClearWidth, x, width+off(record.ClearWidth))
		}
		add(record.SheerHeight, x, h.Sheer(x)+off(record.SheerHeight))
		x = h.HeelX * float64(i) / places
		add(record.BottomRise, x, h.Bottom(x)+off(record.BottomRise))
		p := h.End.At(float64(i) / (places + 1))
		add(record.EndPoint, p.X, p.Y+off(record.EndPoint))
	}
	return rec
}

// The fit follows the boat the figures were taken of as closely as the figures do.
func TestRecordOfAKnownBoatGivesItBack(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 1))
	width, sheer, bottom, profile := pooled{}, pooled{}, pooled{}, pooled{}
	for range 20 {
		d := drawn(r)
		f := Fit(measured(d, r))
		assert.Empty(t, f.Conflicts)
		want, got := hull.New(d), hull.New(f.Design)
		for i := range 51 {
			x := want.GunwaleX * float64(i) / 50 * places / (places + 0.3)
			width.add((2*got.HalfBeam(x) - 2*want.HalfBeam(x)) / inch)
			sheer.add((got.Sheer(x) - want.Sheer(x)) / inch)
			x = min(got.HeelX, want.HeelX) * float64(i) / 50
			bottom.add((got.Bottom(x) - want.Bottom(x)) / inch)
			if p := want.End.At(float64(i) / 50 * places / (places + 1)); p.X > got.HeelX {
				profile.add(offProfile(got, geom.Vec2{X: p.X, Y: p.Y}) / inch)
			}
		}
	}
	for name, p := range map[string]pooled{"width": width, "sheer": sheer, "bottom": bottom, "end": profile} {
		t.Logf("%-8s rms %.3f in, worst %.3f", name, p.rms(), p.worst)
		assert.Less(t, p.worst, record.ClearWidth.UsualTolerance()/inch, name)
	}
}

func BenchmarkFitWithEndProfile(b *testing.B) {
	r := rand.New(rand.NewPCG(6, 2))
	rec := measured(drawn(r), r)
	b.ReportAllocs()
	for b.Loop() {
		Fit(rec)
	}
}
