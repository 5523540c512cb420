package record

import (
	"errors"
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/trace"
	"barkwright/core/units"
)

// Traced is a tracing with how its views lie.
type Traced struct {
	*Tracing
	planes  [Views]trace.Plane
	sizes   [Views][]int
	refused [Views]error
}

// Read finds how the views of a tracing lie.
func (t *Tracing) Read() *Traced {
	r := &Traced{Tracing: t}
	for v := range Views {
		r.planes[v], r.sizes[v], r.refused[v] = t.Lay(v)
	}
	return r
}

// Plane is how a view lies, or why it cannot be read.
func (r *Traced) Plane(v View) (*trace.Plane, error) { return &r.planes[v], r.refused[v] }

// Sizes are the marks of the lettered sizes that a view is scaled by, and by how much each
// comes out other than lettered, metres.
func (r *Traced) Sizes(v View) (marks []int, misses []float64) {
	misses = r.planes[v].Scale().Misses
	return r.sizes[v], misses[max(0, len(misses)-len(r.sizes[v])):]
}

var errWhere = errors.New("Say where it was taken.")

// Data are the rows that mark i gives, each with the number of the point, or of the mark, that
// it goes by; or why it gives none.
func (r *Traced) Data(i int) ([]Datum, error) {
	m := r.Marks[i]
	p, ok := LookupPress(m.What)
	switch {
	case !ok || !p.Reads() || !m.Whole(r.Tracing):
		return nil, nil
	case r.refused[m.View] != nil:
		return nil, r.refused[m.View]
	case p.Numbered() && m.Number == 0:
		return nil, errWhere
	case !p.Curve:
		d, err := r.datum(m, p, m.Points)
		return []Datum{d}, err
	}
	var data []Datum
	for k := range m.Points {
		if p.taking == beside && !r.leansIn(m, k) {
			continue
		}
		d, err := r.datum(m, p, m.Points[k:k+1])
		if err != nil {
			return nil, err
		}
		data = append(data, d)
	}
	if p.taking == beside && len(m.Points) > 2 {
		d, err := r.girth(m)
		if err != nil {
			return nil, err
		}
		data = append(data, d)
	}
	return data, nil
}

// datum is the row that points of a mark give.
func (r *Traced) datum(m Mark, p Press, points []Pressed) (Datum, error) {
	plane := &r.planes[m.View]
	pressed := make([]trace.Point, len(points))
	for k := range points {
		pressed[k] = r.point(points[k])
	}
	value := func(at []geom.Vec2) float64 { return p.value(m.View, at) }
	station := func(at []geom.Vec2) float64 { return (at[0].X + at[len(at)-1].X) / 2 }
	v, spread, err := plane.Read(pressed, value)
	x, along, _ := plane.Read(pressed, station)
	y, _, _ := plane.Read(pressed, func(at []geom.Vec2) float64 { return at[0].Y })
	if err != nil {
		return Datum{}, err
	}
	d := Datum{Kind: p.Kind, Number: m.Number, At: m.At, Value: v, Mark: points[0].ID, Note: off[r.Sort]}
	if m.View != InSection {
		d.At = Place{}
		if !r.Half[m.View] && p.Sided() && abs(x) > amidships {
			d.At.Side = Forward
			if x < 0 {
				d.At.Side = Aft
			}
		}
		if p.Placed() && m.Number == 0 && abs(x) > amidships {
			d.At.Distance = abs(x)
		}
	}
	// What is measured at a place is off by the place too, as far as it changes there.
	slope := 0.0
	switch {
	case p.AtHeight():
		d.At.Height = y
		slope = r.slope(m.View, p, geom.Vec2{X: y, Y: v}, points[0].ID)
		_, spread, _ = plane.Read(pressed, func(at []geom.Vec2) float64 { return value(at) - slope*at[0].Y })
	case p.Kind == EndPoint:
		// The fit goes by its distance from the end's curve, whichever way that runs.
		spread = max(spread, along)
	case p.Placed() && m.View != InSection && m.Number == 0:
		slope = r.slope(m.View, p, geom.Vec2{X: abs(x), Y: v}, points[0].ID)
		_, spread, _ = plane.Read(pressed, func(at []geom.Vec2) float64 { return value(at) - slope*abs(station(at)) })
	}
	d.Tolerance = certain * spread
	return d, nil
}

// steepest bounds a slope that is found between two points, and unknown is that of a curve of
// which one point is read. Choices of this project: a sheer rises by less than one in four but
// at its very end, and breadths take in as fast.
const steepest, unknown = 2.0, 0.25

// apart is the least distance of the points that a slope is found between: over less, it would
// be the hand's. A choice of this project.
const apart = 2 * units.Inch

// slope is how fast a kind of measurement changes with its place, by the nearest of the same
// kind in the view. at.X is its place and at.Y its value.
func (r *Traced) slope(v View, p Press, at geom.Vec2, own int) float64 {
	before, after := geom.Vec2{X: math.Inf(-1)}, geom.Vec2{X: math.Inf(1)}
	for _, m := range r.Marks {
		q, ok := LookupPress(m.What)
		if !ok || !q.Reads() || q.Kind != p.Kind || m.View != v {
			continue
		}
		for _, other := range m.Points {
			place, seen := r.planes[v].At(other.At)
			if !seen || other.ID == own || len(m.Points) > 1 && !q.Curve {
				continue
			}
			o := geom.Vec2{X: abs(place.X), Y: q.value(v, []geom.Vec2{place})}
			if p.AtHeight() {
				o.X = place.Y
			}
			switch {
			case o.X <= at.X-apart && o.X > before.X:
				before = o
			case o.X >= at.X+apart && o.X < after.X:
				after = o
			}
		}
	}
	if math.IsInf(before.X, 0) {
		before = at
	}
	if math.IsInf(after.X, 0) {
		after = at
	}
	if run := after.X - before.X; run > 0 {
		return max(-steepest, min(steepest, (after.Y-before.Y)/run))
	}
	return unknown
}

// leansIn tells whether a section traced is steeper than 45 degrees at its point k, so that
// its breadth at a height says something. Its two ends are the bottom and the top edge, where
// it has none.
func (r *Traced) leansIn(m Mark, k int) bool {
	if k == 0 || k == len(m.Points)-1 {
		return false
	}
	plane := &r.planes[m.View]
	a, _ := plane.At(m.Points[k-1].At)
	b, _ := plane.At(m.Points[k+1].At)
	return abs(b.Y-a.Y) > abs(b.X-a.X)
}

// girth is the half girth inside the bark of a section traced along its outside.
func (r *Traced) girth(m Mark) (Datum, error) {
	pressed := make([]trace.Point, len(m.Points))
	for k := range m.Points {
		pressed[k] = r.point(m.Points[k])
	}
	plane := &r.planes[m.View]
	outside, spread, err := plane.Read(pressed, func(at []geom.Vec2) float64 { return fromCentre(at).Length() })
	if err != nil {
		return Datum{}, err
	}
	at := make([]geom.Vec2, len(m.Points))
	for k := range m.Points {
		at[k], _ = plane.At(m.Points[k].At)
	}
	// A line laid inside is shorter by what the bark turns through times its thickness. A
	// drawing's line may as well be either face.
	inside := design.Default().BarkThickness * abs(fromCentre(at).Turning())
	return Datum{Kind: HalfGirth, Number: m.Number, At: m.At, Value: outside - inside, Mark: m.ID, Note: off[r.Sort],
		Tolerance: certain * math.Hypot(spread, inside/2)}, nil
}

// between is how many pieces a curve has from one pressed point to the next.
const between = 8

// fromCentre is a smooth line through points of a section, from the centre line on.
func fromCentre(at []geom.Vec2) geom.Polyline {
	points := make([]geom.Vec2, 0, len(at)+1)
	for _, p := range at {
		points = append(points, geom.Vec2{X: abs(p.X), Y: p.Y})
	}
	if first := points[0]; first.X > 0 {
		// The section crosses the centre line level.
		points = append([]geom.Vec2{{X: 0, Y: first.Y}}, points...)
	}
	var line []geom.Vec2
	for i := range points[:len(points)-1] {
		before, a, b, after := points[max(0, i-1)], points[i], points[i+1], points[min(len(points)-1, i+2)]
		for k := range between {
			line = append(line, through(before, a, b, after, float64(k)/between))
		}
	}
	return geom.NewPolyline(append(line, points[len(points)-1]))
}

// through is a point between a and b of the cubic that runs through both along the chords of
// their neighbours (Catmull and Rom 1974), at t from 0 to 1. The chords are taken per length,
// so that unequal spacing makes no loop.
func through(before, a, b, after geom.Vec2, t float64) geom.Vec2 {
	l := b.Sub(a).Len()
	slope := func(p, q, r geom.Vec2) geom.Vec2 {
		if whole := q.Sub(p).Len() + r.Sub(q).Len(); whole > 0 {
			return r.Sub(p).Scale(l / whole)
		}
		return geom.Vec2{}
	}
	m, n := slope(before, a, b), slope(a, b, after)
	s := 1 - t
	return a.Scale(s * s * (1 + 2*t)).Add(b.Scale(t * t * (3 - 2*t))).Add(m.Scale(t * s * s)).Sub(n.Scale(t * t * s))
}

func abs(v float64) float64 { return math.Abs(v) }
