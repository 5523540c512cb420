package draw

import (
	"fmt"
	"slices"
	"strings"
)

// svgPath is one path element: what it is drawn along and its attributes.
type svgPath struct {
	d    []string
	look string
	// outline is the polygon, where it is one that is filled.
	outline []Point
	filled  bool
	// boxes are the room of each of its parts, with half the line's breadth round it.
	boxes []Box
}

// paths are the elements of everything but the lettering. A browser takes as long over an
// element as over what it draws, so on a screen a polygon goes into one with its own outline, and
// with what comes next and looks the same. Filled parts are kept apart: where they cross, one may
// empty the other (W3C, SVG 1.1, 11.3, the nonzero rule). A pattern's lines stay as they are, so
// that each can be taken by itself in a drawing program.
func (s SVG) paths(ops []Op) []svgPath {
	var list []svgPath
	apart := s.MillimetresPerUnit > 0
	for _, op := range ops {
		p, ok := s.pathOf(op)
		switch {
		case !ok:
		case apart:
			list = append(list, p)
		case len(list) > 0 && list[len(list)-1].outlinedBy(op):
			last := &list[len(list)-1]
			last.look += strings.TrimPrefix(p.look, ` fill="none"`)
			last.outline, last.boxes = nil, p.boxes
		default:
			list = append(joinLast(list), p)
		}
	}
	if apart {
		return list
	}
	return joinLast(list)
}

// outlinedBy tells whether a line goes round the polygon.
func (p svgPath) outlinedBy(op Op) bool {
	line, ok := op.(Stroke)
	return ok && p.outline != nil && line.Closed && slices.Equal(p.outline, line.Points)
}

// joinLast puts the last path into the one before where they look the same and stay apart.
func joinLast(list []svgPath) []svgPath {
	n := len(list) - 1
	if n < 1 || list[n].look != list[n-1].look {
		return list
	}
	before, last := &list[n-1], list[n]
	if last.filled && slices.ContainsFunc(before.boxes, last.boxes[0].Meets) {
		return list
	}
	before.d = append(before.d, last.d...)
	before.boxes = append(before.boxes, last.boxes...)
	before.outline = nil
	return list[:n]
}

// pathOf is what draws an operation, if it is not lettering and draws anything.
func (s SVG) pathOf(op Op) (p svgPath, ok bool) {
	switch op := op.(type) {
	case Fill:
		return svgPath{d: []string{s.path(op.Points) + "Z"}, look: fmt.Sprintf(` fill="%s"`, s.Palette.Of(op.Role).Hex()),
			outline: op.Points, filled: true, boxes: []Box{BoxOf(op.Points)}}, true
	case Stroke:
		return s.strokePath(op), true
	case Hatch:
		for _, line := range op.Lines() {
			p.d = append(p.d, s.path(line[:]))
		}
		p.look, p.boxes = s.lineLook(op.Role, op.Width), []Box{BoxOf(op.Points)}
		return p, len(p.d) > 0
	}
	return svgPath{}, false
}

func (s SVG) strokePath(op Stroke) svgPath {
	d := s.path(op.Points)
	if op.Closed {
		d += "Z"
	}
	p := svgPath{d: []string{d}, look: s.lineLook(op.Role, op.Width)}
	if len(op.Dash) > 0 {
		lengths := make([]string, len(op.Dash))
		for i, v := range op.Dash {
			lengths[i] = s.number(v)
		}
		p.look += fmt.Sprintf(` stroke-dasharray="%s"`, strings.Join(lengths, " "))
	}
	b, half := BoxOf(op.Points), op.Width/2
	p.boxes = []Box{{b.Left - half, b.Top - half, b.Right + half, b.Bottom + half}}
	return p
}

func (s SVG) lineLook(role Role, width float64) string {
	return fmt.Sprintf(` fill="none" stroke="%s" stroke-width="%s"`, s.Palette.Of(role).Hex(), s.number(width))
}

func (s SVG) path(points []Point) string {
	var b strings.Builder
	for i, p := range points {
		if i == 0 {
			b.WriteByte('M')
		} else {
			b.WriteByte('L')
		}
		b.WriteString(s.number(p.X) + " " + s.number(p.Y))
	}
	return b.String()
}
