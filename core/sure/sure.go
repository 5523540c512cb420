package sure

import (
	"math"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// Of is what a figure is of.
type Of int

// What is cut, and two figures that are not.
const (
	Sheet Of = iota
	Thwart
	Post
	Slash
	Stem
	Rib
	Stiffness
	Weight
	// Gore is how much rides over at one; WithGores alone works it out.
	Gore
)

// Figure is one figure of a boat, and how far it may be off.
type Figure struct {
	Of Of
	// N is which of its kind it is, as tables number it.
	N int
	// Value is as worked out, and Spread how far it may be off either way, 19 times in 20;
	// metres, kilograms for a weight.
	Value, Spread float64
	// Watch is the cause of the most of it, and Share the part of it that is, by squares.
	Watch Cause
	Share float64
	// OneSided tells that for some cause the boat could be built on one side only, and the
	// other was taken to be like it.
	OneSided bool
}

// LeaveStep is what is left on is rounded up to.
const LeaveStep = units.Inch / 8

// Leave is by how much longer than the figure a piece is cut until it is tried: the spread, rounded
// up to an eighth of an inch.
func (f Figure) Leave() float64 { return geom.Ceil(f.Spread/LeaveStep) * LeaveStep }

// Spreads are a boat's figures as they are being worked out.
type Spreads struct {
	Figures []Figure
	// Causes are the sizes that were let come out otherwise.
	Causes []Cause

	from    design.Design
	squares []float64
	next    int
	laid    *laid
}

// New is a canoe's figures, their spreads not worked out yet.
func New(c core.Canoe) *Spreads {
	s := &Spreads{Causes: Causes(c.Design), from: c.Design, Figures: figures(c)}
	s.from.Own |= design.Decisions()
	s.squares = make([]float64, len(s.Figures))
	return s
}

// Next takes the next cause, and reports false once all are taken and the spreads known.
func (s *Spreads) Next() bool {
	if s.next == len(s.Causes) {
		return false
	}
	cause := s.Causes[s.next]
	p, _ := design.Lookup(cause.Key)
	at := p.Get(&s.from)
	low, lowOK := s.with(p, at-cause.Within/2)
	high, highOK := s.with(p, at+cause.Within/2)
	oneSided := lowOK != highOK
	twice := 1.0
	var here []Figure
	if oneSided {
		here, _ = s.with(p, at)
		twice = 2
	}
	if s.laid != nil && s.laid.cut {
		return false
	}
	s.next++
	switch {
	case !oneSided:
	case lowOK:
		high = here
	default:
		low = here
	}
	if lowOK || highOK {
		for i := range s.Figures {
			s.Figures[i].add(&s.squares[i], cause, twice*(high[i].Value-low[i].Value), oneSided)
		}
	}
	if s.next == len(s.Causes) {
		for i := range s.Figures {
			s.Figures[i].Spread = math.Sqrt(s.squares[i])
			if s.squares[i] > 0 {
				s.Figures[i].Share /= s.squares[i]
			}
		}
		return false
	}
	return true
}

// Known tells whether the spreads are worked out.
func (s *Spreads) Known() bool { return s != nil && s.next == len(s.Causes) }

// with are the figures of the boat with a size come out otherwise, and whether it can be built
// and has the same pieces.
func (s *Spreads) with(p design.Param, v float64) ([]Figure, bool) {
	d := s.from
	p.Put(&d, v)
	c, faults := core.Try(design.Follow(d))
	if len(faults) > 0 {
		return nil, false
	}
	f := figures(c)
	if s.laid != nil {
		widths, ok := s.laid.of(c)
		if !ok {
			return nil, false
		}
		f = append(f, widths...)
	}
	return f, len(f) == len(s.Figures)
}

// add takes a cause's change into account. Until the end Share is the square of the largest.
func (f *Figure) add(squares *float64, c Cause, change float64, oneSided bool) {
	square := change * change
	*squares += square
	f.OneSided = f.OneSided || oneSided && square > 0
	if square > f.Share {
		f.Watch, f.Share = c, square
	}
}

// figures are those of a canoe.
func figures(c core.Canoe) []Figure {
	out := []Figure{{Of: Sheet, Value: c.Bark.Needs.Width}}
	for i, t := range c.Frame.Thwarts {
		out = append(out, Figure{Of: Thwart, N: i, Value: t.EndToEnd})
	}
	for i, p := range c.Frame.Bed.Posts {
		out = append(out, Figure{Of: Post, N: i, Value: p.Length})
	}
	for i, n := range cutGores(c) {
		out = append(out, Figure{Of: Slash, N: n, Value: c.Bark.Gores[i].Depth})
	}
	out = append(out, Figure{Of: Stem, Value: c.Frame.Stem.Blank})
	for _, r := range c.Frame.Ribs {
		out = append(out, Figure{Of: Rib, N: r.Number, Value: r.Length})
	}
	return append(out, Figure{Of: Stiffness, Value: c.Afloat.Floated.GM},
		Figure{Of: Weight, Value: c.Gather.Weight.Typical})
}
