package markup

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// FirstHeel is the heel that the section is drawn at first, degrees, and mostHeel the
// largest that its slider gives.
const (
	FirstHeel = 10
	mostHeel  = 60
)

// HeeledKey names the heeled section among the curves on the water.
const HeeledKey = "heeled"

// water is the frame of what is worked out when the slider rests: numbers, charts with
// their tables, and the heeled section.
func water(c core.Canoe, s units.System) string {
	var w core.Water // what the frame says of it is the same of any boat
	var b strings.Builder
	b.WriteString(`<div class="numbers" id="water-numbers">`)
	for _, n := range answer.Water(c, w) {
		b.WriteString(number(n, s))
	}
	b.WriteString("</div>")
	for _, t := range answer.CurveTables(w) {
		title := draw.Escape(t.Title)
		b.WriteString(`<details class="sheet" data-curve="` + t.Key + `"` + opened(t) + `><summary>` + title +
			`</summary><p class="help">` +
			draw.Escape(t.Note) + `</p><figure class="chart"></figure><details class="twin"><summary>` + title +
			`, in numbers</summary>` +
			scrolled(t) + `</div></details></details>`)
	}
	b.WriteString(`<details class="sheet" data-curve="` + HeeledKey + `"><summary>Section leaning over</summary>` +
		`<p class="help">Seen from astern, leaning to starboard with the load fixed in the boat. The arm between the middle of all the ` +
		`weight and that of the water pushed aside is what brings it back.</p>` +
		`<label class="heel">Lean <input type="range" id="heel" min="0" max="` + strconv.Itoa(mostHeel) +
		`" step="1" value="` +
		strconv.Itoa(FirstHeel) +
		`"> <output aria-live="off" for="heel" id="heel-shown"></output></label><figure class="chart"></figure></details>`)
	return b.String()
}

// The width of a chart, CSS pixels: what the page has, between these.
const (
	leastChart = 280
	mostChart  = 640
)

// Curves are the curves of a boat on the water, to be drawn one by one.
type Curves struct {
	charts []chart.Chart
	tables []answer.Table
	system units.System
}

// CurvesOf are those of a canoe and what is known of it on the water.
func CurvesOf(c core.Canoe, w core.Water, s units.System) Curves {
	return Curves{chart.Water(c, w, s), answer.CurveTables(w), s}
}

// Figure is a curve in a figure so many CSS pixels wide; empty where none has the key.
func (c Curves) Figure(key string, width float64, p draw.Palette) string {
	for _, chart := range c.charts {
		if chart.Key == key {
			return SVG("chart-"+key, p, chart.Draw(max(leastChart, min(mostChart, width))))
		}
	}
	return ""
}

// Table is a curve in numbers; empty where none has the key.
func (c Curves) Table(key string) string {
	for _, t := range c.tables {
		if t.Key == key {
			return Table(t, c.system)
		}
	}
	return ""
}

// heeledShape is the height of the heeled section's picture to its width, and
// mostHeeled the most of that, CSS pixels.
const (
	heeledShape = 0.72
	mostHeeled  = 460
)

// Heeled is the section heeled over, in a figure so many CSS pixels wide, with that of the boat held,
// nil for none; heel in rad.
func Heeled(c core.Canoe, held *core.Canoe, heel, width float64, s units.System, p draw.Palette) string {
	width = min(mostHeeled, max(leastChart, width))
	size := draw.Size{Width: width, Height: heeledShape * width, Letter: 16}
	return SVG(HeeledKey, p, view.Heeled(c, heel, scene.View{Zoom: 1, System: s, Held: held}, size))
}

// SVG is a picture as SVG; its ID must stand once on the page.
func SVG(id string, p draw.Palette, l draw.List) string {
	var b strings.Builder
	if err := (draw.SVG{Palette: p, ID: id}).Write(&b, l); err != nil {
		panic("markup: a strings.Builder does not fail")
	}
	return b.String()
}
