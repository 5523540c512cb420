package frame

import (
	"math"
	"slices"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Stem is the stem-piece of one end; the boat has two. It begins under the headboard,
// solid, and its laminations run from the end of the solid to the head.
type Stem struct {
	// Profile is the bark's outer face along the stem-piece, from the heel's inboard end
	// to the head, in (x, z); Point is the one of its points where the solid ends.
	Profile geom.Polyline
	Point   int
	// Curve is its length, Blank what to split out: the curve and what is trimmed.
	Curve, Blank float64
	// Solid is the length left solid along the profile, from the station SolidFrom to
	// SolidEnd.
	Solid, SolidFrom, SolidEnd float64
	// Sagitta is how far the solid's curve stands off its chord, and Stock how deep a
	// billet must be there for the curve to be sawn.
	Sagitta, Stock float64
	// SolidRadius is the tightest of the outer face in the solid, which is sawn and not
	// bent, and SolidTightest tells whether the whole curve is tightest there.
	SolidRadius   float64
	SolidTightest bool
	// Lamination is the thickness of one, and Laminations the bend of each at the
	// tightest place outside the solid, from the outermost in.
	Lamination  float64
	Laminations []wood.Bend
	// Within is the least splitting that is within guide, where any is, and Limit
	// the least that is not too tight.
	Within, Limit     wood.Splits
	WithinOK, LimitOK bool
	Springback        wood.Springback
	Moments           wood.Moments
	// Radius is the tightest of the bark's outer face over the laminations, and Tightest
	// how far along the profile it is.
	Radius, Tightest float64
	// FormRadius is that of the bending form's face at the tightest place, by what a
	// trial piece did; the inner face's own where none was tried.
	FormRadius float64
}

// StemTrim is left to trim at the head and the heel, 2 in. Estimate.
const StemTrim = 2 * units.Inch

// bottomPieces is in how many pieces a stem-piece that reaches inboard of the curve's
// heel is drawn along the bottom.
const bottomPieces = 12

// Innermost is the lamination with the tightest bend.
func (s Stem) Innermost() wood.Bend { return s.Laminations[len(s.Laminations)-1] }

// Tried tells whether a trial piece has been entered.
func Tried(d design.Design) bool { return d.StemOpening > 0 }

// newStem bends the stem-piece that begins at the station from.
func newStem(h *hull.Hull, from float64) Stem {
	d := &h.Design
	s := Stem{SolidFrom: from}
	s.layProfile(h)
	s.Blank = s.Curve + StemTrim
	heel := s.Curve - h.End.Path.Length() // along the profile to the curve's heel
	solidEnd := h.End.ParameterAt(s.Solid - heel)
	at, radius := h.End.TightestFrom(solidEnd)
	s.Radius, s.Tightest = min(radius, straight), heel+h.End.RunAt(at)
	s.SolidRadius = min(h.End.TightestBetween(h.End.ParameterAt(-heel), solidEnd), straight)
	s.SolidTightest = h.End.TightestAt < solidEnd && s.SolidRadius < s.Radius
	s.Sagitta = sagitta(s.Profile.Points[:s.Point+1])
	s.Stock = d.StemDepth + s.Sagitta
	piece := wood.StemBend{Depth: d.StemDepth, OuterRadius: s.Radius - d.BarkThickness, Stock: d.StemStock}
	s.Lamination = d.StemDepth / float64(d.StemLaminations)
	s.Laminations = piece.Laminations(d.StemLaminations)
	s.Within, s.WithinOK = wood.LeastSplits(piece, wood.WithinGuide)
	s.Limit, s.LimitOK = wood.LeastSplits(piece, wood.NearLimit)
	innermost := s.Innermost()
	s.Springback = innermost.Springback(d.StemStock)
	s.FormRadius = max(0, s.Radius-d.BarkThickness-d.StemDepth) / (1 + d.StemOpening)
	if !innermost.WillNotFit {
		s.Moments = wood.MomentToBend(wood.Effort{Width: d.StemWidth, Depth: d.StemDepth, Radius: innermost.Radius,
			Laminations: d.StemLaminations, Stock: d.StemStock})
	}
	return s
}

// layProfile lays the profile from the heel's inboard end, with a point where the solid
// ends.
func (s *Stem) layProfile(h *hull.Hull) {
	points := make([]geom.Vec2, 0, bottomPieces+len(h.End.Path.Points)+1)
	from := 0.0
	if s.SolidFrom < h.HeelX {
		for i := range bottomPieces {
			x := s.SolidFrom + (h.HeelX-s.SolidFrom)*float64(i)/bottomPieces
			points = append(points, geom.Vec2{X: x, Y: h.Bottom(x)})
		}
	} else {
		from = h.End.RunTo(s.SolidFrom)
		points = append(points, h.End.Path.At(from))
	}
	for i, r := range h.End.Path.Run {
		if r > from || s.SolidFrom < h.HeelX {
			points = append(points, h.End.Path.Points[i])
		}
	}
	s.Profile = geom.NewPolyline(points)
	s.Curve = s.Profile.Length()
	s.Solid = min(h.Design.StemSolid, s.Curve)
	end := s.Profile.At(s.Solid)
	s.SolidEnd = end.X
	s.Point, _ = slices.BinarySearch(s.Profile.Run, s.Solid)
	if s.Profile.Run[s.Point] > s.Solid {
		s.Profile.Points = slices.Insert(s.Profile.Points, s.Point, end)
		s.Profile.Run = slices.Insert(s.Profile.Run, s.Point, s.Solid)
	}
}

// sagitta is how far a curve stands off the chord of its ends.
func sagitta(points []geom.Vec2) float64 {
	chord := points[len(points)-1].Sub(points[0]).Unit()
	most := 0.0
	for _, p := range points {
		most = max(most, math.Abs(chord.Cross(p.Sub(points[0]))))
	}
	return most
}
