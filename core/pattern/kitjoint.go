package pattern

import (
	"math"
	"sort"
	"strconv"

	"barkwright/core/geom"
)

// Where joints stand, m of the model: so far off a slit, and off the middle.
const (
	offSlit   = 0.008
	offMiddle = 0.010
)

// joints are where the bark is pieced, from stern to bow with its ends: no piece longer than
// most, and as few as can be.
func (b *barkKit) joints(most float64) []float64 {
	var slits []float64
	for _, g := range b.flat.Gores {
		if len(g.After) > 1 {
			slits = append(slits, last(g.After).Lerp(last(g.Fore), 0.5).X)
		}
	}
	sort.Float64s(slits)
	var places []float64
	for i := 1; i < len(slits); i++ {
		if m := (slits[i-1] + slits[i]) / 2; math.Abs(m) >= offMiddle*b.Scale {
			places = append(places, m)
		}
	}
	// Past the last slits, and where there are none, a joint may stand anywhere.
	free := func(from, to float64) {
		const step = 0.002
		for x := from; x <= to; x += step * b.Scale {
			if math.Abs(x) >= offMiddle*b.Scale {
				places = append(places, x)
			}
		}
	}
	if len(slits) == 0 {
		free(-b.half(), b.half())
	} else {
		free(-b.half(), slits[0]-offSlit*b.Scale)
		free(last(slits)+offSlit*b.Scale, b.half())
	}
	// As few pieces as there can be, as alike as the slits allow.
	for n := max(1, int(math.Ceil(2*b.half()/most-1e-9))); n <= len(slits)+2; n++ {
		if out, ok := b.shareOut(places, n, most); ok {
			return out
		}
	}
	// No room for a whole bay on a page: the bark goes on more pages in one piece.
	return []float64{-b.half(), b.half()}
}

// shareOut stands the joints of n pieces as near as can be to equal parts, and tells whether none
// is longer than most.
func (b *barkKit) shareOut(places []float64, n int, most float64) (out []float64, ok bool) {
	out = []float64{-b.half()}
	for i := 1; i < n; i++ {
		from := last(out)
		best, equal := math.Inf(1), -b.half()+2*b.half()*float64(i)/float64(n)
		for _, x := range places {
			if x > from+1e-9 && x-from <= most && b.half()-x <= float64(n-i)*most && math.Abs(x-equal) < math.Abs(best-equal) {
				best = x
			}
		}
		if math.IsInf(best, 1) {
			return nil, false
		}
		out = append(out, best)
	}
	out = append(out, b.half())
	return out, b.half()-out[n-1] <= most
}

// piece is the bark between two joints, with its edges and the letters of the joints. Lying it
// runs down the paper.
func (b *barkKit) piece(i int, joints []float64, lying bool) Pattern {
	n := len(joints) - 1
	from, to := joints[i], joints[i+1]
	p := Pattern{Key: "kit-bark-" + strconv.Itoa(i+1), Name: b.name("bark, piece " + strconv.Itoa(i+1) + " of " + strconv.Itoa(n)),
		Note: "Grain across the boat."}
	turn := func(q geom.Vec2) geom.Vec2 {
		q = b.at(geom.Vec2{X: q.X - from, Y: q.Y})
		if lying {
			return downThePaper(q)
		}
		return q
	}
	for _, l := range b.lines {
		for _, part := range between(l.points, from, to) {
			p.draw(l.style, each(part, turn)...)
		}
	}
	for j, x := range [2]float64{from, to} {
		if number := i + j; number > 0 && number < n {
			low, high := b.acrossAt(x)
			p.draw(Cut, turn(geom.Vec2{X: x, Y: low}), turn(geom.Vec2{X: x, Y: high}))
			in := 0.012 * b.Scale
			if j == 1 {
				in = -in
			}
			p.fine(turn(geom.Vec2{X: x + in, Y: high / 2}), "joint "+strconv.Itoa(number))
		}
	}
	if i == n-1 {
		p.fine(turn(geom.Vec2{X: to - 0.03*b.Scale, Y: 0.012 * b.Scale}), "bow")
	}
	return p.done()
}

// acrossAt is how far the bark reaches at a station, with its trim.
func (b *barkKit) acrossAt(x float64) (low, high float64) {
	for _, l := range b.lines {
		if l.style != Cut {
			continue
		}
		for i := 1; i < len(l.points); i++ {
			a, c := l.points[i-1], l.points[i]
			if (a.X-x)*(c.X-x) > 0 || a.X == c.X {
				continue
			}
			y := a.Y + (c.Y-a.Y)*(x-a.X)/(c.X-a.X)
			low, high = min(low, y), max(high, y)
		}
	}
	return low, high
}

// between is what of a line lies between two stations.
func between(line []geom.Vec2, from, to float64) [][]geom.Vec2 {
	// A window is a block of paper that is high enough for any bark.
	const high = 100.0
	window := Block{Width: to - from, Height: 2 * high}
	off := geom.Vec2{X: from, Y: -high}
	out := window.cut(line, off)
	for i, run := range out {
		out[i] = each(run, off.Add)
	}
	return out
}
