package answer

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Checks lists every check of a canoe with its state, passed ones too.
func Checks(c core.Canoe) []Warning {
	in := c.Frame.Stem.Innermost()
	stem := Warning{Key: "stem.verdict", Label: "Stem", Home: stage.Ends, State: bendState(in), Word: verdictWord(in),
		Text: stemAdvice(c)}
	if in.Verdict != wood.WithinGuide && c.Frame.Stem.WithinOK {
		stem.Cure = cure("stemLaminations", c.Frame.Stem.Within.Laminations)
	}
	return []Warning{
		stem,
		girthCheck(c),
		ribsCheck(c),
		gunwaleCheck(c),
		capCheck(c),
		barkCheck(c),
		joinCheck(c),
		floatCheck(c),
		steadyCheck(c),
	}
}

func stemAdvice(c core.Canoe) func(units.System) string {
	s := c.Frame.Stem
	in := s.Innermost()
	text := in.Advice(c.Design.StemStock)
	var terms []term
	if in.Verdict != wood.WithinGuide && s.WithinOK {
		text += "; # laminations would be within guide"
		terms = append(terms, count(s.Within.Laminations))
	}
	if s.SolidTightest {
		text += "; the end is tightest, radius #, in the solid heel, which is sawn and not bent: get a billet # " +
			"deep there"
		terms = append(terms, small(s.SolidRadius), small(s.Stock))
	}
	return working(text, terms...)
}

// namedBend is a checked bend of the gunwales. Published is the radius over thickness
// that a published boat comes to there, 0 where none does worse than the guide.
type namedBend struct {
	name      string
	bend      frame.GunwaleBend
	published float64
}

func gunwaleBends(g frame.Gunwales) []namedBend {
	return []namedBend{
		{"inwale, in plan", g.InwalePlan, frame.PublishedInPlan}, {"inwale, up the sheer", g.InwaleSheer, 0},
		{"outwale, in plan", g.OutwalePlan, frame.PublishedInPlan}, {"outwale, up the sheer", g.OutwaleSheer, 0},
		{"outwale, past the gunwale's end", g.OutwaleEnd, frame.PublishedPastEnd},
	}
}

func capBends(g frame.Gunwales) []namedBend {
	return []namedBend{
		{"cap, in plan", g.CapPlan, 0}, {"cap, up the sheer", g.CapSheer, 0}, {capPastEnd, g.CapEnd, 0},
	}
}

const capPastEnd = "cap, past the gunwale's end"

// asPublished tells whether a bend under the guide is no tighter than a published boat's,
// for cedar bent hot or what is as good.
func (b namedBend) asPublished() bool {
	const hotLimit = wood.PublishedRibsTightest // of the guide, for straight cedar bent hot
	return b.bend.Verdict != wood.WithinGuide && b.published > 0 && b.bend.Ratio >= b.published*b.bend.Limit/hotLimit
}

// state is how the bend stands among the checks.
func (b namedBend) state() State {
	if b.asPublished() {
		return Within
	}
	return bendState(b.bend.Bend)
}

const asOnePublished = "as a published boat's"

// word is the bend's verdict in words.
func (b namedBend) word() string {
	if b.asPublished() {
		return asOnePublished
	}
	return verdictWord(b.bend.Bend)
}

// worstBend is the bend that a check of them all is about.
func worstBend(bends []namedBend) namedBend {
	worst := bends[0]
	for _, b := range bends[1:] {
		tighter := b.bend.Verdict == worst.bend.Verdict && b.bend.Ratio < worst.bend.Ratio
		if b.bend.Verdict > worst.bend.Verdict || tighter || b.state() > worst.state() {
			worst = b
		}
	}
	return worst
}

func gunwaleCheck(c core.Canoe) Warning {
	bends := gunwaleBends(c.Frame.Gunwales)
	worst := worstBend(bends)
	w := Warning{Key: "gunwales.verdict", Label: "Gunwales", Home: stage.Gunwales, State: worst.state(),
		Word: worst.word()}
	if worst.asPublished() {
		w.Text = working(worst.name+": bends to # times its thickness; a boat measured off a published drawing "+
			"(fig. 81) comes to # by the same reckoning. Bend a trial piece first, and make spares",
			ratio(worst.bend.Ratio), ratio(worst.published))
		return w
	}
	text := worst.name + ": " + worst.bend.Advice(c.Design.GunwaleStock)
	var terms []term
	if n := worst.bend.Mend; worst.bend.Verdict != wood.WithinGuide && n > 0 {
		w.Cure = splitsCure(bends)
		most := mostLayers()
		if n > most {
			text += "; it would take more than # layers"
			n = most
		} else {
			text += "; # layers would be within guide"
		}
		terms = append(terms, count(n))
	}
	if worst.bend.Verdict == wood.TooTight && worst.published == frame.PublishedPastEnd {
		text += ". A published boat (fig. 106) has this too, by the same reckoning: there the outwale cannot have " +
			"followed the bark's edge. End it short of the stem head, or raise the gunwale's end"
	}
	w.Text = working(text, terms...)
	return w
}

// capCheck checks the caps. They are bent whole: a thinner one is what takes a tighter bend.
func capCheck(c core.Canoe) Warning {
	bends := capBends(c.Frame.Gunwales)
	worst := worstBend(bends)
	w := Warning{Key: "caps.verdict", Label: "Caps", Home: stage.Gunwales, State: worst.state(), Word: worst.word()}
	text := worst.name + ": " + worst.bend.Advice(c.Design.GunwaleStock)
	var terms []term
	if n := worst.bend.Mend; w.State != Within && n > 1 && worst.name != bends[0].name {
		text += "; its end split in # layers would be within guide"
		terms = append(terms, count(n))
		if w.Cure = thinnerCap(bends); w.Cure != nil {
			text += ", and so would a cap # thick"
			terms = append(terms, small(w.Cure.Value))
		}
	}
	if worst.bend.Verdict == wood.TooTight && worst.name == capPastEnd {
		text += ". Or end it short of the stem head"
	}
	w.Text = working(text, terms...)
	return w
}

// thinnerCap is the thickest cap that is within guide in every plane, in whole steps; nil where
// its width is what is too much, or none is thin enough.
func thinnerCap(bends []namedBend) *Cure {
	p, _ := design.Lookup("capThickness")
	if bends[0].state() != Within {
		return nil
	}
	thick := p.Max
	for _, b := range bends[1:] {
		thick = min(thick, b.bend.Radius/b.bend.Safe)
	}
	thick = p.StepInch * geom.Floor(thick/p.StepInch)
	if thick < p.Min {
		return nil
	}
	return &Cure{p.Key, thick}
}

// mostLayers is how many layers a gunwale's end may be split into.
func mostLayers() int {
	p, _ := design.Lookup("gunwaleEndSplits")
	return int(p.Max)
}

// splitsCure is the number of layers that brings every bend within guide; nil where no
// number is known to. The outwale past the gunwale's end is split all along its bend; of
// the others a part is whole.
func splitsCure(bends []namedBend) *Cure {
	most := 0
	for _, b := range bends {
		if b.state() == Within {
			continue
		}
		if b.bend.Mend == 0 || b.published != frame.PublishedPastEnd {
			return nil
		}
		most = b.bend.Mend
	}
	return cure("gunwaleEndSplits", most)
}

func bendsTable(c core.Canoe) Table {
	t := Table{
		Key: "bends", Title: "Bends of the gunwales", Home: stage.Gunwales, OnPaper: true,
		Note: "Where each is tightest. Layers are the splits at the ends, as set; caps are bent whole and narrow to half " +
			"their width at the ends.",
	}
	return fill(t, refs(append(gunwaleBends(c.Frame.Gunwales), capBends(c.Frame.Gunwales)...)),
		text("timber", "Timber", func(b *namedBend) string { return b.name }),
		col("station", "From amidships", units.Length, func(b *namedBend) Cell { return num(b.bend.X) }).screenOnly(),
		col("radius", "Radius", units.Length,
			func(b *namedBend) Cell { return num(b.bend.Radius).saying(radiusWord(b.bend.Bend)) }),
		col("layers", "Layers", units.Count, func(b *namedBend) Cell { return whole(b.bend.Layers) }),
		col("ratio", "Radius over thickness", units.Ratio,
			func(b *namedBend) Cell { return num(b.bend.Ratio).saying(radiusWord(b.bend.Bend)) }),
		text("verdict", "Verdict", (*namedBend).word),
		col("mend", "Layers within guide", units.Count, func(b *namedBend) Cell {
			most := mostLayers()
			return whole(b.bend.Mend).saying(wordIf(b.bend.Mend == 0, "none is enough") +
				wordIf(b.bend.Mend > most, "more than "+strconv.Itoa(most)))
		}),
	)
}
