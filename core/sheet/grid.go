package sheet

import (
	"math"
	"slices"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/units"
)

// grid is a table on a sheet.
type grid struct {
	title, note string
	head        []string
	rows        [][]square
}

// square is one place of a grid.
type square struct {
	text       string
	words      bool // read as words: it may be wrapped, and stands at the left
	bold       bool
	blank      bool // to be written in
	tick, done bool // a box to tick, and that it is
}

// beside is the air to both sides of what stands in a grid, mm; blankWidth and notedWidth
// are the room to write a figure and a few words in.
const (
	beside     = 1.4
	blankWidth = 17.0
	notedWidth = 32.0
)

// rounding is what sums of breadths may be off by.
const rounding = 1e-6

// leastGridLetter is the smallest that a broad table's letters become, mm.
const leastGridLetter = 8.5 * point

// grid adds a table: its title, its head, which every page repeats, and its rows.
func (f *flow) grid(g grid) {
	size, widths := f.gridWidths(g)
	from := len(f.strips)
	if g.title != "" {
		f.heading(g.title)
	}
	head := f.gridRow(f.headSquares(g), widths, size)
	head.words = strings.Join(g.head, " | ")
	rule := head.draw
	head.draw = func(s *paper, top float64) {
		s.rule(hairLine, 0, top, f.width, top)
		rule(s, top)
	}
	head.tied = true
	again := []strip{head}
	if g.title != "" {
		name := strip{high: leading * smallLetter, draw: func(s *paper, top float64) {
			s.lines(0, top, []string{g.title + ", continued"}, smallLetter, true, draw.Start)
		}}
		again = []strip{name, head}
	}
	f.add(head)
	body := len(f.strips)
	for i, r := range g.rows {
		row := f.gridRow(r, widths, size)
		if i > 0 {
			row.head = again
		}
		f.add(row)
	}
	f.keepRows(from, body)
	if g.note != "" {
		if n := len(f.strips); n > 0 {
			f.strips[n-1].tied = true
		}
		f.small(g.note)
	}
}

// keepRows keeps the first rows with the head, and the last ones together; a short table
// stays on one page.
func (f *flow) keepRows(from, body int) {
	const short, ends = 8, 3
	rows := len(f.strips) - body
	if rows <= short {
		f.tie(from, false)
		return
	}
	for i := from; i < body+ends-1; i++ {
		f.strips[i].tied = true
	}
	for i := len(f.strips) - ends; i < len(f.strips)-1; i++ {
		f.strips[i].tied = true
	}
}

func (f *flow) headSquares(g grid) []square {
	out := make([]square, len(g.head))
	for i, text := range g.head {
		out[i] = square{text: text, words: true, bold: true}
	}
	return out
}

// gridRow is one row between its lines.
func (f *flow) gridRow(r []square, widths []float64, size float64) strip {
	cells := make([][]string, len(r))
	words := make([]string, 0, len(r))
	high := 0.0
	for i, c := range r {
		cells[i] = draw.Wrapped(c.text, size, c.bold, widths[i]-2*beside+rounding)
		high = max(high, float64(len(cells[i]))*leading*size)
		if c.tick {
			high = max(high, tickSize+0.4)
		}
		if c.text != "" {
			words = append(words, c.text)
		}
	}
	high = max(high, leading*size) + 2*f.pad
	return strip{high: high, words: strings.Join(words, " | "), draw: func(s *paper, top float64) {
		x := 0.0
		s.rule(hairLine, 0, top, 0, top+high)
		for i, c := range r {
			at, anchor := x+beside, draw.Start
			if !c.words {
				at, anchor = x+widths[i]-beside, draw.End
			}
			if c.tick {
				s.tick(x+beside, top+f.pad+0.2, c.done)
			}
			s.lines(at, top+f.pad, cells[i], size, c.bold, anchor)
			x += widths[i]
			s.rule(hairLine, x, top, x, top+high)
		}
		s.rule(hairLine, 0, top+high, f.width, top+high)
	}}
}

// gridWidths finds the breadths of a table's columns and the letters with which they fit:
// the largest, unless smaller ones save many a wrapped line.
func (f *flow) gridWidths(g grid) (size float64, widths []float64) {
	const worth = 0.75
	best := math.Inf(1)
	for try := f.letter; ; try -= point / 2 {
		least, whole := gridNeeds(g, try)
		fits := sum(least) <= f.width
		if !fits && try > leastGridLetter {
			continue
		}
		wide := shared(least, whole, f.width)
		if high := f.gridHeight(g, wide, try); high < worth*best {
			best, size, widths = high, try, wide
		}
		if try-point/2 < min(smallLetter, size) {
			return size, widths
		}
	}
}

// gridHeight is how high a table's rows are together.
func (f *flow) gridHeight(g grid, widths []float64, size float64) float64 {
	high := 0.0
	for _, r := range g.rows {
		high += f.gridRow(r, widths, size).high
	}
	return high
}

// gridNeeds is how broad each column is at the least, and with nothing wrapped.
func gridNeeds(g grid, size float64) (least, whole []float64) {
	for i := range g.head {
		low := draw.WidestWord(g.head[i], size, true)
		high := low
		for _, r := range g.rows {
			c := r[i]
			w := draw.Lettered(c.text, size, c.bold)
			high = max(high, w)
			switch {
			case c.words:
				low = max(low, draw.WidestWord(c.text, size, c.bold))
			case c.tick:
				low = max(low, tickSize)
			default:
				low = max(low, w)
			}
			if c.blank && c.words {
				low = max(low, notedWidth)
			} else if c.blank {
				low = max(low, blankWidth)
			}
		}
		least, whole = append(least, low+2*beside), append(whole, max(high, low)+2*beside)
	}
	return least, whole
}

// shared gives columns a breadth between their least and their whole one, and what is
// left over to all alike.
func shared(least, whole []float64, width float64) []float64 {
	out := slices.Clone(least)
	over, wanted := width-sum(least), sum(whole)-sum(least)
	for i := range out {
		switch {
		case over < 0:
			out[i] *= width / sum(least)
		case wanted > over:
			out[i] += (whole[i] - least[i]) * over / wanted
		default:
			out[i] = whole[i] + (over-wanted)/float64(len(out))
		}
	}
	return out
}

func sum(all []float64) float64 {
	total := 0.0
	for _, v := range all {
		total += v
	}
	return total
}

// table adds one of the boat's tables.
func (s *stageSheet) table(t answer.Table) {
	g := grid{title: t.Title, note: t.Note}
	for _, c := range t.Columns {
		g.head = append(g.head, c.Label)
	}
	g.head = append(g.head, t.Blanks...)
	for _, r := range t.Rows {
		row := make([]square, 0, len(g.head))
		for i, cell := range r.Cells {
			// Words shorter than this are set like numbers.
			const wordy = 5
			c := t.Columns[i]
			row = append(row, square{text: c.Format(cell, s.System),
				words: i == 0 || c.Kind == units.Words || len(cell.Text) >= wordy})
		}
		for range t.Blanks {
			row = append(row, square{blank: true})
		}
		g.rows = append(g.rows, row)
	}
	s.grid(g)
}
