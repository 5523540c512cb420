package answer

import (
	"strings"

	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Checks lists every check of a canoe with its state, passed ones too.
func Checks(c core.Canoe) []Warning {
	in := c.Frame.Stem.Innermost()
	return []Warning{
		{Key: "stem.verdict", Label: "Stem", Group: Ends, State: bendState(in), Word: verdictWord(in), Text: stemAdvice(c)},
		girthCheck(c),
		ribsCheck(c),
		gunwaleCheck(c),
		{Key: "caps.verdict", Label: "Caps", Group: Gunwales, State: NotChecked, Word: NotChecked.String(),
			Text: working("the caps are bent along with the gunwales and up at the ends: split their ends as you do the outwales'")},
		barkCheck(c),
		joinCheck(c),
		floatCheck(c),
		steadyCheck(c),
	}
}

// advice is what a bend's verdict means without the verdict's own word, which
// stands before it.
func advice(b wood.Bend, stock wood.Stock) string {
	text := strings.TrimPrefix(b.Advice(stock), verdictWord(b))
	return strings.TrimLeft(text, ",: ")
}

func stemAdvice(c core.Canoe) func(units.System) string {
	s := c.Frame.Stem
	in := s.Innermost()
	text := advice(in, c.Design.StemStock)
	if in.Verdict == wood.WithinGuide || !s.WithinOK {
		return working(text)
	}
	return working(text+"; # laminations would be within guide", count(s.Within.Laminations))
}

// gunwaleBends names the checked bends of the gunwales.
func gunwaleBends(g frame.Gunwales) []struct {
	name string
	bend frame.GunwaleBend
} {
	return []struct {
		name string
		bend frame.GunwaleBend
	}{
		{"inwale, in plan", g.InwalePlan}, {"inwale, up the sheer", g.InwaleSheer},
		{"outwale, in plan", g.OutwalePlan}, {"outwale, up the sheer", g.OutwaleSheer},
		{"outwale, past the gunwale's end", g.OutwaleEnd},
	}
}

func gunwaleCheck(c core.Canoe) Warning {
	bends := gunwaleBends(c.Frame.Gunwales)
	worst := bends[0]
	for _, b := range bends[1:] {
		if b.bend.Verdict > worst.bend.Verdict || (b.bend.Verdict == worst.bend.Verdict && b.bend.Ratio < worst.bend.Ratio) {
			worst = b
		}
	}
	text := worst.name + ": " + advice(worst.bend.Bend, c.Design.GunwaleStock)
	w := Warning{Key: "gunwales.verdict", Label: "Gunwales", Group: Gunwales, State: bendState(worst.bend.Bend), Word: verdictWord(worst.bend.Bend), Text: working(text)}
	if worst.bend.Verdict != wood.WithinGuide && worst.bend.Mend > 0 {
		w.Text = working(text+"; # layers would be within guide", count(worst.bend.Mend))
	}
	return w
}

func bendsTable(c core.Canoe) Table {
	t := Table{
		Key: "bends", Title: "Bends of the gunwales", Group: Gunwales, Note: "Where each is tightest. Layers are the splits at the ends, as set.",
		Columns: []Column{{"timber", "Timber", units.Count}, {"station", "From amidships", units.Length}, {"radius", "Radius", units.Length}, {"layers", "Layers", units.Count}, {"ratio", "Radius over thickness", units.Ratio}, {"verdict", "Verdict", units.Count}, {"mend", "Layers within guide", units.Count}},
	}
	for _, b := range gunwaleBends(c.Frame.Gunwales) {
		radius, ratio, mend := num(b.bend.Radius), num(b.bend.Ratio), whole(b.bend.Mend)
		if w := radiusWord(b.bend.Bend); w != "" {
			radius.Text, ratio.Text = w, w
		}
		if b.bend.Mend == 0 {
			mend = words("none is enough")
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{words(b.name), num(b.bend.X), radius, whole(b.bend.Layers), ratio, words(verdictWord(b.bend.Bend)), mend}})
	}
	return t
}
