package draw

import (
	"fmt"
	"io"
	"strconv"
	"strings"
)

// Dump writes the list as text, one line an operation or part, places rounded
// to a tenth of a pixel: goldens that read as drawings and do not change with
// the last bits of a machine.
func (l List) Dump(w io.Writer) error {
	e := &errWriter{w: w}
	e.printf("list %s %s %q\n", tenth(l.Width), tenth(l.Height), l.Title)
	for _, op := range l.Ops {
		switch op := op.(type) {
		case Fill:
			e.printf("fill %s%s\n", op.Role, places(op.Points))
		case Stroke:
			e.printf("stroke %s %s", op.Role, tenth(op.Width))
			if len(op.Dash) > 0 {
				e.printf(" dash")
				for _, d := range op.Dash {
					e.printf(" %s", tenth(d))
				}
			}
			if op.Closed {
				e.printf(" closed")
			}
			e.printf("%s\n", places(op.Points))
		case Hatch:
			e.printf("hatch %s %s every %s at %.2f%s\n", op.Role, tenth(op.Width), tenth(op.Spacing), op.Angle, places(op.Points))
		case Text:
			e.printf("text %s %s %s %.2f%s %q\n", op.Role, tenth(op.Size), op.Anchor, op.Angle, places([]Point{op.At}), op.Text)
		}
	}
	for _, p := range l.Parts {
		e.printf("part %s%s\n", p.Name, places(p.Points))
	}
	return e.err
}

func places(points []Point) string {
	var b strings.Builder
	for _, p := range points {
		b.WriteString(" " + tenth(p.X) + "," + tenth(p.Y))
	}
	return b.String()
}

func tenth(v float64) string { return rounded(v, 1) }

// rounded prints v with at most the given digits after the point, without
// trailing noughts and without a minus before nought.
func rounded(v float64, digits int) string {
	s := strconv.FormatFloat(v, 'f', digits, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

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
