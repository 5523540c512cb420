package hull

import (
	"math"
	"sort"

	"barkwright/core/geom"
)

// Station is one transverse section of the bark's outer face at X, for the port
// half: points (y, z) with y >= 0 from the lowest point on the centre line up to
// the sheer, in metres. Forward of the stem head, where the end leans out
// beyond its head, the outline ends on the centre line instead.
type Station struct {
	X       float64
	Outline []geom.Vec2
}

// Places are where a boat is cut into stations, with all that its sections have no part
// in: boats that are Resectioned from one share them.
type Places struct {
	girth   int
	upright []standing // as far as the heel
	leaning []standing // columns past it, to be cut across
	past    []float64  // the stations that cut these, short of the foremost point
	tip     float64    // the station of that
	// What StationsAt works in, and what it returns.
	points, room []geom.Vec2
	cut          [][]geom.Vec2
	stations     []Station
}

// Places are about n places for sections of girth points.
func (h *Hull) Places(n, girth int) Places {
	inner := n / 3
	past := n/2 - inner
	p := Places{girth: girth, tip: h.Design.Length / 2}
	p.upright = make([]standing, inner+1)
	for i := range p.upright {
		p.upright[i] = h.stand(float64(i) / float64(inner))
	}
	for i := 1; i < past; i++ {
		// The last stations crowd toward the foremost point, where the
		// outlines shrink fastest.
		u := math.Sin(math.Pi / 2 * float64(i) / float64(past))
		p.past = append(p.past, h.HeelX+(p.tip-h.HeelX)*u)
	}
	// The column whose foot is the profile's foremost point is among them, so that every
	// place short of that point cuts at least the profile.
	n /= 2
	before := max(1, min(n, int(math.Round(float64(n)*(h.foremost-1)))))
	after := max(1, n-before)
	p.leaning = make([]standing, 0, before+1+after)
	for i := 0; i <= before; i++ {
		p.leaning = append(p.leaning, h.stand(1+(h.foremost-1)*float64(i)/float64(before)))
	}
	for i := 1; i <= after && h.foremost < 2; i++ {
		p.leaning = append(p.leaning, h.stand(h.foremost+(2-h.foremost)*float64(i)/float64(after)))
	}
	return p
}

// Stations returns the transverse sections of the whole boat from the after to
// the foremost point, about n of them, each of girth points; the two extremes
// have no area. Stations forward of the heel are cut from the columns.
func (h *Hull) Stations(n, girth int) []Station {
	p := h.Places(n, girth)
	return h.StationsAt(&p)
}

// StationsAt are the stations at the places of this boat or of one that differs from it
// in its sections alone. Those aft have the outlines of those forward. They stand until
// stations are asked for at the same places again.
func (h *Hull) StationsAt(p *Places) []Station {
	p.makeRoom()
	middle := len(p.upright) + len(p.past)
	all := p.stations
	put := func(i int, x float64, outline []geom.Vec2) {
		all[middle-i], all[middle+i] = Station{-x, outline}, Station{x, outline}
	}
	rows := p.girth + 1
	for i := range p.upright {
		s := &p.upright[i]
		outline := p.room[i*rows : (i+1)*rows : (i+1)*rows]
		h.cornered(s.outline, s.top).Polygon(outline)
		put(i, s.top, outline)
	}
	c := h.newCutter(p)
	for i, outline := range c.across() {
		put(len(p.upright)+i, p.past[i], outline)
	}
	tip := c.foremost()
	put(middle, p.tip, []geom.Vec2{tip, tip})
	return all
}

// makeRoom makes what StationsAt works in, where it is not there yet.
func (p *Places) makeRoom() {
	if p.stations != nil {
		return
	}
	rows := p.girth + 1
	stations := len(p.upright) + len(p.past)
	p.stations = make([]Station, 2*stations+1)
	p.cut = make([][]geom.Vec2, len(p.past))
	p.points = make([]geom.Vec2, len(p.leaning)*rows)
	p.room = make([]geom.Vec2, stations*rows)
}

// cutter holds the columns past the heel, each with so many points, to be cut across.
type cutter struct {
	*Places
	rows int
}

func (h *Hull) newCutter(p *Places) cutter {
	c := cutter{p, p.girth + 1}
	for i := range p.leaning {
		s := &p.leaning[i]
		h.cornered(s.outline, s.top).Polygon(c.points[i*c.rows : (i+1)*c.rows])
	}
	return c
}

// row puts the stations of the points of row r into x and tells whether they turn back.
func (c *cutter) row(r int, x []float64) (turns bool) {
	for i := range x {
		s := &c.leaning[i]
		x[i] = s.foot.X + c.points[i*c.rows+r].Y*s.up.X
		turns = turns || i > 0 && x[i] < x[i-1]
	}
	return turns
}

// across cuts the skin at each station: up the rows as each first reaches it and, where the
// end leans out beyond its head, back down them to the profile.
func (c *cutter) across() [][]geom.Vec2 {
	out, room := c.cut, c.room[len(c.upright)*c.rows:]
	for k := range out {
		out[k] = room[k*c.rows : k*c.rows : (k+1)*c.rows]
	}
	x := make([]float64, len(c.leaning))
	again := false
	for r := range c.rows {
		turns := c.row(r, x)
		again = again || turns
		from := 1
		for k, at := range c.past {
			first := crossing(x, at, from)
			if first == len(x) {
				continue
			}
			out[k] = append(out[k], c.between(r, first, x, at))
			if !turns {
				// The next station lies farther forward, and so does the column that reaches it.
				from = first
			}
		}
	}
	if !again {
		return out
	}
	for r := c.rows - 1; r >= 0; r-- {
		c.row(r, x)
		for k, at := range c.past {
			first := crossing(x, at, 1)
			for i := len(x) - 1; i > first; i-- {
				if (x[i-1] <= at) != (x[i] <= at) {
					out[k] = append(out[k], c.between(r, i, x, at))
				}
			}
		}
	}
	return out
}

// crossing is the first i from one on with a place between x[i-1] and x[i], or len(x).
func crossing(x []float64, at float64, from int) int {
	for i := from; i < len(x); i++ {
		if (x[i-1] <= at) != (x[i] <= at) {
			return i
		}
	}
	return len(x)
}

// at is the point of row r in column i, as (y, z).
func (c *cutter) at(r, i int) geom.Vec2 {
	s, q := &c.leaning[i], c.points[i*c.rows+r]
	return geom.Vec2{X: q.X, Y: s.foot.Y + q.Y*s.up.Y}
}

// between is the point of row r, whose stations are x, before column i.
func (c *cutter) between(r, i int, x []float64, at float64) geom.Vec2 {
	return c.at(r, i-1).Lerp(c.at(r, i), (at-x[i-1])/(x[i]-x[i-1]))
}

// foremost is the point of the profile farthest forward, as (y, z).
func (c *cutter) foremost() geom.Vec2 {
	x := make([]float64, len(c.leaning))
	c.row(0, x)
	i := sort.Search(len(x)-1, func(i int) bool { return x[i+1] <= x[i] })
	return geom.Vec2{X: 0, Y: c.at(0, i).Y}
}

// foremostColumn is the place of the column that stands on the foremost point of the
// profile's Path.
func (h *Hull) foremostColumn() float64 {
	path := h.End.Path
	best := 0
	for i, p := range path.Points {
		if p.X > path.Points[best].X {
			best = i
		}
	}
	if best == len(path.Points)-1 {
		return 2
	}
	return h.columnAtShare(path.Run[best] / path.Length())
}
