package markup

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// Headline is the numbers that are always in sight, and the checks beside them.
func Headline(numbers []work.Shown, checks []answer.Warning, s units.System) string {
	var b strings.Builder
	for _, key := range answer.Headline() {
		for _, n := range numbers {
			if n.Key == key {
				b.WriteString(`<p class="figure"><span>` + draw.Escape(n.Short) + `</span> <output aria-live="off" data-result="` +
					key + `">` + draw.Escape(n.Text()) + `</output> <small data-change="` + key + `"></small></p>`)
			}
		}
	}
	head, _ := Checks(checks, s)
	b.WriteString(`<p class="checks" id="head-checks">` + head + `</p>`)
	return b.String()
}

// Results is the frame of every result, stage by stage. Numbers and tables are filled in afterwards.
func Results(c core.Canoe, s units.System) string {
	numbers := answer.All(c)
	var tables []answer.Table
	for _, key := range answer.TableKeys() {
		if t, ok := answer.MakeTable(c, key); ok {
			tables = append(tables, t)
		}
	}
	var b strings.Builder
	for i, st := range stage.All() {
		id := "at-" + string(st.Key)
		b.WriteString(`<section class="step" id="` + id + `" data-place="` + string(st.Key) + `"><h2>` + strconv.Itoa(i+1) + " " +
			draw.Escape(st.Name) + `</h2><p class="asked">` + draw.Escape(st.Asked) + "</p>" + toBench(st) + cautions(st) +
			`<div class="checks" data-checks="` + string(st.Key) + `"></div><div class="numbers">`)
		for _, n := range numbers {
			if n.Home == st.Key {
				b.WriteString(number(n, s))
			}
		}
		b.WriteString("</div>")
		if st.Key == stage.Pitch {
			b.WriteString(water(c, s))
		}
		for _, t := range tables {
			if t.Home == st.Key {
				b.WriteString(fold(t))
			}
		}
		b.WriteString(steps(st, s) + wordsFold(st) + "</section>")
	}
	return b.String()
}

// number is the frame of one result: what it is called, its value, its change, and its
// working folded away.
func number(n answer.Number, s units.System) string {
	return `<details class="number" data-number="` + n.Key + `"><summary><span data-label>` +
		draw.Escape(n.Label(s)) +
		`</span> <output aria-live="off" data-result="` + n.Key + `"></output> <small data-change="` + n.Key +
		`"></small></summary><div class="working"></div></details>`
}

// Working is how a result was worked out, how it is known and where the rule is written.
func Working(n answer.Number, s units.System) string {
	return "<p>" + draw.Escape(n.Working(s)) + `</p><p class="basis"><b>` + draw.Escape(string(n.Basis)) +
		"</b></p><p>Source: " +
		draw.Escape(n.Cited) + ".</p>" + leads(n.Key)
}

// leads are buttons that take in hand what moves a number most, and show its table.
func leads(number string) string {
	var b strings.Builder
	for _, key := range answer.MovedBy(number) {
		if p, ok := design.Lookup(key); ok {
			b.WriteString(`<button type="button" data-hold="` + key + `">` + draw.Escape(p.Label) + `</button>`)
		}
	}
	text := b.String()
	if text != "" {
		text = `<span>What moves it:</span>` + text
	}
	if table := answer.TableOf(number); table != "" {
		text += `<button type="button" data-table="` + table + `">Its table</button>`
	}
	if text == "" {
		return ""
	}
	return `<p class="leads">` + text + `</p>`
}

// states are the states' names in the style sheet.
var states = [...]string{answer.Within: "within", answer.Near: "near", answer.Beyond: "tight",
	answer.NotChecked: "unchecked"}

// StateName is a state's name in the style sheet.
func StateName(s answer.State) string { return states[s] }

// cure is the button of a setting that brings a check within guide.
func cure(c *answer.Cure, s units.System) string {
	if c == nil {
		return ""
	}
	return ` <button type="button" data-cure="` + c.Key + "=" + strconv.FormatFloat(c.Value, 'g', -1, 64) + `">` +
		draw.Escape(c.Says(s)) + "</button>"
}

// Checks are every check at its stage, and in one line those to stand beside the
// headline, the worst first: a narrow screen may show no more.
func Checks(checks []answer.Warning, s units.System) (head string, at map[stage.Key]string) {
	at = map[stage.Key]string{}
	var heads [len(states)]string
	for _, c := range checks {
		verdict := func(class string) string {
			return `<b class="` + class + `" data-warning="` + c.Key + `" data-state="` + states[c.State] + `">` +
				draw.Escape(c.Label+": "+c.Word) + `</b>`
		}
		table := ""
		if key := answer.TableOf(c.Key); key != "" {
			table = ` <button type="button" data-table="` + key + `">Its table</button>`
		}
		at[c.Home] += "<p>" + verdict("verdict") + " " + draw.Escape(c.Text(s)) + "." + cure(c.Cure, s) + table + "</p>"
		class := "verdict"
		if c.State == answer.Within {
			class = "verdict calm"
		}
		heads[c.State] += `<button type="button" data-check="` + c.Key + `">` + verdict(class) + "</button> "
	}
	return heads[answer.Beyond] + heads[answer.Near] + heads[answer.Within], at
}
