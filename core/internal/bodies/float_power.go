package bodies

import (
	"math"

	"barkwright/core/geom"
)

// Power is the separable power family y = (B/2) (1 - |2x/L|^m) (1 - (d/T)^n), d the
// depth below the surface; with every power 2 it is the parabolic hull used to try
// out ship theories (W. C. S. Wigley). Forward and aft of midships m differs.
type Power struct {
	Beam, Draught      float64 // m
	Forward, Aft, Down float64 // the powers
}

// Parabolic is the family with every power 2.
func Parabolic(beam, draught float64) Power { return Power{beam, draught, 2, 2, 2} }

// Half returns the half-breadth at a share u = 2x/L and a depth below the surface.
func (p Power) Half(u, depth float64) float64 {
	m := p.Forward
	if u < 0 {
		m = p.Aft
	}
	return p.Beam / 2 * (1 - math.Pow(math.Abs(u), m)) * (1 - math.Pow(depth/p.Draught, p.Down))
}

// Sections cuts the body in n chords at equal steps of depth, its keel at nothing,
// the sides carried straight up to a freeboard over the surface at Draught.
func (p Power) Sections(x []float64, freeboard float64, n int) []Section {
	half := x[len(x)-1]
	sections := make([]Section, len(x))
	for i := range x {
		points := make([]geom.Vec2, n+2)
		for k := range n + 1 {
			z := p.Draught * float64(k) / float64(n)
			points[k] = geom.Vec2{X: p.Half(x[i]/half, p.Draught-z), Y: z}
		}
		points[n+1] = geom.Vec2{X: points[n].X, Y: p.Draught + freeboard}
		sections[i] = Section{x[i], points}
	}
	return sections
}

// Grid returns half-breadths on an equal grid of stations and waterlines cells, the
// surface first at each station.
func (p Power) Grid(stations, waterlines int) []float64 {
	var half []float64
	for i := range stations + 1 {
		u := 2*float64(i)/float64(stations) - 1
		for j := range waterlines + 1 {
			half = append(half, p.Half(u, p.Draught*float64(j)/float64(waterlines)))
		}
	}
	return half
}

// Leaning is an invented open boat with lifted, leaning ends and a rounded bottom,
// for laws that have no closed form. Beam, depth amidships, how much the sheer and
// the bottom rise to the ends, m.
type Leaning struct{ Beam, Depth, SheerRise, Rocker float64 }

// Sections cuts the boat in n chords to the half section. Its end stations are
// points at the sheer.
func (l Leaning) Sections(x []float64, n int) []Section {
	half := x[len(x)-1]
	sections := make([]Section, len(x))
	for i := range x {
		u := math.Abs(x[i]) / half
		sheer := l.Depth + l.SheerRise*math.Pow(u, 4)
		bottom := l.Rocker*u*u + (sheer-l.Rocker)*math.Pow(u, 14)
		breadth := l.Beam / 2 * (1 - math.Pow(u, 2.2))
		points := make([]geom.Vec2, n+1)
		for k := range points {
			sin, cos := math.Sincos(math.Pi / 2 * float64(k) / float64(n))
			points[k] = geom.Vec2{
				X: breadth * math.Pow(sin, 0.8),
				Y: sheer - (sheer-bottom)*math.Pow(max(cos, 0), 0.8),
			}
		}
		sections[i] = Section{x[i], points}
	}
	return sections
}
