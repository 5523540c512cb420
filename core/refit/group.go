package refit

import (
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/units"
)

// sample is a datum of a block with its station.
type sample struct {
	record.Datum
	x     float64
	index int // in the record
}

// loose is a parameter that a block may move, between bounds narrower than the
// table's where the rest of the boat asks for it. Its rule is the value it has
// when the block begins.
type loose struct {
	key    string
	at     func(*design.Design) *float64
	lo, hi float64
	// spread is how far from its rule a boat may well be.
	spread float64
}

// freed makes a parameter loose. The rule counts as good to half the parameter's
// range, the same for every parameter: a pull that settles what the record leaves
// open and that scaled measurements outweigh many times.
func freed(key string, at func(*design.Design) *float64) loose {
	p := parameter(key)
	return loose{key: key, at: at, lo: p.Min, hi: p.Max, spread: (p.Max - p.Min) / 2}
}

func (l loose) within(lo, hi float64) loose {
	l.lo = max(l.lo, lo)
	l.hi = max(l.lo, min(l.hi, hi))
	return l
}

// block is a group of parameters that one group of measurements decides.
type block struct {
	loose []loose
	data  []sample
	// curve tells that the model needs the end's profile, which is slow.
	curve bool
	// skin tells that it needs the whole hull.
	skin bool
	// fence fills, as lengths over what can be built, what no boat may exceed.
	fence  func(h *hull.Hull, over []float64)
	fences int
	// halfGunwale is kept where the overhang is loose, so that the length follows it; 0
	// where it is not.
	halfGunwale float64
}

// lockedTolerance is what a locked measurement may miss by; a choice of this
// project, under what a tape shows.
const lockedTolerance = units.Inch / 64

// weight returns one over the tolerance that the fit goes by.
func weight(d record.Datum) float64 {
	if d.Locked {
		return 1 / min(lockedTolerance, d.Within())
	}
	return 1 / d.Within()
}

// A fence is felt as a measurement would be that is good to fenceTolerance, and
// fenceMargin before it is reached, so that the fit does not lean past it.
const (
	fenceTolerance = units.Inch / 64
	fenceMargin    = units.Inch / 16
)

func (b block) shape(d design.Design, x []float64) *hull.Hull {
	for i, l := range b.loose {
		*l.at(&d) = x[i]
	}
	if b.halfGunwale > 0 {
		d.Length = 2 * (b.halfGunwale + d.Overhang)
	}
	return b.model(d)
}

// model is as much of a hull as the block's data are measured on.
func (b block) model(d design.Design) *hull.Hull {
	switch {
	case b.skin:
		return hull.New(d)
	case b.curve:
		return hull.Profile(d)
	}
	return hull.Lines(d)
}

// solve moves the loose parameters of d to the least sum of squares of the misses
// over their tolerances; skip holds the places in data to leave out. It returns
// the sum over the data alone.
func (b block) solve(d design.Design, skip map[int]bool) (design.Design, float64) {
	n := len(b.loose)
	if n == 0 {
		return d, 0
	}
	q := geom.LeastSquares{Count: len(b.data) + b.fences + n}
	start := make([]float64, n)
	for i, l := range b.loose {
		q.Lower, q.Upper, q.Scale = append(q.Lower, l.lo), append(q.Upper, l.hi), append(q.Scale, l.spread)
		start[i] = max(l.lo, min(l.hi, *l.at(&d)))
	}
	q.Residuals = func(x, out []float64) {
		h := b.shape(d, x)
		for i, s := range b.data {
			out[i] = 0
			if !skip[i] {
				out[i] = (modelled(h, s) - s.Value) * weight(s.Datum)
			}
		}
		rest := out[len(b.data):]
		for i := range rest[:n] {
			rest[i] = (x[i] - start[i]) / b.loose[i].spread
		}
		if b.fences > 0 {
			over := rest[n:]
			b.fence(h, over)
			for i, v := range over {
				over[i] = max(0, v+fenceMargin) / fenceTolerance
			}
		}
	}
	found := q.Minimise(start).X
	out := make([]float64, q.Count)
	q.Residuals(found, out)
	sum := 0.0
	for _, v := range out[:len(b.data)] {
		sum += v * v
	}
	for i, l := range b.loose {
		d = parameter(l.key).Set(d, found[i])
	}
	if b.halfGunwale > 0 {
		d = parameter("length").Set(d, 2*(b.halfGunwale+d.Overhang))
	}
	return d, sum
}

// modelled is what the boat measures for a sample.
func modelled(h *hull.Hull, s sample) float64 {
	switch s.Kind {
	case record.LengthOverall:
		return h.Design.Length
	case record.EndHeight:
		return h.Design.EndHeight
	}
	return along(h, s.Datum, s.x)
}

// miss is by how much the boat d misses the datum at place i of the block.
func (b block) miss(d design.Design, i int) float64 {
	return modelled(b.model(d), b.data[i]) - b.data[i].Value
}
