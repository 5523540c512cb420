package scene

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/units"
)

// roomy tells whether the sheet is drawn long enough for all that may be said of it.
func (p *pen) roomy(a plate) bool { return p.view.Flat.Length*a.Scale > 40*p.letter }

// goreLabel says how wide gore i is cut, by the figures where they are there: over
// its tips or, where a panel stands there, under its foot; in a small picture over the
// whole of the bark, with a line to the gore.
func (p *pen) goreLabel(c core.Canoe, i int, foot Point, tips []Point) {
	if c.Skin == nil || i >= len(c.Skin.Flat.Gores) {
		return
	}
	g := c.Skin.Flat.Gores[i]
	text, role := units.SmallLength.Format(g.Width, p.view.System), Role(Seam)
	switch g.State {
	case bark.GoreLetIn:
		text, role = "let in "+units.SmallLength.Format(-g.Width, p.view.System), Warn
	case bark.GoreNotNeeded:
		text = "slit"
	}
	l := p.flatLayout(c)
	a := l.sheet
	over := min(tips[0].Y, tips[1].Y)
	at := Point{(tips[0].X + tips[1].X) / 2, over - c.Design.GunwaleTurn*a.Scale - 0.75*p.letter}
	switch {
	case !p.roomy(a):
		at.Y = a.at(0, flatReach(c, p.view.Flat)).Y - (0.7+1.4*float64(i%l.tiers))*p.letter
		n := p.say(rankPart, text, role, Paper, spot{at, Middle})
		n.with = []Op{Stroke{Role: Faint, Points: []Point{{at.X, at.Y + 0.6*p.letter}, {at.X, over}}, Width: hairWidth * p.weight}}
	case len(p.view.Flat.Panels) > 0:
		p.say(rankPart, text, role, Bark, spot{Point{foot.X, foot.Y + 0.7*p.letter}, Middle})
	default:
		p.say(rankPart, text, role, Paper, spot{at, Middle})
	}
}

// flatLabels name the sheet and measure it.
func (p *pen) flatLabels(c core.Canoe, l flatLayout) {
	f, a := p.view.Flat, l.sheet
	length := func(v float64) string { return units.Length.Format(v, p.view.System) }
	if c.Skin != nil {
		f = &c.Skin.Flat
	}
	left, right := a.at(-f.Length/2, 0).X, a.at(f.Length/2, 0).X
	if l.titled {
		n := p.say(rankTitle, "Bark laid flat", Ink, Paper, spot{Point{max(left, 4), 1.1 * p.letter}, Start})
		n.text.Bold = true
	}
	if l.rows {
		p.say(rankTitle, "bow →", Ink, Paper, spot{Point{min(right, p.list.Width-4), 1.1 * p.letter}, End})
	}
	text := length(f.Length) + " on the bed"
	n := p.say(rankMain, text, Ink, Paper, spot{Point{(left + right) / 2, l.lengthY}, Middle}, spot{Point{(left + right) / 2, p.list.Height - p.letter}, Middle})
	n.text.Bold = true
	if l.rows {
		gap := n.text.bounds().width() + p.letter
		n.with = p.measure(Point{left, l.lengthY}, Point{right, l.lengthY}, gap)
		half := p.letter / 2
		p.keepOff(box{left, l.lengthY - half, (left + right - gap) / 2, l.lengthY + half})
		p.keepOff(box{(left + right + gap) / 2, l.lengthY - half, right, l.lengthY + half})
	}
	x := 0.5 * c.Frame.Thwarts[1].X
	wide := "breadth " + length(f.Breadth)
	if c.Design.GunwaleTurn > 0 && p.roomy(a) {
		wide += " and " + units.SmallLength.Format(c.Design.GunwaleTurn, p.view.System) + " to trim"
	}
	m := p.say(rankMain, wide, Ink, Bark, spot{Point{a.Origin.X, a.Origin.Y - 0.8*p.letter}, Middle}, spot{Point{a.Origin.X, a.Origin.Y + 0.8*p.letter}, Middle})
	m.text.Bold = true
	p.say(rankExtra, "building frame", Frame, Bark, spot{a.at(-x, -c.Hull.FrameHalfBreadth(x)+0.9*p.letter/a.Scale), End})
	for i, s := range sheetsLaid(c) {
		name := s.Name + ", " + sheetWords(s, p.view.System) + ", " + length(s.Width) + " wide"
		aft, bow, y := a.at(s.Aft, 0).X, a.at(s.Bow, 0).X, a.at(0, -s.Width/2).Y+0.8*p.letter
		p.say(rankExtra, name, Seam, Paper, spot{Point{aft + 4, y}, Start}, spot{Point{bow - 4, y}, End}, spot{Point{(aft + bow) / 2, y}, Middle},
			spot{Point{aft + 0.85*(bow-aft), y}, End}, spot{Point{aft + 0.15*(bow-aft), y}, Start})
		if i > 0 {
			at := Point{bow + 5, a.Origin.Y + 2.2*p.letter}
			joint := "joint"
			if p.roomy(a) {
				joint += ", lapped to the stern"
			}
			p.say(rankExtra, joint, Seam, Bark, spot{at, Start}, spot{Point{bow - 5, at.Y}, End})
		}
	}
}

// sheetWords name the sheet that a piece is cut from.
func sheetWords(s bark.Laid, system units.System) string {
	if s.Wanting() {
		return "wanting"
	}
	return "sheet " + units.Count.Format(float64(s.Sheet+1), system)
}

// describeFlat says in words what the sheet looks like.
func describeFlat(c core.Canoe, v View) string {
	if v.Flat == nil {
		return "The bark is being laid flat."
	}
	f := *v.Flat
	if c.Skin != nil {
		f = c.Skin.Flat
	}
	cut := 0
	for _, g := range f.Gores {
		if g.State == bark.GoreCut {
			cut++
		}
	}
	text := "The bark of the boat laid flat, bow to the right: " + units.Length.Format(f.Length, v.System) + " long and " +
		units.Length.Format(f.Breadth, v.System) + " broad, with " + units.Count.Format(float64(cut), v.System) + " gores cut each side"
	if n := len(c.Bark.Panels); n > 0 {
		text += " and side panels beside it"
	}
	if n := len(c.Bark.Wanting()); c.Skin != nil && n > 0 {
		text += "; " + units.Count.Format(float64(n), v.System) + " pieces of it are wanting and hatched across"
	}
	return text + ". Hatching shows where it must stretch or gather: " + answer.StretchWords(f.P95, c.Design.StretchLimit, v.System) + "."
}
