package pattern

import (
	"io"
	"math"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// inch is in the millimetres that sheets are drawn in.
const inch = units.Inch / units.Millimetre

// ScaleBars are the lengths of the two bars on every sheet, m.
var ScaleBars = [2]float64{barMillimetres * units.Millimetre, barInches * units.Millimetre}

// The proof of scale, mm. The bars and the box nest inches and millimetres, so
// that either tape will do.
const (
	barMillimetres = 150.0
	barInches      = 6 * inch
	boxInside      = 50.0
	boxOutside     = 2 * inch
	barThick       = 1.0
	barStart       = 22.0 // along the edge, clear of the corner's cross
	barLetters     = 3.0
	boxEdge        = (boxOutside - boxInside) / 2
)

// inInches and inMillimetres name a size on paper, mm.
func inInches(size float64) string      { return units.Trimmed(size/inch, 0) + " in" }
func inMillimetres(size float64) string { return units.Trimmed(size, 0) + " mm" }

// SVG writes the sheet in true millimetres, under an id of its own. It returns the
// writer's first error.
func (t Tile) SVG(w io.Writer, h Head) error {
	s := &page{t.Draw(h)}
	return s.write(w, t.Pattern.Key+"-"+t.ID())
}

// Draw draws the sheet in millimetres.
func (t Tile) Draw(h Head) draw.List {
	s := newPage(t.Block, t.Pattern.Name+", page "+t.ID(), t.Pattern.Note)
	lines, labels := t.Lines(), t.Labels()
	for _, l := range lines {
		s.line(l)
	}
	for _, l := range labels {
		s.label(l)
	}
	s.edges(t)
	s.bars(t.Block)
	square := geom.Vec2{X: boxOutside, Y: boxOutside}
	at := t.free(square, lines, labels)
	s.box(t, h, at)
	if t.Rows*t.Cols == 1 {
		// A pattern of several sheets has its note on their map.
		s.note(t, append(lines, Line{Points: boxPath(at, boxOutside)}), labels)
	}
	return s.List
}

// note prints what the pattern's note says where there is room for it.
func (s *page) note(t Tile, lines []Line, labels []Label) {
	const width = 100.0
	text := wrap(t.Pattern.Note, width/(twelvePoints*proseShare))
	at := t.free(geom.Vec2{X: width, Y: line * float64(len(text))}, lines, labels)
	for i, l := range text {
		s.label(Label{At: at.Add(geom.Vec2{Y: line * (float64(i) + 0.8)}), Text: l})
	}
}

// edges draws where the sheet is cut, whole, and where the next one's edge comes
// to lie, dashed.
func (s *page) edges(t Tile) {
	b := t.Block
	across := func(y float64, style Style) {
		s.line(Line{[]geom.Vec2{{X: 0, Y: y}, {X: b.Width, Y: y}}, style})
	}
	down := func(x float64, style Style) {
		s.line(Line{[]geom.Vec2{{X: x, Y: 0}, {X: x, Y: b.Height}}, style})
	}
	if t.Row > 0 {
		across(0, Cut)
	}
	if t.Row < t.Rows-1 {
		across(b.Height-b.Overlap, Dotted)
	}
	if t.Col > 0 {
		down(0, Cut)
	}
	if t.Col < t.Cols-1 {
		down(b.Width-b.Overlap, Dotted)
	}
}

// bars draws the two bars along the lower and the right edge.
func (s *page) bars(b Block) {
	const long, short = 2.2, 4.8 // from the edge to a bar's outer side
	text := "bars: inner " + inMillimetres(barMillimetres) + ", outer " + inInches(barInches)
	s.rect(barStart, b.Height-short, barMillimetres, barThick)
	s.rect(barStart, b.Height-long, barInches, barThick)
	s.label(Label{At: geom.Vec2{X: barStart, Y: b.Height - short - 1}, Text: text, Size: barLetters})
	s.rect(b.Width-short, barStart, barThick, barMillimetres)
	s.rect(b.Width-long, barStart, barThick, barInches)
	s.label(Label{At: geom.Vec2{X: b.Width - short - 1, Y: barStart + barInches},
		Text: text, Size: barLetters, Turned: true})
}

// box draws the frame, with the sheet's name in it.
func (s *page) box(t Tile, h Head, at geom.Vec2) {
	s.frame(at)
	inner := at.Add(geom.Vec2{X: boxEdge + 2, Y: boxEdge})
	s.bold(Label{At: inner.Add(geom.Vec2{Y: 11}), Text: t.ID(), Size: 11})
	y := inner.Y + 16
	say := func(text string, size float64, most int) {
		for i, line := range wrap(text, (boxInside-4)/(size*letterShare)) {
			if i < most {
				s.label(Label{At: geom.Vec2{X: inner.X, Y: y}, Text: line, Size: size})
				y += 1.2 * size
			}
		}
	}
	say(t.Pattern.Name, twelvePoints, 2)
	say(h.Boat, 3.4, 2)
	say(strings.TrimSpace(h.Date+" "+h.Mark()+" "+VersionLine), 3.4, 2)
	y = max(y, at.Y+boxOutside-8.5)
	say("Scale 100 %, actual size, not Fit. "+
		inMillimetres(boxInside)+" inside, "+inInches(boxOutside)+" outside.", 2.9, 2)
}

// frame is the box's outline: its inner edge is boxInside, its outer edge boxOutside.
func (s *page) frame(at geom.Vec2) {
	s.rect(at.X, at.Y, boxOutside, boxEdge)
	s.rect(at.X, at.Y+boxOutside-boxEdge, boxOutside, boxEdge)
	s.rect(at.X, at.Y, boxEdge, boxOutside)
	s.rect(at.X+boxOutside-boxEdge, at.Y, boxEdge, boxOutside)
}

func boxPath(at geom.Vec2, side float64) []geom.Vec2 {
	return []geom.Vec2{at, at.Add(geom.Vec2{X: side}), at.Add(geom.Vec2{X: side, Y: side}), at.Add(geom.Vec2{Y: side})}
}

// free is where something of a size covers least of the drawing: from the lower
// right upward, the first free place or the one with fewest lines through it.
func (t Tile) free(size geom.Vec2, lines []Line, labels []Label) geom.Vec2 {
	const step = 4.0
	best, least := geom.Vec2{}, math.MaxInt
	for y := t.Block.Height - t.Block.Overlap - 4 - size.Y; y >= t.Block.Overlap+2; y -= step {
		for x := t.Block.Width - t.Block.Overlap - 4 - size.X; x >= t.Block.Overlap+2; x -= step {
			at := geom.Vec2{X: x, Y: y}
			if n := covered(at, size, lines, labels, least); n < least {
				best, least = at, n
			}
			if least == 0 {
				return best
			}
		}
	}
	return best
}

// covered counts the pieces of line and the labels that something of a size touches
// at a place, up to a number that is enough.
func covered(at, size geom.Vec2, lines []Line, labels []Label, enough int) int {
	const clear = 1.5 // mm round it
	corner := at.Sub(geom.Vec2{X: clear, Y: clear})
	box := Block{Width: size.X + 2*clear, Height: size.Y + 2*clear}
	n := 0
	for _, l := range lines {
		for i := 1; i < len(l.Points); i++ {
			if _, _, hit := box.clip(l.Points[i-1].Sub(corner), l.Points[i].Sub(corner)); hit {
				n++
				if n >= enough {
					return n
				}
			}
		}
	}
	for _, l := range labels {
		low, high := l.box()
		if low.X < corner.X+box.Width && low.Y < corner.Y+box.Height && high.X > corner.X && high.Y > corner.Y {
			// A line of lettering is worse to lose than a piece of line.
			n += 20
		}
	}
	return n
}
