package refit

import (
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
)

// located is a datum of a group with its station.
type located struct {
	record.Datum
	x     float64
	index int // in the record
}

// free is a parameter that a group may move. Its bounds are narrower than the table's
// where the rest of the boat asks for it. Its rule is the value it has when the group
// begins.
type free struct {
	key    string
	at     func(*design.Design) *float64
	lo, hi float64
	// spread is how far from its rule a boat may well be.
	spread float64
}

// freed makes a parameter free. Its rule counts as good to half the parameter's range.
// That weak pull settles what the record leaves open, and scaled measurements outweigh
// it many times.
func freed(key string, at func(*design.Design) *float64) free {
	p := parameter(key)
	return free{key: key, at: at, lo: p.Min, hi: p.Max, spread: (p.Max - p.Min) / 2}
}

func (l free) within(lo, hi float64) free {
	l.lo = max(l.lo, lo)
	l.hi = max(l.lo, min(l.hi, hi))
	return l
}

// group is the parameters that one group of measurements decides.
type group struct {
	free []free
	data []located
	// curve tells that the model needs the end's profile, which is slow.
	curve bool
	// skin tells that it needs the whole hull.
	skin bool
	// constraint fills over with by how much, in metres, a boat exceeds each limit that
	// it must keep. There are as many as constraints says.
	constraint  func(h *hull.Hull, over []float64)
	constraints int
	// halfGunwale is kept where the overhang is free, so that the length follows it.
	halfGunwale distance
}

// lockedTolerance is by how much a locked measurement may be missed. A choice of this
// project: less than a tape shows.
const lockedTolerance = units.Inch / 64

// weight returns one over the tolerance that the fit goes by.
func weight(d record.Datum) float64 {
	if d.Locked {
		return 1 / min(lockedTolerance, d.Within())
	}
	return 1 / d.Within()
}

// A constraint weighs as a measurement with constraintTolerance would. It begins
// constraintMargin before its limit, so that the fit does not lean past it.
const (
	constraintTolerance = units.Inch / 64
	constraintMargin    = units.Inch / 16
)

func (g group) shape(d design.Design, x []float64) *hull.Hull {
	for i, l := range g.free {
		*l.at(&d) = x[i]
	}
	if g.halfGunwale.known {
		d.Length = 2 * (g.halfGunwale.x + d.Overhang)
	}
	return g.model(d)
}

// model returns as much of a hull as the group's data are measured on.
func (g group) model(d design.Design) *hull.Hull {
	switch {
	case g.skin:
		return hull.New(d)
	case g.curve:
		return hull.Profile(d)
	}
	return hull.Lines(d)
}

// solve moves the free parameters of d to the least sum of squares of the misses over
// their tolerances. skip holds the indices of data to leave out. It returns the sum
// over the data alone.
func (g group) solve(d design.Design, skip map[int]bool) (design.Design, float64) {
	n := len(g.free)
	if n == 0 {
		return d, 0
	}
	q := geom.LeastSquares{Count: len(g.data) + g.constraints + n}
	start := make([]float64, n)
	for i, l := range g.free {
		q.Lower, q.Upper, q.Scale = append(q.Lower, l.lo), append(q.Upper, l.hi), append(q.Scale, l.spread)
		start[i] = max(l.lo, min(l.hi, *l.at(&d)))
	}
	q.Residuals = func(x, out []float64) {
		h := g.shape(d, x)
		for i, s := range g.data {
			out[i] = 0
			if !skip[i] {
				out[i] = (modelled(h, s) - s.Value) * weight(s.Datum)
			}
		}
		rest := out[len(g.data):]
		for i := range rest[:n] {
			rest[i] = (x[i] - start[i]) / g.free[i].spread
		}
		if g.constraints > 0 {
			over := rest[n:]
			g.constraint(h, over)
			for i, v := range over {
				over[i] = max(0, v+constraintMargin) / constraintTolerance
			}
		}
	}
	found := q.Minimise(start).X
	out := make([]float64, q.Count)
	q.Residuals(found, out)
	sum := 0.0
	for _, v := range out[:len(g.data)] {
		sum += v * v
	}
	for i, l := range g.free {
		d = parameter(l.key).Set(d, found[i])
	}
	if g.halfGunwale.known {
		d = parameter("length").Set(d, 2*(g.halfGunwale.x+d.Overhang))
	}
	return d, sum
}

// modelled returns what the boat measures for a datum.
func modelled(h *hull.Hull, s located) float64 {
	switch s.Kind {
	case record.LengthOverall:
		return h.Design.Length
	case record.EndHeight:
		return h.Design.EndHeight
	}
	return along(h, s.Datum, s.x)
}

// miss returns by how much the boat d misses datum i of the group.
func (g group) miss(d design.Design, i int) float64 {
	return modelled(g.model(d), g.data[i]) - g.data[i].Value
}
