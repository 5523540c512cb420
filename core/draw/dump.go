package draw

import (
	"fmt"
	"io"
	"math"
	"strings"

	"barkwright/core/units"
)

// Dump writes the list as text, places rounded to a tenth of a pixel: goldens that read
// as drawings and do not change with the last bits of a machine. Labels, parts and lines
// of no more than fullPoints points are written in full; longer ones, and those that follow one
// another in one style, are counted, with the box they lie in, the first and the last
// place and how long they are together.
func (l List) Dump(w io.Writer) error {
	e := &errWriter{w: w}
	e.printf("list %s %s %q\n", tenth(l.Width), tenth(l.Height), l.Title)
	shapes := make([]shape, len(l.Ops))
	for i, op := range l.Ops {
		shapes[i] = shapeOf(op)
	}
	for len(shapes) > 0 {
		period, times := repeats(shapes)
		if period > 1 {
			e.printf("%d times\n", times)
		}
		for k := range period {
			e.dump(every(shapes[k:period*times], period))
		}
		shapes = shapes[period*times:]
	}
	for _, p := range l.Parts {
		e.printf("part %s%s\n", p.Name, places(p.Points))
	}
	for _, k := range l.Key {
		e.printf("key %s\n", k)
	}
	return e.err
}

// shape is an operation as it is dumped: its style in words, and where it lies. A label
// is all words.
type shape struct {
	style  string
	points []Point
}

func shapeOf(op Op) shape {
	switch op := op.(type) {
	case Fill:
		return shape{fmt.Sprintf("fill %s", op.Role), op.Points}
	case Stroke:
		style := fmt.Sprintf("stroke %s %s", op.Role, tenth(op.Width))
		if len(op.Dash) > 0 {
			style += " dash"
			for _, d := range op.Dash {
				style += " " + tenth(d)
			}
		}
		if op.Closed {
			style += " closed"
		}
		return shape{style, op.Points}
	case Hatch:
		style := fmt.Sprintf("hatch %s %s every %s at %.2f", op.Role, tenth(op.Width), tenth(op.Spacing), op.Angle)
		return shape{style, op.Points}
	case Text:
		return shape{style: fmt.Sprintf("text %s %s %s %.2f%s %q", op.Role, tenth(op.Size), op.Anchor, op.Angle,
			places([]Point{op.At}), op.Text)}
	}
	panic("draw: an operation that is not dumped")
}

// mostPeriod is how many styles may take turns, as the fill and the edge of every rib do.
const mostPeriod = 3

// repeats says after how many shapes the styles at the head of a list come again, and how
// often: what takes most shapes in.
func repeats(shapes []shape) (period, times int) {
	period, times = 1, 1
	for p := 1; p <= mostPeriod; p++ {
		n := 0
		for n < len(shapes) && shapes[n].style == shapes[n%p].style && shapes[n].points != nil {
			n++
		}
		if n/p > 1 && n/p*p > period*times {
			period, times = p, n/p
		}
	}
	return period, times
}

func every(shapes []shape, period int) []shape {
	var out []shape
	for i := 0; i < len(shapes); i += period {
		out = append(out, shapes[i])
	}
	return out
}

// fullPoints is how many points are written out.
const fullPoints = 4

// dump writes shapes of one style.
func (e *errWriter) dump(shapes []shape) {
	if first := shapes[0]; len(shapes) == 1 && len(first.points) <= fullPoints {
		e.printf("%s%s\n", first.style, places(first.points))
		return
	}
	var all []Point
	long := 0.0
	for _, s := range shapes {
		for i, p := range s.points {
			if i > 0 {
				long += math.Hypot(p.X-s.points[i-1].X, p.Y-s.points[i-1].Y)
			}
			all = append(all, p)
		}
	}
	low, high := all[0], all[0]
	for _, p := range all {
		low = Point{X: min(low.X, p.X), Y: min(low.Y, p.Y)}
		high = Point{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
	}
	box, ends := []Point{low, high}, []Point{all[0], all[len(all)-1]}
	e.printf("%s: %d of %d points in%s from%s, %s long\n",
		shapes[0].style, len(shapes), len(all), places(box), places(ends), tenth(long))
}

func places(points []Point) string {
	var b strings.Builder
	for _, p := range points {
		b.WriteString(" " + tenth(p.X) + "," + tenth(p.Y))
	}
	return b.String()
}

func tenth(v float64) string { return units.Trimmed(v, 1) }

// errWriter keeps the first error, so that printing reads as printing.
type errWriter struct {
	w   io.Writer
	err error
}

func (e *errWriter) printf(format string, args ...any) {
	if e.err == nil {
		_, e.err = fmt.Fprintf(e.w, format, args...)
	}
}
