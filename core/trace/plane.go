package trace

import (
	"math"

	"barkwright/core/geom"
)

// Plane is a view that can be read.
type Plane struct {
	axes
	// bent are the axes with one of what they follow from moved by its spread.
	bent []axes
}

// New finds how a view lies in a picture, or why it cannot be read. With SizesDisagree the
// plane is what the sizes agree on best.
func New(s Setting) (Plane, error) {
	a, err := lay(s, guess{})
	if err != nil {
		return Plane{}, err
	}
	p := Plane{axes: a}
	// Sizes that disagree by more than they may are good for less than they say.
	worse := max(1, a.scale.Chi)
	for i := range s.Base {
		p.move(s, 1, func(o *Setting) *Point { return &o.Base[i] })
	}
	p.move(s, 1, func(o *Setting) *Point { return &o.Middle })
	for i := range s.Sizes {
		p.move(s, worse, func(o *Setting) *Point { return &o.Sizes[i].A })
		p.move(s, worse, func(o *Setting) *Point { return &o.Sizes[i].B })
		p.bend(s, func(o *Setting) { o.Sizes[i].Length += worse * o.Sizes[i].Spread })
	}
	if r := s.Rectangle; r != nil {
		for i := range r.Corners {
			p.move(s, 1, func(o *Setting) *Point { return &o.Rectangle.Corners[i] })
		}
		p.bend(s, func(o *Setting) { o.Rectangle.Wide += worse * r.Spread })
		p.bend(s, func(o *Setting) { o.Rectangle.High += worse * r.Spread })
	}
	for _, g := range []guess{{uneven: s.Uneven}, {along: s.Loose}, {up: s.Loose}} {
		if b, err := lay(s, g); err == nil {
			p.bent = append(p.bent, b)
		}
	}
	if p.rough() > roughest {
		return p, SizesDisagree
	}
	return p, nil
}

// bend adds the axes that a changed setting gives. One that gives none changes no reading by
// its spread.
func (p *Plane) bend(s Setting, change func(*Setting)) {
	s.Sizes = append([]Size(nil), s.Sizes...)
	if s.Rectangle != nil {
		r := *s.Rectangle
		s.Rectangle = &r
	}
	change(&s)
	if b, err := lay(s, guess{}); err == nil {
		p.bent = append(p.bent, b)
	}
}

// move adds the axes with a point so many of its spreads to the right, and down.
func (p *Plane) move(s Setting, times float64, point func(*Setting) *Point) {
	p.bend(s, func(o *Setting) { at := point(o); at.X += times * at.Spread })
	p.bend(s, func(o *Setting) { at := point(o); at.Y += times * at.Spread })
}

// rough is the larger spread of the two scales, as a share.
func (p *Plane) rough() float64 {
	along, up := p.ScaleSpread()
	return max(along, up)
}

// Scale is how the axes are scaled.
func (p *Plane) Scale() Scale { return p.scale }

// ScaleSpread are the spreads of the scales along and up, as shares of them.
func (p *Plane) ScaleSpread() (along, up float64) {
	for _, b := range p.bent {
		x, y := b.scale.Along/p.scale.Along-1, b.scale.Up/p.scale.Up-1
		along, up = along+x*x, up+y*y
	}
	return math.Sqrt(along), math.Sqrt(up)
}

// At is where a point of the picture lies: metres along from the middle and up from the base
// line. It reports false for a point that the plane does not show.
func (p *Plane) At(at geom.Vec2) (geom.Vec2, bool) { return p.at(at) }

// Pixel is where a place of the view, metres, lies in the picture. It reports false for one
// that is not in it.
func (p *Plane) Pixel(at geom.Vec2) (geom.Vec2, bool) {
	q := p.origin.Add(p.along.Scale(at.X / p.scale.Along)).Add(p.up.Scale(at.Y / p.scale.Up))
	return p.square.Back(q)
}

// Read gives a value of points of the picture and its spread. value is called with where
// they lie, metres, and has to change little where they are moved by their spreads.
func (p *Plane) Read(points []Point, value func([]geom.Vec2) float64) (v, spread float64, err error) {
	at := make([]geom.Vec2, len(points))
	read := func(a *axes) (float64, bool) {
		for i, q := range points {
			var ok bool
			if at[i], ok = a.at(q.Vec2); !ok {
				return 0, false
			}
		}
		return value(at), true
	}
	v, ok := read(&p.axes)
	if !ok {
		return 0, 0, BeyondHorizon
	}
	sum := 0.0
	add := func(a *axes) {
		if moved, ok := read(a); ok {
			sum += (moved - v) * (moved - v)
		}
	}
	for i := range p.bent {
		add(&p.bent[i])
	}
	points = append([]Point(nil), points...)
	for i := range points {
		was := points[i].Vec2
		points[i].X += points[i].Spread
		add(&p.axes)
		points[i].Vec2 = geom.Vec2{X: was.X, Y: was.Y + points[i].Spread}
		add(&p.axes)
		points[i].Vec2 = was
	}
	return v, math.Sqrt(sum), nil
}
