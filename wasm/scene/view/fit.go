package view

import (
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

import "barkwright/core"

// layout is where everything of TopAndSide stands.
type layout struct {
	top, side scene.Plate
	// hasTop and hasSide tell which views are drawn.
	hasTop, hasSide bool
	// tapeY is the line of the tape between the views.
	tapeY float64
	// dimensionY is the line of the length under the side view. It is 0 where there is none.
	dimensionY float64
	// chainY is the row of measures under the side view, spacingY that over the top view. They
	// are 0 where there is no room for one.
	chainY, spacingY float64
	// titled tells whether there are rows for titles.
	titled bool
	// sections is the room for sections, empty where there is none.
	sections draw.Box
	// wide is how far the drawing reaches from the centre line, metres.
	wide float64
}

// reach is how far a boat goes from the views' origins, metres.
type reach struct{ long, wide, low, high float64 }

// heldShare is how much a boat may grow while a slider is held before the scale changes,
// as a share of its length. It is less than the margin round the views.
const heldShare = 0.006

// holding returns the boat to lay out b for, so that b is shown at the scale of r or,
// where b has outgrown it, at the scale that changes least.
func (r reach) holding(b reach) reach {
	slack := 2 * heldShare * r.long
	grown := func(from, to float64) float64 { return from + max(0, to-from-slack) }
	return reach{grown(r.long, b.long), grown(r.wide, b.wide), -grown(-r.low, -b.low), grown(r.high, b.high)}
}

// with returns the reach of two boats together.
func (r reach) with(b reach) reach {
	return reach{max(r.long, b.long), max(r.wide, b.wide), min(r.low, b.low), max(r.high, b.high)}
}

// sectionsUnder and sectionsBeside are the least height and breadth that sections are drawn in,
// in letters.
const sectionsUnder, sectionsBeside = 7, 13

// oneScale is how much of its scale a drawing keeps at least for the sake of standing in one
// place on the bed and finished.
const oneScale = 0.9

// inBothStates returns the reach of a boat on the bed and finished, where laying out for both
// costs neither much of its scale, nor its sections: then it has one scale and place in both.
// Otherwise it returns its reach in its own state. ScaleOf returns the scale of a reach, and
// whether sections have room beside it.
func (r reach) inBothStates(c core.Canoe, own scene.State, scaleOf func(reach) (float64, bool)) reach {
	other := reachOf(c, scene.OnTheBed+scene.Finished-own)
	both := r.with(other)
	k, room := scaleOf(both)
	a, roomA := scaleOf(r)
	b, roomB := scaleOf(other)
	if k > oneScale*max(a, b) && (room || !roomA && !roomB) {
		return both
	}
	return r
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
	t := scene.Lettering(size)
	pad := 0.8 * t
	l := layout{hasTop: v.Only == scene.Both || v.Only == scene.TopOnly,
		hasSide: v.Only == scene.Both || v.Only == scene.SideOnly}
	if v.Only == scene.SectionsOnly {
		l.sections = draw.Box{Left: pad, Top: pad, Right: size.Width - pad, Bottom: size.Height - pad}
		return l.zoomed(v, size)
	}
	rows := roomy(t, v.Layer)
	least := tight(t)
	if !l.hasTop {
		rows.top = 0
	}
	if !l.hasSide {
		rows.dimension, rows.chain = 0.4*t, 0
	}
	from := c
	if v.Ghost != nil {
		from = *v.Ghost
	}
	r := reachOf(from, v.State)
	if v.Held != nil {
		r = r.with(reachOf(*v.Held, v.State))
	}
	if v.Only == scene.Both {
		r = r.inBothStates(from, v.State, func(r reach) (float64, bool) {
			tall := 2*r.wide + r.high - r.low
			k := min((size.Width-2*pad)/(2*r.long), (size.Height-2*pad-rows.sum())/tall)
			return k, size.Height-2*pad-rows.sum()-tall*k > sectionsUnder*t || size.Width-2*pad-2*r.long*k > sectionsBeside*t
		})
	}
	if v.Ghost != nil {
		now := reachOf(c, v.State)
		if v.Held != nil {
			now = now.with(reachOf(*v.Held, v.State))
		}
		r = r.holding(now)
	}
	l.wide = r.wide
	tall := 0.0
	if l.hasTop {
		tall += 2 * r.wide
	}
	if l.hasSide {
		tall += r.high - r.low
	}
	wideScale := (size.Width - 2*pad) / (2 * r.long)
	tallScale := func(w gaps) float64 { return (size.Height - 2*pad - w.sum()) / tall }
	// In a low cell rows of lettering give way to the boat: first those of measures.
	for _, fewer := range []struct {
		rows  gaps
		under float64 // the height of the cell, in letters
	}{{rows.plain(), 30}, {least, 20}} {
		if tallScale(rows) < 0.92*min(wideScale, tallScale(least)) && size.Height < fewer.under*t {
			rows = fewer.rows
		}
	}
	k := max(1, min(wideScale, tallScale(rows)))
	used := 2*pad + rows.sum() + tall*k
	under := size.Height - used
	beside := size.Width - 2*pad - 2*r.long*k
	l.titled = rows.title > 0
	left, right := 0.0, size.Width
	y := pad
	switch {
	case v.Only != scene.Both:
		y += under / 2
	case under > sectionsUnder*t:
		l.sections = draw.Box{Left: pad, Top: used - pad + t/2, Right: size.Width - pad, Bottom: size.Height - pad}
	case beside > sectionsBeside*t:
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
	if y += rows.title + rows.top; rows.spacing > 0 && l.hasTop {
		l.spacingY = y - 0.8*t
	}
	l.top = scene.Plate{Origin: draw.Point{X: x, Y: y}, Scale: k}
	if l.hasTop {
		l.top.Origin.Y += r.wide * k
		y += 2 * r.wide * k
	}
	l.tapeY = y + rows.tape/2
	y += rows.tape
	l.side = scene.Plate{Origin: draw.Point{X: x, Y: y}, Scale: k}
	if l.hasSide {
		y += r.high * k
		l.side.Origin.Y = y
		if rows.chain > 0 {
			l.chainY = y - r.low*k + 0.6*rows.chain
		}
		if rows.dimension > 0 {
			l.dimensionY = y - r.low*k + rows.chain + min(rows.dimension/2, t)
		}
	}
	return l.zoomed(v, size)
}

// gaps are the heights of what stands between the views, CSS pixels. Spacing is the part of
// top that a row of measures over the top view takes, chain that of a row under the side view.
type gaps struct{ title, top, tape, dimension, chain, spacing float64 }

func (w gaps) sum() float64 { return w.title + w.top + w.tape + w.dimension + w.chain }

// plain is without the rows of measures.
func (w gaps) plain() gaps {
	w.top -= w.spacing
	w.chain, w.spacing = 0, 0
	return w
}

func roomy(t float64, layer scene.Layer) gaps {
	w := gaps{title: 1.2 * t, top: 2 * t, tape: 2.8 * t, dimension: 1.9 * t, chain: 1.6 * t, spacing: 1.5 * t}
	if layer == scene.Measures {
		return w
	}
	w = w.plain()
	if layer == scene.Names {
		// Names stand round the views.
		w.top, w.tape, w.dimension = w.top+3*t, w.tape+3*t, w.dimension+2.5*t
	}
	return w
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
	for _, row := range []*float64{&l.dimensionY, &l.chainY, &l.spacingY} {
		if *row > 0 {
			*row = y(*row)
		}
	}
	if l.sections != (draw.Box{}) {
		l.sections = draw.Box{Left: x(l.sections.Left), Top: y(l.sections.Top), Right: x(l.sections.Right),
			Bottom: y(l.sections.Bottom)}
	}
	return l
}
