package sheet

import (
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
	// reminders are by row what a page that begins with it says over its head, or nothing.
	reminders []string
}

// square is one place of a grid.
type square struct {
	text       string
	words      bool // read as words: it may be wrapped, and stands at the left
	bold       bool
	blank      bool // to be written in
	tick, done bool // a box to tick, and that it is
}

// over is a row that names those under it, over the grid's whole breadth.
func over(text string) []square { return []square{{text: text, words: true, bold: true}} }

// beside is the air to both sides of what stands in a grid, mm; blankWidth and notedWidth
// are the room to write a figure and a few words in.
const (
	beside     = 1.4
	blankWidth = 17.0
	notedWidth = 32.0
)

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
			if i < len(g.reminders) && g.reminders[i] != "" {
				row.head = append(f.reminder(g.reminders[i]), again...)
			}
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

// reminder is a paragraph in bold for the head of a page.
func (f *flow) reminder(text string) []strip {
	var out []strip
	for _, l := range draw.Wrapped(text, smallLetter, true, f.width) {
		out = append(out, strip{high: leading * smallLetter, draw: func(s *paper, top float64) {
			s.lines(0, top, []string{l}, smallLetter, true, draw.Start)
		}})
	}
	out[0].words = text
	return out
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
	if len(r) == 1 {
		widths = []float64{f.width}
	}
	cells, high := f.wrapped(r, widths, size)
	words := make([]string, 0, len(r))
	for _, c := range r {
		if c.text != "" {
			words = append(words, c.text)
		}
	}
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

// wrapped are the lines of a row's places, and the row's height.
func (f *flow) wrapped(r []square, widths []float64, size float64) (cells [][]string, high float64) {
	cells, high = make([][]string, len(r)), leading*size
	for i, c := range r {
		switch room := widths[i] - 2*beside + rounding; {
		case c.text == "":
		case draw.Lettered(c.text, size, c.bold) <= room:
			cells[i] = []string{c.text}
		default:
			cells[i] = draw.Wrapped(c.text, size, c.bold, room)
		}
		high = max(high, float64(len(cells[i]))*leading*size)
		if c.tick {
			high = max(high, tickSize+0.4)
		}
	}
	return cells, high + 2*f.pad
}

// table adds one of the boat's tables.
func (s *stageSheet) table(t answer.Table) { s.grid(s.gridOf(t)) }

func (s *stageSheet) gridOf(t answer.Table) grid {
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
	return g
}
