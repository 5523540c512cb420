package pattern

import (
	"io"
	"math"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// inch is in the millimetres that pages are drawn in.
const inch = units.Inch / units.Millimetre

// ScaleBars are the lengths of the two bars on every page, m.
var ScaleBars = [2]float64{barMillimetres * units.Millimetre, barInches * units.Millimetre}

// The proof of scale, mm. The bars and the box nest inches and millimetres, so
// that either tape will do.
const (
	barMillimetres = 150.0
	barInches      = 6 * inch
	boxInside      = 50.0
	boxOutside     = 2 * inch
	barThick       = 1.0
	barStart       = 22.0 // along the edge
	barTens        = 10.0 // between the ticks of the bar in millimetres; those of the other are inches
	barHundred     = 100.0
	tickLong       = 0.55
	tickThick      = 0.25
	barLetters     = 3.0
	boxEdge        = (boxOutside - boxInside) / 2
)

// inInches and inMillimetres name a size on paper, mm.
func inInches(size float64) string      { return units.Trimmed(size/inch, 0) + " in" }
func inMillimetres(size float64) string { return units.Trimmed(size, 0) + " mm" }

// SVG writes the page in true millimetres, under an id of its own. It returns the
// writer's first error.
func (t Tile) SVG(w io.Writer, h Head) error {
	return (&page{t.Draw(h, "")}).write(w, t.Pattern.Key+"-"+t.ID())
}

// Draw draws the page in millimetres; of says where in its job it comes, or is empty.
func (t Tile) Draw(h Head, of string) draw.List {
	s := newPage(t.Block, t.Pattern.Name+", paper page "+t.ID(), t.Pattern.Note)
	lines := t.Lines()
	for _, l := range lines {
		s.line(l)
	}
	for _, l := range t.Labels {
		s.label(l)
	}
	s.edges(t)
	s.bars()
	at, lost := t.free(geom.Vec2{X: boxOutside, Y: boxOutside}, lines)
	id, whole := t.ID(), t.Rows*t.Cols == 1
	if number := pageNumber(of); whole && number != "" {
		id = number
	}
	taken := geom.Vec2{X: boxOutside, Y: boxOutside}
	if lost < cutWeight {
		s.box(id, t.Pattern.Name, h, of, at)
	} else {
		// No room for the frame but over a cut: the bars prove the scale, and the page has its names alone.
		taken.Y = namesHigh
		at, _ = t.free(taken, lines)
		s.names(id, t.Pattern.Name, h, of, at)
	}
	if whole {
		// A pattern of several pages has its note on their map.
		s.note(t, append(lines, boxLines(at, taken)...))
	}
	return s.List
}

// noteWidth is how broad a pattern's note is on its own page, mm.
const noteWidth = 100.0

// pageNumber is the number in what says where in its job a page comes, or empty.
func pageNumber(of string) string {
	number, _, _ := strings.Cut(strings.TrimPrefix(of, "page "), " ")
	return number
}

// note prints what the pattern's note says where there is room for it.
func (s *page) note(t Tile, lines []Line) {
	text := draw.Wrapped(t.Pattern.Note, twelvePoints, false, noteWidth)
	at, _ := t.free(geom.Vec2{X: noteWidth, Y: line * float64(len(text))}, lines)
	s.say(at, text)
}

// edges draws where the page is cut, whole, and where the next one's edge comes
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

// bars draws the two bars along the lower and the right edge, in the strips that nothing
// else is drawn in.
func (s *page) bars() {
	const outer, inner, words = 0.3, 2.1, 4.4 // from the edge to a bar's outer side, and to the words' foot
	text := "bars: inner " + inMillimetres(barMillimetres) + ", long tick at " + inMillimetres(barHundred) + "; outer " +
		inInches(barInches)
	s.rect(barStart, s.Height-inner-barThick, barMillimetres, barThick)
	s.rect(barStart, s.Height-outer-barThick, barInches, barThick)
	s.label(Label{At: geom.Vec2{X: barStart, Y: s.Height - words}, Text: text, Size: barLetters})
	s.rect(s.Width-inner-barThick, barStart, barThick, barMillimetres)
	s.rect(s.Width-outer-barThick, barStart, barThick, barInches)
	s.label(Label{At: geom.Vec2{X: s.Width - words, Y: barStart + barInches}, Text: text, Size: barLetters, Turned: true})
	ticks := func(every, length, from float64) {
		for at := every; at < length-every/2; at += every {
			long := tickLong
			if every == barTens && at == barHundred {
				long = 2 * tickLong
			}
			s.rect(barStart+at-tickThick/2, s.Height-from-long, tickThick, long)
			s.rect(s.Width-from-long, barStart+at-tickThick/2, long, tickThick)
		}
	}
	ticks(barTens, barMillimetres, inner+barThick)
	ticks(inch, barInches, outer+barThick)
}

// box draws the frame, with the page's name in it.
func (s *page) box(id, name string, h Head, of string, at geom.Vec2) {
	s.frame(at)
	const side, width = 2.0, boxInside - 2*2.0
	x, y := at.X+boxEdge+side, at.Y+boxEdge
	s.bold(Label{At: geom.Vec2{X: x, Y: y + 10}, Text: id, Size: 10})
	if of != "" {
		s.text(Label{At: geom.Vec2{X: x + width, Y: y + 6}, Text: of, Size: 3, End: true}, false)
	}
	y += 12.6
	say := func(text string, size float64, most int) {
		lines := draw.Wrapped(text, size, false, width)
		for _, l := range lines[:min(most, len(lines))] {
			s.label(Label{At: geom.Vec2{X: x, Y: y + 0.95*size}, Text: l, Size: size})
			y += 1.2 * size
		}
	}
	say(name, twelvePoints, 2)
	say(h.Boat, 3, 2)
	say(strings.TrimSpace(h.Date+" "+h.Mark()+" "+VersionLine), 3, 2)
	y = at.Y + boxOutside - boxEdge - 10
	say("Scale 100 %, actual size, not Fit. "+
		inMillimetres(boxInside)+" inside, "+inInches(boxOutside)+" outside.", 2.6, 3)
}

// namesHigh is the height of a page's names without the frame, mm.
const namesHigh = 11.0

// names are a page's names where there is no room for the frame.
func (s *page) names(id, name string, h Head, of string, at geom.Vec2) {
	const letters, step = 3.0, 3.6
	s.bold(Label{At: at.Add(geom.Vec2{Y: 6}), Text: id, Size: 6})
	x := at.X + draw.Lettered(id, 6, true) + 2
	lines := append(draw.Wrapped(name, letters, false, at.X+boxOutside-x), joined(of, h.Mark()))
	for i, text := range lines[:min(3, len(lines))] {
		s.label(Label{At: geom.Vec2{X: x, Y: at.Y + letters + step*float64(i)}, Text: text, Size: letters})
	}
}

// frame is the box's outline: its inner edge is boxInside, its outer edge boxOutside.
func (s *page) frame(at geom.Vec2) {
	s.rect(at.X, at.Y, boxOutside, boxEdge)
	s.rect(at.X, at.Y+boxOutside-boxEdge, boxOutside, boxEdge)
	s.rect(at.X, at.Y, boxEdge, boxOutside)
	s.rect(at.X+boxOutside-boxEdge, at.Y, boxEdge, boxOutside)
}

// boxLines cover a box so closely that nothing is laid into it.
func boxLines(at, size geom.Vec2) []Line {
	var out []Line
	for y := 0.0; y <= size.Y; y += 5 {
		out = append(out, Line{Points: []geom.Vec2{at.Add(geom.Vec2{Y: y}), at.Add(geom.Vec2{X: size.X, Y: y})}})
	}
	return out
}

// free is where something of a size covers least of a page's drawing, and how much: from the lower right
// upward, the first free place or the one with fewest lines through it.
func (t Tile) free(size geom.Vec2, lines []Line) (best geom.Vec2, least int) {
	const step, clear = 4.0, 1.5
	// What pages share and where they are cut is kept free.
	margin := func(pages int) float64 {
		if pages == 1 {
			return 2
		}
		return t.Block.Overlap + 2
	}
	x0, y0 := margin(t.Cols), margin(t.Rows)
	least = math.MaxInt
	for y := t.Block.Height - y0 - size.Y; y >= y0; y -= step {
		for x := t.Block.Width - x0 - size.X; x >= x0; x -= step {
			at := geom.Vec2{X: x, Y: y}
			if n := covered(at, size, clear, lines, t.Labels, least); n < least {
				best, least = at, n
			}
			if least == 0 {
				return best, 0
			}
		}
	}
	return best, least
}

// cutWeight is how many other pieces of line one that is cut along counts for: it is worse to lose.
const cutWeight = 30

// covered counts the pieces of line and the labels that something of a size touches
// at a place, with so much air round it, up to a number that is enough.
func covered(at, size geom.Vec2, clear float64, lines []Line, labels []Label, enough int) int {
	corner := at.Sub(geom.Vec2{X: clear, Y: clear})
	box := Block{Width: size.X + 2*clear, Height: size.Y + 2*clear}
	n := 0
	for _, l := range lines {
		weight := 1
		if l.Style == Cut {
			weight = cutWeight
		}
		for i := 1; i < len(l.Points); i++ {
			if _, _, hit := box.clip(l.Points[i-1].Sub(corner), l.Points[i].Sub(corner)); hit {
				n += weight
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
