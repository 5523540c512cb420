package scene

import (
	"math"

	"barkwright/core/draw"
)

// Misread reports whether an operation draws what lettering must keep off. A line through
// figures can be read as one of them, and what a line says is lost under a label: outlines,
// seams, gores, joints, timber in front, the water line, the tape, dimension lines and
// every hatch. Lettering may stand, on a ground of its own, over what only fills a
// surface in: fine lines, dashed centre lines, stakes and stitches. Weight is the pen's.
// The part touched and handles come and go, so labels do not move for them; a label
// keeps off a handle by its box.
func Misread(op draw.Op, weight float64) bool {
	switch op := op.(type) {
	case draw.Hatch:
		return op.Role == draw.Warn
	case draw.Stroke:
		width := op.Width/weight + 1e-9
		switch op.Role {
		case draw.Water, draw.Warn:
			return true
		case draw.Seam:
			return width >= FineWidth
		case draw.Ink:
			return width >= DimensionWidth
		case draw.Frame:
			return width >= TimberWidth
		case draw.Faint:
			return len(op.Dash) == 0 && width >= FineWidth
		}
	}
	return false
}

// lines are what labels keep off, in columns of the picture.
type lines struct {
	width   float64 // of a column, CSS pixels
	heads   [columns]int32
	pieces  []piece
	hatched []hatched
}

const columns = 32

// piece is a straight line, in float32 to keep the whole small: a hundredth of a pixel does
// not matter here.
type piece struct {
	ax, ay, bx, by float32
	next           int32
}

type hatched struct {
	box    draw.Box
	points []draw.Point
}

func newLines(width float64) *lines {
	l := &lines{width: max(width, 1) / columns, pieces: make([]piece, 1, 1024)}
	return l
}

// add takes in an operation that may be misread.
func (l *lines) add(op draw.Op) {
	switch op := op.(type) {
	case draw.Hatch:
		l.hatched = append(l.hatched, hatched{draw.BoxOf(op.Points), op.Points})
	case draw.Stroke:
		for i := 1; i < len(op.Points); i++ {
			l.segment(op.Points[i-1], op.Points[i])
		}
		if n := len(op.Points); op.Closed && n > 1 {
			l.segment(op.Points[n-1], op.Points[0])
		}
	}
}

func (l *lines) column(x float64) int { return int(max(0, min(columns-1, math.Floor(x/l.width)))) }

func (l *lines) segment(a, b draw.Point) {
	from, to := l.column(min(a.X, b.X)), l.column(max(a.X, b.X))
	for c := from; c <= to; c++ {
		l.pieces = append(l.pieces, piece{float32(a.X), float32(a.Y), float32(b.X), float32(b.Y), l.heads[c]})
		l.heads[c] = int32(len(l.pieces) - 1)
	}
}

// strikes reports whether any of the lines runs through a box.
func (l *lines) strikes(b draw.Box) bool {
	for c := l.column(b.Left); c <= l.column(b.Right); c++ {
		for i := l.heads[c]; i != 0; i = l.pieces[i].next {
			if q := &l.pieces[i]; crosses(draw.Point{X: float64(q.ax), Y: float64(q.ay)},
				draw.Point{X: float64(q.bx), Y: float64(q.by)}, b) {
				return true
			}
		}
	}
	for i := range l.hatched {
		if h := &l.hatched[i]; h.box.Meets(b) && covers(h.points, b) {
			return true
		}
	}
	return false
}

// crosses reports whether a straight line runs through a box.
func crosses(p, q draw.Point, b draw.Box) bool {
	if p.X < b.Left && q.X < b.Left || p.X > b.Right && q.X > b.Right ||
		p.Y < b.Top && q.Y < b.Top || p.Y > b.Bottom && q.Y > b.Bottom {
		return false
	}
	// The box's corners lie on both sides of the line.
	dx, dy := q.X-p.X, q.Y-p.Y
	over, under := false, false
	for _, k := range [4]draw.Point{{X: b.Left, Y: b.Top}, {X: b.Right, Y: b.Top}, {X: b.Right, Y: b.Bottom},
		{X: b.Left, Y: b.Bottom}} {
		side := dx*(k.Y-p.Y) - dy*(k.X-p.X)
		over, under = over || side >= 0, under || side <= 0
	}
	return over && under
}

// covers reports whether a polygon and a box have any place in common.
func covers(points []draw.Point, b draw.Box) bool {
	for i, p := range points {
		if crosses(p, points[(i+1)%len(points)], b) {
			return true
		}
	}
	return draw.Encloses(points, draw.Point{X: (b.Left + b.Right) / 2, Y: (b.Top + b.Bottom) / 2})
}
