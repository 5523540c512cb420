package refit

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
)

// along returns what the boat measures at a placed datum that stands x from
// amidships. h has its end profile where the datum lies past the heel.
func along(h *hull.Hull, d record.Datum, x float64) float64 {
	switch d.Kind {
	case record.ClearWidth:
		return 2 * h.HalfBeam(x)
	case record.SheerHeight:
		return h.Sheer(min(x, h.GunwaleX))
	case record.RailHeight:
		return h.Sheer(min(x, h.GunwaleX)) + h.Design.CapThickness
	case record.BottomRise:
		return h.Floor(x)
	case record.HalfGirth:
		return h.HalfGirthInside(min(x, h.HeelX))
	case record.HalfBreadth:
		s := h.Section(min(x, h.HeelX))
		return s.HalfBreadthAt(d.At.Height)
	}
	return d.Value + offProfile(h, geom.Vec2{X: x, Y: d.Value})
}

// profileSamples is the number of chords that stand for the end's curve. Of a curve a
// yard long and a foot in radius they stand off by 0.2 mm at most.
const profileSamples = 64

// offProfile returns the distance of the end's curve from a point, positive where the
// curve passes outside the point.
func offProfile(h *hull.Hull, p geom.Vec2) float64 {
	nearest, out := math.Inf(1), 1.0
	a := h.End.At(0)
	for i := range profileSamples {
		b := h.End.At(float64(i+1) / profileSamples)
		ab, ap := b.Sub(a), p.Sub(a)
		t := 0.0
		if l := ab.Dot(ab); l > 0 {
			t = max(0, min(1, ap.Dot(ab)/l))
		}
		if gap := p.Sub(a.Lerp(b, t)).Len(); gap < nearest {
			nearest, out = gap, 1
			// The curve runs forward and up with the boat on its left.
			if ab.X*ap.Y-ab.Y*ap.X < 0 {
				out = -1
			}
		}
		a = b
	}
	return out * nearest
}

// overall returns what a fitted boat measures for a datum that is not placed.
func overall(h *hull.Hull, s stations, d record.Datum) float64 {
	b := h.Design
	switch d.Kind {
	case record.LengthOverGunwales:
		return 2 * h.GunwaleX
	case record.BeamOutside:
		return b.Beam + 2*b.InwaleThickness
	case record.GreatestBeam:
		return max(b.GreatestBeam, b.OutsideBreadth())
	case record.DepthRail:
		return b.Depth + b.CapThickness
	case record.ThwartPosition:
		return s.away(d.At.From, thwartX(h, d.Number))
	case record.Bay:
		return thwartX(h, d.Number) - thwartX(h, d.Number-1)
	case record.HeadboardPosition:
		return s.away(d.At.From, b.HeadboardX())
	case record.RibSpacing:
		return 2 * h.Gunwale.Length() / float64(b.Ribs)
	}
	return parameter(d.Kind.Parameter()).Get(&b)
}

// thwartX is the station of thwart n; beyond the last one, the gunwale's end.
func thwartX(h *hull.Hull, n int) float64 {
	switch {
	case n == 0:
		return 0
	case n > h.Design.OuterThwarts():
		return h.GunwaleX
	}
	return h.StationAt(h.Design.ThwartAt[n-1] * h.Gunwale.Length())
}

// finished returns the whole hull except for the bulge of its bark. Nothing measured
// here depends on the bulge, and it is slow to find.
func finished(d design.Design) *hull.Hull {
	d.GreatestBeam = 0
	return hull.New(d)
}
