package afloat

import (
	"math"

	"barkwright/core/geom"
)

// Waterplane is the surface of the water in the boat's axes: at station x it is the
// line y sin(Heel) + z cos(Heel) = Height + Slope x. Slope is the tangent of the
// trim, positive by the bow.
type Waterplane struct{ Heel, Height, Slope float64 }

// tilted holds a body's sections as rings turned to a heel, so that a new draught or
// trim costs no turning: X runs across and level, Y up. Upright each is as heavy on both
// sides, and the port half does: its outline, closed by the middle line.
type tilted struct {
	body     *Body
	heel     float64
	sin, cos float64
	rings    []ring // of each station
	half     bool   // the rings are of the port half
}

// ring is a section with the heights of its lowest and highest point.
type ring struct {
	points    []geom.Vec2
	low, high float64
}

func newRing(points []geom.Vec2) ring {
	r := ring{points, points[0].Y, points[0].Y}
	for _, p := range points {
		if p.Y < r.low {
			r.low = p.Y
		}
		if p.Y > r.high {
			r.high = p.Y
		}
	}
	return r
}

func (b *Body) tilt(heel float64) *tilted {
	t := &tilted{body: b, rings: make([]ring, len(b.x))}
	points := 0
	for i := range b.x {
		points += 2 * len(b.outline(i))
	}
	all := make([]geom.Vec2, points)
	for i := range b.x {
		n := 2 * len(b.outline(i))
		t.rings[i].points, all = all[:n], all[n:]
	}
	t.turn(heel)
	return t
}

// turn sets t to another heel. A ring runs from the starboard sheer down, across and up
// to the port sheer: counter-clockwise with port on the right.
func (t *tilted) turn(heel float64) {
	t.heel = heel
	t.sin, t.cos = math.Sincos(heel)
	for i := range t.body.x {
		ring, port := t.rings[i].points, t.body.outline(i)
		for k, p := range port {
			ring[len(port)+k] = geom.Vec2{X: p.X*t.cos - p.Y*t.sin, Y: p.X*t.sin + p.Y*t.cos}
			ring[len(port)-1-k] = geom.Vec2{X: -p.X*t.cos - p.Y*t.sin, Y: -p.X*t.sin + p.Y*t.cos}
		}
		t.rings[i] = newRing(ring)
	}
}

// wet is what of one section lies under water, in turned axes: area and its first
// moments across and upward; and the length and the second moment across of the
// water's surface.
type wet struct {
	area, across, up        float64
	breadth, breadthInertia float64
}

// clip returns what of station i lies below level in turned axes. The section is
// closed straight across from sheer to sheer, so what the gunwale cannot hold out
// is not counted.
//
// With t the height above the level, area = -Int t ds and its moments
// -Int s t ds, -Int t^2/2 ds round the boundary: the piece along the surface, where
// t = 0, adds nothing, so it is never built, and a section cut into several pieces
// needs no special care.
func (t *tilted) clip(i int, level float64) wet {
	r := &t.rings[i]
	if level <= r.low {
		return wet{}
	}
	s0, t0 := 0.0, r.points[0].Y-level
	if !t.half {
		last := r.points[len(r.points)-1]
		s0, t0 = last.X, last.Y-level
	}
	// Sums in variables of their own stay in registers, which a struct of five does not.
	var area, across, up, breadth, inertia float64
	for _, p := range r.points {
		s1, t1 := p.X, p.Y-level
		a, ta, b, tb := s0, t0, s1, t1
		s0, t0 = s1, t1
		switch {
		case ta < 0 && tb < 0:
		case ta >= 0 && tb >= 0:
			continue
		case ta < 0: // coming out of the water
			b, tb = a+(b-a)*ta/(ta-tb), 0
			breadth += b
			inertia += b * b * b / 3
		default:
			a, ta = a+(b-a)*ta/(ta-tb), 0
			breadth -= a
			inertia -= a * a * a / 3
		}
		ds := b - a
		area -= ds * (ta + tb)
		across -= ds * (a*(2*ta+tb) + b*(ta+2*tb))
		up -= ds * (ta*ta + ta*tb + tb*tb)
	}
	if t.half {
		// Across to the middle, where t stays the same; down the middle s is 0.
		if t0 < 0 {
			area += 2 * s0 * t0
			up += 3 * s0 * t0 * t0
		}
		return wet{area, 0, up/3 + level*area, 2 * breadth, 2 * inertia}
	}
	return wet{area / 2, across / 6, up/6 + level*area/2, breadth, inertia}
}

// immersion is the integral of wet along the boat: volume, its first moments along
// x, across and up in turned axes, and of the waterplane the area (times the
// cosine of the trim), the moments along x and the moment of inertia across.
type immersion struct {
	volume, along, across, up     float64
	area, areaMoment, areaInertia float64
	areaInertiaAcross             float64
}

func (t *tilted) immerse(height, slope float64) immersion {
	var m immersion
	last := len(t.body.x) - 1
	if slope == 0 && t.body.alike {
		// Level, both halves are as deep in the water.
		for i := 0; i <= last/2; i++ {
			w := t.clip(i, height)
			m.add(&w, t.body.x[i], t.body.weight[i])
			if mirror := last - i; mirror != i {
				m.add(&w, t.body.x[mirror], t.body.weight[mirror])
			}
		}
		return m
	}
	for i, x := range t.body.x {
		w := t.clip(i, height+slope*x)
		m.add(&w, x, t.body.weight[i])
	}
	return m
}

// add adds the section at x with its weight k.
func (m *immersion) add(w *wet, x, k float64) {
	m.volume += k * w.area
	m.along += k * x * w.area
	m.across += k * w.across
	m.up += k * w.up
	m.area += k * w.breadth
	m.areaMoment += k * x * w.breadth
	m.areaInertia += k * x * x * w.breadth
	m.areaInertiaAcross += k * w.breadthInertia
}

// centre returns the centre of the volume in the boat's axes.
func (t *tilted) centre(m immersion) geom.Vec3 {
	s, v := m.across/m.volume, m.up/m.volume
	return geom.Vec3{X: m.along / m.volume, Y: s*t.cos + v*t.sin, Z: v*t.cos - s*t.sin}
}

// extent returns the heights of the lowest and the highest point above a plane of
// the given slope through the origin.
func (t *tilted) extent(slope float64) (low, high float64) {
	low, high = math.Inf(1), math.Inf(-1)
	for i, x := range t.body.x {
		low, high = min(low, t.rings[i].low-slope*x), max(high, t.rings[i].high-slope*x)
	}
	return low, high
}
