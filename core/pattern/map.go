package pattern

import (
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// assembly is how the pages of one pattern go together, with what to do.
type assembly struct {
	tiles []Tile
	note  []string
	// size is that of the map, mm, k its scale; lying has the pattern's first page to the left.
	size  geom.Vec2
	k     float64
	lying bool
}

// mapHeight bounds a map, mm; mapGap is the air under it, and beside it where the note
// stands to its right.
const (
	mapHeight = 54.0
	mapGap    = 4.0
)

func newAssembly(tiles []Tile) assembly {
	m := assembly{tiles: tiles}
	if len(tiles) > 1 {
		whole := m.whole()
		m.lying = whole.Y > 2*whole.X
		m.size = whole
		if m.lying {
			m.size = geom.Vec2{X: whole.Y, Y: whole.X}
		}
		m.k = min(textWidth/m.size.X, mapHeight/m.size.Y)
		m.size = m.size.Scale(m.k)
	}
	width := textWidth
	if m.beside() {
		width -= m.size.X + mapGap
	}
	m.note = draw.Wrapped(tiles[0].Pattern.Note, twelvePoints, false, width)
	return m
}

// beside reports whether the note stands beside the map.
func (m assembly) beside() bool { return m.size.X < textWidth/2 }

// whole is how broad and high the pages are together.
func (m assembly) whole() geom.Vec2 {
	t := m.tiles[0]
	b := t.Block
	return geom.Vec2{X: float64(t.Cols-1)*(b.Width-b.Overlap) + b.Width, Y: float64(t.Rows-1)*(b.Height-b.Overlap) + b.Height}
}

// high is how much of a page it takes.
func (m assembly) high() float64 {
	note := line * float64(len(m.note))
	if m.beside() {
		return line + max(note, m.size.Y) + mapGap
	}
	return line + note + m.size.Y + mapGap
}

// mapPages are the pages with the maps of patterns, as many to a page as it holds.
func mapPages(apart [][]Tile) []planned {
	const top = 26.0
	rule := draw.Wrapped(assemblyRule, twelvePoints, false, textWidth)
	room := Paper.Height - top - line*float64(len(rule))
	var out []planned
	var now []assembly
	used := 0.0
	flush := func() {
		if len(now) > 0 {
			maps := now
			out = append(out, planned{draw: func(h Head, of string) draw.List { return drawMaps(maps, rule, h, of) }})
			now, used = nil, 0
		}
	}
	for _, tiles := range apart {
		m := newAssembly(tiles)
		if used+m.high() > room {
			flush()
		}
		now, used = append(now, m), used+m.high()
	}
	flush()
	return out
}

func drawMaps(maps []assembly, rule []string, h Head, of string) draw.List {
	s := newPage(Paper, "How the pages go together", maps[0].tiles[0].Pattern.Note)
	at := s.heading("How the pages go together", h, of)
	at = s.say(at, rule)
	at.Y += 2
	for _, m := range maps {
		top := at
		p := m.tiles[0].Pattern
		name := p.Name + ": " + strconv.Itoa(len(m.tiles)) + " pages"
		if len(m.tiles) == 1 {
			name = p.Name
		}
		s.bold(Label{At: at.Add(geom.Vec2{Y: 0.8 * line}), Text: name})
		at.Y += line
		switch {
		case len(m.tiles) == 1:
			s.say(at, m.note)
		case m.beside():
			m.draw(s, at)
			s.say(at.Add(geom.Vec2{X: m.size.X + mapGap}), m.note)
		default:
			m.draw(s, s.say(at, m.note))
		}
		at = top.Add(geom.Vec2{Y: m.high()})
	}
	s.bars()
	return s.List
}

// draw puts the map under a place.
func (m assembly) draw(s *page, corner geom.Vec2) {
	p, b := m.tiles[0].Pattern, m.tiles[0].Block
	whole := m.whole()
	place := func(q geom.Vec2) geom.Vec2 {
		q = q.Add(m.tiles[0].offset)
		if m.lying {
			q = geom.Vec2{X: q.Y, Y: whole.X - q.X}
		}
		return corner.Add(q.Scale(m.k))
	}
	put := func(points ...geom.Vec2) { s.line(Line{each(points, place), Mark}) }
	for _, t := range m.tiles {
		o := t.origin()
		right, low := o.X+b.Width, o.Y+b.Height
		put(o, geom.Vec2{X: right, Y: o.Y}, geom.Vec2{X: right, Y: low}, geom.Vec2{X: o.X, Y: low}, o)
	}
	for _, l := range p.Lines {
		put(l.Points...)
	}
	for _, t := range m.tiles {
		letters := min(7, min(b.Width, b.Height)*m.k/2.4)
		// In the middle of what the next page does not come to lie on.
		middle := place(t.origin().Add(geom.Vec2{X: (b.Width - b.Overlap) / 2, Y: (b.Height - b.Overlap) / 2}))
		half := draw.Lettered(t.ID(), letters, true) / 2
		s.bold(Label{At: middle.Add(geom.Vec2{X: -half, Y: baseline * letters}), Text: t.ID(), Size: letters})
	}
}
