package view

import (
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

import "barkwright/core"

// layout is where everything of TopAndSide stands.
type layout struct {
	top, side scene.Plate
	// tapeY is the line of the tape between the views.
	tapeY float64
	// dimensionY is the line of the length under the side view. It is 0 where there is none.
	dimensionY float64
	// titled tells whether there are rows for titles.
	titled bool
	// sections is the room for sections, empty where there is none.
	sections draw.Box
	// bed is how low the ground is drawn, metres.
	low float64
}

// reach is how far a boat goes from the views' origins, metres.
type reach struct{ long, wide, low, high float64 }

// heldShare is how much a boat may grow while a slider is held before the scale changes,
// as a share of its length. It is less than the margin round the views.
const heldShare = 0.006

// holding returns the boat to lay out b for, so that b is shown at the scale of a or,
// where b has outgrown it, at the scale that changes least.
func (a reach) holding(b reach) reach {
	slack := 2 * heldShare * a.long
	grown := func(from, to float64) float64 { return from + max(0, to-from-slack) }
	return reach{grown(a.long, b.long), grown(a.wide, b.wide), -grown(-a.low, -b.low), grown(a.high, b.high)}
}

// groundDepth is how much ground is drawn under the bed's ends, metres.
const groundDepth = 0.04

func reachOf(c core.Canoe, s scene.State) reach {
	d := c.Design
	r := reach{long: d.Length / 2, high: d.EndHeight + d.CapThickness}
	if s == scene.OnTheBed {
		r.long = scene.BedShown(c)
		r.wide = sheetReach(c.Hull) + 0.05
		r.low = bedTop(c, d.BedLength/2) - groundDepth
		return r
	}
	for i := range 5 {
		r.wide = max(r.wide, skinBreadth(c.Hull, d.HalfGunwale()*float64(i)/8))
	}
	r.wide += d.OutwaleThickness
	return r
}

// fit lays the picture out: both views as large as the cell lets them, and
// sections under or beside them in what is left.
func fit(c core.Canoe, v scene.View, size draw.Size) layout {
	r := reachOf(c, v.State)
	if v.Ghost != nil {
		r = reachOf(*v.Ghost, v.State).holding(r)
	}
	t := scene.Lettering(size)
	pad := 0.8 * t
	rows := roomy(t)
	least := tight(t)
	tall := 2*r.wide + r.high - r.low
	wideScale := (size.Width - 2*pad) / (2 * r.long)
	tallScale := func(w gaps) float64 { return (size.Height - 2*pad - w.sum()) / tall }
	if tallScale(rows) < 0.92*min(wideScale, tallScale(least)) && size.Height < 20*t {
		rows = least
	}
	k := max(1, min(wideScale, tallScale(rows)))
	used := 2*pad + rows.sum() + tall*k
	under := size.Height - used
	beside := size.Width - 2*pad - 2*r.long*k
	l := layout{titled: rows.title > 0, low: r.low}
	left, right := 0.0, size.Width
	y := pad
	switch {
	case under > 7*t:
		l.sections = draw.Box{Left: pad, Top: used - pad + t/2, Right: size.Width - pad, Bottom: size.Height - pad}
	case beside > 13*t:
		right = 2*r.long*k + 2*pad
		l.sections = draw.Box{Left: right + pad/2, Top: pad, Right: size.Width - pad, Bottom: size.Height - pad}
		y += under / 2
	default:
		// What is left is too little for a section, so the rows share it.
		share := under / 4
		rows.top += share
		rows.tape += share
		y += share
		if rows.dimension > 0 {
			rows.dimension += share
		}
	}
	x := (left + right) / 2
	y += rows.title + rows.top + r.wide*k
	l.top = scene.Plate{Origin: draw.Point{X: x, Y: y}, Scale: k}
	y += r.wide * k
	l.tapeY = y + rows.tape/2
	y += rows.tape + r.high*k
	l.side = scene.Plate{Origin: draw.Point{X: x, Y: y}, Scale: k}
	if rows.dimension > 0 {
		l.dimensionY = y - r.low*k + min(rows.dimension/2, t)
	}
	return l.zoomed(v, size)
}

// gaps are the heights of what stands between the views, CSS pixels.
type gaps struct{ title, top, tape, dimension float64 }

func (w gaps) sum() float64 { return w.title + w.top + w.tape + w.dimension }

func roomy(t float64) gaps {
	return gaps{title: 1.2 * t, top: 0.5 * t, tape: 2.8 * t, dimension: 1.9 * t}
}
func tight(t float64) gaps { return gaps{tape: 0.9 * t} }

// zoomed moves the layout to where the view's zoom and pan put it.
func (l layout) zoomed(v scene.View, size draw.Size) layout {
	v = v.Clamp(size)
	y := func(u float64) float64 { return size.Height/2 + (u-size.Height/2)*v.Zoom + v.PanY }
	x := func(u float64) float64 { return size.Width/2 + (u-size.Width/2)*v.Zoom + v.PanX }
	for _, a := range []*scene.Plate{&l.top, &l.side} {
		a.Origin = draw.Point{X: x(a.Origin.X), Y: y(a.Origin.Y)}
		a.Scale *= v.Zoom
	}
	l.tapeY = y(l.tapeY)
	if l.dimensionY > 0 {
		l.dimensionY = y(l.dimensionY)
	}
	if l.sections != (draw.Box{}) {
		l.sections = draw.Box{Left: x(l.sections.Left), Top: y(l.sections.Top), Right: x(l.sections.Right),
			Bottom: y(l.sections.Bottom)}
	}
	return l
}
