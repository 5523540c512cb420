//go:build js

package bridge

import (
	"strings"
	"syscall/js"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// listenPaper fills the lists of what can be printed and handed over, and answers
// their buttons.
func (p *page) listenPaper() {
	var sheets, patterns, drawings, tables strings.Builder
	for _, s := range stage.All() {
		sheets.WriteString(markup.Choice("sheet", string(s.Key), s.Name, true))
	}
	for _, k := range pattern.Kinds() {
		patterns.WriteString(markup.Choice("pattern", k.Key, k.Label, false))
		drawings.WriteString(markup.Option(k.Key, k.Label))
	}
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(p.work.Canoe(), key)
		tables.WriteString(markup.Option(key, t.Title))
	}
	p.id("paper-sheets").Call("insertAdjacentHTML", "beforeend", sheets.String())
	p.id("paper-patterns").Call("insertAdjacentHTML", "beforeend", patterns.String())
	p.document.Call("querySelector", `input[name=pattern][value=sections]`).Call("closest", "label").Call("after", p.id("section-choice"))
	p.id("drawing").Set("innerHTML", drawings.String())
	p.id("table").Set("innerHTML", tables.String())
	form := p.id("paper-form")
	p.on(form, "submit", func(e js.Value) { e.Call("preventDefault") })
	p.on(form, "click", func(e js.Value) {
		if b := e.Get("target").Call("closest", "button[data-paper]"); !b.IsNull() {
			p.paper(b.Get("dataset").Get("paper").String())
		}
	})
	p.on(p.id("measured"), "keydown", func(e js.Value) {
		if e.Get("key").String() == "Enter" {
			p.checkScale()
		}
	})
	p.on(p.id("section-ribs"), "change", func(js.Value) { p.readRibs() })
	p.on(js.Global(), "afterprint", func(js.Value) { p.clearPaper() })
}

func (p *page) paper(what string) {
	if p.work.None && (what == "print" || what == "svg" || what == "roll" || what == "csv") {
		p.paperSays("This boat could not be built so far: there is nothing of it to print or to hand over.")
		return
	}
	switch what {
	case "all", "none":
		each(p.id("paper-form"), "input[type=checkbox]", func(c js.Value) { c.Set("checked", what == "all") })
	case "print":
		p.printChosen()
	case "check":
		p.checkScale()
	case "svg":
		p.handOverSVG()
	case "roll":
		p.printRoll()
	case "csv":
		p.handOverCSV()
	}
}

// readRibs reads which ribs' sections are wanted and says at the field which are
// drawn; what cannot be read is named there, and what was last read stays.
func (p *page) readRibs() {
	field, f := p.id("section-ribs"), p.work.Canoe().Frame
	ribs, err := pattern.ReadRibs(field.Get("value").String(), f.Ribs)
	fault := ""
	if err != nil {
		fault = err.Error()
	} else {
		p.ribs = ribs
	}
	field.Call("setAttribute", "aria-invalid", err != nil)
	setText(p.id("section-ribs-fault"), fault)
	setText(p.id("section-ribs-echo"), "Drawn: "+pattern.SectionRibs(f, p.ribs)+".")
}

func (p *page) paperSays(text string) {
	setText(p.id("paper-says"), text)
	p.paperFor = p.work.Canoe().Design
}

// showPaper brings what is said under the paper's buttons to the boat in hand: what was
// said of another goes, and a print is measured against this one.
func (p *page) showPaper() {
	p.readRibs()
	if p.paperFor != p.work.Canoe().Design {
		p.paperSays("")
	}
	if p.id("measured-says").Get("textContent").String() != "" {
		p.checkScale()
	}
}

// laidFlat is the canoe with its bark laid flat for the figures.
func (p *page) laidFlat() core.Canoe {
	p.known().Need(pipeline.Figures)
	return p.work.Canoe()
}

func (p *page) paperHead() pattern.Head {
	d := p.work.Canoe().Design
	// A design that has been worked out has only finite numbers: its line is there.
	line, _ := design.Line(d)
	date := js.Global().Get("Date").New().Call("toLocaleDateString", "en", map[string]any{"day": "numeric", "month": "long", "year": "numeric"})
	return pattern.Head{Boat: d.Name, Code: line, Date: date.String()}
}

func (p *page) chosen(name string) (keys []string) {
	each(p.id("paper-form"), `input[name="`+name+`"]:checked`, func(c js.Value) { keys = append(keys, c.Get("value").String()) })
	return keys
}

func (p *page) printChosen() {
	c := p.laidFlat()
	j := sheet.Job{Canoe: c, System: p.work.System, Head: p.paperHead(), Figures: p.figures(c), Patterns: p.chosen("pattern"), Ribs: p.ribs}
	for _, key := range p.chosen("sheet") {
		j.Sheets = append(j.Sheets, stage.Key(key))
	}
	if len(j.Sheets)+len(j.Patterns) == 0 {
		p.paperSays("Nothing is chosen to print.")
		return
	}
	p.toPrinter(func(b *strings.Builder) error { return sheet.Print(b, j) })
}

func (p *page) printRoll() {
	pattern := p.drawing()
	if len(pattern.Lines) == 0 {
		return
	}
	p.toPrinter(func(b *strings.Builder) error { return sheet.PrintRoll(b, pattern, p.paperHead()) })
}

// toPrinter fills what is printed in place of the page and asks for the printer.
func (p *page) toPrinter(write func(*strings.Builder) error) {
	var b strings.Builder
	if err := write(&b); err != nil {
		p.paperSays(err.Error())
		return
	}
	p.paperSays("")
	p.id("print").Set("innerHTML", b.String())
	p.root().Get("dataset").Set("paper", "true")
	js.Global().Call("print")
}

func (p *page) clearPaper() {
	p.root().Get("dataset").Delete("paper")
	p.id("print").Set("innerHTML", "")
}

// figureSize is the room of a view on a sheet, CSS pixels: the sheet's breadth, and
// the twelve points of its lettering.
var figureSize = draw.Size{Width: 718, Height: 330, Letter: 16}

// figures are both views, black on white.
func (p *page) figures(c core.Canoe) []sheet.Figure {
	var out []sheet.Figure
	for _, state := range []scene.State{scene.OnTheBed, scene.Finished} {
		v := scene.View{State: state, Zoom: 1, System: p.work.System, Load: p.view.Load}
		var b strings.Builder
		svg := draw.SVG{Palette: draw.Print(), ID: "paper-" + strings.ReplaceAll(state.String(), " ", "-")}
		if err := svg.Write(&b, view.TopAndSide(c, v, figureSize)); err != nil {
			panic("bridge: a strings.Builder does not fail")
		}
		out = append(out, sheet.Figure{Caption: "Top and side view, " + state.String() + ".", SVG: b.String()})
	}
	return out
}

// drawing is the pattern chosen to be handed over, empty where the boat has none.
func (p *page) drawing() pattern.Pattern {
	pattern := pattern.Stack(pattern.Make(p.laidFlat(), p.id("drawing").Get("value").String(), pattern.Options{System: p.work.System, Ribs: p.ribs}))
	if len(pattern.Lines) == 0 {
		p.paperSays("This boat has none: there is nothing to draw.")
	}
	return pattern
}

func (p *page) handOverSVG() {
	pattern := p.drawing()
	var b strings.Builder
	if len(pattern.Lines) == 0 {
		return
	}
	if err := pattern.SVG(&b, p.paperHead()); err != nil {
		p.paperSays(err.Error())
		return
	}
	p.download(sheet.FileName(p.work.Canoe().Design.Name, p.id("drawing").Get("value").String(), "svg"), "image/svg+xml", b.String())
	p.paperSays("Handed over as a file: one unit is one millimetre.")
}

func (p *page) handOverCSV() {
	key := p.id("table").Get("value").String()
	t, ok := answer.MakeTable(p.laidFlat(), key)
	if !ok {
		return
	}
	var b strings.Builder
	if err := sheet.CSV(&b, p.work.Canoe().Design.Name, t, p.work.System); err != nil {
		p.paperSays(err.Error())
		return
	}
	p.download(sheet.FileName(p.work.Canoe().Design.Name, key, "csv"), "text/csv;charset=utf-8", b.String())
	p.paperSays("Handed over as a file.")
}

// checkScale answers what a printed bar measured.
func (p *page) checkScale() {
	bar := pattern.ScaleBars[p.id("bar").Get("selectedIndex").Int()]
	says := p.id("measured-says")
	// A bare number is in the unit that the bar is named in.
	system := []units.System{units.Metric, units.Imperial16}[p.id("bar").Get("selectedIndex").Int()]
	v, _, err := units.SmallLength.Parse(p.id("measured").Get("value").String(), system)
	if err != nil {
		setText(says, err.Error())
		return
	}
	longest := p.work.Canoe().Frame.Gunwales.Run
	setText(says, pattern.CheckScale(bar, v, longest).Text("the story stick", longest, p.work.System))
}
