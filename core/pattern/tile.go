package pattern

import (
	"math"
	"strconv"

	"barkwright/core/geom"
)

// Block is what is printed on one sheet, mm, and how much of it the next repeats.
type Block struct{ Width, Height, Overlap float64 }

// Paper is the block that fits A4 and Letter alike inside margins of 9 mm.
var Paper = Block{Width: 190, Height: 259, Overlap: 10}

// longestPage is the longest page that every reader of PDF shows, mm: 14,400
// points. From memory.
const longestPage = 14400 * inch / 72

// room is what is left free round a drawing for scale bars and marks, mm.
const room = 12

// Whole is a block that holds all of a pattern, and Roll the same cut into lengths
// that a page may have. Both are broad enough for the scale bars.
func (p Pattern) Whole() Block {
	return Block{
		Width:   max(Paper.Width, math.Ceil(p.Size.X)+2*room),
		Height:  max(Paper.Height, math.Ceil(p.Size.Y)+2*room),
		Overlap: Paper.Overlap,
	}
}

// Roll is Whole in lengths of at most the longest page.
func (p Pattern) Roll() Block {
	b := p.Whole()
	b.Height = min(b.Height, longestPage)
	return b
}

// Tile is one sheet of a pattern.
type Tile struct {
	Pattern  Pattern
	Block    Block
	Row, Col int
	Rows     int
	Cols     int
}

// Tiles cuts a pattern into sheets, row by row, and leaves out those with nothing
// of the drawing on them.
func (p Pattern) Tiles(b Block) []Tile {
	count := func(size, block float64) int {
		return max(1, int(math.Ceil((size+2*room-b.Overlap)/(block-b.Overlap)-1e-9)))
	}
	cols, rows := count(p.Size.X, b.Width), count(p.Size.Y, b.Height)
	var out []Tile
	for r := range rows {
		for c := range cols {
			t := Tile{Pattern: p, Block: b, Row: r, Col: c, Rows: rows, Cols: cols}
			if len(t.cut(p.Lines)) > 0 {
				out = append(out, t)
			}
		}
	}
	return out
}

// ID is the row's letter and the column's number: B3. After Z comes AA.
func (t Tile) ID() string { return tileID(t.Row, t.Col) }

func tileID(row, col int) string {
	letters := ""
	for n := row; n >= 0; n = n/26 - 1 {
		letters = string(rune('A'+n%26)) + letters
	}
	return letters + strconv.Itoa(col+1)
}

// origin is the block's corner on the pattern.
func (t Tile) origin() geom.Vec2 {
	return geom.Vec2{
		X: float64(t.Col)*(t.Block.Width-t.Block.Overlap) - room,
		Y: float64(t.Row)*(t.Block.Height-t.Block.Overlap) - room,
	}
}

// Lines are the lines on this sheet, marks and pattern, in the block, cut off at
// its edge.
func (t Tile) Lines() []Line {
	return append(t.cut(t.registration()), t.cut(t.Pattern.Lines)...)
}

func (t Tile) cut(lines []Line) []Line {
	var out []Line
	origin := t.origin()
	for _, l := range lines {
		var run []geom.Vec2
		flush := func() {
			if len(run) > 1 {
				out = append(out, Line{run, l.Style})
			}
			run = nil
		}
		for i := 1; i < len(l.Points); i++ {
			a, b, ok := t.Block.clip(l.Points[i-1].Sub(origin), l.Points[i].Sub(origin))
			if !ok {
				flush()
				continue
			}
			if len(run) == 0 || run[len(run)-1] != a {
				flush()
				run = []geom.Vec2{a}
			}
			run = append(run, b)
		}
		flush()
	}
	return out
}

// Labels are the pattern's labels that reach this sheet; one across an edge is cut
// there and goes on where the next sheet is laid.
func (t Tile) Labels() []Label {
	var out []Label
	origin := t.origin()
	for _, l := range t.Pattern.Labels {
		l.At = l.At.Sub(origin)
		low, high := l.box()
		if high.X > 0 && high.Y > 0 && low.X < t.Block.Width && low.Y < t.Block.Height {
			out = append(out, l)
		}
	}
	return out
}

// clip cuts a straight piece to the block, after Liang and Barsky 1984.
func (b Block) clip(p, q geom.Vec2) (geom.Vec2, geom.Vec2, bool) {
	d := q.Sub(p)
	from, to := 0.0, 1.0
	for _, side := range [...]struct{ into, gap float64 }{
		{-d.X, p.X}, {d.X, b.Width - p.X}, {-d.Y, p.Y}, {d.Y, b.Height - p.Y},
	} {
		switch {
		case side.into == 0 && side.gap < 0:
			return p, q, false
		case side.into < 0:
			from = max(from, side.gap/side.into)
		case side.into > 0:
			to = min(to, side.gap/side.into)
		}
	}
	if from >= to {
		return p, q, false
	}
	a, c := p, q
	if from > 0 {
		a = p.Add(d.Scale(from))
	}
	if to < 1 {
		c = p.Add(d.Scale(to))
	}
	return a, c, true
}
