package record

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
)

// along returns what the boat measures at a placed datum that stands x from
// amidships. h has its end profile where the datum lies past the heel.
func along(h *hull.Hull, d Datum, x float64) float64 {
	switch d.Kind {
	case ClearWidth:
		return 2 * h.HalfBeam(x)
	case SheerHeight:
		return h.Sheer(min(x, h.GunwaleX))
	case RailHeight:
		return h.Sheer(min(x, h.GunwaleX)) + h.Design.CapThickness
	case BottomRise:
		return h.Floor(x)
	case HalfGirth:
		return h.HalfGirthInside(min(x, h.HeelX))
	case HalfBreadth:
		s := h.Section(min(x, h.HeelX))
		return s.HalfBreadthAt(d.At.Height)
	}
	return d.Value + offProfile(h, geom.Vec2{X: x, Y: d.Value})
}

// profileSamples is in how many pieces the end's curve is looked at: chords of a
// curve a yard long and a foot in radius then stand off it by 0.2 mm at most.
const profileSamples = 64

// offProfile is how far the end's curve passes from a point, more than nothing
// where it passes outside.
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
func overall(h *hull.Hull, s stations, d Datum) float64 {
	b := h.Design
	switch d.Kind {
	case LengthOverGunwales:
		return 2 * h.GunwaleX
	case BeamOutside:
		return b.Beam + 2*b.InwaleThickness
	case GreatestBeam:
		return max(b.GreatestBeam, b.OutsideBreadth())
	case DepthRail:
		return b.Depth + b.CapThickness
	case ThwartPosition:
		return s.away(d.At.From, thwartX(h, d.Number))
	case Bay:
		return thwartX(h, d.Number) - thwartX(h, d.Number-1)
	case HeadboardPosition:
		return s.away(d.At.From, b.HeadboardX())
	case RibSpacing:
		return 2 * h.Gunwale.Length() / float64(b.Ribs)
	}
	return parameter(kindRows[d.Kind].key).Get(&b)
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
