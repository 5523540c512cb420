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

// stretchHatch hatches every piece in bands, each over the one before: where the stretch is over
// each share of the limit.
func (p *pen) stretchHatch(c core.Canoe, a scene.Plate) {
	for _, piece := range p.View.Flat.Pieces() {
		triangles := make([][3]int, len(piece.Stretches))
		for i, s := range piece.Stretches {
			triangles[i] = s.Corners
		}
		stretch := cornerStretch(piece)
		for band, share := range stretchBands {
			for _, over := range withHoles(geom.Above(piece.Points, triangles, stretch, share*c.Design.StretchLimit)) {
				for _, q := range scene.Quarters {
					p.hatchBand(c, a, piece, band, q, over)
				}
			}
		}
	}
}

// hatchBand hatches a band of a piece in a quarter. Parts of a panel stand apart.
func (p *pen) hatchBand(c core.Canoe, a scene.Plate, piece *bark.Piece, band int, q [2]float64, over []geom.Vec2) {
	if piece.Panel < 0 {
		if points := a.InQuarter(q, 0, over); p.Seen(points) {
			p.List.Add(p.bandHatch(band, points))
		}
		return
	}
	for _, part := range panelParts(c, piece, q) {
		from, to := a.At(q[0]*part.from, 0).X, a.At(q[0]*min(part.to, c.Design.Length), 0).X
		room := draw.Box{Left: min(from, to), Right: max(from, to), Top: math.Inf(-1), Bottom: math.Inf(1)}
		if points := a.InQuarter(q, part.out, over); p.Seen(points) {
			p.List.Add(draw.Clip(p.bandHatch(band, points), room)...)
		}
	}
}

// withHoles joins to each outline the holes in it, which run the other way round: each is gone
// round in turn, and back to where the outline began.
func withHoles(outlines [][]geom.Vec2) [][]geom.Vec2 {
	most := 0.0
	areas := make([]float64, len(outlines))
	for i, line := range outlines {
		if areas[i] = geom.SignedArea(line); math.Abs(areas[i]) > math.Abs(most) {
			most = areas[i]
		}
	}
	var out [][]geom.Vec2
	var round []int
	for i, line := range outlines {
		if areas[i]*most > 0 {
			out, round = append(out, append(append([]geom.Vec2{}, line...), line[0])), append(round, i)
		}
	}
	for i, line := range outlines {
		if areas[i]*most >= 0 {
			continue
		}
		for k := range out {
			if encloses(outlines[round[k]], line[0]) {
				out[k] = append(append(append(out[k], line...), line[0]), out[k][0])
				break
			}
		}
	}
	return out
}

func encloses(line []geom.Vec2, q geom.Vec2) bool {
	points := make([]draw.Point, len(line))
	for i, v := range line {
		points[i] = draw.Point(v)
	}
	return draw.Encloses(points, draw.Point(q))
}

// cornerStretch is the stretch at each point of a piece: the mean, by area, of the larger principal
// stretch or gathering of the triangles round it.
func cornerStretch(piece *bark.Piece) []float64 {
	out, area := make([]float64, len(piece.Points)), make([]float64, len(piece.Points))
	for _, s := range piece.Stretches {
		for _, v := range s.Corners {
			out[v], area[v] = out[v]+s.Worst()*s.Area, area[v]+s.Area
		}
	}
	for v := range out {
		if area[v] > 0 {
			out[v] /= area[v]
		}
	}
	return out
}
