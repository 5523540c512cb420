package pattern

import (
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
	// lying tells that its pieces run down the paper, and joints are where they meet, from stern to
	// bow with both ends.
	lying  bool
	joints []float64
}

type barkLine struct {
	style  Style
	points []geom.Vec2
}

// laidOut is the whole bark as it lies flat, to be cut in pieces that go on a page each where they
// can. The joints stand midway between slits and off the middle: a card strip goes behind each. It
// lies on the paper the way that takes fewer pages.
func (k kit) laidOut() *barkKit {
	b := &barkKit{kit: k, flat: &k.Skin.Flat}
	b.slits()
	b.edges()
	b.marks()
	b.joints = b.jointed(stripsWide * k.Scale)
	turned := *b
	turned.lying, turned.joints = true, b.jointed(stripsHigh*k.Scale)
	if turned.pages() <= b.pages() {
		return &turned
	}
	return b
}

// pages is how many pages of paper the pieces take.
func (b *barkKit) pages() int {
	n := 0
	for _, p := range b.pieces() {
		if p.onOnePage() {
			n++
		} else {
			n += len(p.Tiles(Paper))
		}
	}
	return n
}

// pieces are the patterns of its pieces.
func (b *barkKit) pieces() []Pattern {
	var out []Pattern
	for i := range len(b.joints) - 1 {
		out = append(out, b.piece(i))
	}
	return out
}

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

func last[T any](list []T) T { return list[len(list)-1] }

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
	b.put(Cut, append(geom.Reversed(each(trim, aft)), trim...), both[:1], both)
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
