package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/wasm/bench"
)

// toBench is the button that opens a stage's lists line by line, where it has any.
func toBench(st *stage.Stage) string {
	if len(st.Bench) == 0 {
		return ""
	}
	var names []string
	for _, b := range st.Bench {
		names = append(names, b.Name)
	}
	return `<p class="row"><button type="button" class="to-bench" data-bench="open:` + string(st.Key) +
		`">At the bench <small>` + draw.Escape(strings.Join(names, ", ")) + `</small></button></p>`
}

// Bench is what the bench shows, by the ids of its places; tape is the reading being set,
// or nil.
func Bench(v bench.View, tape *bench.Tape) map[string]string {
	slots := map[string]string{"bench-list": "", "bench-at": draw.Escape(v.At), "bench-line": benchLine(v),
		"bench-beside": beside(v), "bench-all": allLines(v), "bench-tape": "", "bench-said": said(v.Said), "bench-done": "Done, next"}
	for _, name := range v.Lists {
		chosen := ""
		if name == v.List {
			chosen = " selected"
		}
		slots["bench-list"] += `<option` + chosen + `>` + draw.Escape(name) + "</option>"
	}
	if v.Line.Done {
		slots["bench-done"] = "Not done after all"
	}
	if tape != nil {
		slots["bench-tape"] = wheels(tape)
	}
	return slots
}

func benchLine(v bench.View) string {
	var b strings.Builder
	b.WriteString(`<h2>` + draw.Escape(v.Line.What) + `</h2><p class="size">`)
	for i, p := range v.Parts {
		if i > 0 {
			b.WriteByte(' ')
		}
		if p.Small {
			b.WriteString(`<small>` + draw.Escape(p.Text) + "</small>")
		} else {
			b.WriteString(`<span>` + draw.Escape(p.Text) + "</span>")
		}
	}
	b.WriteString(`</p><p class="from">` + draw.Escape(v.From) + "</p>")
	if v.Line.Done {
		b.WriteString(`<p class="ticked">` + box(true) + " done " + draw.Escape(v.Line.Day) + "</p>")
	}
	b.WriteString(`<ul class="also">`)
	for _, also := range v.Also {
		b.WriteString("<li>" + draw.Escape(unbroken(also)) + "</li>")
	}
	b.WriteString("</ul>")
	return b.String()
}

// box is a tick as a filled square, and as an empty one where nothing is ticked.
func box(done bool) string {
	if done {
		return "■"
	}
	return "□"
}

func beside(v bench.View) string {
	var words []string
	if v.Then != "" {
		words = append(words, "Then: "+v.Then+".")
	}
	if v.Before != "" {
		words = append(words, "Before: "+v.Before+".")
	}
	return draw.Escape(unbroken(strings.Join(words, " ")))
}

// unbroken is a text whose sizes are not broken at the end of a line.
func unbroken(text string) string {
	out := []byte(nil)
	for i := range len(text) {
		if text[i] == ' ' && i > 0 && i+1 < len(text) && strings.IndexByte("0123456789'", text[i-1]) >= 0 &&
			text[i+1] >= '0' && text[i+1] <= '9' {
			out = append(out, "\u00a0"...)
		} else {
			out = append(out, text[i])
		}
	}
	return string(out)
}

func allLines(v bench.View) string {
	var b strings.Builder
	for i, r := range v.Rows {
		here := ""
		if r.Here {
			here = ` aria-current="true"`
		}
		b.WriteString(`<li><button type="button" data-bench="to:` + strconv.Itoa(i) + `"` + here + `>` + box(r.Done) + " " +
			draw.Escape(r.What) + " <b>" + draw.Escape(r.Figure) + "</b>")
		if r.Done {
			b.WriteString(" <small>done " + draw.Escape(r.Day) + "</small>")
		}
		b.WriteString("</button></li>")
	}
	return b.String()
}

// wheels are the tape's wheels, each with a step down and up.
func wheels(t *bench.Tape) string {
	var b strings.Builder
	b.WriteString(`<p>What the tape reads</p><div class="wheels">`)
	turn := func(w bench.Wheel, by int, sign, word string) {
		b.WriteString(`<button type="button" data-bench="turn:` + strconv.Itoa(by) + `" aria-label="` + word + " " + w.Name +
			`">` + sign + "</button>")
	}
	for _, w := range t.Wheels() {
		b.WriteString(`<div role="group" aria-label="` + w.Name + `">`)
		turn(w, w.Turn, "+", "more")
		b.WriteString(`<output>` + w.Value + `</output>`)
		turn(w, -w.Turn, "−", "less")
		b.WriteString("<span>" + w.Name + "</span></div>")
	}
	b.WriteString(`</div><div class="row"><button type="button" data-bench="reset">As the line says</button>` +
		`<button type="button" data-bench="save">Save</button></div>`)
	return b.String()
}

// said is what came of a reading: what bringing the boat to it would change, and the offer.
func said(s bench.Said) string {
	if s.Text == "" {
		return ""
	}
	var b strings.Builder
	b.WriteString("<p>" + draw.Escape(s.Text) + "</p>")
	for _, l := range s.Lists {
		b.WriteString("<details><summary>" + draw.Escape(l.Text) + "</summary><ul>")
		for _, each := range l.Each {
			b.WriteString("<li>" + draw.Escape(each) + "</li>")
		}
		b.WriteString("</ul></details>")
	}
	if s.Offers {
		b.WriteString(`<div class="row"><button type="button" data-bench="bring">Bring the boat to it</button></div>`)
	}
	return b.String()
}
