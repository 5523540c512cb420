package refit

import (
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// furthest is the largest number of thwarts each side of the middle one.
const furthest = len(design.Design{}.ThwartAt)

// stations is what the record says of lengths and of where things stand, metres
// from amidships. A number that is not known is 0; thwarts are by half, forward
// and aft, and by number.
type stations struct {
	halfLength, halfGunwale float64
	thwarts                 [2][furthest + 1]float64
}

// half is the index of a datum's half of the boat.
func half(d record.Datum) int {
	if d.Aft() {
		return 1
	}
	return 0
}

// reading is a record's data with those that are set aside from the fit and why.
type reading struct {
	system    units.System
	data      []record.Datum
	aside     []bool
	conflicts []Conflict
	stations
}

// first returns the first datum of a kind that is not set aside, and its index.
func (r *reading) first(k record.Kind) (record.Datum, int, bool) {
	for i, d := range r.data {
		if d.Kind == k && !r.aside[i] {
			return d, i, true
		}
	}
	return record.Datum{}, -1, false
}

// value is that of the first datum of a kind, 0 where there is none.
func (r *reading) value(k record.Kind) float64 {
	d, _, _ := r.first(k)
	return d.Value
}

// station is one way of telling where a thwart stands.
type station struct {
	x, within float64
	from      []int
}

// ways lists every way the record tells where a thwart stands.
func (r *reading) ways(n, side int) []station {
	var ways []station
	for i, d := range r.data {
		if d.Kind == record.ThwartPosition && !r.aside[i] && d.Number == n && half(d) == side {
			if x, ok := r.from(d.At.From, d.Value); ok {
				ways = append(ways, station{x, d.Within(), []int{i}})
			}
		}
	}
	if w, ok := r.bays(n, side); ok && !(n == r.lastBay(side) && r.reachEnd(side)) {
		ways = append(ways, w)
	}
	return ways
}

// bays adds up the bays from the middle to thwart n; false where one is missing.
func (r *reading) bays(n, side int) (station, bool) {
	var sum station
	for k := 1; k <= n; k++ {
		found := false
		for i, d := range r.data {
			if d.Kind == record.Bay && !r.aside[i] && d.Number == k && half(d) == side {
				sum.x += d.Value
				sum.within += d.Within()
				sum.from = append(sum.from, i)
				found = true
				break
			}
		}
		if !found {
			return station{}, false
		}
	}
	return sum, n > 0
}

// lastBay is the highest number of a bay in one half.
func (r *reading) lastBay(side int) int {
	last := 0
	for i, d := range r.data {
		if d.Kind == record.Bay && !r.aside[i] && half(d) == side {
			last = max(last, d.Number)
		}
	}
	return last
}

// from turns a distance from an origin into one from amidships; false where the
// origin is not known or the station would lie past amidships.
func (s stations) from(o record.Origin, distance float64) (float64, bool) {
	switch o {
	case record.FromGunwaleEnd:
		return s.halfGunwale - distance, s.halfGunwale > 0 && distance <= s.halfGunwale
	case record.FromEnd:
		return s.halfLength - distance, s.halfLength > 0 && distance <= s.halfLength
	}
	return distance, true
}

// away is the distance of x from an origin.
func (s stations) away(o record.Origin, x float64) float64 {
	switch o {
	case record.FromGunwaleEnd:
		return s.halfGunwale - x
	case record.FromEnd:
		return s.halfLength - x
	}
	return x
}

// where is the station of a placed datum; false where it is not known.
func (s stations) where(d record.Datum) (float64, bool) {
	n := d.Number
	if n == 0 {
		return s.from(d.At.From, d.At.Distance)
	}
	if x := s.thwarts[half(d)][n]; x > 0 {
		return x, true
	}
	// One half's thwart tells where the other's stands, where only one is recorded.
	x := s.thwarts[1-half(d)][n]
	return x, x > 0
}

// thwart is where the two thwarts of a number stand, the mean of both halves
// where both are recorded; 0 where neither is.
func (s stations) thwart(n int) float64 {
	fore, aft := s.thwarts[0][n], s.thwarts[1][n]
	if fore > 0 && aft > 0 {
		return (fore + aft) / 2
	}
	return max(fore, aft)
}
