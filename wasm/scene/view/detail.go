package view

import (
	"cmp"
	"slices"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// details draws the gunwale cut across and the end, each as large as its half of the picture lets it.
func (p *pen) details(c core.Canoe, size draw.Size) {
	pad := 0.8 * p.Letter
	whole := draw.Box{Left: pad, Top: pad, Right: size.Width - pad, Bottom: size.Height - pad}
	if p.View.Layer == scene.Names && size.Height > 20*p.Letter {
		whole.Bottom -= 1.2 * p.Letter
		p.LineKinds(detailLines...)
	}
	first, second := whole, whole
	if size.Width > 1.2*size.Height {
		first.Right = whole.Left + 0.42*whole.Width()
		second.Left = first.Right + p.Letter
	} else {
		first.Bottom = whole.Top + 0.45*whole.Height()
		second.Top = first.Bottom + 0.5*p.Letter
	}
	p.gunwaleCut(c, first)
	p.endDetail(c, second)
}

// detailLines are the kinds of lines in the details.
var detailLines = []scene.LineKind{
	{Name: "bottom of the bark", Role: draw.Ink, Width: scene.OutlineWidth},
	{Name: "edge of a timber", Role: draw.Ink, Width: scene.StrongWidth},
	{Name: "lamination", Role: draw.Ink, Width: scene.HairWidth},
	{Name: "root", Role: draw.Root, Width: 2 * scene.StrongWidth},
	{Name: "edge of the bark until trimmed", Role: draw.Seam, Width: scene.FineWidth, Dash: scene.ShortDash},
}

// GunwaleCut draws the gunwale cut across, by itself.
func GunwaleCut(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	p.List.Title = "The gunwale, cut across amidships"
	p.List.Description = "Inwale, bark, outwale and cap with their pegs and the root."
	p.gunwaleCut(c, draw.Box{Left: 4, Top: 4, Right: size.Width - 4, Bottom: size.Height - 4})
	return p.Done()
}

// End draws an end with its near side taken off, by itself.
func End(c core.Canoe, v scene.View, size draw.Size) draw.List {
	p := pen{scene.NewPen(v, size)}
	p.List.Title = "The end, its near side taken off"
	p.List.Description = "The stem-piece inside the bark's edge, with the headboard that stands on its heel."
	p.endDetail(c, draw.Box{Left: 4, Top: 4, Right: size.Width - 4, Bottom: size.Height - 4})
	return p.Done()
}

// mostMargin is the most of a room's breadth or height that a margin of a detail takes.
const mostMargin = 0.26

// detailPlate lays a drawing that reaches from low to high into a room, with a row for its title
// over it and margins, in letters, for what is lettered round it.
func (p *pen) detailPlate(room draw.Box, low, high geom.Vec2, beside, over float64) scene.Plate {
	t := p.Letter
	// In a small room the drawing comes first, and words go to the key.
	beside = min(beside, mostMargin*room.Width()/t)
	over = min(over, mostMargin/2*room.Height()/t)
	under := min(2.2, mostMargin/2*room.Height()/t)
	wide, tall := room.Width()-2*beside*t, room.Height()-(over+under)*t
	k := max(1, min(wide/(high.X-low.X), tall/(high.Y-low.Y)))
	v := p.View.Clamp(draw.Size{Width: p.List.Width, Height: p.List.Height})
	x := (room.Left+room.Right)/2 - k*(low.X+high.X)/2
	y := room.Top + over*t + tall/2 + k*(low.Y+high.Y)/2
	zoom := func(u, middle, pan float64) float64 { return middle + (u-middle)*v.Zoom + pan }
	return scene.Plate{Scale: k * v.Zoom,
		Origin: draw.Point{X: zoom(x, p.List.Width/2, v.PanX), Y: zoom(y, p.List.Height/2, v.PanY)}}
}

// detailTitle names a drawing over its room.
func (p *pen) detailTitle(room draw.Box, title string) {
	n := p.Say(scene.RankTitle, title, draw.Ink, draw.Paper,
		scene.SpotAt((room.Left+room.Right)/2, room.Top+0.6*p.Letter, draw.Middle))
	n.Text.Bold = true
}

// callout is a part of a detail with words for it: its name alone, and its name with its measures.
// Where there are no measures the part is lettered only among the names.
type callout struct {
	name, text string
	at         geom.Vec2
	// left says on which side of the drawing the words stand.
	left bool
}

// callouts letters parts beside a drawing, each side from the top down, with a line to each.
func (p *pen) callouts(a scene.Plate, room draw.Box, all []callout) {
	if p.View.Layer == scene.Plain {
		return
	}
	slices.SortStableFunc(all, func(a, b callout) int { return cmp.Compare(b.at.Y, a.at.Y) })
	for _, left := range [2]bool{true, false} {
		y := room.Top + 2.4*p.Letter
		x, anchor := room.Right, draw.End
		if left {
			x, anchor = room.Left, draw.Start
		}
		for _, k := range all {
			text := k.text
			if p.View.Layer == scene.Names {
				text = k.name
			}
			if k.left != left || text == "" {
				continue
			}
			at := a.At(k.at.X, k.at.Y)
			y = max(y, at.Y)
			n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, scene.Spot{At: draw.Point{X: x, Y: y}, Anchor: anchor})
			n.Lead, n.Tied = &at, true
			y += 1.5 * p.Letter
		}
	}
}
