package pattern

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// Patterns printed together: a first page that proves the scale and lists the others, then
// how the pages of those that take several go together, then the pages themselves.

// planned is a page to be drawn once it is known of how many it is one.
type planned struct {
	draw func(h Head, of string) draw.List
	// names are the patterns on it.
	names []string
}

// plan lays a job of patterns out: what fits a page is packed together with others. Pages of
// words stand before them.
func plan(patterns []Pattern, words ...planned) []planned {
	if len(patterns) == 0 {
		return nil
	}
	var sheets []planned
	var packs []*packed
	var apart [][]Tile
	for _, p := range patterns {
		if pack, fresh := packOn(&packs, p); pack != nil {
			if fresh {
				sheets = append(sheets, planned{draw: pack.draw})
				pack.sheet = len(sheets) - 1
			}
			sheets[pack.sheet].names = append(sheets[pack.sheet].names, p.Name)
			continue
		}
		tiles := p.Tiles(Paper)
		if len(tiles) > 1 {
			apart = append(apart, tiles)
		}
		for _, t := range tiles {
			sheets = append(sheets, planned{draw: t.Draw, names: []string{p.Name}})
		}
	}
	maps := mapPages(apart)
	all := slices.Concat(make([]planned, 1), words, maps, sheets)
	all[0].draw = func(h Head, of string) draw.List { return cover(all, h, of) }
	return all
}

// Count is how many pages patterns take.
func Count(patterns []Pattern) int { return len(plan(patterns)) }

// Pages draws patterns, one block of the paper a page.
func Pages(patterns []Pattern, h Head) []draw.List { return drawn(plan(patterns), h) }

func drawn(all []planned, h Head) []draw.List {
	out := make([]draw.List, len(all))
	for i, s := range all {
		out[i] = s.draw(h, "page "+strconv.Itoa(i+1)+" of "+strconv.Itoa(len(all)))
	}
	return out
}

// scaleRules are on the first page.
var scaleRules = []string{
	"Print this paper page alone first. Scale 100 %, actual size, not Fit; margins default.",
	"Measure a bar each way and the frame. " + inMillimetres(barMillimetres) + ", " + inMillimetres(barHundred) +
		" to the long tick, or " + inInches(barInches) + ": the scale is true, print the rest.",
	"If a bar measures anything else, enter it in the page under “It measured”.",
	"A4 and Letter paper both do; keep to one of them for the whole job.",
}

// assemblyRule is on every map.
const assemblyRule = "Cut along a whole line at the left or the upper edge of a paper page, and lay that edge on the " +
	"dashed line of the page before: crosses and symbols come to lie on their like. Pages with nothing on them " +
	"are left out."

const (
	textLeft  = 6.0
	textWidth = 168.0 // clear of the bars
)

// heading starts a page of text: its title, which page it is, and whose.
func (s *page) heading(title string, h Head, of string) geom.Vec2 {
	at := geom.Vec2{X: textLeft, Y: 4}
	for _, text := range draw.Wrapped(title, 6.5, true, textWidth-30) {
		s.bold(Label{At: at.Add(geom.Vec2{Y: 6.5}), Text: text, Size: 6.5})
		at.Y += 8.5
	}
	s.text(Label{At: geom.Vec2{X: textLeft + textWidth, Y: 9.5}, Text: of, Size: 3.5, End: true}, true)
	return s.paragraph(at, joined(h.Boat, h.Date, h.Mark(), VersionLine))
}

// paragraph writes a text in the breadth of a page.
func (s *page) paragraph(at geom.Vec2, text string) geom.Vec2 {
	return s.say(at, draw.Wrapped(text, twelvePoints, false, textWidth))
}

// joined puts what is not empty on one line.
func joined(parts ...string) string {
	var there []string
	for _, p := range parts {
		if p != "" {
			there = append(there, p)
		}
	}
	return strings.Join(there, " · ")
}

// cover is the first page: how to prove the scale, the proof, and what is on which page.
func cover(all []planned, h Head, of string) draw.List {
	s := newPage(Paper, "Paper page 1, proof of scale", "Print it alone and measure its bars.")
	at := s.heading("Paper page 1: print it alone", h, of)
	at.Y += 2
	for _, rule := range scaleRules {
		at = s.paragraph(at, rule)
		at.Y++
	}
	at.Y += 3
	s.bold(Label{At: at.Add(geom.Vec2{Y: 5}), Text: "Patterns in this job", Size: 5})
	at.Y += 8
	s.contents(all, at)
	s.proof()
	s.bars()
	return s.List
}

// contents lists the patterns with their pages, in two columns of small letters.
func (s *page) contents(all []planned, at geom.Vec2) {
	const size, step, column, lowest = 3.7, 5.0, 86.0, 190.0
	list := found(all)
	top := at.Y
	for i, text := range list {
		if at.Y > lowest {
			if at.X > textLeft {
				rest := "and " + strconv.Itoa(len(list)-i) + " more, in the same order"
				s.label(Label{At: at.Add(geom.Vec2{Y: 3}), Text: rest, Size: size})
				return
			}
			at = geom.Vec2{X: at.X + column, Y: top}
		}
		lines := draw.Wrapped(text, size, false, column-4)
		for _, l := range lines {
			s.label(Label{At: at.Add(geom.Vec2{Y: 3}), Text: l, Size: size})
			at.Y += step
		}
	}
}

// found says on which pages each pattern is.
func found(all []planned) []string {
	var names []string
	first, last := map[string]int{}, map[string]int{}
	for i, s := range all {
		for _, name := range s.names {
			if first[name] == 0 {
				names = append(names, name)
				first[name] = i + 1
			}
			last[name] = i + 1
		}
	}
	for i, name := range names {
		names[i] += ": page " + strconv.Itoa(first[name])
		if last[name] > first[name] {
			names[i] = name + ": pages " + strconv.Itoa(first[name]) + " to " + strconv.Itoa(last[name])
		}
	}
	return names
}

// proof draws the frame with what it measures, in the lower left corner.
func (s *page) proof() {
	at := geom.Vec2{X: textLeft, Y: Paper.Height - 2 - boxOutside}
	s.frame(at)
	for i, text := range []string{"inside " + inMillimetres(boxInside), "outside " + inInches(boxOutside)} {
		s.label(Label{At: at.Add(geom.Vec2{X: 6, Y: 22 + line*float64(i)}), Text: text})
	}
}
