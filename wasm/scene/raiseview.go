package scene

import (
	"math"
	"sort"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/geom"
	"barkwright/core/units"
)

// raised draws the bark on its way from the bed to the hull, in three quarters
// view: sides turned up round the building frame, gores closing.
func (p *pen) raised(c core.Canoe) {
	f := p.view.Flat
	if !p.readyFlat(f) {
		return
	}
	size := Size{Width: p.list.Width, Height: p.list.Height}
	room := box{0.8 * p.letter, 2.2 * p.letter, size.Width - 0.8*p.letter, size.Height - 0.8*p.letter}
	if size.Height < 15*p.letter {
		room.Top = 1.4 * p.letter
	}
	s := solid{pen: p, camera: newCamera(c.Design.Length, extremes(c, f), room).zoomed(p.view, size)}
	s.bed(c, f)
	sheet := f.Sheet.Raise(p.view.Up).Points
	s.bark(&f.Sheet, sheet)
	for i := range f.Panels {
		panel := &f.Panels[i]
		raised := panel.Raise(p.view.Up).Points
		bringTo(&f.Sheet, sheet, panel, raised)
		s.bark(panel, raised)
	}
	s.frame(c, &f.Sheet, sheet)
	s.gunwales(c)
	s.paint()
	s.goreParts(f, sheet)
	s.labels(c)
}

// extremes are the outermost points of the flat sheet and of the finished hull:
// what the picture must hold at any share of the way.
func extremes(c core.Canoe, f *bark.Flat) []geom.Vec3 {
	all := bedCorners(c, f)
	add := func(q geom.Vec3) {
		for _, m := range quarters {
			all = append(all, geom.Vec3{X: m[0] * q.X, Y: m[1] * q.Y, Z: q.Z})
		}
	}
	for _, piece := range f.Pieces() {
		for _, q := range piece.Outline() {
			add(geom.Vec3{X: q.X, Y: q.Y})
		}
		for c := range piece.Curved.Cols {
			add(piece.Curved.Point(c, 0))
			add(piece.Curved.Point(c, piece.Rows-1))
		}
	}
	return all
}

// bed is the ground under the bark: as long as the boat and as broad as the sheet.
func (s *solid) bed(c core.Canoe, f *bark.Flat) {
	s.list.Add(Fill{Role: Ground, Points: s.place(bedCorners(c, f))})
}

func bedCorners(c core.Canoe, f *bark.Flat) []geom.Vec3 {
	half, wide := min(c.Design.BedLength/2, bedShown(c)), f.Breadth/2+0.05
	var corners []geom.Vec3
	for _, q := range rect(0, half, -wide, wide) {
		corners = append(corners, geom.Vec3{X: q.X, Y: q.Y, Z: -0.01})
	}
	return corners
}

// bringTo moves a panel as it is so that the middle of its seam meets the edge of
// the sheet: on the way up the gores below it are open and it cannot all meet.
func bringTo(sheet *bark.Piece, edge []geom.Vec3, panel *bark.Piece, points []geom.Vec3) {
	middle := panel.Curved.Cols / 2
	place, last := panel.Places[middle], len(sheet.Places)-1
	c := min(sort.SearchFloat64s(sheet.Places, place), last)
	to := edge[sheet.Vertex(c, sheet.Rows-1, geom.Before)]
	if c > 0 && sheet.Places[c] > place {
		share := (place - sheet.Places[c-1]) / (sheet.Places[c] - sheet.Places[c-1])
		to = edge[sheet.Vertex(c-1, sheet.Rows-1, geom.After)].Lerp(to, share)
	}
	move := to.Sub(points[panel.Vertex(middle, 0, geom.Before)])
	if panel.Places[0] == 0 {
		move.X = 0
	}
	for i := range points {
		points[i] = points[i].Add(move)
	}
}

// inPlace puts a point of the forward port quarter in one of the four.
func inPlace(q geom.Vec3, m [2]float64) geom.Vec3 {
	return geom.Vec3{X: m[0] * q.X, Y: m[1] * q.Y, Z: q.Z}
}

// goreParts lets each gore be touched along its after edge or that edge's mirror image.
func (s *solid) goreParts(f *bark.Flat, raised []geom.Vec3) {
	n, slits := len(f.Gores), f.Sheet.Slits()
	for i, g := range f.Gores {
		if g.X < 0 || len(g.After) == 0 {
			continue
		}
		col := 0
		if g.X > 0 {
			col, slits = slits[0].Col, slits[1:]
		}
		for _, m := range quarters {
			var line []Point
			for r := f.Sheet.FootRow; r < f.Sheet.Rows; r++ {
				line = append(line, s.camera.at(inPlace(raised[f.Sheet.Vertex(col, r, geom.Before)], m)))
			}
			s.part(goreName(i, n), false, line)
		}
	}
}

// labels say how far the sides are up.
func (s *solid) labels(c core.Canoe) {
	n := s.say(rankMain, "Sides turned up: "+UpWords(s.view.Up), Ink, Paper, spot{Point{0.8 * s.letter, 1.1 * s.letter}, Start})
	n.text.Bold = true
	s.say(rankTitle, "bow →", Ink, Paper, spot{Point{s.list.Width - 0.8*s.letter, 1.1 * s.letter}, End})
	if s.view.Up < 1 {
		top := s.camera.at(geom.Vec3{Y: c.Hull.SkinHalfBreadth(0), Z: c.Hull.TopEdge(0)})
		s.say(rankExtra, "where the gunwale will stand", Faint, Paper, spot{Point{top.X, top.Y - 0.8*s.letter}, Middle})
	}
}

// UpWords is how far the sides are turned up, in words.
func UpWords(up float64) string {
	switch {
	case up <= 0:
		return "flat on the bed"
	case up >= 1:
		return "the finished hull"
	}
	return units.Percent.Format(math.Round(up*100)/100, units.Metric) + " of the way"
}

// describeRaised says in words how the boat stands.
func describeRaised(c core.Canoe, v View) string {
	return "The bark from the starboard bow, bow to the right, turned up round the building frame: " + UpWords(v.Up) + "."
}
