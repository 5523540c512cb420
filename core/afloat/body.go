package afloat

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Body is a boat's outer face prepared for floating. It does not change once made.
type Body struct {
	x       []float64   // stations, increasing
	weight  []float64   // of the integral along x
	ring    []geom.Vec2 // all stations' rings, one after another
	first   []int       // where station i's ring begins; one more at the end
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
		points += 2 * len(s.Outline)
	}
	b := &Body{ring: make([]geom.Vec2, 0, points), x: make([]float64, 0, len(stations)),
		first: make([]int, 0, len(stations)+1)}
	for i, s := range stations {
		if i > 0 && !(s.X > stations[i-1].X) {
			panic(stationsNotIncreasing)
		}
		if len(s.Outline) == 0 {
			panic(stationHasNoPoints)
		}
		b.x = append(b.x, s.X)
		b.addRing(s.Outline)
		if top := s.Outline[len(s.Outline)-1]; top.X > leastSheerHalfBreadth {
			b.sheer = append(b.sheer, sheerPoint{s.X, top.X, top.Y})
		}
	}
	if len(b.sheer) == 0 {
		panic(noOpenStation)
	}
	b.first = append(b.first, len(b.ring))
	b.weight = integrationWeights(b.x)
	b.upright = b.tilt(0)
	return b
}

// addRing appends the whole section, from the starboard sheer down, across and up
// to the port sheer: counter-clockwise with port on the right.
func (b *Body) addRing(outline []geom.Vec2) {
	b.first = append(b.first, len(b.ring))
	for i := len(outline) - 1; i >= 0; i-- {
		b.ring = append(b.ring, geom.Vec2{X: -outline[i].X, Y: outline[i].Y})
	}
	b.ring = append(b.ring, outline...)
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
