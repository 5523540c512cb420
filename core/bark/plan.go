package bark

import "barkwright/core/hull"

// Layout is the skin's gores, panels and joints with their seams and root, worked
// out from lengths on the hull alone: it is cheap enough for every step of a slider.
type Layout struct {
	ByRule     bool    // the gores stand by the builders' rule, not by number
	Gores      []Gore  // of the port side, from the after one forward
	Panels     []Panel // of the forward port quarter
	Joints     []Joint // from the bow aft
	FlatLength float64 // of the bark on the bed, m, before the flattening
	EndSeam    float64 // length of one end's seam, heel to stem head, m
	Seams      [4]Seam // by Kind
	Root       Root
	Needs      Needs
}

// Plan lays the bark out.
func Plan(h hull.Hull) Layout {
	d := h.Design
	all := lines(h)
	run := heelRun(all)
	l := Layout{
		ByRule:     GoresByRule(d),
		Gores:      gores(h, goreShares(d)),
		Panels:     panels(h, all),
		FlatLength: plainFlatLength(h, all),
		EndSeam:    h.End.Path.Length(),
	}
	l.Joints = joints(h, run, l.FlatLength)
	for _, k := range Kinds() {
		l.Seams[k] = newSeam(k, d)
	}
	for _, g := range l.Gores {
		l.Seams[GoreSeams].add(g.Depth, 2)
	}
	for _, p := range l.Panels {
		if p.Amidships() {
			l.Seams[PanelSeams].add(2*p.Length, 2)
		} else {
			l.Seams[PanelSeams].add(p.Length, 4)
		}
	}
	for _, j := range l.Joints {
		l.Seams[JointSeams].add(j.Length, 1)
	}
	l.Seams[EndSeams].add(l.EndSeam, 2)
	split := 0.0
	for _, s := range l.Seams {
		split += s.Root
	}
	l.Root = newRoot(split, d.RootWaste)
	l.Needs = needs(h, all, l)
	return l
}
