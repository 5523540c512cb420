package solid

import (
	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// bandPieces is in how many pieces the band along an end is drawn, and stitchEvery at how many
// of them it is sewn.
const (
	bandPieces  = 48
	stitchEvery = 2
)

// ends are the bark's edges sewn round the stem-pieces: a band of the stem's breadth along the
// profile from the heel to the head.
func (p *Solid) ends(c core.Canoe) {
	d, profile := c.Design, c.Hull.End.Path
	half := d.StemWidth/2 + d.BarkThickness
	for _, way := range [2]float64{1, -1} {
		var port, star []geom.Vec3
		flush := func() {
			if n := len(port); n > 1 {
				p.part(StemBand, answer.StemPart, true, p.Place(scene.Between(port, star)))
				p.rim(StemBand, port...)
				p.rim(StemBand, star...)
				p.rim(StemBand, port[0], star[0])
				p.rim(StemBand, port[n-1], star[n-1])
			}
			port, star = nil, nil
		}
		for i := range bandPieces + 1 {
			run := profile.Length() * float64(i) / bandPieces
			at, heading := profile.At(run), profile.Heading(run)
			q := geom.Vec3{X: way * at.X, Z: at.Y}
			if !p.Camera.Faces(q, geom.Vec3{X: way * heading.Y, Z: -heading.X}) {
				flush()
				continue
			}
			a, b := geom.Vec3{X: q.X, Y: half, Z: q.Z}, geom.Vec3{X: q.X, Y: -half, Z: q.Z}
			if n := len(port); n > 0 {
				p.Area(StemBand, draw.Bark, port[n-1], a, b, star[n-1])
				if i%stitchEvery == 0 {
					p.Line(StemBand, draw.Root, scene.TimberWidth, a, b)
				}
			}
			port, star = append(port, a), append(star, b)
		}
		flush()
	}
}

// stems are the stem-pieces inside the bark.
func (p *Solid) stems(c core.Canoe) {
	d, stem := c.Design, c.Frame.Stem
	for _, way := range [2]float64{1, -1} {
		var outline []geom.Vec3
		at := func(run, depth float64) {
			q := stem.Profile.At(run).Add(stem.Profile.Heading(run).Left().Scale(depth))
			outline = append(outline, geom.Vec3{X: way * q.X, Z: q.Y})
		}
		for i := range bandPieces + 1 {
			at(stem.Curve*float64(i)/bandPieces, d.BarkThickness)
		}
		for i := bandPieces; i >= 0; i-- {
			at(stem.Curve*float64(i)/bandPieces, d.BarkThickness+d.StemDepth)
		}
		p.rim(Ribs, append(outline, outline[0])...)
		p.Area(Ribs, draw.Cedar, outline...)
	}
}

// jointPieces is in how many straight pieces half a joint of sheets is drawn.
const jointPieces = 12

// seams are the gores, panels and joints sewn up, where the skin is seen from outside.
func (p *Solid) seams(c core.Canoe, s *Skin) {
	h := c.Hull
	for i, g := range c.Bark.Gores {
		if g.State != bark.GoreCut {
			continue
		}
		place := h.ColumnAtEdge(max(g.X, -g.X))
		column := h.Column(place)
		var up []geom.Vec3
		const pieces = 8
		for k := range pieces + 1 {
			up = append(up, column.At(g.FootGirth+(g.EndGirth-g.FootGirth)*float64(k)/pieces))
		}
		for q, m := range scene.Quarters {
			if m[0]*g.X < 0 || (g.X == 0 && m[0] < 0) || s.insideAt(q, s.columnOf(place), g.FootGirth) {
				continue
			}
			line := inPlace(up, m)
			p.Line(Outer, draw.Seam, scene.TimberWidth, line...)
			p.part(Outer, scene.GoreName(i, len(c.Bark.Gores)), false, p.Place(line))
		}
	}
	for i, j := range c.Bark.Joints {
		up, column := h.Column(j.Place).Points(jointPieces), s.columnOf(j.Place)
		for q, m := range scene.Quarters {
			if m[0]*j.Along < 0 {
				continue
			}
			var line []geom.Vec3
			for k, at := range up {
				if !s.insideAt(q, column, s.girths[column]*float64(k)/jointPieces) {
					line = append(line, InPlace(at, m))
				}
			}
			p.Line(Outer, draw.Seam, scene.StrongWidth, line...)
			p.part(Outer, answer.JointPart(i), false, p.Place(line))
		}
	}
	for n, b := range c.Bark.Beside {
		for _, side := range [2]float64{1, -1} {
			var line []geom.Vec3
			for i, at := range b.Path {
				seen := !s.topInside(at.X, side)
				if seen {
					line = append(line, InPlace(at, [2]float64{1, side}))
				}
				if !seen || i == len(b.Path)-1 {
					p.Line(Outer, draw.Seam, scene.TimberWidth, line...)
					p.part(Outer, answer.SeamPart(n), false, p.Place(line))
					line = nil
				}
			}
		}
	}
}

// columnOf is the column nearest to a place.
func (s *Skin) columnOf(place float64) int {
	best := 0
	for c, v := range s.places {
		if max(v-place, place-v) < max(s.places[best]-place, place-s.places[best]) {
			best = c
		}
	}
	return best
}

// topInside tells whether the skin near its top edge is seen from inside at a station of a side.
func (s *Skin) topInside(x, side float64) bool {
	quarter := 0
	if x < 0 {
		quarter++
	}
	if side < 0 {
		quarter += 2
	}
	return s.facing.Inside(quarter, s.columnNear(x), skinRows-1)
}
