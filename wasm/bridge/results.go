//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/sheet"
	"barkwright/wasm/work"
)

// output is where one result shows: its headline and its row.
type output struct {
	values, changes []js.Value
	working         js.Value // the fold with its working
	text, change    *string  // last shown
}

func (o output) stale() { *o.text, *o.change = "\x00", "\x00" }

// escape makes text safe between tags and in quoted attributes.
var escape = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;")

// basisMarks are the filled marks beside a basis: decoration, the word says it.
var basisMarks = map[answer.Basis]string{answer.Computed: "●●●●", answer.Published: "●●●●", answer.CommonPractice: "●●●○", answer.Estimate: "●○○○"}

// buildResults writes the results' frame once; numbers are filled in afterwards.
func (p *page) buildResults() {
	numbers := answer.All(p.work.Canoe)
	var head, body strings.Builder
	for _, key := range answer.Headline() {
		for _, n := range numbers {
			if n.Key == key {
				head.WriteString(`<p class="figure"><span>` + escape.Replace(shortLabels[key]) + `</span> <output data-result="` + key + `" data-head></output> <small data-change="` + key + `"></small></p>`)
			}
		}
	}
	head.WriteString(`<p class="checks" id="head-checks"></p>`)
	p.id("headline").Set("innerHTML", head.String())
	for _, g := range answer.Groups() {
		body.WriteString(`<section class="step"><h2>` + escape.Replace(string(g)) + `</h2><div class="checks" data-checks="` + escape.Replace(string(g)) + `"></div><div class="numbers">`)
		for _, n := range numbers {
			if n.Group == g {
				body.WriteString(`<details class="number" data-number="` + n.Key + `"><summary><span>` + escape.Replace(n.Label) +
					`</span> <output data-result="` + n.Key + `"></output> <small data-change="` + n.Key + `"></small></summary><div class="working"></div></details>`)
			}
		}
		body.WriteString("</div>")
		for _, key := range answer.TableKeys() {
			if t, _ := answer.MakeTable(p.work.Canoe, key); t.Group == g {
				open := ""
				if openTables[key] {
					open = " open"
				}
				body.WriteString(`<details class="sheet" data-fold="` + key + `"` + open + `><summary>` + escape.Replace(t.Title) + `</summary><p class="help">` + escape.Replace(t.Note) + `</p><div class="scroll" tabindex="0" role="region" aria-label="` + escape.Replace(t.Title) + `"></div></details>`)
			}
		}
		body.WriteString("</section>")
	}
	p.id("tables").Set("innerHTML", body.String())
	p.outputs = map[string]output{}
	for _, n := range numbers {
		o := output{working: p.document.Call("querySelector", `[data-number="`+n.Key+`"] .working`), text: new(string), change: new(string)}
		o.stale()
		each(p.document, `[data-result="`+n.Key+`"]`, func(v js.Value) { o.values = append(o.values, v) })
		each(p.document, `[data-change="`+n.Key+`"]`, func(v js.Value) { o.changes = append(o.changes, v) })
		p.outputs[n.Key] = o
	}
	results := p.id("results")
	results.Call("addEventListener", "toggle", js.FuncOf(func(_ js.Value, args []js.Value) any {
		p.showWorkings(answer.All(p.work.Canoe))
		p.showOpenTables()
		return nil
	}), true)
	p.on(results, "click", p.rowTouched)
	p.on(results, "pointerover", func(e js.Value) {
		if e.Get("pointerType").String() == "mouse" {
			p.rowTouched(e)
		}
	})
}

// openTables are unfolded at first.
var openTables = map[string]bool{"ribs": true, "posts": true, "seams": true, "logs": true}

// shortLabels name the headline numbers.
var shortLabels = map[string]string{
	"ribs.count": "Ribs", "ribs.longest": "Longest rib", "sheer.end": "Sheer, ends", "gunwale.length": "Gunwale",
	"root.total": "Split root", "seams.total": "Seams", "bark.width": "Bark width", "stem.minRadius": "Stem bend",
}

// showNumbers writes every number that changed.
func (p *page) showNumbers(now, before []answer.Number) {
	s := p.work.System
	for i, n := range now {
		o := p.outputs[n.Key]
		text, change := n.Text(s), work.Change(before[i], n, s)
		if text != *o.text {
			for _, v := range o.values {
				v.Set("textContent", text)
			}
			*o.text = text
		}
		value := strconv.FormatFloat(n.Value, 'g', 12, 64)
		for _, v := range o.values {
			data := v.Get("dataset")
			data.Set("value", value)
			data.Set("basis", string(n.Basis))
		}
		if change != *o.change {
			for _, v := range o.changes {
				v.Set("textContent", change)
			}
			*o.change = change
		}
	}
	p.showWorkings(now)
}

// showWorkings fills the workings that are unfolded.
func (p *page) showWorkings(now []answer.Number) {
	for _, n := range now {
		at := p.outputs[n.Key].working
		if at.Get("parentNode").Get("open").Bool() {
			at.Set("innerHTML", "<p>"+escape.Replace(n.Working(p.work.System))+`</p><p class="basis"><b>`+escape.Replace(string(n.Basis))+`</b> <span aria-hidden="true">`+basisMarks[n.Basis]+"</span></p><p>Source: "+escape.Replace(n.Source)+".</p>")
		}
	}
}

// stateNames are the states' names in the style sheet.
var stateNames = [...]string{answer.Within: "within", answer.Near: "near", answer.Beyond: "tight", answer.NotChecked: "unchecked"}

// showChecks writes every check at its step of the work, and those that are not
// within guide beside the headline.
func (p *page) showChecks() {
	checks := answer.Checks(p.work.Canoe)
	at := map[answer.Group]string{}
	head := ""
	for _, c := range checks {
		word := `<b class="verdict" data-warning="` + c.Key + `" data-state="` + stateNames[c.State] + `">` + escape.Replace(c.Label+": "+c.Word) + `</b>`
		at[c.Group] += "<p>" + word + " " + escape.Replace(c.Text(p.work.System)) + ".</p>"
		if c.State == answer.Within {
			word = strings.Replace(word, `class="verdict"`, `class="verdict calm"`, 1)
		}
		head += word + " "
	}
	setHTML(p.id("head-checks"), head)
	each(p.document, "[data-checks]", func(e js.Value) {
		setHTML(e, at[answer.Group(e.Get("dataset").Get("checks").String())])
	})
}

// setHTML writes markup of the page's own where it differs from what it wrote last.
func setHTML(at js.Value, html string) {
	if last := at.Get("shownHTML"); last.Type() == js.TypeString && last.String() == html {
		return
	}
	at.Set("shownHTML", html)
	at.Set("innerHTML", html)
}

func (p *page) showOpenTables()   { p.showTables(true) }
func (p *page) showFoldedTables() { p.showTables(false) }

func (p *page) showTables(open bool) {
	each(p.document, "[data-fold]", func(fold js.Value) {
		if fold.Get("open").Bool() == open {
			p.showTable(fold)
		}
	})
}

func (p *page) showTable(fold js.Value) {
	t, ok := answer.MakeTable(p.work.Canoe, fold.Get("dataset").Get("fold").String())
	if !ok {
		return
	}
	var b strings.Builder
	if err := sheet.HTMLTable(&b, t, p.work.System); err != nil {
		panic("bridge: a strings.Builder does not fail")
	}
	setHTML(fold.Call("querySelector", ".scroll"), b.String())
	p.markRows()
}

// say tells those who listen what changed, once the control rests.
func (p *page) say() {
	if len(p.work.Faults) > 0 {
		setText(p.id("status"), "Not changed: "+p.work.Faults[0].Message(p.work.System))
		return
	}
	var said []string
	for _, key := range answer.Headline() {
		if o := p.outputs[key]; *o.change != "" {
			said = append(said, shortLabels[key]+" "+*o.text)
		}
	}
	setText(p.id("status"), strings.Join(said, ", "))
}
