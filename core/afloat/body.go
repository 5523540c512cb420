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
	alike   bool    // stations have the same outline at equal distances from both ends
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
//
// Where the after half has the outlines of the forward one, as hull.Stations returns
// them, they are held once.
func NewBody(stations []hull.Station) *Body {
	if len(stations) < 3 {
		panic(tooFewStations)
	}
	last := len(stations) - 1
	points, alike := 0, true
	for i, s := range stations {
		if i > 0 && !(s.X > stations[i-1].X) {
			panic(stationsNotIncreasing)
		}
		if len(s.Outline) == 0 {
			panic(stationHasNoPoints)
		}
		if i <= last/2 {
			points += 2 + len(s.Outline)
		}
		alike = alike && sameSlice(s.Outline, stations[last-i].Outline)
	}
	if !alike {
		points = 0
		for _, s := range stations {
			points += 2 + len(s.Outline)
		}
	}
	t := &tilted{cos: 1, half: true, ring: make([]geom.Vec2, 0, points), rings: make([]span, len(stations))}
	b := &Body{x: make([]float64, len(stations)), sheer: make([]sheerPoint, 0, len(stations)), upright: t, alike: alike}
	t.body = b
	for i, s := range stations {
		b.x[i] = s.X
		if mirror := last - i; alike && mirror < i {
			t.rings[i] = t.rings[mirror]
		} else {
			t.rings[i] = t.addHalf(s.Outline)
		}
		if top := s.Outline[len(s.Outline)-1]; top.X > leastSheerHalfBreadth {
			b.sheer = append(b.sheer, sheerPoint{s.X, top.X, top.Y})
		}
	}
	if len(b.sheer) == 0 {
		panic(noOpenStation)
	}
	b.weight = integrationWeights(b.x)
	return b
}

func sameSlice(a, b []geom.Vec2) bool { return len(a) == len(b) && &a[0] == &b[0] }

// addHalf appends the port half of a section, closed down the middle: up to its sheer,
// across to the middle and down.
func (t *tilted) addHalf(outline []geom.Vec2) span {
	s := span{from: len(t.ring)}
	t.ring = append(t.ring, geom.Vec2{Y: outline[0].Y})
	t.ring = append(t.ring, outline...)
	t.ring = append(t.ring, geom.Vec2{Y: outline[len(outline)-1].Y})
	s.to = len(t.ring)
	s.low, s.high = heights(outline)
	return s
}

// outline returns the port half of station i from the lowest point up to the sheer.
func (b *Body) outline(i int) []geom.Vec2 {
	r := b.upright.rings[i]
	return b.upright.ring[r.from+1 : r.to-1]
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
