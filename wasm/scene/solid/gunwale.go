package solid

import (
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// gunwales are inwale, bark and outwale as one timber from the middle to the stem heads, with
// the cap on it.
func (p *Solid) gunwales(c core.Canoe, s *Skin, capped bool) {
	sections := make([][4]geom.Vec3, len(s.columns))
	for i, column := range s.columns {
		sections[i] = gunwaleAt(c, column[skinRows].X, capped)
	}
	last := len(sections) - 1
	for q, m := range scene.Quarters {
		for from := 0; from < last; {
			to := from + 1
			for to < last && s.nearAt(p.Camera, q, to) == s.nearAt(p.Camera, q, from) {
				to++
			}
			in := FarGunwale
			if s.nearAt(p.Camera, q, from) {
				in = NearGunwale
			}
			b := bar{to: to == last}
			for _, corners := range sections[from : to+1] {
				b.sections = append(b.sections, [4]geom.Vec3(inPlace(corners[:], m)))
			}
			p.bar(in, draw.Cedar, b)
			p.rails(in, b.sections, m, capped)
			from = to
		}
	}
}

// rails make what is seen of a run of the gunwales touchable: the inwale's face, the outwale's, and
// between them the cap, or the inwale's top where none is on yet.
func (p *Solid) rails(in Layer, sections [][4]geom.Vec3, m [2]float64, capped bool) {
	top := answer.InwalePart
	if capped {
		top = answer.CapPart
	}
	middle := sections[len(sections)/2]
	for k, name := range [3]string{answer.InwalePart, top, answer.OutwalePart} {
		if !p.Camera.Faces(middle[k], [3]geom.Vec3{{Y: -m[1]}, {Z: 1}, {Y: m[1]}}[k]) {
			continue
		}
		var edge, next []geom.Vec3
		for _, s := range sections {
			edge, next = append(edge, s[k]), append(next, s[k+1])
		}
		p.part(in, name, true, p.Place(scene.Between(edge, next)))
	}
}

// thinning is how fast the inwale is drawn deeper from where it is as deep as the outwale, by the
// half-breadth between the gunwales. By eye.
const thinning = 0.1

// gunwaleAt is the section of the gunwales at a station: the inwale's lower inner corner, the
// upper inner, the upper outer and the outwale's lower outer one.
func gunwaleAt(c core.Canoe, x float64, capped bool) [4]geom.Vec3 {
	h, d := c.Hull, c.Design
	top := h.TopEdge(x)
	high := top
	if capped {
		high += d.CapThickness
	}
	inner, outer := h.HalfBeam(x), h.SkinHalfBreadth(x)+d.OutwaleThickness
	// The inwale is thinned toward its end, past which there is only the outwale.
	inwale := min(d.InwaleDepth, d.OutwaleDepth+inner*thinning)
	return [4]geom.Vec3{{X: x, Y: inner, Z: top - inwale}, {X: x, Y: inner, Z: high}, {X: x, Y: outer, Z: high},
		{X: x, Y: outer, Z: top - d.OutwaleDepth}}
}

// lacing shows the first groups of root on what is seen of the gunwales, as a share of all of
// them, from the middle outward.
func (p *Solid) lacing(c core.Canoe, s *Skin, share float64, capped bool) {
	groups := c.Frame.Lacing.Groups
	for i, g := range groups[:int(math.Round(share*float64(len(groups))))] {
		from, to := scene.GroupSpan(c, g)
		a, b := gunwaleAt(c, from, capped), gunwaleAt(c, to, capped)
		a[0].X, a[1].X, a[2].X, a[3].X = from, from, from, from
		column := s.columnNear(g.X)
		for q, m := range scene.Quarters {
			if i == 0 && m[0] < 0 && from < 0 {
				continue // the one on the middle, once
			}
			in := FarGunwale
			if s.nearAt(p.Camera, q, column) {
				in = NearGunwale
			}
			for k := range 3 {
				if k == 1 && capped {
					continue
				}
				side := inPlace([]geom.Vec3{a[k], b[k], b[k+1], a[k+1]}, m)
				if !p.Camera.Faces(side[0], [3]geom.Vec3{{Y: -m[1]}, {Z: 1}, {Y: m[1]}}[k]) {
					continue
				}
				points := p.Place(side)
				p.AddLines(in, draw.Fill{Role: draw.Root, Points: points})
				p.part(in, answer.GroupPart(i), true, points)
			}
		}
	}
}

// columnNear is the column whose top stands nearest to a station.
func (s *Skin) columnNear(x float64) int {
	best := 0
	for c, column := range s.columns {
		if math.Abs(column[skinRows].X-math.Abs(x)) < math.Abs(s.columns[best][skinRows].X-math.Abs(x)) {
			best = c
		}
	}
	return best
}

// thwartPieces is in how many straight pieces a thwart is drawn.
const thwartPieces = 4

// thwarts stand between the inwales, in the middle of their depth.
func (p *Solid) thwarts(c core.Canoe) {
	d := c.Design
	thick := frame.NewJoinery(d).ShoulderThick
	for i, t := range c.Frame.Thwarts {
		for _, way := range [2]float64{1, -1} {
			b := bar{from: true, to: true}
			for k := range thwartPieces + 1 {
				y := t.Shoulder * (float64(k)/thwartPieces - 0.5)
				z, x, w := t.Height-d.InwaleDepth/2, way*t.X, frame.ThwartWidth/2
				b.sections = append(b.sections, [4]geom.Vec3{{X: x - w, Y: y, Z: z - thick/2}, {X: x - w, Y: y, Z: z + thick/2},
					{X: x + w, Y: y, Z: z + thick/2}, {X: x + w, Y: y, Z: z - thick/2}})
			}
			p.bar(Thwarts, draw.Cedar, b)
			first, last := b.sections[0], b.sections[thwartPieces]
			p.part(Thwarts, answer.ThwartPart(i), true, p.Place([]geom.Vec3{first[1], first[2], last[2], last[1]}))
			if t.X == 0 {
				break
			}
		}
	}
}
