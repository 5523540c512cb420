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
	flat := k.laidOut()
	out := flat.pieces()
	out = append(out, k.panels()...)
	out = append(out, k.buildingFrame(), k.bed(), k.gunwale(), k.ends())
	out = append(out, k.crosspieces()...)
	out = append(out, flat.strips()...)
	out = append(out, k.sticks()...)
	return append(out, k.ribs()...)
}

// KitBarkPages is how many pages of paper a model's bark takes, where each of its pieces has its own.
func KitBarkPages(b model.Boat) int { return kit{b}.laidOut().pages() }

// KitPages are all pages of a kit: the proof of scale, its numbers and steps, then the patterns.
func KitPages(b model.Boat, h Head) []draw.List { return drawn(kitPlan(b), h) }

// KitCount is how many pages a kit takes.
func KitCount(b model.Boat) int { return len(kitPlan(b)) }

func kitPlan(b model.Boat) []planned {
	k := kit{b}
	return plan(k.sideBySide(KitPatterns(b)), k.words()...)
}

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
		Note: "Half of the frame that holds the bottom down; cut two of stiff card, two layers, and butt them at the middle on a " +
			"strip of card. The crosspieces lie across it on the marks of their numbers."}
	end, batten := h.FrameEnd(), k.batten()
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
				p.draw(Mark, flip(geom.Vec2{X: c.X, Y: c.OutToOut / 2}),
					flip(geom.Vec2{X: c.X, Y: c.OutToOut/2 - batten}))
			}
		}
	}
	for i, c := range k.Frame.Bed.Crosspieces {
		if c.X < end {
			p.middle(geom.Vec2{X: k.OnModel(c.OutToOut/2-batten) - 0.003, Y: k.OnModel(c.X)}, strconv.Itoa(i))
		}
	}
	p.up(geom.Vec2{X: -0.002, Y: 0.002}, "half of the frame, 2 needed; this end in the middle")
	return p.done()
}

// batten is the breadth of the frame's battens, m of the boat.
func (k kit) batten() float64 { return max(frame.Batten, model.LeastStrip*k.Scale) }

// middle adds small lettering with its middle at a point in metres, y up.
func (p *Pattern) middle(at geom.Vec2, text string) {
	half := draw.Lettered(text, smallLetters, false) / 2 / millimetres
	p.fine(at.Sub(geom.Vec2{X: half, Y: 0.35 * smallLetters / millimetres}), text)
}

// up adds small lettering that runs up the paper from a point in metres, y up.
func (p *Pattern) up(at geom.Vec2, text string) {
	p.Labels = append(p.Labels, Label{At: toPaper(at), Text: text, Size: smallLetters, Turned: true})
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
	p.fine(geom.Vec2{X: 0.002, Y: bedBase + 0.001},
		"side of the bed, 4 needed; middle here; the bark lies on the curved edge")
	heel := k.OnModel(h.HeelX)
	p.draw(Mark, geom.Vec2{X: heel}, geom.Vec2{X: heel, Y: bedBase})
	p.fine(geom.Vec2{X: heel - 0.010, Y: 0.002}, "heel")
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
	tapers := f.Thwarts[len(f.Thwarts)-1].Run
	tapered := max(tapers, f.Gunwales.Run-frame.NewJoinery(k.Design).ArrowLength)
	deep := func(run float64) float64 {
		_, depth := frame.InwaleAt(k.Hull, run)
		return k.OnModel(depth)
	}
	p := Pattern{Key: "kit-gunwale", Name: k.name("gunwale"),
		Note: "From the middle to one end, along the gunwale; the other half is the same. Two inwales, " +
			millimetre(2*run) + " long, and two outwales, " + millimetre(k.OnModel(f.Gunwales.Outwale)) +
			" long, split from sticks " + millimetre(k.OnModel(k.Design.InwaleThickness)) + " thick. Carry the marks over; " +
			"the numbers are those of the ribs."}
	at := func(x, along float64) geom.Vec2 { return geom.Vec2{X: x, Y: -along} }
	p.draw(Cut, at(0, 0), at(depth, 0), at(depth, k.OnModel(tapers)), at(deep(tapered), k.OnModel(tapered)),
		at(deep(f.Gunwales.Run), run), at(0, run), at(0, 0))
	mark := func(along, beside float64, text string) {
		p.draw(Mark, at(0, along), at(depth, along))
		foot := along
		if along == 0 {
			foot = draw.Lettered(text, smallLetters, false) / millimetres
		}
		p.up(at(depth+beside, foot), text)
	}
	// The headboard is so near the end that its name stands in a line of its own.
	const near, far = 0.005, 0.0095
	mark(0, near, "gunwale, middle")
	for i, t := range f.Thwarts[1:] {
		mark(k.OnModel(t.Run), near, frame.ThwartName(i+1, len(f.Thwarts))+", post")
	}
	mark(k.OnModel(f.Headboard.Run), far, "headboard")
	mark(run, near, "end, post")
	for _, r := range k.kitRibs() {
		run := k.OnModel(r.Run)
		p.draw(Mark, at(0, run), at(depth/2, run))
		l := Label{At: toPaper(at(-0.001, run+0.001)), Text: nameOfRib(r.Number), Size: smallLetters, End: true}
		p.Labels = append(p.Labels, l)
	}
	return p.done()
}

// ends are the stem-piece and the headboard.
func (k kit) ends() Pattern {
	d, s, b := k.Design, k.Frame.Stem, k.Frame.Headboard
	p := Pattern{Key: "kit-ends", Name: k.name("stem-piece and headboard"),
		Note: "Two of each. The stem-piece is " + times(d.StemLaminations, "layers") +
			" of card, glued one on the other on " +
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
	p.fine(outer[last].Add(geom.Vec2{X: 0.004}), "stem-piece, 2; its head")
	p.fine(outer[0].Add(geom.Vec2{Y: 0.006}), "heel")
	left := -k.OnModel(b.Width)/2 - 0.02
	board := func(q geom.Vec2) geom.Vec2 { return k.at(q).Add(geom.Vec2{X: left}) }
	outline := each(b.Outline, board)
	p.draw(Cut, outline...)
	p.draw(Cut, each(mirrored(b.Outline), board)...)
	p.draw(Centre, outline[0], outline[len(outline)-1])
	p.fine(geom.Vec2{X: left - 0.008, Y: -0.006}, "headboard, 2")
	p.fine(geom.Vec2{X: left - 0.008, Y: outline[len(outline)-1].Y + 0.002}, "up")
	return p.done()
}
