package flat

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/mend"
	"barkwright/wasm/scene"
)

// laidRepair is a repair of the log, by its place there, with its parts on the bark laid flat.
type laidRepair struct {
	number int
	name   string
	parts  []mend.Laid
}

// layRepairs lays those of the view flat, and says of each on how much bark it lies.
func (p *pen) layRepairs(c core.Canoe) {
	for i, e := range p.View.Repairs {
		p.repairs = append(p.repairs,
			laidRepair{i, scene.RepairName(i, e.Entry), mend.OnFlat(c.Hull, &c.Bark, p.View.Flat, e.Repair)})
	}
	p.List.Description += repairsInWords(p.repairs)
}

// laidOut is where a drawing has the bark: of a line on a part of a repair, its points in the picture, none
// where the drawing does not have that part.
type laidOut func(part mend.Laid, line []geom.Vec2) []draw.Point

// onPlate is the whole bark on a plate, its strips drawn off the sheet.
func onPlate(a scene.Plate) laidOut {
	return func(part mend.Laid, line []geom.Vec2) []draw.Point {
		out := 0.0
		if part.Strip != "" {
			out = panelGap
		}
		return a.InQuarter(part.Quarter, out, line)
	}
}

// repairsOver draws every repair's outline on each piece of bark that it touches.
func (p *pen) repairsOver(a scene.Plate) {
	for _, r := range p.repairs {
		p.repairLines(r, onPlate(a))
		p.repairNames(r, onPlate(a), draw.Box{Right: p.List.Width, Bottom: p.List.Height})
	}
}

func (p *pen) repairLines(r laidRepair, at laidOut) {
	for _, part := range r.parts {
		lines := [][]geom.Vec2{part.Outline}
		if part.Closed {
			lines = cutLines(part.Outline)
		}
		for _, line := range lines {
			if points := at(part, line); len(points) > 0 {
				p.Line(draw.Warn, scene.StrongWidth, points...)
			}
		}
	}
}

// repairNames makes a repair's parts that can be touched, and letters each piece of it once, of those whose
// middle lies in a room.
func (p *pen) repairNames(r laidRepair, at laidOut, room draw.Box) {
	pieces := map[int][]draw.Point{}
	count := 0
	for _, part := range r.parts {
		count = max(count, part.Piece+1)
		points := at(part, part.Outline)
		if len(points) == 0 {
			continue
		}
		pieces[part.Piece] = append(pieces[part.Piece], points...)
		if draw.BoxOf(points).Meets(room) {
			p.Part(scene.RepairPart(r.number), part.Closed, points)
		}
	}
	for k := range count {
		if len(pieces[k]) == 0 {
			continue
		}
		b := draw.BoxOf(pieces[k])
		at := draw.Point{X: (b.Left + b.Right) / 2, Y: (b.Top + b.Bottom) / 2}
		if p.View.Layer == scene.Plain || !(draw.Box{Left: at.X, Right: at.X, Top: at.Y, Bottom: at.Y}).Within(room) {
			continue
		}
		text := r.name
		if k > 0 {
			text = strconv.Itoa(r.number + 1)
		}
		n := p.Say(scene.RankPart, text, draw.Warn, draw.Bark, scene.SpotAt(at.X, b.Top-0.8*p.Letter, draw.Middle),
			scene.SpotAt(at.X, b.Bottom+0.8*p.Letter, draw.Middle), scene.SpotAt(b.Right+0.5*p.Letter, at.Y, draw.Start),
			scene.SpotAt(b.Left-0.5*p.Letter, at.Y, draw.End))
		n.Lead, n.Key = &at, "repair "+text
	}
}

// repairsInWords say on how many pieces of bark each repair lies.
func repairsInWords(all []laidRepair) string {
	text := ""
	for _, r := range all {
		pieces := map[int]bool{}
		for _, part := range r.parts {
			pieces[part.Piece] = true
		}
		text += " Mended, " + r.name
		if n := len(pieces); n > 1 {
			text += ", cut by gores or seams in " + strconv.Itoa(n) + " pieces"
		}
		text += "."
	}
	return text
}
