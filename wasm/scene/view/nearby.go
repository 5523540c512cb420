package view

import (
	"math"
	"strconv"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// nearBy is the zoom from which the marks of single groups of lacing and gores are lettered: before,
// they stand too close for their figures.
const nearBy = 3

// groupMarks letters, nearer by, where along the gunwale each group of lacing stands.
func (p *pen) groupMarks(c core.Canoe, l layout) {
	if p.View.Zoom < nearBy {
		return
	}
	for i, g := range c.Frame.Lacing.Groups {
		at := l.top.At(g.X, skinBreadth(c.Hull, math.Abs(g.X))+c.Design.OutwaleThickness)
		p.groupMark(i, g, at, -0.8*p.Letter)
	}
}

// groupMarksSide letters them under the outwale.
func (p *pen) groupMarksSide(c core.Canoe, a scene.Plate) {
	if p.View.Zoom < nearBy {
		return
	}
	for i, g := range c.Frame.Lacing.Groups {
		p.groupMark(i, g, a.At(g.X, c.Hull.Sheer(g.X)-c.Design.OutwaleDepth), 0.9*p.Letter)
	}
}

func (p *pen) groupMark(i int, g frame.Group, at draw.Point, down float64) {
	text := strconv.Itoa(i) + ": " + units.Length.Format(g.Run, p.View.System)
	if i == 0 {
		text = "lacing " + text
	}
	n := p.Say(scene.RankExtra, text, draw.Root, draw.Paper, scene.SpotAt(at.X, at.Y+down, draw.Middle))
	n.Text.Size, n.Spare, n.Lead = max(11, 0.9*p.Letter), true, &at
}

// ribItself letters a rib on its own timber, where its end is out of the picture.
func (p *pen) ribItself(c core.Canoe, l layout, r frame.Rib) {
	at := draw.Point{X: l.top.At(r.X, 0).X, Y: 0.72 * p.List.Height}
	if r.Width*l.top.Scale < 1.3*p.Letter || math.Abs(at.Y-l.top.Origin.Y) > 0.8*c.Hull.HalfBeam(r.X)*l.top.Scale {
		return
	}
	n := p.Say(scene.RankExtra, strconv.Itoa(r.Number)+": "+units.Length.Format(r.Length, p.View.System), draw.Ink, "",
		scene.Spot{At: at, Anchor: draw.Middle})
	n.Text.Size, n.Text.Angle, n.Spare = max(11, 0.9*p.Letter), -math.Pi/2, true
}

// scaleNearBy is a scale bar where the tape, the scale of the whole picture, is out of sight.
func (p *pen) scaleNearBy(l layout) {
	if p.View.Zoom <= 1 || l.tapeY > 0 && l.tapeY < p.List.Height {
		return
	}
	p.ScaleBar(draw.Point{X: 6 * p.Letter, Y: p.List.Height - 1.6*p.Letter}, l.top.Scale)
}

// goreMarks letters, nearer by, where along the gunwale each gore stands and how far in it is slashed.
func (p *pen) goreMarks(c core.Canoe, a scene.Plate) {
	if p.View.Zoom < nearBy {
		return
	}
	n := len(c.Bark.Gores)
	for i, g := range c.Bark.Gores {
		if g.State != bark.GoreCut {
			continue
		}
		at := a.At(g.X, g.FootGirth)
		text := "gore " + scene.GoreNumber(i, n) + ": " + units.Length.Format(math.Abs(g.Run), p.View.System) + " along, " +
			units.Length.Format(g.Depth, p.View.System) + " in"
		edge := a.At(g.X, g.EndGirth)
		label := p.Say(scene.RankExtra, text, draw.Seam, draw.Bark, scene.SpotAt(at.X, at.Y+0.9*p.Letter, draw.Middle),
			scene.SpotAt(edge.X, edge.Y-0.9*p.Letter, draw.Middle))
		label.Spare, label.Lead = true, &at
	}
}
