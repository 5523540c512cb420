package refit

import (
	"fmt"
	"math"
	"sort"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// hand is how near a thwart, or an end of a curve, a reading counts as taken there.
const hand = 4 * units.Inch

// Corrected is what readings changed of a curve in one place.
type Corrected struct {
	record.Kind
	// X is the place, metres from amidships, Was and Is what is measured there.
	X, Was, Is float64
}

// Named is what was corrected and where.
func (c Corrected) Named(s units.System) string {
	return record.Datum{Kind: c.Kind, At: record.Place{Distance: c.X}}.Named(s)
}

// curve is one that readings correct along the gunwale.
type curve struct {
	kind  record.Kind
	kinds []record.Kind
	list  func(*design.Design) *shape.Corrections
	// share is the change of the curve for a change of the reading by one.
	share float64
	// mid and end are the keys of the curve's own numbers for amidships and for the
	// gunwale's end, "" where it has no such number.
	mid, end string
	// skin tells that it takes the whole hull to measure it.
	skin bool
}

// hull is what the curve is measured on.
func (c curve) hull(d design.Design) *hull.Hull {
	if c.skin {
		return hull.New(d)
	}
	return hull.Lines(d)
}

var (
	planCurve = curve{kind: record.ClearWidth, kinds: []record.Kind{record.ClearWidth}, share: 0.5, mid: "beam",
		list: func(d *design.Design) *shape.Corrections { return &d.Corrected.Plan }}
	sheerCurve = curve{kind: record.SheerHeight, kinds: []record.Kind{record.SheerHeight, record.RailHeight}, share: 1,
		mid: "depth", end: "gunwaleEndHeight",
		list: func(d *design.Design) *shape.Corrections { return &d.Corrected.Sheer }}
	girthCurve = curve{kind: record.HalfGirth, kinds: []record.Kind{record.HalfGirth}, share: 1, skin: true,
		list: func(d *design.Design) *shape.Corrections { return &d.Corrected.Girth }}
)

// cluster is what was read at one place: the mean of readings within nearby.
type cluster struct {
	x, miss float64 // of the readings over the boat
	n       float64
	index   []int
}

// clusters are the readings of a curve by place.
func (b *boat) clusters(c curve) []cluster {
	data := b.samples(c.kinds...)
	if len(data) == 0 {
		return nil
	}
	h := c.hull(b.design)
	sort.SliceStable(data, func(i, k int) bool { return data[i].x < data[k].x })
	var list []cluster
	for _, s := range data {
		if last := len(list) - 1; last < 0 || s.x-list[last].x/list[last].n > nearby {
			list = append(list, cluster{})
		}
		l := &list[len(list)-1]
		l.x, l.n, l.miss, l.index = l.x+s.x, l.n+1, l.miss+s.Value-along(h, s.Datum, s.x), append(l.index, s.index)
	}
	for i := range list {
		list[i].x /= list[i].n
		list[i].miss /= list[i].n
	}
	return list
}

const (
	// corrections are found one after the other: readings a little off their places
	// touch each other, and are settled in a few rounds.
	correctionRounds = 4
	// readAlready is a miss that needs no correction, m.
	readAlready = 1e-7
)

// correct brings a curve to its readings. Each reading changes it in full at its own
// place and not at all at the next place that was made or read. The rest of the curve
// stays as it is.
func (b *boat) correct(c curve) []Corrected {
	var done []Corrected
	before := b.design
	list := b.clusters(c)
	if len(list) == 0 {
		return nil
	}
	sites := b.sites(c, list)
	for round := range correctionRounds {
		for i, l := range list {
			by, ok := b.correctAt(c, l, sites[i])
			if ok && round == 0 {
				was := along(c.hull(before), record.Datum{Kind: c.kind}, l.x)
				done = append(done, Corrected{c.kind, l.x, was, was + by})
			}
		}
		b.standThwarts()
		list = b.clusters(c)
		if len(list) != len(sites) {
			break
		}
	}
	return done
}

// standThwarts finds where the thwarts stand on the gunwale as it now runs.
func (b *boat) standThwarts() {
	h := finished(b.design)
	for n := 1; n <= b.design.OuterThwarts(); n++ {
		b.ev.stations.thwarts[0][n] = at(thwartX(h, n))
	}
}

// sites returns the extent of the correction for each reading. It runs from and to the
// nearest of the thwarts without a reading, the other readings and the curve's ends. A
// correction made before at the same places keeps its extent.
func (b *boat) sites(c curve, list []cluster) []shape.Correction {
	half := b.design.HalfGunwale()
	places := []float64{0, 1}
	for n := 1; n <= b.design.OuterThwarts(); n++ {
		thwart, near := b.ev.stations.thwarts[0][n], false
		for _, l := range list {
			near = near || math.Abs(l.x-thwart.x) < hand
		}
		if thwart.known && !near {
			places = append(places, thwart.x/half)
		}
	}
	for _, l := range list {
		places = append(places, placeOf(l.x, half))
	}
	sites := make([]shape.Correction, len(list))
	for i, l := range list {
		s := shape.Correction{At: placeOf(l.x, half), To: 1}
		for _, p := range places {
			if p < s.At {
				s.From = max(s.From, p)
			}
			if p > s.At {
				s.To = min(s.To, p)
			}
		}
		for _, had := range c.list(&b.design).List() {
			if same := func(p, q float64) bool { return math.Abs(p-q)*half < nearby }; same(had.At, s.At) &&
				same(had.From, s.From) && same(had.To, s.To) {
				s = shape.Correction{At: had.At, From: had.From, To: had.To}
			}
		}
		sites[i] = s
	}
	return sites
}

// placeOf returns the place of a correction for a reading at x, 0 amidships and 1 at
// the gunwale's end. A reading near either counts as taken there.
func placeOf(x, half float64) float64 {
	switch {
	case x < hand:
		return 0
	case half-x < hand:
		return 1
	}
	return x / half
}

// correctAt adds the correction that one place asks for and returns the change there. It
// returns false where no correction is needed or possible.
func (b *boat) correctAt(c curve, l cluster, add shape.Correction) (by float64, ok bool) {
	if math.Abs(l.miss) < readAlready || b.ev.aside[l.index[0]] {
		return 0, false
	}
	half := b.design.HalfGunwale()
	refuse := func(why string) (float64, bool) {
		b.ev.asideAll(b.ev.data[l.index[0]].Named(b.ev.system)+": "+why, l.index, l.index)
		return 0, false
	}
	if add.At == 1 && c.end == "" {
		return refuse("this is too near the end of the gunwales to be told there.")
	}
	// Off its place a little, the correction is not whole.
	add.By = 1
	var one shape.Corrections
	one, _ = one.Add(add)
	add.By = c.share * l.miss / one.At(l.x/half)
	with, room := c.list(&b.design).Add(add)
	switch {
	case !room:
		return refuse(fmt.Sprintf("%d places of a curve can be corrected: take the corrections off and begin again from "+
			"the numbers.", shape.MostCorrections))
	case math.Abs(with.Of(add.At)) > design.MostCorrection:
		return refuse(fmt.Sprintf("this is %s off the boat as it is drawn. Up to %s is corrected: measure again, or "+
			"change the boat's numbers.",
			b.ev.length(math.Abs(l.miss)), b.ev.length(design.MostCorrection/c.share)))
	}
	if key := map[float64]string{0: c.mid, 1: c.end}[add.At]; key != "" {
		p := parameter(key)
		v := p.Get(&b.design) + add.By/c.share
		if v < p.Min || v > p.Max {
			return refuse(fmt.Sprintf("%s is outside what is drawn here, %s to %s.", p.Format(v, b.ev.system),
				p.Format(p.Min, b.ev.system), p.Format(p.Max, b.ev.system)))
		}
		b.design = keepMade(b.design, p.Set(b.design, v), b.ev)
	}
	*c.list(&b.design) = with
	return l.miss, true
}
