package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Layout is the skin's gores, panels and joints with their seams and root, worked
// out from lengths on the hull alone: it is cheap enough for every step of a slider.
type Layout struct {
	ByRule bool    // the gores stand by the builders' rule, not by number
	Gores  []Gore  // of the port side, from the after one forward
	Panels []Panel // of the forward port quarter, for sheets of the design's width
	// Listed tells whether seams and root are for sheets on hand, and Beside then is
	// where side panels are sewn to those.
	Listed     bool
	Beside     []Beside
	Joints     []Joint // from the bow aft
	FlatLength float64 // of the bark on the bed, m, before the flattening
	EndSeam    float64 // length of one end's seam, heel to stem head, m
	Seams      [4]Seam // by Kind
	Root       Root
	Needs      Needs
}

// Plan lays the bark out.
func Plan(h hull.Hull) Layout {
	l := Layout{
		ByRule:     GoresByRule(h.Design),
		Gores:      gores(h, goreShares(h.Design)),
		FlatLength: plainFlatLength(h, bottomRun(h)),
		EndSeam:    h.End.Path.Length(),
	}
	all := lines(h)
	l.Panels = panels(h, all)
	l.sew(h, all)
	return l
}

// OnFlat is the layout with the length and the breadth of the sheet laid flat in
// place of the plain ones: the joints and the bark needed follow them. Of a sheet that
// did not converge nothing is taken over: the plain lengths stand.
func (l Layout) OnFlat(h hull.Hull, f Flat) Layout {
	if f.State != geom.Converged {
		return l
	}
	l.FlatLength = f.Length
	l.sew(h, lines(h))
	if len(f.Panels) == 0 {
		l.Needs.Width = max(f.Breadth, widestOnBed(h)) + 2*h.Design.GunwaleTurn
		l.Needs.TreeWidth = NewTree(l.Needs.Width, l.Needs.Length)
	}
	return l
}

// OnSheets is the layout joined where real sheets lie, with side panels where those are
// too narrow, in place of sheets of the design's size.
func (l Layout) OnSheets(h hull.Hull, c Coverage) Layout {
	bottom := bottomRun(h)
	l.Joints, l.Listed, l.Beside = nil, true, c.Beside
	for _, along := range c.Joints {
		l.Joints = append(l.Joints, newJoint(h, bottom, along, l.FlatLength))
	}
	l.total(h, lines(h))
	return l
}

// sew places the joints for the flat length and totals.
func (l *Layout) sew(h hull.Hull, all []line) {
	l.Joints = joints(h, bottomRun(h), l.FlatLength)
	l.total(h, all)
}

// total adds up the seams, the root and the bark needed.
func (l *Layout) total(h hull.Hull, all []line) {
	d := h.Design
	for _, k := range Kinds() {
		l.Seams[k] = newSeam(k, d)
	}
	for _, g := range l.Gores {
		l.Seams[GoreSeams].add(g.Depth, 2)
	}
	l.sewPanels()
	for _, j := range l.Joints {
		l.Seams[JointSeams].add(j.Length, 1)
	}
	l.Seams[EndSeams].add(l.EndSeam, 2)
	split := 0.0
	for _, s := range l.Seams {
		split += s.Root
	}
	l.Root = NewRoot(split, d.RootWaste)
	l.Needs = needs(h, all, *l)
}

// sewPanels adds up the seams of the side panels.
func (l *Layout) sewPanels() {
	if l.Listed {
		for _, b := range l.Beside {
			l.Seams[PanelSeams].add(b.Seam, 2)
		}
		return
	}
	for _, p := range l.Panels {
		if p.Amidships() {
			l.Seams[PanelSeams].add(2*p.Length, 2)
		} else {
			l.Seams[PanelSeams].add(p.Length, 4)
		}
	}
}
