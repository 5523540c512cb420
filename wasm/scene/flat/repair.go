package flat

import (
	"math"
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
			laidRepair{i, scene.RepairName(i, e.Entry), mend.OnFlat(c.Hull, p.View.Flat, e.Repair)})
	}
	p.List.Description += repairsInWords(p.repairs)
}

// repairsOver draws every repair's outline on each piece of bark that it touches.
func (p *pen) repairsOver(c core.Canoe, a scene.Plate) {
	for _, r := range p.repairs {
		p.repairLines(c, r, a)
		p.repairNames(c, r, a, draw.Box{Right: p.List.Width, Bottom: p.List.Height})
	}
}

func (p *pen) repairLines(c core.Canoe, r laidRepair, a scene.Plate) {
	for _, part := range r.parts {
		lines := [][]geom.Vec2{part.Outline}
		if part.Closed {
			lines = cutLines(part.Outline)
		}
		for _, line := range lines {
			p.Line(draw.Warn, scene.StrongWidth, a.InQuarter(part.Quarter, p.panelOut(c, part), line)...)
		}
	}
}

// panelOut is how far a part is drawn off its place: as the part of the panel that it lies on.
func (p *pen) panelOut(c core.Canoe, part mend.Laid) float64 {
	x := middle(part.Outline).X
	for _, piece := range p.View.Flat.Pieces() {
		if piece.Panel < 0 || piece.Panel != part.Panel {
			continue
		}
		for _, s := range panelParts(c, piece, part.Quarter) {
			if x >= s.from && x <= s.to {
				return s.out
			}
		}
	}
	return 0
}

// repairNames makes a repair's parts that can be touched, and letters each piece of it once, of those whose
// middle lies in a room.
func (p *pen) repairNames(c core.Canoe, r laidRepair, a scene.Plate, room draw.Box) {
	pieces := map[int][]draw.Point{}
	for _, part := range r.parts {
		points := a.InQuarter(part.Quarter, p.panelOut(c, part), part.Outline)
		pieces[part.Piece] = append(pieces[part.Piece], points...)
		if draw.BoxOf(points).Meets(room) {
			p.Part(scene.RepairPart(r.number), part.Closed, points)
		}
	}
	for k := range len(pieces) {
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

// middle is the mean of an outline's points.
func middle(outline []geom.Vec2) geom.Vec2 {
	sum := geom.Vec2{}
	for _, q := range outline {
		sum = sum.Add(q)
	}
	return sum.Scale(1 / math.Max(1, float64(len(outline))))
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
