//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/sheet"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// firstHeel is the heel the section is drawn at first, degrees, and mostHeelShown
// the largest its slider gives.
const (
	firstHeel     = 10
	mostHeelShown = 60
)

// writeWater writes the frame of what comes when the slider rests: numbers, charts
// with their tables, and the heeled section.
func (p *page) writeWater(b *strings.Builder) {
	p.known().Need(pipeline.Water)
	w, _ := p.known().Water()
	b.WriteString(`<div class="numbers" id="water-numbers">`)
	for _, n := range answer.Water(p.work.Canoe(), w) {
		writeNumber(b, n, p.work.System)
	}
	b.WriteString("</div>")
	for _, t := range answer.CurveTables(w) {
		open := ""
		if t.Open {
			open = " open"
		}
		title := draw.Escape(t.Title)
		b.WriteString(`<details class="sheet" data-curve="` + t.Key + `"` + open + `><summary>` + title + `</summary><p class="help">` + draw.Escape(t.Note) +
			`</p><figure class="chart"></figure><details class="twin"><summary>` + title + `, in numbers</summary><div class="scroll" tabindex="0" role="region" aria-label="` + title + `"></div></details></details>`)
	}
	b.WriteString(`<details class="sheet" data-curve="heeled"><summary>Section heeled over</summary><p class="help">Seen from astern, heeled to starboard with the load fixed in the boat. The arm between the middle of all the weight and that of the water pushed aside is what brings her back.</p>` +
		`<label class="heel">Heel <input type="range" id="heel" min="0" max="` + strconv.Itoa(mostHeelShown) + `" step="1" value="` + strconv.Itoa(firstHeel) + `"> <output aria-live="off" for="heel" id="heel-shown"></output></label><figure class="chart"></figure></details>`)
}

func (p *page) listenWater() {
	p.heel = firstHeel * units.Degree
	p.on(p.id("heel"), "input", func(e js.Value) {
		p.heel = e.Get("target").Get("valueAsNumber").Float() * units.Degree
		p.showHeeled(p.document.Call("querySelector", `[data-curve="heeled"] figure`))
	})
	p.on(js.Global(), "resize", func(js.Value) { p.restSoon() })
	p.id("results").Call("addEventListener", "toggle", p.callback(func([]js.Value) {
		if w, ok := p.known().Water(); ok {
			p.showWorkings(answer.Water(p.work.Canoe(), w))
			p.showCurves()
		}
	}), true)
}

// waterLate says that the curves shown are those of the boat as she was last at rest.
func (p *page) waterLate() {
	if at := p.id("water-numbers"); !at.IsNull() && p.work.Canoe().Design != p.waterOf {
		at.Call("setAttribute", "aria-busy", "true")
	}
}

// showWater brings the numbers of the boat heeled and moving up to date; her curves
// are left to showCurves.
func (p *page) showWater() {
	now, before := p.work.Canoe(), p.work.Before()
	w, _ := p.known().Water()
	p.showThese(answer.Water(now, w), answer.Water(before, p.known().WaterBefore()))
	p.waterOf = now.Design
	p.id("water-numbers").Call("removeAttribute", "aria-busy")
}

// showCurves draws the charts and the section that are unfolded.
func (p *page) showCurves() {
	w, ok := p.known().Water()
	if !ok {
		return
	}
	tables := answer.CurveTables(w)
	charts := chart.Water(p.work.Canoe(), w, p.work.System)
	each(p.document, "[data-curve][open]", func(at js.Value) {
		figure := at.Call("querySelector", "figure")
		key := at.Get("dataset").Get("curve").String()
		if key == "heeled" {
			p.showHeeled(figure)
			return
		}
		for _, chart := range charts {
			if chart.Key == key {
				setHTML(figure, chartSVG(chart, chartWidth(figure)))
			}
		}
		for _, t := range tables {
			if t.Key != key {
				continue
			}
			if at.Call("querySelector", ".twin").Get("open").Bool() {
				var b strings.Builder
				if err := sheet.HTMLTable(&b, t, p.work.System); err != nil {
					panic("bridge: a strings.Builder does not fail")
				}
				setHTML(at.Call("querySelector", ".scroll"), b.String())
			}
		}
	})
}

// The breadth of a chart, CSS pixels: what the page has, between these.
const (
	leastChart = 280
	mostChart  = 640
)

func chartWidth(figure js.Value) float64 {
	return max(leastChart, min(mostChart, figure.Get("clientWidth").Float()))
}

func chartSVG(c chart.Chart, width float64) string {
	var b strings.Builder
	svg := draw.SVG{Palette: draw.Screen(), ID: "chart-" + c.Key}
	if err := svg.Write(&b, c.Draw(width)); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	return b.String()
}

// heeledShape is the height of the heeled section's picture to its breadth, and
// mostHeeled the most of that, CSS pixels.
const (
	heeledShape = 0.72
	mostHeeled  = 460
)

func (p *page) showHeeled(figure js.Value) {
	width := min(mostHeeled, chartWidth(figure))
	size := draw.Size{Width: width, Height: heeledShape * width, Letter: 16}
	var b strings.Builder
	svg := draw.SVG{Palette: draw.Screen(), ID: "heeled"}
	if err := svg.Write(&b, view.Heeled(p.work.Canoe(), p.heel, scene.View{Zoom: 1, System: p.work.System}, size)); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	setHTML(figure, b.String())
	setText(p.id("heel-shown"), units.Angle.Format(p.heel, p.work.System))
}
