package markup

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/units"
)

// Headline is the frame of the numbers that are always in sight, and of the checks
// beside them.
func Headline(c core.Canoe) string {
	var b strings.Builder
	for _, n := range answer.Headlined(answer.All(c)) {
		b.WriteString(`<p class="figure"><span>` + draw.Escape(n.Short) + `</span> <output aria-live="off" data-result="` + n.Key +
			`"></output> <small data-change="` + n.Key + `"></small></p>`)
	}
	b.WriteString(`<p class="checks" id="head-checks"></p>`)
	return b.String()
}

// Results is the frame of every result, group by group, and the links that jump to
// them. Numbers and tables are filled in afterwards.
func Results(c core.Canoe, w core.Water, s units.System) (jump, body string) {
	numbers := answer.All(c)
	var tables []answer.Table
	for _, key := range answer.TableKeys() {
		if t, ok := answer.MakeTable(c, key); ok {
			tables = append(tables, t)
		}
	}
	var j, b strings.Builder
	for i, g := range answer.Groups() {
		id, name := "step-"+strconv.Itoa(i), draw.Escape(string(g))
		j.WriteString(`<a href="#` + id + `">` + name + `</a>`)
		b.WriteString(`<section class="step" id="` + id + `"><h2>` + name + `</h2><div class="checks" data-checks="` + name +
			`"></div><div class="numbers">`)
		for _, n := range numbers {
			if n.Home.Group() == g {
				b.WriteString(number(n, s))
			}
		}
		b.WriteString("</div>")
		if g == answer.OnTheWater {
			b.WriteString(water(c, w, s))
		}
		for _, t := range tables {
			if t.Home.Group() == g {
				b.WriteString(fold(t))
			}
		}
		b.WriteString("</section>")
	}
	j.WriteString(`<a href="#measured-boat">A measured boat</a><a href="#paper">Paper and files</a>`)
	return j.String(), b.String()
}

// number is the frame of one result: what it is called, its value, its change, and its
// working folded away.
func number(n answer.Number, s units.System) string {
	return `<details class="number" data-number="` + n.Key + `"><summary><span data-label>` + draw.Escape(n.Label(s)) +
		`</span> <output aria-live="off" data-result="` + n.Key + `"></output> <small data-change="` + n.Key +
		`"></small></summary><div class="working"></div></details>`
}

// Working is how a result was worked out, how it is known and where the rule is written.
func Working(n answer.Number, s units.System) string {
	return "<p>" + draw.Escape(n.Working(s)) + `</p><p class="basis"><b>` + draw.Escape(string(n.Basis)) + "</b></p><p>Source: " +
		draw.Escape(n.Cited) + ".</p>"
}

// states are the states' names in the style sheet.
var states = [...]string{answer.Within: "within", answer.Near: "near", answer.Beyond: "tight", answer.NotChecked: "unchecked"}

// Checks are every check in its group, and in one line those to stand beside the
// headline, the worst first: a narrow screen may show no more.
func Checks(checks []answer.Warning, s units.System) (head string, at map[answer.Group]string) {
	at = map[answer.Group]string{}
	var heads [len(states)]string
	for _, c := range checks {
		verdict := func(class string) string {
			return `<b class="` + class + `" data-warning="` + c.Key + `" data-state="` + states[c.State] + `">` +
				draw.Escape(c.Label+": "+c.Word) + `</b>`
		}
		at[c.Home.Group()] += "<p>" + verdict("verdict") + " " + draw.Escape(c.Text(s)) + ".</p>"
		class := "verdict"
		if c.State == answer.Within {
			class = "verdict calm"
		}
		heads[c.State] += verdict(class) + " "
	}
	return heads[answer.Beyond] + heads[answer.Near] + heads[answer.Within], at
}
