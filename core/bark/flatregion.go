package bark

import (
	"math"
	"slices"

	"barkwright/core/geom"
)

// Region is a part of the skin of the forward port quarter: from one column to another, by
// place, and from one girth to another, m from the foot of each column.
type Region struct{ From, To, Low, High float64 }

// Upright returns where a column lies on a piece laid flat, between two girths; nil where the piece has
// nothing of it. At a gore it is the gore's after edge.
func (p *Piece) Upright(place, low, high float64) []geom.Vec2 {
	for c := range len(p.Places) - 1 {
		if place < p.Places[c] || place > p.Places[c+1] {
			continue
		}
		share := (place - p.Places[c]) / (p.Places[c+1] - p.Places[c])
		if low, high = p.covered(c, share, low, high); low < high {
			return p.upright(c, share, low, high)
		}
	}
	return nil
}

// Lay returns where what a piece has of a region lies on it laid flat: for each part that the gores
// leave of it a closed outline, whose first point is not repeated. A gore whose foot lies inside the
// region is cut out of the outline.
func (p *Piece) Lay(r Region) [][]geom.Vec2 {
	l := layout{Piece: p}
	for c := range len(p.Places) - 1 {
		for i, share := range p.shares(c, r) {
			low, high := p.covered(c, share, r.Low, r.High)
			switch {
			case low > high:
				l.close()
				continue
			case l.low == nil:
				l.left = p.upright(c, share, low, high)
			case i == 0 && share == 0:
				l.gore(c, low, high)
			}
			l.add(c, share, low, high)
		}
	}
	l.close()
	return l.out
}

// layout is a region being laid out, from its after end forward.
type layout struct {
	*Piece
	out [][]geom.Vec2
	// low and high are the edges of the part in hand so far, left its after edge and right its
	// forward one, each from its lower end.
	low, high, left, right []geom.Vec2
}

func (l *layout) add(c int, share, low, high float64) {
	l.right = l.upright(c, share, low, high)
	l.low, l.high = append(l.low, l.right[0]), append(l.high, l.right[len(l.right)-1])
}

// gore leads the part in hand round the gore that opens at column c, if one does, or ends it there.
func (l *layout) gore(c int, low, high float64) {
	for _, s := range l.Slits() {
		foot := l.girth(c, s.Foot)
		switch {
		case s.Col != c || foot >= high:
		case foot <= low:
			l.close()
			l.left = l.upright(c, 0, low, high)
		default:
			l.high = slices.Concat(l.high, geom.Reversed(l.upright(c-1, 1, foot, high)), l.upright(c, 0, foot, high))
		}
	}
}

// close ends the part in hand. What has no area is none.
func (l *layout) close() {
	const least = 1e-8 // m2
	round := slices.Concat(l.low, l.right, geom.Reversed(l.high), geom.Reversed(l.left))
	round = slices.Compact(round)
	if n := len(round); n > 1 && round[0] == round[n-1] {
		round = round[:n-1]
	}
	if math.Abs(geom.SignedArea(round)) > least {
		l.out = append(l.out, round)
	}
	l.low, l.high, l.left, l.right = nil, nil, nil, nil
}

// girth is the girth of row r at column c, m.
func (p *Piece) girth(c, r int) float64 { return p.Girths[c*p.Rows+r] }

// between is the girth of row r at a share of the way from column c to the next.
func (p *Piece) between(c int, share float64, r int) float64 {
	return p.girth(c, r) + share*(p.girth(c+1, r)-p.girth(c, r))
}

// covered is what a piece has between two girths there; none where the first is the larger.
func (p *Piece) covered(c int, share, low, high float64) (from, to float64) {
	return max(low, p.between(c, share, 0)), min(high, p.between(c, share, p.Rows-1))
}

// shares are the places in the cells between column c and the next at which a region's edges are looked
// at: their ends, where they cross a row, and some between.
func (p *Piece) shares(c int, r Region) []float64 {
	const steps = 4
	wide := p.Places[c+1] - p.Places[c]
	from, to := max(0, (r.From-p.Places[c])/wide), min(1, (r.To-p.Places[c])/wide)
	if from >= to {
		return nil
	}
	out := []float64{from, to}
	for i := 1; i < steps; i++ {
		out = append(out, from+(to-from)*float64(i)/steps)
	}
	for row := range p.Rows {
		after, fore := p.girth(c, row), p.girth(c+1, row)
		for _, level := range [2]float64{r.Low, r.High} {
			if at := (level - after) / (fore - after); at > from && at < to {
				out = append(out, at)
			}
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// upright is the line at a share of the way from column c to the next, from one girth to another.
func (p *Piece) upright(c int, share, low, high float64) []geom.Vec2 {
	line := []geom.Vec2{p.spot(c, share, low)}
	for r := range p.Rows {
		if g := p.between(c, share, r); g > low && g < high {
			line = append(line, p.spot(c, share, g))
		}
	}
	return append(line, p.spot(c, share, high))
}

// spot is where a girth lies at a share of the way from column c to the next: between the four corners
// of its cell, as between those of a square.
func (p *Piece) spot(c int, share, girth float64) geom.Vec2 {
	r := 0
	for r < p.Rows-2 && p.between(c, share, r+1) <= girth {
		r++
	}
	low, high := p.between(c, share, r), p.between(c, share, r+1)
	up := 0.0
	if high > low {
		up = max(0, min(1, (girth-low)/(high-low)))
	}
	foot := p.At(c, r, geom.After).Lerp(p.At(c+1, r, geom.Before), share)
	head := p.At(c, r+1, geom.After).Lerp(p.At(c+1, r+1, geom.Before), share)
	return foot.Lerp(head, up)
}
