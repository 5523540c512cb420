package raise

import (
	"math"
	"sort"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// Draw draws the bark on its way from the bed to the hull, in three quarters
// view: sides turned up round the building frame, gores closing.
func Draw(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	p.List.Title, p.List.Description = "Sides turned up", describe(c, v)
	p.raised(c, size)
	return p.Done()
}

func (p *pen) raised(c core.Canoe, size draw.Size) {
	f := p.View.Flat
	if !p.ReadyFlat(f) {
		return
	}
	room := draw.Box{Left: 0.8 * p.Letter, Top: 2.2 * p.Letter, Right: size.Width - 0.8*p.Letter,
		Bottom: size.Height - 0.8*p.Letter}
	if size.Height < 15*p.Letter {
		room.Top = 1.4 * p.Letter
	}
	s := solid{pen: p, camera: newCamera(c.Design.Length, extremes(c, f), room).zoomed(p.View, size)}
	s.bed(c, f)
	sheet := Sides(&f.Sheet, p.View.Up).Points
	s.bark(&f.Sheet, sheet)
	for i := range f.Panels {
		panel := &f.Panels[i]
		raised := Sides(panel, p.View.Up).Points
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
		for _, m := range scene.Quarters {
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
	s.List.Add(draw.Fill{Role: draw.Ground, Points: s.place(bedCorners(c, f))})
}

func bedCorners(c core.Canoe, f *bark.Flat) []geom.Vec3 {
	half, wide := min(c.Design.BedLength/2, scene.BedShown(c)), f.Breadth/2+0.05
	var corners []geom.Vec3
	for _, q := range scene.Rect(0, half, -wide, wide) {
		corners = append(corners, geom.Vec3{X: q.X, Y: q.Y, Z: -0.01})
	}
	return corners
}

// bringTo moves a panel as a whole so that the middle of its seam meets the edge of the
// sheet. On the way up the gores below it are open, so it cannot meet the edge
// everywhere.
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
		for _, m := range scene.Quarters {
			var line []draw.Point
			for r := f.Sheet.FootRow; r < f.Sheet.Rows; r++ {
				line = append(line, s.camera.at(inPlace(raised[f.Sheet.Vertex(col, r, geom.Before)], m)))
			}
			s.Part(scene.GoreName(i, n), false, line)
		}
	}
}

// labels say how far the sides are up.
func (s *solid) labels(c core.Canoe) {
	n := s.Say(scene.RankMain, "Sides turned up: "+UpWords(s.View.Up), draw.Ink, draw.Paper,
		scene.SpotAt(0.8*s.Letter, 1.1*s.Letter, draw.Start))
	n.Text.Bold = true
	s.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper, scene.SpotAt(s.List.Width-0.8*s.Letter, 1.1*s.Letter, draw.End))
	s.Say(scene.RankExtra, "no one scale: what is nearer is larger", draw.Faint, draw.Paper,
		scene.SpotAt(0.8*s.Letter, s.List.Height-0.9*s.Letter, draw.Start))
	if s.View.Up < 1 {
		top := s.camera.at(geom.Vec3{Y: c.Hull.SkinHalfBreadth(0), Z: c.Hull.TopEdge(0)})
		s.Say(scene.RankExtra, "where the gunwale will stand", draw.Faint, draw.Paper,
			scene.SpotAt(top.X, top.Y-0.8*s.Letter, draw.Middle))
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

// describe says in words how the boat stands.
func describe(c core.Canoe, v scene.View) string {
	return "The bark from the starboard bow, bow to the right, turned up round the building frame: " + UpWords(v.Up) + "."
}
