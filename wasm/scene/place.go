package scene

import (
	"math"
	"sort"
	"sync"

	"barkwright/core/draw"
)

// Done places the labels, the most important first, and returns the picture.
func (p *Pen) Done() draw.List {
	p.List.Add(p.Marks...)
	p.lines = newRaster(p.List.Width, p.List.Height)
	for _, op := range p.List.Ops {
		if Misread(op, p.Weight) {
			p.lines.add(op)
		}
	}
	for rank := RankMain; rank <= RankExtra; rank++ {
		for i := range p.notes {
			if n := &p.notes[i]; n.rank == rank && len(n.At) > 0 && p.inView(n) {
				p.place(n)
			}
		}
	}
	return p.List
}

// inView reports whether what a label is about is in the picture. When zoomed in, the rest
// is not lettered.
func (p *Pen) inView(n *Note) bool {
	at := n.about()
	return p.View.Zoom <= 1 || at.X >= 0 && at.Y >= 0 && at.X <= p.List.Width && at.Y <= p.List.Height
}

// place puts a label where it has room: at one of its places, there in two lines, near
// there, or in the key with a number in the picture.
func (p *Pen) place(n *Note) {
	whole := p.block(n, n.Text.Text)
	if p.among(n, whole, n.At) {
		return
	}
	if n.Spare {
		return
	}
	folded, ok := whole, false
	if n.Text.Angle == 0 {
		if folded, ok = p.folded(n); ok && p.among(n, folded, n.At) {
			return
		}
	}
	if !n.Still && n.Text.Angle == 0 {
		if p.near(n, whole, nearby) || ok && p.near(n, folded, nearby) {
			return
		}
	}
	p.keyed(n)
}

// block is a label in one line or two.
type block struct {
	text       string
	wide, high float64
	rows       [2]string
	ringed     bool
}

func (p *Pen) block(n *Note, text string) block {
	return block{text: text, rows: [2]string{text}, wide: draw.Lettered(text, n.Text.Size, n.Text.Bold),
		high: draw.LineHeight * n.Text.Size}
}

// folded breaks a label into two lines of about one breadth, at a space between words.
func (p *Pen) folded(n *Note) (block, bool) {
	text, best, cut := n.Text.Text, math.Inf(1), -1
	for i := range text {
		if text[i] != ' ' || draw.Together(text[:i], text[i+1:]) {
			continue
		}
		if off := math.Abs(float64(2*i - len(text))); off < best {
			best, cut = off, i
		}
	}
	if cut < 0 {
		return block{}, false
	}
	a, b := p.block(n, text[:cut]), p.block(n, text[cut+1:])
	return block{text: text, rows: [2]string{a.text, b.text}, wide: max(a.wide, b.wide), high: 2*a.high + 1}, true
}

// box is where a block stands at a spot.
func (b block) box(n *Note, s Spot) draw.Box {
	before := b.wide * [...]float64{0, 0.5, 1}[s.Anchor]
	if n.Text.Angle != 0 {
		low := s.At.Y + before
		return draw.Box{Left: s.At.X - b.high/2, Top: low - b.wide, Right: s.At.X + b.high/2, Bottom: low}
	}
	left := s.At.X - before
	return draw.Box{Left: left, Top: s.At.Y - b.high/2, Right: left + b.wide, Bottom: s.At.Y + b.high/2}
}

// among puts a block at the first of some spots that is free. A block of two lines may
// also grow up or down from there.
func (p *Pen) among(n *Note, b block, spots []Spot) bool {
	for _, s := range spots {
		if p.put(n, b, s) {
			return true
		}
		if b.rows[1] == "" {
			continue
		}
		for _, by := range [2]float64{-b.high / 4, b.high / 4} {
			t := s
			t.At.Y += by
			if p.put(n, b, t) {
				return true
			}
		}
	}
	return false
}

// nearby, farther and unled are steps away from a place, in letters, the shortest first: how
// far a label is moved along, how far a number stands off, and how far one without a ring.
// They are made when first tried: most pictures need none.
var nearby, farther, unled = steps(9, 4.2, 1, 0.7), steps(20, 11.2, 1, 0.7), steps(3, 3, 0.5, 0.25)

func steps(across, up, dx, dy float64) func() []draw.Point {
	return sync.OnceValue(func() []draw.Point { return stepped(across, up, dx, dy) })
}

func stepped(across, up, dx, dy float64) []draw.Point {
	var out []draw.Point
	for x := -across; x <= across; x += dx {
		for y := -up; y <= up; y += dy {
			out = append(out, draw.Point{X: x, Y: y})
		}
	}
	away := func(q draw.Point) float64 { return math.Hypot(q.X, 1.6*q.Y) }
	sort.SliceStable(out, func(i, j int) bool { return away(out[i]) < away(out[j]) })
	return out
}

// near puts a block as near to its first place as there is room. Away from what it was
// meant to lie on it has the picture's ground.
func (p *Pen) near(n *Note, b block, by func() []draw.Point) bool {
	n.Text.Halo = draw.Paper
	for _, step := range by() {
		s := n.At[0]
		s.At.X += step.X * p.Letter
		s.At.Y += step.Y * p.Letter
		if p.put(n, b, s) {
			return true
		}
	}
	return false
}

// keyed puts a label into the key, and its number into the picture.
func (p *Pen) keyed(n *Note) {
	words := n.Key
	if words == "" {
		words = n.Text.Text
	}
	number := p.numbered + 1
	entry := draw.KeyEntry{Number: number, Text: words}
	m := *n
	m.Text.Angle, m.Text.Text, m.Text.Bold, m.Tied = 0, entry.Mark(), true, false
	if m.Text.Halo == "" {
		m.Text.Halo = draw.Paper
	}
	about := n.about()
	m.At, m.Lead = []Spot{{At: about, Anchor: draw.Middle}}, &about
	m.With = nil
	b := p.block(&m, m.Text.Text)
	b.wide, b.ringed = max(b.wide, b.high)+0.3*p.Letter, true
	switch {
	case p.near(&m, b, farther):
		p.numbered = number
	case p.near(&m, p.block(&m, m.Text.Text), unled):
		p.numbered = number
	default:
		entry.Number = 0
	}
	p.List.Key = append(p.List.Key, entry)
}

// put draws a label at a spot if it is free there.
func (p *Pen) put(n *Note, b block, s Spot) bool {
	box := b.box(n, s)
	if !p.free(box) || meetsAny(box, n.Off) {
		return false
	}
	var with []draw.Op
	if n.With != nil {
		with = n.With(box)
	}
	if lead, ok := p.leader(n, box); ok {
		with = append(with, lead)
	}
	for _, op := range with {
		if line, ok := op.(draw.Stroke); ok && (p.runsOver(line) || p.runsOut(line)) {
			return false
		}
	}
	for _, op := range with {
		p.List.Add(op)
		p.lines.add(op)
	}
	// A little space between one label and the next.
	p.said = append(p.said, draw.Box{Left: box.Left - 0.3*p.Letter, Top: box.Top - 1, Right: box.Right + 0.3*p.Letter,
		Bottom: box.Bottom + 1})
	p.letter(n, b, s, box)
	return true
}

// letter draws a label on its ground.
func (p *Pen) letter(n *Note, b block, s Spot, box draw.Box) {
	t := n.Text
	t.Anchor = s.Anchor
	if t.Halo != "" {
		p.List.Add(draw.Fill{Role: t.Halo, Points: corners(box)})
		t.Halo = ""
	}
	if b.ringed {
		middle := draw.Point{X: (box.Left + box.Right) / 2, Y: (box.Top + box.Bottom) / 2}
		ring := draw.Stroke{Role: t.Role, Points: draw.Polygon(middle, b.wide/2, 16, 0), Width: HairWidth * p.Weight,
			Closed: true}
		if Misread(ring, p.Weight) {
			ring.Role = draw.Ink // the number's own ring strikes nothing
		}
		p.List.Add(ring)
	}
	t.Text, t.At = b.rows[0], s.At
	if b.rows[1] == "" {
		p.List.Add(t)
		return
	}
	t.At.Y = s.At.Y - b.high/4
	p.List.Add(t)
	t.Text, t.At.Y = b.rows[1], s.At.Y+b.high/4
	p.List.Add(t)
}

func corners(b draw.Box) []draw.Point {
	return []draw.Point{{X: b.Left, Y: b.Top}, {X: b.Right, Y: b.Top}, {X: b.Right, Y: b.Bottom}, {X: b.Left, Y: b.Bottom}}
}

// leader is the line from what a label is about to the label, where one is due.
func (p *Pen) leader(n *Note, box draw.Box) (draw.Op, bool) {
	from := n.about()
	to := draw.Point{X: max(box.Left, min(box.Right, from.X)), Y: max(box.Top, min(box.Bottom, from.Y))}
	away := math.Hypot(to.X-from.X, to.Y-from.Y)
	if away < 1 || !n.Tied && away < 1.3*p.Letter {
		return nil, false
	}
	return draw.Stroke{Role: draw.Faint, Points: []draw.Point{from, to}, Width: HairWidth * p.Weight}, true
}

// runsOver reports whether a line runs over a label.
func (p *Pen) runsOver(line draw.Stroke) bool {
	for i := 1; i < len(line.Points); i++ {
		for _, b := range p.said {
			if crosses(line.Points[i-1], line.Points[i], b) {
				return true
			}
		}
	}
	return false
}

// runsOut reports whether a line of a whole picture leaves it.
func (p *Pen) runsOut(line draw.Stroke) bool {
	if p.View.Zoom > 1 {
		return false
	}
	b := draw.BoxOf(line.Points)
	return b.Left < 0 || b.Top < 0 || b.Right > p.List.Width || b.Bottom > p.List.Height
}

// free reports whether a label may stand in a box.
func (p *Pen) free(b draw.Box) bool {
	const edge = 2 // px of paper round the whole picture
	if b.Left < edge || b.Top < edge || b.Right > p.List.Width-edge || b.Bottom > p.List.Height-edge {
		return false
	}
	return !meetsAny(b, p.said) && !meetsAny(b, p.taken) && !p.lines.strikes(b)
}

// meetsAny reports whether a box meets one of others. It is what a placing does most, and
// this package is compiled without inlining: so the comparison stands here.
func meetsAny(b draw.Box, others []draw.Box) bool {
	for i := range others {
		if o := &others[i]; b.Left < o.Right && o.Left < b.Right && b.Top < o.Bottom && o.Top < b.Bottom {
			return true
		}
	}
	return false
}
