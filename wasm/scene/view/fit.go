package view

import (
	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

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
	// wide is how far the boat reaches from the centre line in its own state, metres.
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

// roomFor is how much of its scale a drawing keeps at least to leave room for sections. By eye.
const roomFor = 0.8

// inAllStates is what a boat reaches on the bed or finished. Every state is laid out for it, so the
// boat has one scale and place: from one state to the next only that moves which the work moves.
func inAllStates(c core.Canoe) reach {
	r := reachOf(c, scene.OnTheBed).with(reachOf(c, scene.Finished))
	r.long = max(r.long, flatLonger*c.Design.Length/2)
	return r
}

// flatLonger is how much longer than the boat room is kept for its bark laid flat. Flattened boats of
// every sort are up to 1.07 times as long; what is over that lies in the margin.
const flatLonger = 1.055

func reachOf(c core.Canoe, s scene.State) reach {
	d := c.Design
	r := reach{long: d.Length / 2, high: d.EndHeight + d.CapThickness}
	if s == scene.OnTheBed {
		r.long = scene.BedShown(c)
		r.wide = sheetReach(c.Hull) + 0.05
		r.low = bedTop(c, d.BedLength/2) - scene.GroundDepth
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
	rows := roomy(t, v.Layer, size.Height < lowCell*t)
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
	r := inAllStates(from)
	if v.Held != nil {
		r = r.with(inAllStates(*v.Held))
	}
	if v.Ghost != nil {
		now := inAllStates(c)
		if v.Held != nil {
			now = now.with(inAllStates(*v.Held))
		}
		r = r.holding(now)
	}
	l.wide = reachOf(c, v.State).wide
	tall := 0.0
	if l.hasTop {
		tall += 2 * r.wide
	}
	if l.hasSide {
		tall += r.high - r.low
	}
	wideScale := (size.Width - 2*pad) / (2 * r.long)
	padY := func(w gaps) float64 {
		if w == least {
			return pad / 2
		}
		return pad
	}
	tallScale := func(w gaps) float64 { return (size.Height - 2*padY(w) - w.sum()) / tall }
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
	if v.Only == scene.Both {
		// A little smaller, the boat leaves room for sections under it or beside it.
		under := tallScale(rows) - (sectionsUnder*t+1)/tall
		beside := wideScale - (sectionsBeside*t+1)/(2*r.long)
		if less := max(under, beside); less > roomFor*k {
			k = min(k, less)
		}
	}
	edge := padY(rows)
	used := 2*edge + rows.sum() + tall*k
	under := size.Height - used
	beside := size.Width - 2*pad - 2*r.long*k
	l.titled = rows.title > 0
	left, right := 0.0, size.Width
	y := edge
	switch {
	case v.Only != scene.Both:
		y += under / 2
	case under > sectionsUnder*t:
		l.sections = draw.Box{Left: pad, Top: used - edge + t/2, Right: size.Width - pad, Bottom: size.Height - pad}
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
	y += rows.title + rows.top
	l.top = scene.Plate{Origin: draw.Point{X: x, Y: y}, Scale: k}
	if l.hasTop {
		l.top.Origin.Y += r.wide * k
		if rows.spacing > 0 {
			l.spacingY = l.top.Origin.Y - l.wide*k - 0.8*t
		}
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

// lowCell is the height under which names round the views get less room, in letters.
const lowCell = 30

func roomy(t float64, layer scene.Layer, low bool) gaps {
	w := gaps{title: 1.2 * t, top: 2 * t, tape: 2.8 * t, dimension: 1.9 * t, chain: 1.6 * t, spacing: 1.5 * t}
	if layer == scene.Measures {
		return w
	}
	w = w.plain()
	if layer == scene.Names {
		// Names stand round the views.
		more := 3 * t
		if low {
			more = 1.6 * t
		}
		w.top, w.tape, w.dimension = w.top+more, w.tape+more, w.dimension+max(2*t, more-t/2)
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
		l.sections = v.Zoomed(l.sections, size)
	}
	return l
}
