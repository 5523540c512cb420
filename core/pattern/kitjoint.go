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

// jointed are where the bark is pieced, from stern to bow with its ends: no piece longer than
// most, and as few as can be.
func (b *barkKit) jointed(most float64) []float64 {
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
	for n := max(1, int(geom.Ceil(2*b.half()/most))); n <= len(slits)+2; n++ {
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
			if x > from+rounding && x-from <= most && b.half()-x <= float64(n-i)*most &&
				math.Abs(x-equal) < math.Abs(best-equal) {
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

// stripHalf is half the breadth of the strip of card behind a joint, m of the model. Estimate.
const stripHalf = 0.005

// piece is the bark between two joints, seen from the inside of the boat, with its edges and what
// tells it from the others. Lying it runs down the paper.
func (b *barkKit) piece(i int) Pattern {
	n := len(b.joints) - 1
	from, to := b.joints[i], b.joints[i+1]
	p := Pattern{Key: "kit-bark-" + strconv.Itoa(i+1),
		Name: b.name("bark, piece " + strconv.Itoa(i+1) + " of " + strconv.Itoa(n)),
		Note: "Grain across the boat. This is its inside."}
	turn := func(q geom.Vec2) geom.Vec2 {
		q = b.at(geom.Vec2{X: q.X - from, Y: q.Y})
		if b.lying {
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
		number, in := i+j, b.Scale
		if j == 1 {
			in = -in
		}
		if number == 0 || number == n {
			continue
		}
		low, high := b.acrossAt(x)
		p.draw(Cut, turn(geom.Vec2{X: x, Y: low}), turn(geom.Vec2{X: x, Y: high}))
		over := x + in*stripHalf
		low, high = b.acrossAt(over)
		p.draw(Dotted, turn(geom.Vec2{X: over, Y: low}), turn(geom.Vec2{X: over, Y: high}))
		p.middle(turn(geom.Vec2{X: x + in*0.010, Y: 0.7 * high}), "joint "+strconv.Itoa(number))
	}
	b.tell(&p, i, turn)
	return p.done()
}

// tell letters a piece with the boat's ends and sides and the numbers of its slits.
func (b *barkKit) tell(p *Pattern, i int, turn func(geom.Vec2) geom.Vec2) {
	from, to := b.joints[i], b.joints[i+1]
	sheet := &b.flat.Sheet
	heel := sheet.At(heel(sheet), 0, geom.Before).X
	off := 0.016 * b.Scale
	p.middle(turn(geom.Vec2{X: min(to, heel) - off, Y: 0.7 * off}), "to the bow")
	p.middle(turn(geom.Vec2{X: max(from, -heel) + off, Y: 0.7 * off}), "to the stern")
	at := (max(from, -heel) + min(to, heel)) / 2
	side := b.Hull.FrameHalfBreadth(abs(at)) / 2
	p.middle(turn(geom.Vec2{X: at, Y: max(off, side)}), "port")
	p.middle(turn(geom.Vec2{X: at, Y: min(-off, -side)}), "starboard")
	middle := len(b.flat.Gores) / 2
	for k, g := range b.flat.Gores {
		if len(g.After) < 2 || g.After[0].X < from || g.After[0].X > to {
			continue
		}
		foot := g.After[0]
		in := foot.Sub(last(g.After)).Unit().Scale(0.004 * b.Scale)
		for _, y := range both {
			number := foot.Add(in)
			p.middle(turn(geom.Vec2{X: number.X, Y: y * number.Y}), strconv.Itoa(max(k-middle, middle-k)))
		}
	}
}

// strips are those of card that go behind the joints.
func (b *barkKit) strips() []Pattern {
	var all []standing
	for i, x := range b.joints[1 : len(b.joints)-1] {
		low, high := b.acrossAt(x)
		all = append(all, plain(b.OnModel(high-low), 2*stripHalf, "card strip behind joint "+strconv.Itoa(i+1)))
	}
	if len(all) == 0 {
		return nil
	}
	return b.stand("kit-joints", "strips behind the joints", "Of card, glued over the joints on the inside.", all)
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
