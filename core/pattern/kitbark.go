package pattern

import (
	"math"
	"sort"
	"strconv"

	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/model"
)

// lip is one of the two edges of a slit that come together when it closes: its end as the bark
// was laid flat, and as it is drawn.
type lip struct{ was, is geom.Vec2 }

// barkKit is the model's bark laid flat, in metres of the boat, bow to the right, port up.
type barkKit struct {
	kit
	flat  *bark.Flat
	lines []barkLine
	lips  []lip
}

type barkLine struct {
	style  Style
	points []geom.Vec2
}

// bark is the whole bark as it lies flat, in pieces that go on a page each where they can. The
// joints stand midway between slits and off the middle: a card strip goes behind each.
func (k kit) bark() []Pattern {
	b := barkKit{kit: k, flat: &k.Skin.Flat}
	b.slits()
	b.edges()
	b.marks()
	lying := k.OnModel(b.breadth()) <= stripsWide
	along := stripsWide
	if lying {
		along = stripsHigh
	}
	joints := b.joints(along * k.Scale)
	var out []Pattern
	for i := range len(joints) - 1 {
		out = append(out, b.piece(i, joints, lying))
	}
	return out
}

// breadth is that of the bark with its trim.
func (b *barkKit) breadth() float64 { return b.flat.Breadth + 2*b.Design.GunwaleTurn }

// half is half its length.
func (b *barkKit) half() float64 { return b.flat.Length / 2 }

// put draws a line of the forward port quarter in the quarters of those signs.
func (b *barkKit) put(style Style, line []geom.Vec2, ends, sides []float64) {
	for _, x := range ends {
		for _, y := range sides {
			b.lines = append(b.lines, barkLine{style, each(line, func(q geom.Vec2) geom.Vec2 {
				return geom.Vec2{X: x * q.X, Y: y * q.Y}
			})})
		}
	}
}

// slits are cut straight from the edge in to the foot. Their lips are drawn as long as one
// another: the longer is cut back at its outer end, in the trim.
func (b *barkKit) slits() {
	for _, g := range b.flat.Gores {
		if len(g.After) < 2 {
			continue
		}
		after, fore := geom.NewPolyline(g.After), geom.NewPolyline(g.Fore)
		length := min(after.Length(), fore.Length())
		a, f := cutBack(after, length), cutBack(fore, length)
		b.lips = append(b.lips, lip{last(g.After), last(a)}, lip{last(g.Fore), last(f)})
		foot, end := g.After[0], last(a).Lerp(last(f), 0.5)
		out := end.Sub(foot).Unit().Scale(b.Design.GunwaleTurn)
		b.put(Cut, []geom.Vec2{foot, end.Add(out)}, both[:1], both)
		if g.State == bark.GoreCut {
			b.put(Dotted, a, both[:1], both)
			b.put(Dotted, f, both[:1], both)
		}
	}
}

func last(line []geom.Vec2) geom.Vec2 { return line[len(line)-1] }

// cutBack is a line as far as a length along it.
func cutBack(p geom.Polyline, length float64) []geom.Vec2 {
	var out []geom.Vec2
	for i, run := range p.Run {
		if run < length {
			out = append(out, p.Points[i])
		}
	}
	return append(out, p.At(length))
}

// cured is an edge whose ends are where the lips are drawn to.
func (b *barkKit) cured(run []geom.Vec2) []geom.Vec2 {
	const same = 1e-9
	out := append([]geom.Vec2{}, run...)
	for _, l := range b.lips {
		for _, i := range [2]int{0, len(out) - 1} {
			if run[i].Sub(l.was).Len() < same {
				out[i] = l.is
			}
		}
	}
	return out
}

// edges are the top edge, with the bark left outside it that is cut to, and the ends, which are
// sewn edge to edge and so have nothing left.
func (b *barkKit) edges() {
	sheet := &b.flat.Sheet
	var trim []geom.Vec2
	for _, run := range sheet.Row(sheet.Rows - 1) {
		run = b.cured(run)
		b.put(Mark, run, both, both)
		trim = append(trim, geom.Offset(run, b.Design.GunwaleTurn)...)
	}
	outline := append(append([]geom.Vec2{}, sheet.Row(0)[0][heel(sheet):]...), sheet.Column(len(sheet.Places)-1, 1, geom.Before)...)
	b.put(Cut, append(outline, last(trim)), both, both)
	// Across the middle it goes on as its own mirror image.
	b.put(Cut, append(reversed(each(trim, aft)), trim...), both[:1], both)
	b.holes(geom.NewPolyline(outline))
}

// holes are pricked along the ends, alike on all four edges.
func (b *barkKit) holes(end geom.Polyline) {
	spacing, in, arm := b.Scale*model.HoleSpacing, b.Scale*model.HoleIn, 0.0005*b.Scale
	for run := spacing; run < end.Length()-spacing/2; run += spacing {
		along := end.Heading(run)
		at := end.At(run).Add(along.Left().Scale(in))
		b.put(Mark, []geom.Vec2{at.Sub(along.Scale(arm)), at.Add(along.Scale(arm))}, both, both)
		b.put(Mark, []geom.Vec2{at.Sub(along.Left().Scale(arm)), at.Add(along.Left().Scale(arm))}, both, both)
	}
}

// marks are the centre line and the frame, round which the sides turn up.
func (b *barkKit) marks() {
	b.lines = append(b.lines, barkLine{Centre, []geom.Vec2{{X: -b.half()}, {X: b.half()}}})
	line := make([]geom.Vec2, framePieces+1)
	for i := range line {
		x := b.Hull.FrameEnd() * float64(i) / framePieces
		line[i] = geom.Vec2{X: x, Y: b.Hull.FrameHalfBreadth(x)}
	}
	b.put(Centre, line, both, both)
}

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
		free(lastOf(slits)+offSlit*b.Scale, b.half())
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
		from := lastOf(out)
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

func lastOf(list []float64) float64 { return list[len(list)-1] }

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
			return geom.Vec2{X: -q.Y, Y: -q.X}
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
	var out [][]geom.Vec2
	var run []geom.Vec2
	flush := func() {
		if len(run) > 1 {
			out = append(out, run)
		}
		run = nil
	}
	for i := 1; i < len(line); i++ {
		a, b, ok := window.clip(line[i-1].Sub(off), line[i].Sub(off))
		if !ok {
			flush()
			continue
		}
		a, b = a.Add(off), b.Add(off)
		if len(run) == 0 || last(run) != a {
			flush()
			run = []geom.Vec2{a}
		}
		run = append(run, b)
	}
	flush()
	return out
}
