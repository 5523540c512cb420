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
// It keeps the outlines. Where the after half has those of the forward one, as
// hull.Stations returns them, level water is looked at on one of the two.
func NewBody(stations []hull.Station) *Body {
	if len(stations) < 3 {
		panic(tooFewStations)
	}
	last := len(stations) - 1
	t := &tilted{cos: 1, half: true, rings: make([]ring, len(stations))}
	b := &Body{x: make([]float64, len(stations)), sheer: make([]sheerPoint, 0, len(stations)), upright: t, alike: true}
	t.body = b
	for i, s := range stations {
		if i > 0 && !(s.X > stations[i-1].X) {
			panic(stationsNotIncreasing)
		}
		if len(s.Outline) == 0 {
			panic(stationHasNoPoints)
		}
		b.x[i], t.rings[i] = s.X, newRing(s.Outline)
		if top := s.Outline[len(s.Outline)-1]; top.X > leastSheerHalfBreadth {
			b.sheer = append(b.sheer, sheerPoint{s.X, top.X, top.Y})
		}
		b.alike = b.alike && sameSlice(s.Outline, stations[last-i].Outline)
	}
	if len(b.sheer) == 0 {
		panic(noOpenStation)
	}
	b.weight = integrationWeights(b.x)
	return b
}

func sameSlice(a, b []geom.Vec2) bool { return len(a) == len(b) && &a[0] == &b[0] }

// outline returns the port half of station i from the lowest point up to the sheer.
func (b *Body) outline(i int) []geom.Vec2 { return b.upright.rings[i].points }

// halfLength returns the greater distance of an end from amidships.
func (b *Body) halfLength() float64 {
	return max(-b.x[0], b.x[len(b.x)-1])
}

// LowestSheer returns the z of the lowest point of the sheer.
func (b *Body) LowestSheer() float64 {
	f, _ := b.freeboard(Waterplane{})
	return f
}
