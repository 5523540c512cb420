package pattern

import (
	"math"
	"strconv"

	"barkwright/core/geom"
)

// Block is the part of a drawing that is on one page, mm, and how much of it the next
// page repeats.
type Block struct{ Width, Height, Overlap float64 }

// barStrip is the breadth of the strips at a page's right and lower edge that hold the
// scale bars and nothing of the drawing, mm. The next page comes to lie on them.
const barStrip = 8.0

// Paper is the block of a page that fits A4 and Letter alike inside margins of 9 mm.
var Paper = Block{Width: 190 - barStrip, Height: 259 - barStrip, Overlap: 10}

// Page is the page's own size inside its margins, mm.
func (b Block) Page() (width, height float64) { return b.Width + barStrip, b.Height + barStrip }

// longestPage is the longest page that every reader of PDF shows, mm: 14,400
// points. From memory.
const longestPage = 14400 * inch / 72

// room is what is left free round a drawing on several pages for their marks, mm.
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
	b.Height = min(b.Height, longestPage-barStrip)
	return b
}

// Tile is one page of a pattern.
type Tile struct {
	Pattern  Pattern
	Block    Block
	Row, Col int
	Rows     int
	Cols     int
	// offset is where the drawing's upper left corner lies on the first page.
	offset geom.Vec2
	// Labels are those that stand on this page, in the block.
	Labels []Label
}

// narrow is what is left free beside a drawing that takes one page that way, mm.
const narrow = 4

// Tiles cuts a pattern into pages, row by row. It lies on them so that they are as few as
// can be, and those with nothing of the drawing that another page has not are left out.
func (p Pattern) Tiles(b Block) []Tile {
	cols, x := across(p.Size.X, b.Width, b.Overlap)
	rows, y := across(p.Size.Y, b.Height, b.Overlap)
	var best []Tile
	for _, dx := range x {
		for _, dy := range y {
			all := p.tilesAt(b, rows, cols, geom.Vec2{X: dx, Y: dy})
			if best == nil || len(all) < len(best) {
				best = all
			}
		}
	}
	placeLabels(best)
	return best
}

// across is how many pages a drawing takes one way, and where on the first it may begin.
func across(size, block, overlap float64) (pages int, offsets []float64) {
	if size+2*narrow <= block {
		// At the upper left, so that the frame has its room.
		return 1, []float64{narrow + min(narrow, (block-size)/2-narrow)}
	}
	pages = max(2, int(geom.Ceil((size+2*room-overlap)/(block-overlap))))
	over := float64(pages-1)*(block-overlap) + block - size - 2*room
	for _, share := range [...]float64{0.5, 0, 1, 0.25, 0.75} {
		offsets = append(offsets, room+share*over)
	}
	return pages, offsets
}

func (p Pattern) tilesAt(b Block, rows, cols int, offset geom.Vec2) []Tile {
	var out []Tile
	for r := range rows {
		for c := range cols {
			t := Tile{Pattern: p, Block: b, Row: r, Col: c, Rows: rows, Cols: cols, offset: offset}
			if t.needed() {
				out = append(out, t)
			}
		}
	}
	return out
}

// needed reports whether anything of the drawing is on the page but what the pages to the
// left and above repeat.
func (t Tile) needed() bool {
	if t.Col > 0 {
		t.offset.X -= t.Block.Overlap
	}
	if t.Row > 0 {
		t.offset.Y -= t.Block.Overlap
	}
	part := t
	if t.Col > 0 {
		part.Block.Width -= t.Block.Overlap
	}
	if t.Row > 0 {
		part.Block.Height -= t.Block.Overlap
	}
	o := t.origin()
	for _, l := range t.Pattern.Lines {
		for i := 1; i < len(l.Points); i++ {
			if _, _, hit := part.Block.clip(l.Points[i-1].Sub(o), l.Points[i].Sub(o)); hit {
				return true
			}
		}
	}
	return false
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
		X: float64(t.Col)*(t.Block.Width-t.Block.Overlap) - t.offset.X,
		Y: float64(t.Row)*(t.Block.Height-t.Block.Overlap) - t.offset.Y,
	}
}

// Lines are the lines on this page, marks and pattern, in the block, cut off at
// its edge.
func (t Tile) Lines() []Line {
	return append(t.cut(t.registration()), t.cut(t.Pattern.Lines)...)
}

func (t Tile) cut(lines []Line) []Line {
	var out []Line
	origin := t.origin()
	for _, l := range lines {
		for _, run := range t.Block.cut(l.Points, origin) {
			out = append(out, Line{run, l.Style})
		}
	}
	return out
}

// cut is what of a line lies in the block, in pieces, from the block's corner.
func (b Block) cut(line []geom.Vec2, corner geom.Vec2) [][]geom.Vec2 {
	var out [][]geom.Vec2
	var run []geom.Vec2
	for i := 1; i < len(line); i++ {
		p, q, ok := b.clip(line[i-1].Sub(corner), line[i].Sub(corner))
		if !ok {
			continue
		}
		if len(run) == 0 || last(run) != p {
			if len(run) > 0 {
				out = append(out, run)
			}
			run = []geom.Vec2{p}
		}
		run = append(run, q)
	}
	if len(run) > 0 {
		out = append(out, run)
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
