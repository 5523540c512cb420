package pattern

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Pattern is a full-size drawing. Millimetres, x to the right and y down the
// paper, the whole of it moved so that its upper left corner is the origin.
type Pattern struct {
	Key, Name string
	// Note says how it is used; it is printed on the pattern's first sheet.
	Note   string
	Lines  []Line
	Labels []Label
	// Size is the breadth and height of everything drawn.
	Size geom.Vec2
}

// Line is a path of straight pieces.
type Line struct {
	Points []geom.Vec2
	Style  Style
}

// Style is how a line is drawn, by what is done along it.
type Style int

// The styles.
const (
	Cut    Style = iota // cut or lay the wood along it
	Mark                // a mark, or an edge seen behind
	Centre              // a centre line or one to turn the pattern over on
	Dotted              // laps and limits
)

// width is the line's breadth, mm, and dash what is drawn and skipped in turn.
func (s Style) width() float64  { return [...]float64{0.5, 0.25, 0.25, 0.35}[s] }
func (s Style) dash() []float64 { return [...][]float64{nil, nil, {12, 2, 2, 2}, {2, 1.5}}[s] }

// Label is a line of lettering that starts at a point, or ends there.
type Label struct {
	At   geom.Vec2
	Text string
	// Size of the letters, mm; 0 is twelve points.
	Size float64
	// Turned runs it up the paper.
	Turned bool
	End    bool
}

// twelvePoints in mm, the least lettering of what is read at the bench.
const twelvePoints = 12 * inch / 72

func (l Label) size() float64 {
	if l.Size > 0 {
		return l.Size
	}
	return twelvePoints
}

// box is where the label lies, low and high corner.
func (l Label) box() (low, high geom.Vec2) {
	length := draw.Lettered(l.Text, l.size(), false)
	if l.End {
		length = -length
	}
	a, b := l.At.Add(geom.Vec2{Y: -l.size()}), l.At.Add(geom.Vec2{X: length, Y: 0.3 * l.size()})
	if l.Turned {
		a, b = l.At.Add(geom.Vec2{X: -l.size()}), l.At.Add(geom.Vec2{X: 0.3 * l.size(), Y: -length})
	}
	return geom.Vec2{X: min(a.X, b.X), Y: min(a.Y, b.Y)}, geom.Vec2{X: max(a.X, b.X), Y: max(a.Y, b.Y)}
}

const millimetres = 1000 // in a metre

// rounding is what sums and quotients of lengths may be off by, m or a share: wide against a double's last bits, narrow
// against any line.
const rounding = 1e-9

// draw adds a line through points in metres, y up.
func (p *Pattern) draw(style Style, points ...geom.Vec2) {
	l := Line{Style: style, Points: make([]geom.Vec2, len(points))}
	for i, q := range points {
		l.Points[i] = toPaper(q)
	}
	p.Lines = append(p.Lines, l)
}

func toPaper(q geom.Vec2) geom.Vec2 {
	return geom.Vec2{X: q.X * millimetres, Y: -q.Y * millimetres}
}

// label adds lettering at a point in metres, y up.
func (p *Pattern) label(at geom.Vec2, text string) {
	p.Labels = append(p.Labels, Label{At: toPaper(at), Text: text})
}

// done moves the drawing to the origin and measures it. A pattern turned on its
// side takes fewer sheets where it is broader than high.
func (p Pattern) done() Pattern {
	low := geom.Vec2{X: math.Inf(1), Y: math.Inf(1)}
	high := geom.Vec2{X: math.Inf(-1), Y: math.Inf(-1)}
	reach := func(q geom.Vec2) {
		low = geom.Vec2{X: min(low.X, q.X), Y: min(low.Y, q.Y)}
		high = geom.Vec2{X: max(high.X, q.X), Y: max(high.Y, q.Y)}
	}
	for _, l := range p.Lines {
		for _, q := range l.Points {
			reach(q)
		}
	}
	for _, l := range p.Labels {
		a, b := l.box()
		reach(a)
		reach(b)
	}
	for _, l := range p.Lines {
		for i := range l.Points {
			l.Points[i] = l.Points[i].Sub(low)
		}
	}
	for i := range p.Labels {
		p.Labels[i].At = p.Labels[i].At.Sub(low)
	}
	p.Size = high.Sub(low)
	return p
}
