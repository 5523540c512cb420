package draw

import (
	"fmt"
	"io"
	"strings"

	"barkwright/core/units"
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
