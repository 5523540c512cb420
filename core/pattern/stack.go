package pattern

import (
	"errors"
	"io"
	"strconv"

	"barkwright/core/geom"
)

// stackGap is the room between patterns on one drawing, mm.
const stackGap = 15

// Stack puts patterns under one another on one drawing, each under its name. No
// patterns make an empty one.
func Stack(patterns []Pattern) Pattern {
	if len(patterns) == 0 {
		return Pattern{}
	}
	if len(patterns) == 1 {
		return patterns[0]
	}
	first, more := patterns[0], strconv.Itoa(len(patterns)-1)
	out := Pattern{Key: first.Key, Name: first.Name + " and " + more + " more", Note: first.Note}
	y := 0.0
	for _, p := range patterns {
		y += 2 * twelvePoints
		out.Labels = append(out.Labels, Label{At: geom.Vec2{Y: y}, Text: p.Name})
		y += twelvePoints
		for _, l := range p.Lines {
			points := make([]geom.Vec2, len(l.Points))
			for i, q := range l.Points {
				points[i] = q.Add(geom.Vec2{Y: y})
			}
			out.Lines = append(out.Lines, Line{points, l.Style})
		}
		for _, l := range p.Labels {
			l.At.Y += y
			out.Labels = append(out.Labels, l)
		}
		y += p.Size.Y + stackGap
	}
	return out.done()
}

// SVG writes the whole pattern as one drawing in true millimetres, with the bars
// and the frame that prove its scale. It fails where there is nothing to draw.
func (p Pattern) SVG(w io.Writer, h Head) error {
	tiles := p.Tiles(p.Whole())
	if len(tiles) == 0 {
		return errNothing
	}
	return tiles[0].SVG(w, h)
}

var errNothing = errors.New("pattern: nothing to draw")
