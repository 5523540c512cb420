package scene

import (
	"math"
	"sort"

	"barkwright/core/draw"
)

// raster is what labels keep off, marked in cells of the picture: a label is tried in many
// places, and each has to be a matter of a few words of memory.
type raster struct {
	width, height float64 // of the picture, CSS pixels
	cell, perCell float64 // CSS pixels, and its inverse
	stride, rows  int     // words in a row, and rows
	bits          []uint64
}

// leastCell and mostCells are the finest raster, CSS pixels, and the most cells across.
const (
	leastCell = 2.5
	mostCells = 640
)

func newRaster(width, height float64) *raster {
	l := &raster{width: width, height: height, cell: max(leastCell, width/mostCells)}
	l.perCell = 1 / l.cell
	l.stride = int(width/l.cell)/64 + 1
	l.rows = int(height/l.cell) + 1
	l.bits = make([]uint64, l.stride*l.rows)
	return l
}

// add takes in a line or a hatch.
func (l *raster) add(op draw.Op) {
	switch op := op.(type) {
	case draw.Hatch:
		l.polygon(op.Points)
	case draw.Stroke:
		for i := 1; i < len(op.Points); i++ {
			l.segment(op.Points[i-1], op.Points[i])
		}
		if n := len(op.Points); op.Closed && n > 1 {
			l.segment(op.Points[n-1], op.Points[0])
		}
	}
}

// segment marks the cells along a straight line, a cell a step.
func (l *raster) segment(a, b draw.Point) {
	if max(a.X, b.X) < 0 || max(a.Y, b.Y) < 0 || min(a.X, b.X) > l.width || min(a.Y, b.Y) > l.height {
		return
	}
	dx, dy := b.X-a.X, b.Y-a.Y
	from, to := 0.0, 1.0
	if min(a.X, b.X) < 0 || min(a.Y, b.Y) < 0 || max(a.X, b.X) > l.width || max(a.Y, b.Y) > l.height {
		from, to = inRange(a.X, dx, l.width, from, to)
		if from, to = inRange(a.Y, dy, l.height, from, to); from > to {
			return
		}
	}
	x, y := (a.X+from*dx)*l.perCell, (a.Y+from*dy)*l.perCell
	dx, dy = dx*(to-from)*l.perCell, dy*(to-from)*l.perCell
	n := int(max(math.Abs(dx), math.Abs(dy))) + 1
	if n > 1 {
		dx, dy = dx/float64(n), dy/float64(n)
	}
	for range n + 1 {
		l.mark(int(x), int(y))
		x += dx
		y += dy
	}
}

// inRange narrows the stretch of a line that goes from a by run to what lies from 0 to end.
func inRange(a, run, end, from, to float64) (float64, float64) {
	if run == 0 {
		return from, to
	}
	u, v := -a/run, (end-a)/run
	return max(from, min(u, v)), min(to, max(u, v))
}

func (l *raster) mark(x, y int) {
	if x >= 0 && y >= 0 && y < l.rows && x < 64*l.stride {
		l.bits[y*l.stride+x>>6] |= 1 << (x & 63)
	}
}

// polygon marks the cells inside an outline and along it.
func (l *raster) polygon(points []draw.Point) {
	b := draw.BoxOf(points)
	first, last := max(0, int(b.Top/l.cell)), min(l.rows-1, int(b.Bottom/l.cell))
	for i, a := range points {
		l.segment(a, points[(i+1)%len(points)])
	}
	var cuts []float64
	for y := first; y <= last; y++ {
		level := (float64(y) + 0.5) * l.cell
		cuts = cuts[:0]
		for i, p := range points {
			if q := points[(i+1)%len(points)]; (p.Y <= level) != (q.Y <= level) {
				cuts = append(cuts, p.X+(level-p.Y)/(q.Y-p.Y)*(q.X-p.X))
			}
		}
		sort.Float64s(cuts)
		for i := 1; i < len(cuts); i += 2 {
			for x := max(0, int(cuts[i-1]*l.perCell)); x <= min(64*l.stride-1, int(cuts[i]*l.perCell)); x++ {
				l.mark(x, y)
			}
		}
	}
}

// strikes reports whether any of the lines runs through a box. It may say so of a line that
// passes within a cell.
func (l *raster) strikes(b draw.Box) bool {
	// Half a cell more all round, for what a step along a line passes by.
	left, right := max(0, int(b.Left/l.cell-0.5)), min(64*l.stride-1, int(b.Right/l.cell+0.5))
	top, bottom := max(0, int(b.Top/l.cell-0.5)), min(l.rows-1, int(b.Bottom/l.cell+0.5))
	if left > right {
		return false
	}
	first, last := left>>6, right>>6
	firstMask, lastMask := ^uint64(0)<<(left&63), ^uint64(0)>>(63-right&63)
	for y := top; y <= bottom; y++ {
		row := l.bits[y*l.stride : (y+1)*l.stride]
		for w := first; w <= last; w++ {
			bits := row[w]
			if w == first {
				bits &= firstMask
			}
			if w == last {
				bits &= lastMask
			}
			if bits != 0 {
				return true
			}
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
