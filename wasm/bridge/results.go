//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// output is where one result shows: its headline and its row.
type output struct {
	texts, changes []*slot
	values, bases  []*data
	working        js.Value // the fold with its working
	label          *slot
	change         string // last shown
}

func (o *output) add(at js.Value) {
	value, basis := dataOf(at, "value"), dataOf(at, "basis")
	o.texts, o.values, o.bases = append(o.texts, &slot{at: at}), append(o.values, &value), append(o.bases, &basis)
}

// buildHeadline writes the frame of the numbers that are always in sight.
func (p *page) buildHeadline() {
	var head strings.Builder
	for _, n := range answer.Headlined(answer.All(p.work.Canoe())) {
		head.WriteString(`<p class="figure"><span>` + draw.Escape(n.Short) + `</span> <output aria-live="off" data-result="` + n.Key + `"></output> <small data-change="` + n.Key + `"></small></p>`)
	}
	head.WriteString(`<p class="checks" id="head-checks"></p>`)
	p.id("headline").Set("innerHTML", head.String())
	p.findOutputs(p.id("headline"))
}

// buildResults writes the results' frame; numbers are filled in afterwards.
func (p *page) buildResults() {
	numbers := answer.All(p.work.Canoe())
	var tables []answer.Table
	for _, key := range answer.TableKeys() {
		if t, ok := answer.MakeTable(p.work.Canoe(), key); ok {
			tables = append(tables, t)
		}
	}
	var body strings.Builder
	var jump strings.Builder
	for i, g := range answer.Groups() {
		id := "step-" + strconv.Itoa(i)
		jump.WriteString(`<a href="#` + id + `">` + draw.Escape(string(g)) + `</a>`)
		body.WriteString(`<section class="step" id="` + id + `"><h2>` + draw.Escape(string(g)) + `</h2><div class="checks" data-checks="` + draw.Escape(string(g)) + `"></div><div class="numbers">`)
		for _, n := range numbers {
			if n.Home.Group() == g {
				writeNumber(&body, n, p.work.System)
			}
		}
		body.WriteString("</div>")
		if g == answer.OnTheWater {
			p.writeWater(&body)
		}
		for _, t := range tables {
			if t.Home.Group() == g {
				writeFold(&body, t)
			}
		}
		body.WriteString("</section>")
	}
	p.id("jump").Set("innerHTML", jump.String()+`<a href="#measured-boat">A measured boat</a><a href="#paper">Paper and files</a>`)
	p.id("tables").Set("innerHTML", body.String())
	p.findOutputs(p.id("tables"))
	each(p.id("tables"), "[data-checks]", func(e js.Value) {
		p.checksAt[answer.Group(e.Get("dataset").Get("checks").String())] = e
	})
	p.findFolds()
	p.listenResults()
	p.listenWater()
}

func writeNumber(b *strings.Builder, n answer.Number, s units.System) {
	b.WriteString(`<details class="number" data-number="` + n.Key + `"><summary><span data-label>` + draw.Escape(n.Label(s)) +
		`</span> <output aria-live="off" data-result="` + n.Key + `"></output> <small data-change="` + n.Key + `"></small></summary><div class="working"></div></details>`)
}

func writeFold(b *strings.Builder, t answer.Table) {
	open := ""
	if t.Open {
		open = " open"
	}
	title := draw.Escape(t.Title)
	b.WriteString(`<details class="sheet" data-fold="` + t.Key + `"` + open + `><summary>` + title + `</summary><p class="help">` + draw.Escape(t.Note) +
		`</p><div class="scroll" role="region" aria-label="` + title + `"></div></details>`)
}

// findOutputs takes hold of every place in an element where a result shows.
func (p *page) findOutputs(in js.Value) {
	at := func(key string) *output {
		if p.outputs[key] == nil {
			p.outputs[key] = &output{}
		}
		return p.outputs[key]
	}
	each(in, "[data-result]", func(v js.Value) { at(v.Get("dataset").Get("result").String()).add(v) })
	each(in, "[data-change]", func(v js.Value) {
		o := at(v.Get("dataset").Get("change").String())
		o.changes = append(o.changes, &slot{at: v, known: true})
	})
	each(in, "[data-number]", func(v js.Value) {
		o := at(v.Get("dataset").Get("number").String())
		o.working, o.label = v.Call("querySelector", ".working"), &slot{at: v.Call("querySelector", "[data-label]")}
	})
}

func (p *page) listenResults() {
	results := p.id("results")
	results.Call("addEventListener", "toggle", p.callback(func(args []js.Value) {
		if fold := args[0].Get("target"); fold.Get("dataset").Get("number").Truthy() {
			p.unfoldedWorkings[fold.Get("dataset").Get("number").String()] = fold.Get("open").Bool()
		}
		p.showWorkings(answer.All(p.work.Canoe()))
		p.showTables(true)
	}), true)
	p.on(results, "click", p.rowTouched)
	p.on(results, "focusin", p.rowTouched)
	p.on(results, "keydown", p.rowKey)
	p.on(results, "pointerover", func(e js.Value) {
		if e.Get("pointerType").String() == "mouse" {
			p.rowTouched(e)
		}
	})
}

// showNumbers writes every number that changed, and how it changed since the
// control in hand was taken up.
func (p *page) showNumbers() {
	now := answer.All(p.work.Canoe())
	if d := p.work.Before().Design; p.before == nil || d != p.beforeDesign {
		p.before, p.beforeDesign = answer.All(p.work.Before()), d
	}
	p.showThese(now, p.before)
}

// showThese writes numbers beside those they are compared with, key by key.
func (p *page) showThese(now, before []answer.Number) {
	s := p.work.System
	for i, n := range now {
		o := p.outputs[n.Key]
		if o == nil {
			continue // its place is not built yet
		}
		text, value := n.Text(s), strconv.FormatFloat(n.Value, 'g', 12, 64)
		if n.Absent || p.work.None {
			value = ""
		}
		if p.work.None {
			text = "–"
		}
		o.change = work.Change(before[i], n, s)
		if o.label != nil {
			o.label.set(n.Label(s))
		}
		for i := range o.texts {
			o.texts[i].set(text)
			o.values[i].put(value)
			o.bases[i].put(string(n.Basis))
		}
		for _, c := range o.changes {
			c.set(o.change)
		}
	}
	p.showWorkings(now)
}

// showWorkings fills the workings that are unfolded.
func (p *page) showWorkings(now []answer.Number) {
	for _, n := range now {
		if p.unfoldedWorkings[n.Key] {
			setHTML(p.outputs[n.Key].working, "<p>"+draw.Escape(n.Working(p.work.System))+`</p><p class="basis"><b>`+draw.Escape(string(n.Basis))+"</b></p><p>Source: "+draw.Escape(n.Cited)+".</p>")
		}
	}
}

// stateNames are the states' names in the style sheet.
var stateNames = [...]string{answer.Within: "within", answer.Near: "near", answer.Beyond: "tight", answer.NotChecked: "unchecked"}

// showChecks writes every check at its step of the work, and those that are not
// within guide beside the headline.
func (p *page) showChecks() {
	checks := answer.Checks(p.work.Canoe())
	if p.work.None {
		checks = nil
	}
	at := map[answer.Group]string{}
	var heads [len(stateNames)]string
	for _, c := range checks {
		word := `<b class="verdict" data-warning="` + c.Key + `" data-state="` + stateNames[c.State] + `">` + draw.Escape(c.Label+": "+c.Word) + `</b>`
		at[c.Home.Group()] += "<p>" + word + " " + draw.Escape(c.Text(p.work.System)) + ".</p>"
		if c.State == answer.Within {
			word = strings.Replace(word, `class="verdict"`, `class="verdict calm"`, 1)
		}
		heads[c.State] += word + " "
	}
	// The worst first: a narrow screen may show no more.
	setHTML(p.id("head-checks"), heads[answer.Beyond]+heads[answer.Near]+heads[answer.Within])
	for group, place := range p.checksAt {
		setHTML(place, at[group])
	}
}

// setHTML writes markup of the page's own where it differs from what it wrote last.
func setHTML(at js.Value, html string) {
	if last := at.Get("shownHTML"); last.Type() == js.TypeString && last.String() == html {
		return
	}
	at.Set("shownHTML", html)
	at.Set("innerHTML", html)
}
