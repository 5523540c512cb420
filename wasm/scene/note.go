package scene

import "barkwright/core/draw"

// Note is a label. It stands at the first free place among At, or near there, or in the
// picture's key. Labels of a lower rank are placed first.
type Note struct {
	rank int
	Text draw.Text
	// At lists the places where it may stand, the best first.
	At []Spot
	// Key is how the key words it where the picture alone says what it is about. Empty is as
	// the label itself.
	Key string
	// Lead is the place that the label is about. A line ties a label that stands away from it,
	// and one that is Tied wherever it stands. Nil is the first place of At.
	Lead *draw.Point
	Tied bool
	// Still keeps a label to the places of At: it is not moved along.
	Still bool
	// Off are boxes that it keeps off, as does the number that stands for it.
	Off []draw.Box
	// Spare marks one that says again what stands elsewhere: it is left out where it has no
	// room.
	Spare bool
	// With draws what goes with the label, which stands in a box.
	With func(draw.Box) []draw.Op
}

// Spot is a place for a label. Anchor says which end of the label stands there.
type Spot struct {
	At     draw.Point
	Anchor draw.Anchor
}

// SpotAt returns the spot at x and y in the picture.
func SpotAt(x, y float64, a draw.Anchor) Spot { return Spot{At: draw.Point{X: x, Y: y}, Anchor: a} }

// The ranks of labels, in the order in which they are placed.
const (
	RankMain = iota
	RankTitle
	RankHeight
	RankPart
	RankExtra
)

// Say asks for a label at the first free place among at. The label may be changed until
// the next is asked for.
func (p *Pen) Say(rank int, text string, r draw.Role, halo draw.Role, at ...Spot) *Note {
	p.notes = append(p.notes, Note{rank: rank, Text: draw.Text{Role: r, Text: text, Size: p.Letter, Halo: halo}, At: at})
	return &p.notes[len(p.notes)-1]
}

// KeepOff keeps labels out of a box.
func (p *Pen) KeepOff(b draw.Box) { p.taken = append(p.taken, b) }

// Letters letters a text where it is, as of a legend over the drawing, and keeps labels out of its box.
func (p *Pen) Letters(t draw.Text) {
	p.Marks = append(p.Marks, t)
	n := Note{Text: t}
	p.said = append(p.said, p.block(&n, t.Text).box(&n, Spot{At: t.At, Anchor: t.Anchor}))
}

// about returns the place that a label is about.
func (n *Note) about() draw.Point {
	if n.Lead != nil {
		return *n.Lead
	}
	return n.At[0].At
}
