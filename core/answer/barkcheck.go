package answer

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// verdictOfBark is the word for the bark.
func verdictOfBark(c core.Canoe) string {
	switch c.Bark.Verdict() {
	case bark.Enough:
		return "enough in one piece"
	case bark.EnoughSewn:
		return "enough, with sewing"
	}
	if c.Bark.Listed {
		return "cannot be built from these sheets"
	}
	return "cannot be built from sheets this narrow"
}

// barkCheck tells whether the bark covers the boat, and at what price.
func barkCheck(c core.Canoe) Warning {
	states := map[bark.Verdict]State{bark.Enough: Within, bark.EnoughSewn: Within, bark.CannotBeBuilt: Beyond}
	w := Warning{Key: "bark.verdict", Label: "Bark", Home: stage.Gather, State: states[c.Bark.Verdict()],
		Word: verdictOfBark(c), Text: barkText(c)}
	if w.State == Within && (len(c.Bark.Beside) > 0 || lowered(c.Bark) > 0) {
		w.State = Near
	}
	return w
}

// lowered is by how much stem heads stand higher than any piece reaches, m.
func lowered(l bark.Layout) float64 {
	most := 0.0
	for _, s := range l.Scant {
		if !s.Trim {
			most = max(most, s.Lack)
		}
	}
	return most
}

// barkText is what the verdict means in the user's numbers.
func barkText(c core.Canoe) func(units.System) string {
	l := c.Bark
	joined := l.Seams[bark.JointSeams].Length + l.Seams[bark.PanelSeams].Length
	var text string
	var terms []term
	add := func(t string, more ...term) {
		text += t
		terms = append(terms, more...)
	}
	switch {
	case l.Asked > 0:
		add("no seam may lie on the bottom: the bed asks for sheets # wide amidships", length(l.Asked))
	case l.Short > 0:
		add("short by #", area(l.Short))
		bed, bedLength, strips, stripLength := 0, 0.0, 0, 0.0
		for _, p := range l.Wanting() {
			if p.Side == bark.OnBed {
				bed, bedLength = bed+1, max(bedLength, p.Length())
			} else {
				strips, stripLength = strips+1, max(stripLength, p.Length())
			}
		}
		if bed > 0 {
			add(": # for the bed, the longest # long", many(bed, "sheet", "sheets"), length(bedLength))
		}
		if strips > 0 {
			lead := ": "
			if bed > 0 {
				lead = ", and "
			}
			add(lead+"# for the sides, the longest # long", many(strips, "strip", "strips"), length(stripLength))
		}
		add("; with that it would take # of sewing in joints and panels", run(joined))
	case joined > 0:
		add("# of sewing in joints and panels", run(joined))
		wide, seam, root := length(l.Needs.Width).atLeast(), run(l.Wide.Seam), run(l.Wide.Root).rough()
		switch {
		case len(l.Beside) == 0:
		case l.Wide.Seam > 0 && l.Wide.Root > 0:
			add("; sheets # wide would save # of seam and # of split root", wide, seam, root)
		case l.Wide.Seam > 0:
			add("; sheets # wide would save # of seam, but no split root", wide, seam)
		case l.Wide.Root > 0:
			add("; sheets # wide would save # of split root, but no seam", wide, root)
		default:
			add("; sheets # wide would need no side panels, and no less sewing", wide)
		}
	default:
		add("one sheet covers it, with # to trim", small(c.Design.GunwaleTurn))
	}
	if c.Skin != nil && c.Skin.Makes != nil && l.Verdict() == bark.CannotBeBuilt {
		if c.Skin.Makes.Length > 0 {
			add("; the longest boat of this shape they make is #", length(c.Skin.Makes.Length))
		} else {
			add("; they make no boat of this shape")
		}
	}
	if lack := lowered(l); lack > 0 {
		add("; the stem heads stand higher than the bark reaches: lower them by #, or take sheets # wider",
			small(max(0, lack-c.Design.GunwaleTurn)), small(2*lack))
	}
	return working(text, terms...)
}

// joinCheck tells whether joints and butts stand a hand clear of gores.
func joinCheck(c core.Canoe) Warning {
	l := c.Bark
	w := Warning{Key: "bark.joinGap", Label: "Joints", Home: stage.Bark, State: Within, Word: "clear of the gores",
		Text: working("every joint takes a gore's place or stands # or more clear", small(bark.Hand))}
	switch {
	case len(l.Joints)+len(l.Butts) == 0:
		w.Word, w.Text = "none", working("no sheets are joined")
	case !l.Apart:
		w.Word, w.Text = "clear", working("the one joint has no gore to keep clear of")
	case l.Gap < bark.Hand-samePlace:
		w.State, w.Word = Near, "too near a gore"
		w.Text = working("the nearest stands # off a gore or another joint, and the bark between may tear out; a "+
			"sheet a little longer would let it stand clear", small(l.Gap))
	}
	return w
}
