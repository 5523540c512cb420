package afloat

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Body is a boat's outer face prepared for floating. It does not change once made.
type Body struct {
	x       []float64 // stations, increasing
	weight  []float64 // of the integral along x
	sheer   []sheerPoint
	upright *tilted // at no heel; only read
}

// sheerPoint is the port sheer at a station that is open at the top.
type sheerPoint struct{ x, y, z float64 }

const (
	tooFewStations        = "afloat: fewer than three stations"
	stationsNotIncreasing = "afloat: stations not increasing in x"
	stationHasNoPoints    = "afloat: station without points"
	noOpenStation         = "afloat: no station is open at the sheer"
	leastSheerHalfBreadth = 1e-9 // m; below it the outline ends on the centre line
)

// NewBody prepares stations sorted by x from the after to the forward extreme,
// each the port half as hull.Station describes; a station whose outline ends on
// the centre line is closed and has no sheer. It panics on fewer than three
// stations, stations not increasing, an empty outline or no open station.
func NewBody(stations []hull.Station) *Body {
	if len(stations) < 3 {
		panic(tooFewStations)
	}
	points := 0
	for _, s := range stations {
		points += 2 + len(s.Outline)
	}
	t := &tilted{cos: 1, half: true, ring: make([]geom.Vec2, 0, points), first: make([]int, 0, len(stations)+1)}
	b := &Body{x: make([]float64, 0, len(stations)), upright: t}
	t.body = b
	for i, s := range stations {
		if i > 0 && !(s.X > stations[i-1].X) {
			panic(stationsNotIncreasing)
		}
		if len(s.Outline) == 0 {
			panic(stationHasNoPoints)
		}
		b.x = append(b.x, s.X)
		t.addHalf(s.Outline)
		if top := s.Outline[len(s.Outline)-1]; top.X > leastSheerHalfBreadth {
			b.sheer = append(b.sheer, sheerPoint{s.X, top.X, top.Y})
		}
	}
	if len(b.sheer) == 0 {
		panic(noOpenStation)
	}
	t.first = append(t.first, len(t.ring))
	b.weight = integrationWeights(b.x)
	return b
}

// addHalf appends the port half of a section, closed down the middle: up to its sheer,
// across to the middle and down.
func (t *tilted) addHalf(outline []geom.Vec2) {
	t.first = append(t.first, len(t.ring))
	t.ring = append(t.ring, geom.Vec2{Y: outline[0].Y})
	t.ring = append(t.ring, outline...)
	t.ring = append(t.ring, geom.Vec2{Y: outline[len(outline)-1].Y})
}

// outline returns the port half of station i from the lowest point up to the sheer.
func (b *Body) outline(i int) []geom.Vec2 {
	t := b.upright
	return t.ring[t.first[i]+1 : t.first[i+1]-1]
}

// halfLength returns the greater distance of an end from amidships.
func (b *Body) halfLength() float64 {
	return max(-b.x[0], b.x[len(b.x)-1])
}

// LowestSheer returns the z of the lowest point of the sheer.
func (b *Body) LowestSheer() float64 {
	f, _ := b.freeboard(Waterplane{})
	return f
}
