package flat

import (
	"math"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// stretchBands are the shares of the limit from which the hatch grows denser. Below the
// first there is no hatch. From the last on the stretch is over the limit.
var stretchBands = [...]float64{0.25, 0.5, 1}

// bandHatch returns the hatch of a band, counted from 0. Each spacing is half that of
// the band before, so that lines continue from band to band.
func (p *pen) bandHatch(band int, points []draw.Point) draw.Hatch {
	h := draw.Hatch{Role: draw.Faint, Points: points, Spacing: 12 * p.Weight / math.Pow(2, float64(band)),
		Width: scene.HairWidth * p.Weight, Angle: -math.Pi / 4}
	if band == len(stretchBands)-1 {
		h.Role, h.Width = draw.Warn, scene.FineWidth*p.Weight
	}
	return h
}

// bandOf is the band of a stretch, -1 for none.
func bandOf(stretch, limit float64) int {
	band := -1
	for i, share := range stretchBands {
		if stretch > share*limit {
			band = i
		}
	}
	return band
}

// stretchHatch draws the stretch over every piece, in strips of cells that are
// alike along the boat.
func (p *pen) stretchHatch(c core.Canoe, a scene.Plate) {
	for _, piece := range p.View.Flat.Pieces() {
		cells := cellStretch(piece)
		for r := range piece.Rows - 1 {
			p.hatchRow(c, a, piece, cells, r)
		}
	}
}

func (p *pen) hatchRow(c core.Canoe, a scene.Plate, piece *bark.Piece, cells []float64, r int) {
	cols := piece.Curved.Cols
	at := func(col int) int { return bandOf(cells[col*(piece.Rows-1)+r], c.Design.StretchLimit) }
	for from := 0; from < cols-1; {
		to := from + 1
		for to < cols-1 && at(to) == at(from) && !scene.SlitAt(piece, to, r) {
			to++
		}
		if band := at(from); band >= 0 {
			strip := cellStrip(piece, from, to, r)
			for _, q := range scene.Quarters {
				if x := q[0] * strip[0].X; piece.Panel >= 0 && scant(c, x, x) {
					continue
				}
				if points := a.InQuarter(q, gapAt(c, piece, q, strip[0].X), strip); p.Seen(points) {
					p.List.Add(p.bandHatch(band, points))
				}
			}
		}
		from = to
	}
}

// cellStrip is the outline of the cells of row r from one column to another.
func cellStrip(piece *bark.Piece, from, to, r int) []geom.Vec2 {
	var low, high []geom.Vec2
	for col := from; col <= to; col++ {
		side := geom.Before
		if col == from {
			side = geom.After
		}
		low, high = append(low, piece.At(col, r, side)), append(high, piece.At(col, r+1, side))
	}
	return scene.Between(low, high)
}

// cellStretch is the stretch of each cell of a piece, column by column: the mean
// over its triangles of the larger principal stretch or gathering.
func cellStretch(piece *bark.Piece) []float64 {
	rows, cols := piece.Rows, piece.Curved.Cols
	column, row := make([]int, len(piece.Points)), make([]int, len(piece.Points))
	for c := range cols {
		for r := range rows {
			for _, side := range [2]geom.Side{geom.Before, geom.After} {
				v := piece.Vertex(c, r, side)
				column[v], row[v] = c, r
			}
		}
	}
	sum, area := make([]float64, (cols-1)*(rows-1)), make([]float64, (cols-1)*(rows-1))
	for _, s := range piece.Stretches {
		c, r := cols, rows
		for _, v := range s.Corners {
			c, r = min(c, column[v]), min(r, row[v])
		}
		i := min(c, cols-2)*(rows-1) + min(r, rows-2)
		sum[i], area[i] = sum[i]+s.Worst()*s.Area, area[i]+s.Area
	}
	for i := range sum {
		if area[i] > 0 {
			sum[i] /= area[i]
		}
	}
	return sum
}
