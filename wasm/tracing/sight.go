package tracing

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/wasm/work"
)

// sight is how a picture lies in its place on the page: a pixel of it is zoom CSS pixels, and
// its corner lies at pan once it is turned.
type sight struct {
	zoom float64
	pan  geom.Vec2
}

// mostZoom is how many CSS pixels a pixel of the picture is shown as at most.
const mostZoom = 24

// look is a sight of a tracing.
type look struct {
	sight
	*record.Tracing
}

// on is where a point of the picture is shown.
func (l look) on(p geom.Vec2) geom.Vec2 {
	if l.Mirrored {
		p.X = l.Width - p.X
	}
	return turned(p, l.Turn).Scale(l.zoom).Add(l.pan)
}

// under is the point of the picture at a place on the page.
func (l look) under(at geom.Vec2) geom.Vec2 {
	p := turned(at.Sub(l.pan).Scale(1/l.zoom), -l.Turn)
	if l.Mirrored {
		p.X = l.Width - p.X
	}
	return p
}

// turned is a point turned clockwise about the corner.
func turned(p geom.Vec2, angle float64) geom.Vec2 {
	sin, cos := math.Sincos(angle)
	return geom.Vec2{X: cos*p.X - sin*p.Y, Y: sin*p.X + cos*p.Y}
}

// matrix is the sight as CSS writes it.
func (l look) matrix() string {
	o := l.on(geom.Vec2{})
	x, y := l.on(geom.Vec2{X: 1}).Sub(o), l.on(geom.Vec2{Y: 1}).Sub(o)
	text := "matrix("
	for i, v := range []float64{x.X, x.Y, y.X, y.Y, o.X, o.Y} {
		if i > 0 {
			text += ","
		}
		text += work.Decimal(v)
	}
	return text + ")"
}

// corners are those of the picture as it is shown.
func (l look) corners() []draw.Point {
	var list []draw.Point
	for _, p := range []geom.Vec2{{}, {X: l.Width}, {X: l.Width, Y: l.Height}, {Y: l.Height}} {
		list = append(list, draw.Point(l.on(p)))
	}
	return list
}

// fitted is the sight that shows all of the picture in the middle of its place.
func (l look) fitted(size draw.Size) sight {
	l.sight = sight{zoom: 1}
	b := draw.BoxOf(l.corners())
	l.zoom = 0.96 * min(size.Width/b.Width(), size.Height/b.Height())
	b = draw.BoxOf(l.corners())
	l.pan = geom.Vec2{X: (size.Width - b.Left - b.Right) / 2, Y: (size.Height - b.Top - b.Bottom) / 2}
	return l.sight
}

// nearer is the sight so many times as large about a place on the page, which stays where it
// is.
func (l look) nearer(times float64, about geom.Vec2) sight {
	p := l.under(about)
	l.zoom = max(0.01, min(mostZoom, l.zoom*times))
	l.pan = l.pan.Add(about.Sub(l.on(p)))
	return l.sight
}
