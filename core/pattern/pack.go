package pattern

import (
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// packed is a page of several whole patterns.
type packed struct {
	items []packedItem
	notes map[string]packedNote
	order []string // the notes in order
	taken []draw.Box
	box   geom.Vec2 // where the frame with the page's names stands
	sheet int       // the page's place among those of its job
}

type packedItem struct {
	Pattern
	at   geom.Vec2
	name []string
}

type packedNote struct {
	at   geom.Vec2
	text []string
}

// The air at a packed page's edges and between what stands on it, mm, and the height of a
// pattern's name over it.
const (
	packEdge  = 3.0
	packAir   = 4.0
	packName  = twelvePoints * 1.4
	packSteps = 2.0
)

// packOn puts a pattern on the first page with room for it, or on a fresh one; it returns
// nil where no page has.
func packOn(packs *[]*packed, p Pattern) (on *packed, fresh bool) {
	for _, k := range *packs {
		if k.add(p) {
			return k, false
		}
	}
	corner := geom.Vec2{X: Paper.Width - packEdge - boxOutside, Y: Paper.Height - packEdge - boxOutside}
	k := &packed{notes: map[string]packedNote{}, box: corner, taken: []draw.Box{boxAt(corner,
		geom.Vec2{X: boxOutside, Y: boxOutside})}}
	if !k.add(p) {
		return nil, false
	}
	*packs = append(*packs, k)
	return k, true
}

func boxAt(at, size geom.Vec2) draw.Box {
	return draw.Box{Left: at.X, Top: at.Y, Right: at.X + size.X, Bottom: at.Y + size.Y}
}

// add puts a pattern with its name, and its note unless the same stands there already,
// where there is room for both.
func (k *packed) add(p Pattern) bool {
	width := max(p.Size.X, min(60, draw.Lettered(p.Name, twelvePoints, true)))
	name := draw.Wrapped(p.Name, twelvePoints, true, width)
	above := packName * float64(len(name))
	size := geom.Vec2{X: width, Y: p.Size.Y + above}
	at, ok := k.free(size)
	if !ok {
		return false
	}
	was := k.taken
	k.taken = append(k.taken[:len(was):len(was)], boxAt(at, size))
	if _, told := k.notes[p.Note]; !told && p.Note != "" {
		note, ok := k.note(p.Note)
		if !ok {
			k.taken = was
			return false
		}
		k.notes[p.Note], k.order = note, append(k.order, p.Note)
	}
	k.items = append(k.items, packedItem{p, at.Add(geom.Vec2{Y: above}), name})
	return true
}

// note finds room for a text, as a block of one breadth or another.
func (k *packed) note(text string) (packedNote, bool) {
	for _, width := range [...]float64{boxOutside, 60, 84, 110, 150, Paper.Width - 2*packEdge} {
		lines := draw.Wrapped(text, twelvePoints, false, width)
		size := geom.Vec2{X: width, Y: line * float64(len(lines))}
		if at, ok := k.freeRight(size); ok {
			k.taken = append(k.taken, boxAt(at, size))
			return packedNote{at, lines}, true
		}
	}
	return packedNote{}, false
}

// free is the uppermost place with room for something of a size, the leftmost of those.
func (k *packed) free(size geom.Vec2) (geom.Vec2, bool) {
	for y := packEdge; y+size.Y <= Paper.Height-packEdge; y += packSteps {
		for x := packEdge; x+size.X <= Paper.Width-packEdge; x += packSteps {
			if at := (geom.Vec2{X: x, Y: y}); k.clear(at, size) {
				return at, true
			}
		}
	}
	return geom.Vec2{}, false
}

// freeRight is the rightmost place, the lowest of those.
func (k *packed) freeRight(size geom.Vec2) (geom.Vec2, bool) {
	for x := Paper.Width - packEdge - size.X; x >= packEdge; x -= packSteps {
		for y := Paper.Height - packEdge - size.Y; y >= packEdge; y -= packSteps {
			if at := (geom.Vec2{X: x, Y: y}); k.clear(at, size) {
				return at, true
			}
		}
	}
	return geom.Vec2{}, false
}

// clear reports whether nothing stands at a place, with air round it.
func (k *packed) clear(at, size geom.Vec2) bool {
	round := boxAt(at.Sub(geom.Vec2{X: packAir, Y: packAir}), size.Add(geom.Vec2{X: 2 * packAir, Y: 2 * packAir}))
	for _, b := range k.taken {
		if round.Meets(b) {
			return false
		}
	}
	return true
}

// draw draws the page.
func (k *packed) draw(h Head, of string) draw.List {
	names := make([]string, len(k.items))
	for i, it := range k.items {
		names[i] = it.Name
	}
	s := newPage(Paper, strings.Join(names, "; "), strings.Join(k.order, " "))
	for _, it := range k.items {
		for i, l := range it.name {
			s.bold(Label{At: it.at.Add(geom.Vec2{Y: packName * (float64(i-len(it.name)) + 0.75)}), Text: l})
		}
		for _, l := range it.Lines {
			s.line(Line{each(l.Points, it.at.Add), l.Style})
		}
		for _, l := range it.Labels {
			l.At = l.At.Add(it.at)
			s.label(l)
		}
	}
	for _, text := range k.order {
		s.say(k.notes[text].at, k.notes[text].text)
	}
	s.box(pageNumber(of), strings.Join(names, ", "), h, of, k.box)
	s.bars()
	return s.List
}
