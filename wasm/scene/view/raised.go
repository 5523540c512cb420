package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
	"barkwright/wasm/scene/solid"
)

// roundBar is the breadth from which the boat in the round beside its views is lettered, in
// letters.
const roundBar = 36

// raised draws the boat being raised from above and from the side, at the scale and place that it has
// on the bed and finished, and in the round where those have sections.
func raised(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	p.List.Title = titles[v.Only] + ", the boat being raised"
	p.List.Description = titles[v.Only] + ", bow to the right. " + raise.Words(c, v.Up) + "."
	if !p.ReadyFlat(v.Flat) {
		return p.Done()
	}
	l := fit(c, v, size)
	b := raise.At(c, v.Flat, v.Up)
	p.tape(c, l)
	p.scaleNearBy(l)
	if l.hasTop {
		b.FromAbove(p.Pen, l.top, reachOf(c, scene.OnTheBed).wide)
	}
	if l.hasSide {
		b.FromTheSide(p.Pen, l.side)
		p.lengthOverall(c, l)
	}
	if l.sections != (draw.Box{}) {
		roomy := l.sections.Width() > roundBar*p.Letter
		b.InTheRound(p.Pen, l.sections, roomy)
		p.List.Description += " With them the boat in the round, from the starboard bow."
		if roomy {
			p.List.Description += solid.GroundBarWords(c.Design.Length, v.System)
			solid.NoScale(p.Pen, draw.Point{X: l.sections.Left, Y: l.sections.Bottom - 0.5*p.Letter})
		}
	}
	end := c.Design.Length / 2
	if !l.titled {
		// There is no room but on the boat.
		p.List.Key = append(p.List.Key, draw.KeyEntry{Text: raise.Words(c, v.Up)})
		return p.Done()
	}
	b.Says(p.Pen, draw.Point{X: max(l.top.At(-end, 0).X, 4), Y: 1.1 * p.Letter})
	p.Say(scene.RankTitle, "bow →", draw.Ink, draw.Paper, scene.SpotAt(l.top.At(end, 0).X, 1.1*p.Letter, draw.End))
	return p.Done()
}
