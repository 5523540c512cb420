package sure

import (
	"iter"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
)

// laid is what the widths of gores are worked out with: the bark is laid flat anew for every size
// that is let come out otherwise.
type laid struct {
	memory geom.FlattenWorkspace
	warm   bark.Flat
	cut    bool // ended by the pause
}

// WithGores is New with the widths of the gores beside their slashes, where the canoe's bark is
// known laid flat. That takes longer than a step of a slider may: pause is called in between, and
// where it returns false the spreads stay unknown.
func WithGores(c core.Canoe, pause func() bool) *Spreads {
	s := New(c)
	if c.Skin == nil || c.Skin.Flat.State != geom.Converged {
		return s
	}
	s.laid = &laid{memory: geom.FlattenWorkspace{Pause: pause}}
	s.laid.warm = core.LayFlat(c, bark.ForCurve, nil, &s.laid.memory)
	if s.laid.warm.State != geom.Converged {
		s.laid = nil
		return s
	}
	s.Figures = append(s.Figures, widthsOf(c, c.Skin.Flat)...)
	s.squares = make([]float64, len(s.Figures))
	return s
}

// of are the widths of a canoe's gores, laid flat as coarsely as the boat compared with; false where
// it does not come to an end.
func (l *laid) of(c core.Canoe) ([]Figure, bool) {
	f := core.LayFlat(c, bark.ForCurve, &l.warm, &l.memory)
	l.cut = l.cut || f.State == geom.CutOff
	return widthsOf(c, f), f.State == geom.Converged
}

// widthsOf are how much rides over at each gore that is cut, numbered as their slashes are.
func widthsOf(c core.Canoe, f bark.Flat) []Figure {
	if f.State != geom.Converged {
		return nil
	}
	var out []Figure
	for i, n := range cutGores(c) {
		out = append(out, Figure{Of: Gore, N: n, Value: f.Gores[i].Width})
	}
	return out
}

// cutGores goes through the gores that are cut, from amidships forward: the place of each in the
// layout, and its number in the tables.
func cutGores(c core.Canoe) iter.Seq2[int, int] {
	return func(yield func(place, number int) bool) {
		n := 0
		for i, g := range c.Bark.Gores {
			if g.X < 0 {
				continue
			}
			if g.State == bark.GoreCut && !yield(i, n) {
				return
			}
			n++
		}
	}
}
