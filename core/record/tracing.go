package record

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/trace"
	"barkwright/core/units"
)

// View is which of a boat's views is read off a picture.
type View int

// The views. Along a section's base line is across the boat.
const (
	FromSide View = iota
	FromAbove
	InSection

	Views
)

var viewWords = [Views]string{"Side", "From above", "Sections"}

// String is the view as a button names it.
func (v View) String() string { return viewWords[v] }

// Sort is what a picture is and how it is scaled.
type Sort int

// The sorts.
const (
	Drawn Sort = iota
	SquareOn
	SetSquare

	Sorts
)

var sortWords = [Sorts]string{"A drawing", "A photograph taken square on", "A photograph, to be set square"}

// String is the sort as a list names it.
func (s Sort) String() string { return sortWords[s] }

// off is what a row says that was read off a picture of the sort.
var off = [Sorts]string{"read off a drawing", "read off a photograph taken square on",
	"read off a photograph set square: true in that plane only"}

// Mark is what was pressed on a picture for one thing.
type Mark struct {
	// ID is its number, which no other mark or point of the tracing has.
	ID   int
	View View
	// What is the ID of what was pressed.
	What   string
	Points []Pressed
	// Length is what a lettered size measures, or a rectangle from its first corner to its
	// second; High is the rectangle's from its second to its third. Metres.
	Length, High float64
	// Number and At are where it was taken, as far as the picture does not show it.
	Number int
	At     Place
	// Entered tells that a row of the record came from the mark as a whole.
	Entered bool
}

// Pressed is a point pressed on a picture.
type Pressed struct {
	ID int
	// At is in pixels of the picture, to the right and down from its corner.
	At geom.Vec2
	// Held is how nearly it could be held where it was pressed: its standard deviation, pixels.
	Held float64
	// Entered tells that a row of the record came from it. One struck out stays out.
	Entered bool
}

// Tracing is what was pressed on one picture. It is never changed in place.
type Tracing struct {
	// Width and Height of the picture, pixels.
	Width, Height float64
	Sort          Sort
	// Line is how broad its lines are, pixels.
	Line float64
	// Half tells of a view that half of it is drawn, and the rest as that is.
	Half [Views]bool
	// Turn is how it is looked at, radians, clockwise; Mirrored that it is turned over first,
	// left for right.
	Turn     float64
	Mirrored bool
	Marks    []Mark
	// Last is the highest number in use.
	Last int
	// Picture is the picture itself as a data URL, where its user keeps it with the design.
	Picture string
}

// What a tracing holds at most: it bounds the file. MostPicture is in bytes of its text.
const (
	MostMarks, MostPressed = 200, 400
	MostPicture            = 400 << 10
	// MostPixels bounds either side of a picture.
	MostPixels = 20000
	// usualLine is how broad the lines of a drawing are where nobody says, pixels: a fifth of a
	// millimetre scanned at 300 to the inch. A choice of this project.
	usualLine = 2
)

const (
	// certain is how many standard deviations a tolerance is: nineteen in twenty lie within,
	// where they are spread normally.
	certain = 1.96
	// uneven is how much more paper may well have grown or shrunk one way than the other, and
	// pixels that of a photograph, whose pixels are square. No published source for paper kept
	// as drawings are was found: common practice, as a standard deviation.
	uneven, pixels = 0.01, 0.002
	// askew is the tolerance of a length off a photograph that was taken square on by eye, as a
	// share: one turned away by 11 degrees is shorter by 2 %, its cosine.
	askew = 0.02
)

// Up is the way up in pixels of the picture, as it is looked at.
func (t *Tracing) Up() geom.Vec2 {
	sin, cos := math.Sincos(t.Turn)
	if t.Mirrored {
		return geom.Vec2{X: sin, Y: -cos}
	}
	return geom.Vec2{X: -sin, Y: -cos}
}

// point is a pressed point with all of its spread: of the hand, and of the line's breadth,
// within which any place is as good.
func (t *Tracing) point(p Pressed) trace.Point {
	return trace.Point{Vec2: p.At, Spread: math.Hypot(p.Held, t.Line/math.Sqrt(12))}
}

// Of returns the first mark of a view that is of what, and its place.
func (t *Tracing) Of(v View, what string) (Mark, int) {
	for i, m := range t.Marks {
		if m.View == v && m.What == what && m.Whole(t) {
			return m, i
		}
	}
	return Mark{}, -1
}

// Whole tells whether a mark has all its points.
func (m Mark) Whole(t *Tracing) bool {
	p, ok := LookupPress(m.What)
	return ok && len(m.Points) >= max(1, p.Points(t.Half[m.View]))
}

// sizes are the lettered sizes that a view is scaled by: its own, or where it has none those
// of the rest of the sheet.
func (t *Tracing) sizes(v View) (sizes []trace.Size, marks []int) {
	for _, own := range []bool{true, false} {
		for i, m := range t.Marks {
			if m.What != LetteredSize || (m.View == v) != own || m.Length <= 0 || !m.Whole(t) {
				continue
			}
			sizes = append(sizes, trace.Size{A: t.point(m.Points[0]), B: t.point(m.Points[1]), Length: m.Length,
				Spread: usual[lettered] / certain})
			marks = append(marks, i)
		}
		if len(sizes) > 0 || t.Sort == SetSquare {
			break
		}
	}
	return sizes, marks
}

// Scaled tells whether anything says yet what a view measures.
func (t *Tracing) Scaled(v View) bool {
	sizes, _ := t.sizes(v)
	_, rectangle := t.Of(v, KnownRectangle)
	return len(sizes) > 0 || t.Sort == SetSquare && rectangle >= 0
}

// Lay finds how a view lies in the picture, or why it cannot be read, and which marks are
// the lettered sizes of its scale, in their order there after the sides of a rectangle.
func (t *Tracing) Lay(v View) (trace.Plane, []int, error) {
	base, is := t.Of(v, BaseLine)
	if is < 0 {
		return trace.Plane{}, nil, trace.NoBase
	}
	middle, is := t.Of(v, MiddlePoint)
	if is < 0 {
		return trace.Plane{}, nil, trace.NoMiddle
	}
	sizes, marks := t.sizes(v)
	s := trace.Setting{Base: [2]trace.Point{t.point(base.Points[0]), t.point(base.Points[1])},
		Middle: t.point(middle.Points[0]), Up: t.Up(), Sizes: sizes, Uneven: uneven}
	switch t.Sort {
	case SquareOn:
		s.Uneven, s.Loose = pixels, askew/certain
	case SetSquare:
		s.Uneven = pixels
		m, is := t.Of(v, KnownRectangle)
		if is < 0 {
			return trace.Plane{}, nil, trace.NoCorners
		}
		s.Rectangle = &trace.Rectangle{Wide: m.Length, High: m.High, Spread: usual[lettered] / certain}
		for i := range s.Rectangle.Corners {
			s.Rectangle.Corners[i] = t.point(m.Points[i])
		}
	}
	p, err := trace.New(s)
	return p, marks, err
}

// Pressed counts the points of a tracing.
func (t *Tracing) Pressed() int {
	n := 0
	for _, m := range t.Marks {
		n += len(m.Points)
	}
	return n
}

// NewTracing begins one on a picture of so many pixels. last is the highest number that rows
// of an earlier one go by.
func NewTracing(width, height float64, last int) Tracing {
	return Tracing{Width: width, Height: height, Line: usualLine, Last: last}
}

// amidships is how near the middle a place counts as there.
const amidships = units.Inch / 2
