package scene

import "barkwright/core/draw"

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
