package pattern

import (
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/model"
	"barkwright/core/units"
)

// A kit is what a class makes a model from: its patterns, a page of what it is made of and how
// long everything is, and the steps of the work.

// kit draws the parts of a model. Points are in metres of the model.
type kit struct{ model.Boat }

// KitPatterns are the parts of a model, at its own size.
func KitPatterns(b model.Boat) []Pattern {
	k := kit{b}
	out := k.bark()
	out = append(out, k.panels()...)
	out = append(out, k.buildingFrame(), k.bed(), k.gunwale(), k.ends())
	out = append(out, k.sticks()...)
	return append(out, k.ribs()...)
}

// KitPages are all pages of a kit: the proof of scale, its numbers and steps, then the patterns.
func KitPages(b model.Boat, h Head) []draw.List {
	return drawn(plan(KitPatterns(b), kit{b}.words()...), h)
}

// KitCount is how many pages a kit takes.
func KitCount(b model.Boat) int { return len(plan(KitPatterns(b), kit{b}.words()...)) }

// KitPage is the room on a page for a model's bark.
func KitPage() model.Page { return model.Page{Long: stripsHigh, Wide: stripsWide} }

// at brings a point of the boat to the model.
func (k kit) at(q geom.Vec2) geom.Vec2 { return q.Scale(1 / k.Scale) }

// on brings a line of the boat to the model.
func (k kit) on(line []geom.Vec2) []geom.Vec2 { return each(line, k.at) }

// millimetre names a size on the model.
func millimetre(v float64) string { return units.Trimmed(v/units.Millimetre, 1) + " mm" }

// name says what is drawn, of which scale.
func (k kit) name(what string) string { return "Model 1:" + units.Trimmed(k.Scale, 1) + ", " + what }

// times is a count of things, or of one.
func times(n int, of string) string {
	if n == 1 {
		return "1 " + of
	}
	return strconv.Itoa(n) + " " + of
}

// buildingFrame is the forward half of the building frame with its crosspieces as strips.
func (k kit) buildingFrame() Pattern {
	h := k.Hull
	p := Pattern{Key: "kit-frame", Name: k.name("building frame"),
		Note: "Half of the frame that holds the bottom down; cut two, and butt them at the middle on a strip of card. The " +
			"crosspieces lie across it on their marks. Stiff card, two layers."}
	end, batten := h.FrameEnd(), max(frame.Batten, model.LeastStrip*k.Scale)
	outer := make([]geom.Vec2, framePieces+1)
	for i := range outer {
		x := end * float64(i) / framePieces
		outer[i] = geom.Vec2{X: x, Y: h.FrameHalfBreadth(x)}
	}
	var inner []geom.Vec2
	for _, q := range outer {
		if q.Y > batten {
			inner = append(inner, geom.Vec2{X: q.X, Y: q.Y - batten})
		}
	}
	inner = append(inner, geom.Vec2{X: inner[len(inner)-1].X, Y: 0})
	for _, side := range both {
		flip := func(q geom.Vec2) geom.Vec2 { return k.at(geom.Vec2{X: side * q.Y, Y: q.X}) }
		p.draw(Cut, each(outer, flip)...)
		p.draw(Cut, each(inner, flip)...)
		p.draw(Cut, flip(outer[0]), flip(inner[0]))
		for _, c := range k.Frame.Bed.Crosspieces {
			if c.X < end {
				p.draw(Mark, flip(geom.Vec2{X: c.X, Y: c.OutToOut / 2}), flip(geom.Vec2{X: c.X, Y: c.OutToOut/2 - batten}))
			}
		}
	}
	p.label(geom.Vec2{X: 0.004, Y: k.OnModel(end) / 2}, "to the bow")
	y := -0.012
	for i, c := range k.Frame.Bed.Crosspieces {
		n := 2
		if c.X == 0 {
			n = 1
		}
		y = p.strip(geom.Vec2{X: -k.OnModel(c.OutToOut) / 2, Y: y}, k.OnModel(c.OutToOut), k.OnModel(batten),
			"crosspiece "+strconv.Itoa(i)+", "+times(n, "needed"))
	}
	return p.done()
}

// strip draws a strip lying down from its upper left corner, with words under it, and returns
// where the next may begin.
func (p *Pattern) strip(at geom.Vec2, length, breadth float64, text string) (y float64) {
	b := at.Add(geom.Vec2{X: length})
	c, d := b.Add(geom.Vec2{Y: -breadth}), at.Add(geom.Vec2{Y: -breadth})
	p.draw(Cut, at, b, c, d, at)
	p.fine(d.Add(geom.Vec2{Y: -0.004}), text)
	return at.Y - breadth - 0.008
}

// fine adds small lettering at a point in metres, y up.
func (p *Pattern) fine(at geom.Vec2, text string) {
	p.Labels = append(p.Labels, Label{At: toPaper(at), Text: text, Size: smallLetters})
}

// bedBase is how high the bed stands under its lowest place, m of the model. Estimate.
const bedBase = 0.010

// bed is the side of the forward half of the building bed.
func (k kit) bed() Pattern {
	h := k.Hull
	p := Pattern{Key: "kit-bed", Name: k.name("building bed"),
		Note: "The side of half of the bed, with its crown and its blocks at the ends: cut four of thick card, two for each " +
			"half, and stand them up 20 mm apart under a strip of card. The bark's centre line lies along it. Pins at the " +
			"marks stand for the stakes."}
	line := []geom.Vec2{{Y: 0}}
	// As far as the posts under the gunwales' ends stand on it.
	to := max(h.HeelX, h.GunwaleX)
	for i := range framePieces + 1 {
		x := to * float64(i) / framePieces
		line = append(line, k.at(geom.Vec2{X: x, Y: frame.BedHeight(h, x)}).Add(geom.Vec2{Y: bedBase}))
	}
	end := k.OnModel(to)
	p.draw(Cut, append(line, geom.Vec2{X: end}, geom.Vec2{})...)
	for _, s := range k.Frame.Bed.Stakes {
		x := k.OnModel(s.X)
		if s.X > to {
			continue
		}
		p.draw(Mark, geom.Vec2{X: x}, geom.Vec2{X: x, Y: bedBase / 2})
	}
	p.fine(geom.Vec2{X: 0.004, Y: 0.002}, "middle")
	heel := k.OnModel(h.HeelX)
	p.draw(Mark, geom.Vec2{X: heel}, geom.Vec2{X: heel, Y: bedBase})
	p.fine(geom.Vec2{X: heel - 0.012, Y: 0.002}, "heel")
	turned := p
	turned.Lines, turned.Labels = nil, nil
	for _, l := range p.Lines {
		turned.Lines = append(turned.Lines, Line{each(l.Points, quarterTurn), l.Style})
	}
	for _, l := range p.Labels {
		l.At, l.Turned = quarterTurn(l.At), true
		turned.Labels = append(turned.Labels, l)
	}
	return turned.done()
}

// quarterTurn stands a drawing on the paper up on its side, so that what lettering ran to the
// right runs up.
func quarterTurn(q geom.Vec2) geom.Vec2 { return geom.Vec2{X: q.Y, Y: -q.X} }

// gunwale is half of an inwale from the side, with the marks of what stands on it.
func (k kit) gunwale() Pattern {
	f := k.Frame
	run, depth := k.OnModel(f.Gunwales.Run), k.OnModel(k.Design.InwaleDepth)
	p := Pattern{Key: "kit-gunwale", Name: k.name("gunwale"),
		Note: "From the middle to one end, along the gunwale; the other half is the same. Two inwales, " +
			millimetre(2*run) + " long, and two outwales, " + millimetre(k.OnModel(f.Gunwales.Outwale)) +
			" long, split from sticks " + millimetre(k.OnModel(k.Design.InwaleThickness)) + " thick. Carry the marks over."}
	at := func(x, along float64) geom.Vec2 { return geom.Vec2{X: x, Y: -along} }
	p.draw(Cut, at(0, 0), at(depth, 0), at(depth, run), at(0, run), at(0, 0))
	mark := func(along float64, text string) {
		p.draw(Mark, at(0, along), at(depth, along))
		p.fine(at(depth+0.002, along+0.001), text)
	}
	mark(0, "middle")
	for i, t := range f.Thwarts[1:] {
		mark(k.OnModel(t.Run), frame.ThwartName(i+1, len(f.Thwarts))+", a post under it")
	}
	mark(k.OnModel(f.Headboard.Run), "headboard")
	mark(run, "end, a post under it")
	for _, r := range k.kitRibs() {
		p.draw(Mark, at(0, k.OnModel(r.Run)), at(depth/2, k.OnModel(r.Run)))
	}
	return p.done()
}

// ends are the stem-piece and the headboard.
func (k kit) ends() Pattern {
	d, s, b := k.Design, k.Frame.Stem, k.Frame.Headboard
	p := Pattern{Key: "kit-ends", Name: k.name("stem-piece and headboard"),
		Note: "Two of each. The stem-piece is " + times(d.StemLaminations, "layers") + " of card, glued one on the other on " +
			"the outer curve and let dry there; its heel goes under the headboard's notch."}
	outer := k.on(geom.Offset(s.Profile.Points, d.BarkThickness))
	from := outer[0]
	shift := func(q geom.Vec2) geom.Vec2 { return q.Sub(from) }
	outer = each(outer, shift)
	p.draw(Cut, outer...)
	last := len(outer) - 1
	if min(s.Radius, s.SolidRadius) > d.BarkThickness+d.StemDepth {
		inner := geom.Offset(outer, k.OnModel(d.StemDepth))
		p.draw(Cut, inner...)
		p.draw(Cut, outer[0], inner[0])
		p.draw(Cut, outer[last], inner[last])
		p.draw(Mark, outer[s.Point], inner[s.Point])
	}
	p.fine(outer[last].Add(geom.Vec2{X: 0.004}), "head")
	p.fine(outer[0].Add(geom.Vec2{Y: 0.006}), "heel")
	left := -k.OnModel(b.Width)/2 - 0.02
	board := func(q geom.Vec2) geom.Vec2 { return k.at(q).Add(geom.Vec2{X: left}) }
	outline := each(b.Outline, board)
	p.draw(Cut, outline...)
	p.draw(Cut, each(mirrored(b.Outline), board)...)
	p.draw(Centre, outline[0], outline[len(outline)-1])
	p.fine(geom.Vec2{X: left - 0.008, Y: -0.006}, "headboard")
	return p.done()
}
