package pattern

import (
	"math"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// tenth is the scale of the outline: the whole bark of a 16 ft canoe is then 20 in
// long on paper, three sheets side by side.
const tenth = 0.1

// apart is how far off the sheet a side panel is drawn, m of bark, so that both
// edges of its seam are seen.
const apart = 0.1

// outline draws the bark on the bed at a tenth. Its points are in metres of bark.
type outline struct {
	maker
	Pattern
}

// outlinePattern is the whole bark as it lies on the bed, bow to the right and port
// up. What is cut is whole: the edges of the sheet, the gores from their feet and
// the side panels, each off its seam.
func outlinePattern(m maker) []Pattern {
	if m.Skin == nil || m.Skin.Flat.State != geom.Converged {
		return nil
	}
	o := outline{m, Pattern{Key: "outline", Name: "Bark laid flat, at a tenth",
		Note: "At a tenth of its size: 1 mm on paper is 10 mm of bark, and 1 in is 10 in. Bow to the right, port up. " +
			"Cut on the whole lines to try the bark in paper; the dotted ones are the bark left to trim, and the " +
			"building frame. Side panels lie off the seam that they are sewn to. Gores are named by about how much rides " +
			"over at the edge: slash them, and trim after the sides are up."}}
	if m.Bark.Uneven() {
		o.Note += " The sheets on the bed differ in width: side panels and the ends of the gores are drawn for the " +
			"narrowest. In a wider one slash on to its own edge, and sew on what the cutting list says."
	}
	o.pieces()
	o.gores()
	o.marks()
	return []Pattern{o.done()}
}

// put draws a line of the forward port quarter in the quarters of those signs.
func (o *outline) put(style Style, line []geom.Vec2, ends, sides []float64) {
	for _, x := range ends {
		for _, y := range sides {
			o.draw(style, each(line, func(q geom.Vec2) geom.Vec2 {
				return geom.Vec2{X: x * tenth * q.X, Y: y * tenth * q.Y}
			})...)
		}
	}
}

var both = []float64{1, -1}

// write letters a place, from there or to there.
func (o *outline) write(x, y float64, text string) {
	o.label(geom.Vec2{X: tenth * x, Y: tenth * y}, text)
}

// lettered is about how long a text is, m of bark.
func lettered(text string) float64 {
	return draw.Lettered(text, twelvePoints, false) / tenth / millimetres
}

// middled letters a place to both sides alike; up is in heights of the letters.
func (o *outline) middled(x, y, up float64, text string) {
	o.write(x-lettered(text)/2, y+up*twelvePoints/tenth/millimetres, text)
}

// fromJoint is how far off a joint lettering stays, m of bark.
const fromJoint = 0.03

// pieces draws the sheet's edges from gore to gore and round the ends, and every
// panel once round.
func (o *outline) pieces() {
	f := o.Skin.Flat
	sheet := &f.Sheet
	o.put(Cut, append(sheet.Row(0)[0][heel(sheet):], sheet.Column(len(sheet.Places)-1, 1, geom.Before)...), both, both)
	column := 0
	for _, run := range sheet.Row(sheet.Rows - 1) {
		o.edge(run)
		from := 0
		for i := range run {
			if o.panelled(sheet.Places[column+i]) {
				o.trim(run[from:i])
				from = i + 1
			}
		}
		o.trim(run[from:])
		// The next piece starts in the column that this one ended in, across the slit.
		column += len(run) - 1
	}
	for i := range f.Panels {
		p := &f.Panels[i]
		top := p.Row(p.Rows - 1)[0]
		round := append(p.Row(0)[0], p.Column(len(p.Places)-1, 1, geom.Before)...)
		round = append(round, geom.Reversed(top)[1:]...)
		ends := both
		if p.Places[0] == 0 {
			// It goes on aft of amidships as its own mirror image.
			round, ends = append(round, geom.Reversed(each(round, aft))[1:]...), both[:1]
		}
		round = each(append(round, round[0]), off)
		o.put(Cut, round, ends, both)
		o.trim(each(top, off))
	}
	o.strips(o.Bark.Port, 1)
	o.strips(o.Bark.Star, -1)
}

// strips names the strips of a side's panels and draws their butts.
func (o *outline) strips(strips []bark.Laid, side float64) {
	for _, s := range strips {
		named := false
		for _, half := range s.Halves() {
			for i := range o.Skin.Flat.Panels {
				low, high := o.Skin.Flat.Panels[i].Between(half.From, half.To)
				if named || len(low) == 0 {
					continue
				}
				named = true
				at := off(low[len(low)/2].Lerp(high[len(high)/2], 0.5))
				text := s.Name
				if s.Wanting() {
					text += ", wanting"
				}
				o.middled(half.Sign*at.X, side*at.Y, -0.4, text)
			}
		}
	}
	const sliver = 1e-4
	for _, b := range o.Bark.Butts {
		if b.Port != (side > 0) {
			continue
		}
		for i := range o.Skin.Flat.Panels {
			low, high := o.Skin.Flat.Panels[i].Between(math.Abs(b.Along)-sliver, math.Abs(b.Along)+sliver)
			if len(low) > 0 {
				o.put(Cut, []geom.Vec2{off(low[0]), off(high[0])}, []float64{math.Copysign(1, b.Along)}, []float64{side})
			}
		}
	}
}

// heel is the last column whose foot lies on the bed's centre line.
func heel(sheet *bark.Piece) int {
	last := 0
	for c, place := range sheet.Places {
		if place <= 1 {
			last = c
		}
	}
	return last
}

// panelled tells whether a panel stands at a place.
func (o *outline) panelled(place float64) bool {
	for _, p := range o.Bark.Panels {
		if place >= p.From && place <= p.To {
			return true
		}
	}
	return false
}

func aft(q geom.Vec2) geom.Vec2 { return geom.Vec2{X: -q.X, Y: q.Y} }

func off(q geom.Vec2) geom.Vec2 { return geom.Vec2{X: q.X, Y: q.Y + apart} }

// edge draws an edge; one that starts amidships goes on as its mirror image.
func (o *outline) edge(run []geom.Vec2) {
	if run[0].X == 0 {
		o.put(Cut, append(geom.Reversed(each(run[1:], aft)), run...), both[:1], both)
		return
	}
	o.put(Cut, run, both, both)
}

// trim draws the bark left to trim outside an edge.
func (o *outline) trim(run []geom.Vec2) {
	if turn := o.Design.GunwaleTurn; turn > 0 && len(run) > 1 {
		o.put(Dotted, geom.Offset(run, turn), both, both)
	}
}

// gores draws each opening from edge to foot and out again.
func (o *outline) gores() {
	for _, g := range o.Skin.Flat.Gores {
		if len(g.After) == 0 {
			continue
		}
		o.put(Cut, append(geom.Reversed(g.After), g.Fore[1:]...), both[:1], both)
		text := o.small(g.Width)
		switch g.State {
		case bark.GoreLetIn:
			text = "let in " + o.small(-g.Width)
		case bark.GoreNotNeeded:
			text = "slit"
		}
		o.middled(g.After[0].X, g.After[0].Y, -2.4, text)
	}
}

// marks draws what the bark is set by: centre line, heels, frame and sheets.
func (o *outline) marks() {
	f, d := o.Skin.Flat, o.Design
	o.draw(Centre, geom.Vec2{X: -tenth * f.Length / 2}, geom.Vec2{X: tenth * f.Length / 2})
	o.middled(f.Length/2-0.2, 0, 0.4, "bow")
	at := f.Sheet.At(heel(&f.Sheet), 0, geom.Before).X
	o.put(Mark, []geom.Vec2{{X: at, Y: -0.05}, {X: at, Y: 0.05}}, both, both[:1])
	o.middled(at, -0.05, -2, "heel")
	o.middled(-at, -0.05, -2, "heel")
	frame := make([]geom.Vec2, framePieces+1)
	for i := range frame {
		x := o.Hull.FrameEnd() * float64(i) / framePieces
		frame[i] = geom.Vec2{X: x, Y: o.Hull.FrameHalfBreadth(x)}
	}
	o.put(Dotted, frame, both, both)
	aside := frame[framePieces/2]
	o.middled(aside.X, -aside.Y, 1.2, "building frame")
	for i, s := range o.Bark.Bed {
		half := s.Width / 2
		box := []geom.Vec2{{X: s.Aft, Y: -half}, {X: s.Bow, Y: -half}, {X: s.Bow, Y: half}, {X: s.Aft, Y: half},
			{X: s.Aft, Y: -half}}
		o.put(Mark, box, both[:1], both[:1])
		text := s.Name + ", " + o.length(s.Width) + " wide"
		if s.Wanting() {
			text += ", wanting"
		}
		x := s.Aft + fromJoint
		switch last := len(o.Bark.Bed) - 1; {
		case last == 0:
			x = -lettered(text) / 2
		case i == last:
			x = s.Bow - d.SeamLap - fromJoint - lettered(text)
		}
		o.write(x, -0.06, text)
		if i > 0 {
			o.write(s.Bow+fromJoint, 0.03, "joint, lapped to the stern")
		}
	}
}
