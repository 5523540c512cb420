package flat

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// roomy reports whether the sheet is drawn long enough for all its labels.
func (p *pen) roomy(a scene.Plate) bool { return p.View.Flat.Length*a.Scale > 40*p.Letter }

// goreLabel letters how wide gore i is cut, from the figures where they are known. The
// label stands over the gore's tips or, where a panel is there, under its foot. In a
// small picture it stands over the whole of the bark, with a line to the gore.
func (p *pen) goreLabel(c core.Canoe, i int, foot draw.Point, tips []draw.Point) {
	if c.Skin == nil || i >= len(c.Skin.Flat.Gores) {
		return
	}
	g := c.Skin.Flat.Gores[i]
	text, role := units.SmallLength.Format(g.Width, p.View.System), draw.Role(draw.Seam)
	number := scene.GoreNumber(i, len(c.Skin.Flat.Gores))
	switch g.State {
	case bark.GoreLetIn:
		text, role = "let in "+units.SmallLength.Format(-g.Width, p.View.System), draw.Warn
	case bark.GoreNotNeeded:
		text = "slit"
	}
	l := p.flatLayout(c)
	a := l.sheet
	key := "gore " + number + ": " + text
	if p.roomy(a) {
		text = number + ": " + text
	}
	over := min(tips[0].Y, tips[1].Y)
	at := draw.Point{X: (tips[0].X + tips[1].X) / 2, Y: over - c.Design.GunwaleTurn*a.Scale - 0.75*p.Letter}
	switch {
	case !p.roomy(a):
		at.Y = a.At(0, flatReach(c, p.View.Flat)).Y - (0.7+1.4*float64(i%l.tiers))*p.Letter
		n := p.Say(scene.RankPart, text, role, draw.Paper, scene.Spot{At: at, Anchor: draw.Middle})
		n.Lead, n.Tied, n.Key = &draw.Point{X: at.X, Y: over}, true, key
	case len(p.View.Flat.Panels) > 0:
		p.Say(scene.RankPart, text, role, draw.Bark, scene.SpotAt(foot.X, foot.Y+0.7*p.Letter, draw.Middle)).Key = key
	default:
		p.Say(scene.RankPart, text, role, draw.Paper, scene.Spot{At: at, Anchor: draw.Middle}).Key = key
	}
}

// slashes letters to starboard, from the middle to the bow, how far in each gore is slashed.
func (p *pen) slashes(a scene.Plate) {
	gores := p.View.Flat.Gores
	for i, g := range gores {
		if g.X < 0 || len(g.After) == 0 {
			continue
		}
		text := units.Length.Format(g.Depth, p.View.System) + " in"
		foot := a.At(g.After[0].X, -g.After[0].Y)
		n := p.Say(scene.RankExtra, text, draw.Seam, draw.Bark, scene.SpotAt(foot.X, foot.Y-0.7*p.Letter, draw.Middle))
		n.Key = "gore " + scene.GoreNumber(i, len(gores)) + ", slashed " + text
	}
}

// goreRuns measures in a row how far from the middle the gores stand along the gunwale, toward the
// bow.
func (p *pen) goreRuns(c core.Canoe) {
	y := p.flatLayout(c).runY
	if y == 0 {
		return
	}
	a := p.flatLayout(c).sheet
	places, texts := []float64{a.At(0, 0).X}, []string{"0"}
	for _, g := range p.View.Flat.Gores {
		if g.Run > 0 && len(g.After) > 0 {
			places = append(places, a.At(g.After[len(g.After)-1].X, 0).X)
			texts = append(texts, units.Length.Format(g.Run, p.View.System))
		}
	}
	if len(places) > 1 {
		p.Running(y, places, texts, "gores along the gunwale from the middle")
		n := p.Say(scene.RankPart, "gores, along the gunwale from the middle", draw.Ink, draw.Paper,
			scene.SpotAt(places[0]-p.Letter, y, draw.End))
		n.Spare = true
	}
}

// flatTitle names the picture and which way the boat points.
func (p *pen) flatTitle(l flatLayout) {
	left, right := l.sheet.At(-p.View.Flat.Length/2, 0).X, l.sheet.At(p.View.Flat.Length/2, 0).X
	if l.titled {
		n := p.Say(scene.RankTitle, "Bark laid flat", draw.Ink, draw.Paper,
			scene.SpotAt(max(left, 4), 1.1*p.Letter, draw.Start))
		n.Text.Bold = true
	}
	if l.rows {
		p.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper,
			scene.SpotAt(min(right, p.List.Width-4), 1.1*p.Letter, draw.End))
	}
}

// flatLabels name the sheets and measure the bark.
func (p *pen) flatLabels(c core.Canoe, l flatLayout) {
	f, a := p.View.Flat, l.sheet
	length := func(v float64) string { return units.Length.Format(v, p.View.System) }
	if c.Skin != nil {
		f = &c.Skin.Flat
	}
	left, right := a.At(-f.Length/2, 0).X, a.At(f.Length/2, 0).X
	if l.titled && p.roomy(a) && len(f.Gores) > 0 {
		n := p.Say(scene.RankExtra, "at the gores: number and about what rides over, to port; how far in, to starboard",
			draw.Seam, draw.Paper, scene.SpotAt(a.Origin.X, 1.1*p.Letter, draw.Middle))
		n.Spare = true
	}
	text := length(f.Length) + " on the bed"
	if more := f.Length - c.Design.Length; p.roomy(a) && more > units.Inch/2 {
		text += ", " + length(more) + " more than the boat: turned up, the sides draw the ends in"
	}
	n := p.Say(scene.RankMain, text, draw.Ink, draw.Paper, scene.SpotAt((left+right)/2, l.lengthY, draw.Middle),
		scene.SpotAt((left+right)/2, p.List.Height-p.Letter, draw.Middle))
	n.Text.Bold = true
	if l.rows {
		n.With = p.Arrows(draw.Point{X: left, Y: l.lengthY}, draw.Point{X: right, Y: l.lengthY})
	}
	x := 0.5 * c.Frame.Thwarts[1].X
	wide := "breadth " + length(breadth(c, f))
	if c.Design.GunwaleTurn > 0 && p.roomy(a) {
		wide += " and " + units.SmallLength.Format(c.Design.GunwaleTurn, p.View.System) + " to trim"
	}
	m := p.Say(scene.RankMain, wide, draw.Ink, draw.Bark,
		scene.SpotAt(a.Origin.X, a.Origin.Y-0.8*p.Letter, draw.Middle),
		scene.SpotAt(a.Origin.X, a.Origin.Y+0.8*p.Letter, draw.Middle))
	m.Text.Bold = true
	p.Say(scene.RankExtra, "building frame", draw.Frame, draw.Bark,
		scene.Spot{At: a.At(-x, -c.Hull.FrameHalfBreadth(x)+0.9*p.Letter/a.Scale), Anchor: draw.End})
	rank := scene.RankExtra
	if p.roomy(a) {
		rank = scene.RankHeight
	}
	for i, s := range sheetsLaid(c) {
		name := s.Name + ", " + scene.SheetWords(s, p.View.System) + ", " + length(s.Width) + " wide"
		aft, bow, y := a.At(s.Aft, 0).X, a.At(s.Bow, 0).X, a.At(0, -s.Width/2).Y+0.8*p.Letter
		p.Say(rank, name, draw.Seam, draw.Paper, scene.SpotAt(aft+4, y, draw.Start),
			scene.SpotAt(bow-4, y, draw.End), scene.SpotAt((aft+bow)/2, y, draw.Middle),
			scene.SpotAt(aft+0.85*(bow-aft), y, draw.End), scene.SpotAt(aft+0.15*(bow-aft), y, draw.Start),
			scene.SpotAt((aft+bow)/2, a.Origin.Y+3.6*p.Letter, draw.Middle),
			scene.SpotAt((aft+bow)/2, a.Origin.Y-2.4*p.Letter, draw.Middle))
		if i > 0 {
			at := draw.Point{X: bow + 5, Y: a.Origin.Y + 2.2*p.Letter}
			joint := "joint " + length(math.Abs(s.Bow)) + " from the middle"
			if p.roomy(a) {
				joint += ", lapped to the stern"
			}
			p.Say(scene.RankExtra, joint, draw.Seam, draw.Bark, scene.Spot{At: at, Anchor: draw.Start},
				scene.SpotAt(bow-5, at.Y, draw.End))
		}
	}
}

// breadth returns the breadth of the bark without what is left to trim. Panels are drawn
// apart from the sheet: with them it is the breadth amidships, otherwise the breadth
// overall.
func breadth(c core.Canoe, f *bark.Flat) float64 {
	if len(f.Panels) == 0 {
		return f.Breadth
	}
	return 2 * c.Hull.Section(0).HalfGirth()
}

// describe says in words what the sheet looks like.
func describe(c core.Canoe, v scene.View) string {
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
		units.Length.Format(breadth(c, &f), v.System) + " broad, with " + units.Count.Format(float64(cut), v.System) +
		" gores cut each side"
	if n := len(c.Bark.Panels); n > 0 {
		text += " and side panels beside it"
	}
	if n := len(c.Bark.Wanting()); c.Skin != nil && n > 0 {
		text += "; " + units.Count.Format(float64(n), v.System) + " pieces of it are wanting and hatched across"
	}
	if c.Skin != nil && c.Bark.Uneven() {
		text += "; the sheets differ in width, and gores and panels are those beside the narrowest"
	}
	return text + ". Hatching shows where it must stretch or gather: " +
		answer.StretchWords(f.P95, c.Design.StretchLimit, v.System) + "."
}
