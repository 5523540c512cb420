package pattern

import (
	"math"
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
	mapHeight = 38.0
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

// abreast are maps of like patterns beside one another, each under its name; what to do, which is the
// same for all, stands under them once.
type abreast []assembly

// leastName is the least room for a map's name, mm.
const leastName = 60.0

// wide is how broad a map with its name is.
func (m assembly) wide() float64 { return max(m.size.X, leastName) }

// takes reports whether another map goes beside those in the row.
func (r abreast) takes(m assembly) bool {
	wide := m.wide()
	for _, o := range r {
		if len(o.tiles) < 2 || o.tiles[0].Pattern.Note != m.tiles[0].Pattern.Note {
			return false
		}
		wide += o.wide() + mapGap
	}
	return len(r) > 0 && len(m.tiles) > 1 && wide <= textWidth
}

// name is a map's name in its room.
func (m assembly) name(width float64) []string {
	name := m.tiles[0].Pattern.Name
	if n := len(m.tiles); n > 1 {
		name += ": " + strconv.Itoa(n) + " pages"
	}
	return draw.Wrapped(name, twelvePoints, true, width)
}

// names is how high the names of a row are, maps how high its maps.
func (r abreast) names() (names, maps float64) {
	for _, m := range r {
		names, maps = max(names, line*float64(len(m.name(m.wide())))), max(maps, m.size.Y)
	}
	return names, maps
}

// note is what stands under a row.
func (r abreast) note() []string {
	return draw.Wrapped(r[0].tiles[0].Pattern.Note, twelvePoints, false, textWidth)
}

// high is how much of a page a row takes.
func (r abreast) high() float64 {
	if len(r) == 1 {
		return r[0].high()
	}
	names, maps := r.names()
	return names + maps + line*float64(len(r.note())) + mapGap
}

// draw puts the row under a place.
func (r abreast) draw(s *page, at geom.Vec2) {
	if len(r) == 1 {
		r[0].drawAlone(s, at)
		return
	}
	names, maps := r.names()
	x := at.X
	for _, m := range r {
		for i, l := range m.name(m.wide()) {
			s.bold(Label{At: geom.Vec2{X: x, Y: at.Y + (0.8+float64(i))*line}, Text: l})
		}
		m.draw(s, geom.Vec2{X: x, Y: at.Y + names})
		x += m.wide() + mapGap
	}
	s.say(geom.Vec2{X: at.X, Y: at.Y + names + maps}, r.note())
}

// drawAlone puts the map under a place with its name over it and what to do beside or over it.
func (m assembly) drawAlone(s *page, at geom.Vec2) {
	s.bold(Label{At: at.Add(geom.Vec2{Y: 0.8 * line}), Text: m.name(math.Inf(1))[0]})
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
}

// mapPages are the pages with the maps of patterns, as many to a page as it holds.
func mapPages(apart [][]Tile) []planned {
	const top = 26.0
	rule := draw.Wrapped(assemblyRule, twelvePoints, false, textWidth)
	room := Paper.Height - top - line*float64(len(rule))
	var rows []abreast
	for _, tiles := range apart {
		m := newAssembly(tiles)
		if n := len(rows); n > 0 && rows[n-1].takes(m) {
			rows[n-1] = append(rows[n-1], m)
			continue
		}
		rows = append(rows, abreast{m})
	}
	var out []planned
	var now []abreast
	used := 0.0
	flush := func() {
		if len(now) > 0 {
			maps := now
			out = append(out, planned{draw: func(h Head, of string) draw.List { return drawMaps(maps, rule, h, of) }})
			now, used = nil, 0
		}
	}
	for _, r := range rows {
		if used+r.high() > room {
			flush()
		}
		now, used = append(now, r), used+r.high()
	}
	flush()
	return out
}

func drawMaps(rows []abreast, rule []string, h Head, of string) draw.List {
	s := newPage(Paper, "How the pages go together", rows[0][0].tiles[0].Pattern.Note)
	at := s.heading("How the pages go together", h, of)
	at = s.say(at, rule)
	at.Y += 2
	for _, r := range rows {
		r.draw(s, at)
		at.Y += r.high()
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
