package draw

import (
	"math"
	"strconv"
	"strings"
)

// Point is a place in the picture, CSS pixels.
type Point struct{ X, Y float64 }

// Size is the room a picture has.
type Size struct {
	// Width and Height in CSS pixels.
	Width, Height float64
	// Letter is the height of the page's own lettering, CSS pixels; a picture
	// letters in proportion, so that a projector's is read from the back too.
	Letter float64
}

// List is one picture: what is drawn, in order, and what can be touched.
// Labels lie above everything else, whatever their place in Ops.
type List struct {
	// Width and Height are the picture's size in CSS pixels, or in millimetres
	// where the list is a pattern.
	Width, Height float64
	// Title names the picture and Description says in words what it shows; they
	// are its text alternative.
	Title, Description string
	Ops                []Op
	Parts              []Part
	// Key holds the labels that found no room in the picture.
	Key []KeyEntry
}

// KeyEntry is a label that stands under the picture instead of in it.
type KeyEntry struct {
	// Number stands in the picture where the label is meant, or is 0 where not even a
	// number found room.
	Number int
	Text   string
}

// String is the entry in words, as "3 stem".
func (e KeyEntry) String() string {
	if e.Number == 0 {
		return e.Text
	}
	return e.Mark() + " " + e.Text
}

// Mark is the number as it stands in the picture.
func (e KeyEntry) Mark() string { return strconv.Itoa(e.Number) }

// KeyWords is the key in one line, empty where everything found room.
func (l List) KeyWords() string {
	words := make([]string, len(l.Key))
	for i, e := range l.Key {
		words[i] = e.String()
	}
	return strings.Join(words, "; ")
}

// Words is the text alternative to the picture: the description with the key.
func (l List) Words() string {
	if len(l.Key) == 0 {
		return l.Description
	}
	return strings.TrimSpace(l.Description + " Key: " + l.KeyWords() + ".")
}

// Op is one of Fill, Stroke, Hatch and Text.
type Op interface{ op() }

// Fill covers a simple polygon, which may be hollow-sided; it closes itself.
type Fill struct {
	Role   Role
	Points []Point
}

// Stroke draws a line along points.
type Stroke struct {
	Role   Role
	Points []Point
	// Width is the whole breadth of the line, CSS pixels.
	Width float64
	// Dash holds lengths drawn and skipped in turn, CSS pixels; none is a whole line.
	Dash   []float64
	Closed bool
}

// Hatch covers a simple polygon with parallel lines.
type Hatch struct {
	Role   Role
	Points []Point
	// Spacing between the lines and Width of each, CSS pixels.
	Spacing, Width float64
	// Angle of the lines from the x axis, radians, clockwise as seen.
	Angle float64
}

// Text is one line of lettering, centred in height on At.
type Text struct {
	Role   Role
	Text   string
	At     Point
	Anchor Anchor
	// Size of the letters, CSS pixels.
	Size float64
	// Angle of the line about At, radians, clockwise as seen.
	Angle float64
	Bold  bool
	// Halo is the role of the rim that keeps lines from running through the
	// letters; empty for none.
	Halo Role
}

func (Fill) op()   {}
func (Stroke) op() {}
func (Hatch) op()  {}
func (Text) op()   {}

// Anchor says which end of a line of lettering stands at its place.
type Anchor int

// The anchors, as in SVG.
const (
	Start Anchor = iota
	Middle
	End
)

// String is the anchor's name in SVG and in a dump.
func (a Anchor) String() string { return [...]string{"start", "middle", "end"}[a] }

// Add appends operations in drawing order.
func (l *List) Add(ops ...Op) { l.Ops = append(l.Ops, ops...) }

// Put appends another picture, so many times as large, with its upper left corner at a
// place. Its parts and its key stay behind.
func (l *List) Put(o List, at Point, times float64) {
	move := func(p Point) Point { return Point{at.X + times*p.X, at.Y + times*p.Y} }
	moved := func(points []Point) []Point {
		out := make([]Point, len(points))
		for i, p := range points {
			out[i] = move(p)
		}
		return out
	}
	for _, op := range o.Ops {
		switch op := op.(type) {
		case Fill:
			op.Points = moved(op.Points)
			l.Add(op)
		case Stroke:
			op.Points, op.Width = moved(op.Points), times*op.Width
			dash := make([]float64, len(op.Dash))
			for i, d := range op.Dash {
				dash[i] = times * d
			}
			op.Dash = dash
			l.Add(op)
		case Hatch:
			op.Points, op.Spacing, op.Width = moved(op.Points), times*op.Spacing, times*op.Width
			l.Add(op)
		case Text:
			op.At, op.Size = move(op.At), times*op.Size
			l.Add(op)
		}
	}
}

// Touch names a part: a closed part is touched inside its outline, an open one
// along its line.
func (l *List) Touch(name string, closed bool, points ...Point) {
	l.Parts = append(l.Parts, Part{Name: name, Points: points, Closed: closed})
}

// Lines are the hatch's own lines, cut to its polygon by the even-odd rule.
// They stand on a lattice through the picture's corner, so that neighbours line up.
func (h Hatch) Lines() [][2]Point {
	if len(h.Points) < 3 || !(h.Spacing > 0) {
		return nil
	}
	sin, cos := math.Sincos(h.Angle)
	along := func(p Point) float64 { return p.X*cos + p.Y*sin }
	across := func(p Point) float64 { return p.Y*cos - p.X*sin }
	low, high := math.Inf(1), math.Inf(-1)
	levels := make([]float64, len(h.Points))
	for i, p := range h.Points {
		levels[i] = across(p)
		low, high = min(low, levels[i]), max(high, levels[i])
	}
	var lines [][2]Point
	var cuts []float64
	for n := math.Ceil(low / h.Spacing); n*h.Spacing < high; n++ {
		level := n * h.Spacing
		cuts = cuts[:0]
		for i, a := range h.Points {
			next := (i + 1) % len(h.Points)
			b, u, v := h.Points[next], levels[i], levels[next]
			if (u <= level) == (v <= level) {
				continue
			}
			t := (level - u) / (v - u)
			cuts = insertSorted(cuts, along(a)+t*(along(b)-along(a)))
		}
		for i := 0; i+1 < len(cuts); i += 2 {
			var line [2]Point
			for j, s := range cuts[i : i+2] {
				line[j] = Point{X: s*cos - level*sin, Y: s*sin + level*cos}
			}
			lines = append(lines, line)
		}
	}
	return lines
}

func insertSorted(values []float64, v float64) []float64 {
	values = append(values, v)
	for i := len(values) - 1; i > 0 && values[i-1] > v; i-- {
		values[i], values[i-1] = values[i-1], v
	}
	return values
}
