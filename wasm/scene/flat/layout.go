package flat

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
)

// flatLayout is where the sheet and its legend stand.
type flatLayout struct {
	sheet scene.Plate
	// rows tells whether there is room for the legend, and titled for a title.
	rows, titled bool
	// tiers is the number of rows in which the gores' widths stand over a small picture.
	// Gores closer together than a label is long then still have their labels.
	tiers int
	// legendY is the legend's first row, and legendLow how far down the legend may reach.
	legendY, legendLow float64
	// kinds tells whether there is a row for the kinds of lines under the legend.
	kinds   bool
	lengthY float64
	// runY is the row of the gores' distances along the gunwale, 0 where there is none.
	runY float64
}

// panelGap is how far a side panel is drawn off the sheet, in metres, so that the two
// can be told apart.
const panelGap = 0.05

// flatReach is how far the drawing goes out from the bed's centre line.
func flatReach(c core.Canoe, f *bark.Flat) float64 {
	r := f.Breadth/2 + c.Design.GunwaleTurn
	if len(f.Panels) > 0 {
		r += panelGap
	}
	for _, s := range sheetsLaid(c) {
		r = max(r, s.Width/2)
	}
	return r
}

func (p *pen) flatLayout(c core.Canoe) flatLayout {
	f, t := p.View.Flat, p.Letter
	width, height := p.List.Width, p.List.Height
	pad := 0.8 * t
	half, wide := f.Length/2+c.Design.GunwaleTurn, flatReach(c, f)
	if held := p.View.Held; held != nil && held.Skin != nil {
		half = max(half, held.Skin.Flat.Length/2+held.Design.GunwaleTurn)
		wide = max(wide, flatReach(*held, &held.Skin.Flat))
	}
	l := flatLayout{rows: height > 14*t, titled: height > 20*t, tiers: 2}
	above, under, run, length, legend := 0.6*t, 0.6*t, 0.0, 0.0, 0.0
	names := p.View.Layer == scene.Names
	l.kinds, l.legendLow = names && l.titled, height
	switch {
	case names && l.titled:
		// Names stand round the sheet.
		above, under, legend = 5.6*t, 8.6*t, 4.4*t
		l.legendLow -= 1.6 * t
	case names && l.rows:
		above, under, legend = 4.2*t, 4.4*t, 3*t
	case height > 30*t && width > 50*t:
		l.tiers = 3
		above, under, run, length, legend = 3*t, 8.2*t, 1.9*t, 4.7*t, 6.5*t
	case l.titled:
		l.tiers = 3
		above, under, length, legend = 3*t, 6*t, 2.3*t, 4.2*t
	case l.rows:
		above, under, length, legend = 3*t, 3.8*t, 1.2*t, 2.8*t
	}
	k := max(1, min((width-2*pad)/(2*half), (height-above-under)/(2*wide)))
	middle := above + (height-above-under)/2
	v := p.View.Clamp(draw.Size{Width: width, Height: height})
	x := func(u float64) float64 { return width/2 + (u-width/2)*v.Zoom + v.PanX }
	y := func(u float64) float64 { return height/2 + (u-height/2)*v.Zoom + v.PanY }
	l.sheet = scene.Plate{Origin: draw.Point{X: x(width / 2), Y: y(middle)}, Scale: k * v.Zoom}
	l.lengthY = y(middle+wide*k) + length
	if run > 0 {
		l.runY = y(middle+wide*k) + run
	}
	// The legend stays in its corner at every zoom.
	l.legendY = min(l.legendLow-1.2*t, middle+wide*k+legend)
	return l
}
