package pattern

import (
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Patterns printed together: a first page that proves the scale, then for every
// pattern of several pages a map of how they go together, then the pages.

// Pages draws patterns, one block of the paper a page.
func Pages(patterns []Pattern, h Head) []draw.List {
	if len(patterns) == 0 {
		return nil
	}
	out := []draw.List{cover(patterns, h).List}
	for _, p := range patterns {
		tiles := p.Tiles(Paper)
		if len(tiles) > 1 {
			out = append(out, assembly(p, h).List)
		}
		for _, t := range tiles {
			out = append(out, t.Draw(h))
		}
	}
	return out
}

// scaleRules are on the first page.
var scaleRules = []string{
	"Print this paper page alone first. Scale 100 %, actual size, not Fit; margins default.",
	"Measure a bar each way and the frame. " + inMillimetres(barMillimetres) + " or " + inInches(barInches) +
		": the scale is true, print the rest.",
	"If a bar measures anything else, enter it in the page under “It measured”.",
	"A4 and Letter paper both do; keep to one of them for the whole job.",
}

// assemblyRule is on every map.
const assemblyRule = "Cut along a whole line at the left or the upper edge of a paper page, and lay that edge on the " +
	"dashed line of the page before: crosses and symbols come to lie on their like. Pages with nothing on them " +
	"are left out."

const (
	// proseShare is letterShare for whole lines of small letters, by eye.
	proseShare = 0.5
	mapLeft    = room
	mapWidth   = 160.0 // clear of the bars
	line       = 1.35 * twelvePoints
)

// heading starts a sheet of text: its title and who it belongs to.
func (s *page) heading(title string, h Head) (y float64) {
	y = 14
	for _, text := range wrap(title, mapWidth/(7*letterShare)) {
		s.bold(Label{At: geom.Vec2{X: mapLeft, Y: y}, Text: text, Size: 7})
		y += 9
	}
	return s.say(y, joined(h.Boat, h.Date, h.Mark(), VersionLine), Paper.Width-2*mapLeft)
}

// say writes a paragraph and returns where the next one starts.
func (s *page) say(y float64, text string, width float64) float64 {
	for _, l := range wrap(text, width/(twelvePoints*proseShare)) {
		s.label(Label{At: geom.Vec2{X: mapLeft, Y: y}, Text: l})
		y += line
	}
	return y
}

// joined puts what is not empty on one line.
func joined(parts ...string) string {
	out := ""
	for _, p := range parts {
		if p != "" && out != "" {
			out += " · "
		}
		out += p
	}
	return out
}

func cover(patterns []Pattern, h Head) *page {
	s := newPage(Paper, "Page 1, proof of scale", "Print it alone and measure its bars.")
	y := s.heading("Page 1: print it alone", h) + 3
	for _, rule := range scaleRules {
		y = s.say(y, rule, mapWidth) + 1
	}
	y += 5
	s.bold(Label{At: geom.Vec2{X: mapLeft, Y: y}, Text: "Patterns in this job", Size: 5})
	y += line + 1
	const lowest = 178 // above the frame
	for i, p := range patterns {
		if y > lowest && i < len(patterns)-1 {
			s.say(y, "and "+strconv.Itoa(len(patterns)-i)+" more", mapWidth)
			break
		}
		y = s.say(y, p.Name+": "+sheets(len(p.Tiles(Paper))), mapWidth)
	}
	s.proof()
	return s
}

// proof draws the bars and the frame where a sheet of text leaves room for them.
func (s *page) proof() {
	s.bars(Paper)
	at := geom.Vec2{X: mapLeft, Y: Paper.Height - Paper.Overlap - 4 - boxOutside}
	s.frame(at)
	for i, text := range []string{"inside " + inMillimetres(boxInside), "outside " + inInches(boxOutside)} {
		s.label(Label{At: at.Add(geom.Vec2{X: 6, Y: 22 + line*float64(i)}), Text: text})
	}
}

func sheets(n int) string {
	if n == 1 {
		return "1 paper page"
	}
	return strconv.Itoa(n) + " paper pages"
}

// assembly is the map of a pattern's sheets, with what to do.
func assembly(p Pattern, h Head) *page {
	tiles := p.Tiles(Paper)
	rows, cols := tiles[0].Rows, tiles[0].Cols
	s := newPage(Paper, p.Name+", map", p.Note)
	y := s.heading(p.Name+": map of "+sheets(len(tiles)), h) + 2
	y = s.say(y, p.Note, mapWidth) + 2
	y = s.say(y, assemblyRule, mapWidth)
	stepX, stepY := Paper.Width-Paper.Overlap, Paper.Height-Paper.Overlap
	whole := geom.Vec2{X: float64(cols-1)*stepX + Paper.Width, Y: float64(rows-1)*stepY + Paper.Height}
	// A long strip is mapped lying down: its first sheet to the left.
	lying := whole.Y > 2*whole.X
	size := whole
	if lying {
		size = geom.Vec2{X: whole.Y, Y: whole.X}
	}
	top := y + 4
	const left = mapLeft + boxOutside + 8
	corner := geom.Vec2{X: left, Y: top}
	area := geom.Vec2{X: Paper.Width - Paper.Overlap - 6 - left, Y: Paper.Height - Paper.Overlap - 8 - top}
	if lying {
		corner, area = geom.Vec2{X: mapLeft, Y: top}, geom.Vec2{X: mapWidth, Y: area.Y - boxOutside}
	}
	k := min(area.X/size.X, area.Y/size.Y)
	place := func(q geom.Vec2) geom.Vec2 {
		q = q.Add(geom.Vec2{X: room, Y: room})
		if lying {
			q = geom.Vec2{X: q.Y, Y: whole.X - q.X}
		}
		return corner.Add(q.Scale(k))
	}
	for _, t := range tiles {
		o := t.origin()
		right, low := o.X+Paper.Width, o.Y+Paper.Height
		box := []geom.Vec2{o, {X: right, Y: o.Y}, {X: right, Y: low}, {X: o.X, Y: low}, o}
		for i := range box {
			box[i] = place(box[i])
		}
		s.line(Line{box, Mark})
	}
	for _, l := range p.Lines {
		points := make([]geom.Vec2, len(l.Points))
		for i, q := range l.Points {
			points[i] = place(q)
		}
		s.line(Line{points, Mark})
	}
	for _, t := range tiles {
		letters := min(7, min(Paper.Width, Paper.Height)*k/2.4)
		middle := place(t.origin().Add(geom.Vec2{X: Paper.Width * 0.3, Y: Paper.Height * 0.4}))
		if lying {
			middle = place(t.origin().Add(geom.Vec2{X: Paper.Width * 0.25, Y: Paper.Height * 0.4}))
		}
		s.bold(Label{At: middle, Text: t.ID(), Size: letters})
	}
	s.proof()
	return s
}
