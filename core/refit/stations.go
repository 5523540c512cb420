package refit

import (
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// furthest is the largest number of thwarts each side of the middle one.
const furthest = len(design.Design{}.ThwartAt)

// distance is a distance from amidships in metres, if the record tells it.
type distance struct {
	x     float64
	known bool
}

func at(x float64) distance { return distance{x, true} }

// stations is what the record says of lengths and of where things stand. Thwarts
// are by half, forward and aft, and by number.
type stations struct {
	halfLength, halfGunwale distance
	thwarts                 [2][furthest + 1]distance
}

// half is the index of a datum's half of the boat.
func half(d record.Datum) int {
	if d.Aft() {
		return 1
	}
	return 0
}

// evidence is a record's data, which of them are set aside from the fit and why.
type evidence struct {
	system    units.System
	data      []record.Datum
	aside     []bool
	conflicts []Conflict
	stations  stations
}

// first returns the first datum of a kind that is not set aside, and its index.
func (ev *evidence) first(k record.Kind) (record.Datum, int, bool) {
	for i, d := range ev.data {
		if d.Kind == k && !ev.aside[i] {
			return d, i, true
		}
	}
	return record.Datum{}, -1, false
}

// half returns half the value of the first datum of a kind.
func (ev *evidence) half(k record.Kind) distance {
	d, _, known := ev.first(k)
	return distance{d.Value / 2, known}
}

// position is one of the ways in which the record tells where a thwart stands.
type position struct {
	x, within float64
	from      []int
}

// ways lists every way the record tells where a thwart stands.
func (ev *evidence) ways(n, side int) []position {
	var ways []position
	for i, d := range ev.data {
		if d.Kind == record.ThwartPosition && !ev.aside[i] && d.Number == n && half(d) == side {
			if x, ok := ev.stations.from(d.At.From, d.Value); ok {
				ways = append(ways, position{x, d.Within(), []int{i}})
			}
		}
	}
	if w, ok := ev.bays(n, side); ok && !(n == ev.lastBay(side) && ev.reachEnd(side)) {
		ways = append(ways, w)
	}
	return ways
}

// bays adds up the bays from the middle to thwart n. It returns false where one is
// missing.
func (ev *evidence) bays(n, side int) (position, bool) {
	var sum position
	for k := 1; k <= n; k++ {
		found := false
		for i, d := range ev.data {
			if d.Kind == record.Bay && !ev.aside[i] && d.Number == k && half(d) == side {
				sum.x += d.Value
				sum.within += d.Within()
				sum.from = append(sum.from, i)
				found = true
				break
			}
		}
		if !found {
			return position{}, false
		}
	}
	return sum, n > 0
}

// lastBay is the highest number of a bay in one half.
func (ev *evidence) lastBay(side int) int {
	last := 0
	for i, d := range ev.data {
		if d.Kind == record.Bay && !ev.aside[i] && half(d) == side {
			last = max(last, d.Number)
		}
	}
	return last
}

// from turns a distance from an origin into one from amidships. It returns false where
// the origin is not known or the station would lie past amidships.
func (s stations) from(o record.Origin, inboard float64) (float64, bool) {
	switch o {
	case record.FromGunwaleEnd:
		return s.halfGunwale.x - inboard, s.halfGunwale.known && inboard <= s.halfGunwale.x
	case record.FromEnd:
		return s.halfLength.x - inboard, s.halfLength.known && inboard <= s.halfLength.x
	}
	return inboard, true
}

// away is the distance of x from an origin.
func (s stations) away(o record.Origin, x float64) float64 {
	switch o {
	case record.FromGunwaleEnd:
		return s.halfGunwale.x - x
	case record.FromEnd:
		return s.halfLength.x - x
	}
	return x
}

// where returns the station of a placed datum, false where it is not known.
func (s stations) where(d record.Datum) (float64, bool) {
	n := d.Number
	if n == 0 {
		return s.from(d.At.From, d.At.Distance)
	}
	if here := s.thwarts[half(d)][n]; here.known {
		return here.x, true
	}
	// One half's thwart tells where the other's stands, where only one is recorded.
	there := s.thwarts[1-half(d)][n]
	return there.x, there.known
}

// thwart returns where the two thwarts of a number stand, the mean of both halves
// where both are recorded.
func (s stations) thwart(n int) distance {
	fore, aft := s.thwarts[0][n], s.thwarts[1][n]
	switch {
	case fore.known && aft.known:
		return at((fore.x + aft.x) / 2)
	case fore.known:
		return fore
	}
	return aft
}
