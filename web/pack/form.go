package main

import (
	"fmt"
	"html"
	"slices"
	"strings"

	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// form is the form's HTML, stage by stage: one control for every row of the table of
// parameters, those in sight first and the others in folds.
func form() string {
	home := map[stage.Key][]design.Param{}
	for _, p := range design.Params() {
		if p.Paddler == 0 {
			home[p.Home] = append(home[p.Home], p)
		}
	}
	var b strings.Builder
	for i, s := range stage.All() {
		fmt.Fprintf(&b, "<section class=\"group\" data-place=\"%s\" aria-label=\"%s\"%s><h2>%d %s</h2>\n", standsAt(s.Key),
			html.EscapeString(s.Name), unopened(s.Key), i+1, html.EscapeString(s.Name))
		if s.Key == stage.Choose {
			fmt.Fprintf(&b, boatsName, html.EscapeString(opened().Entered.Name))
		}
		keys := make([]string, len(home[s.Key]))
		for i, p := range home[s.Key] {
			keys[i] = p.Key
		}
		writeControls(&b, s.InSight)
		switch s.Key {
		case stage.Gather:
			b.WriteString(onHand)
		case stage.Pitch:
			writePaddler(&b)
		}
		for _, f := range s.Folded(keys) {
			fmt.Fprintf(&b, "<details class=\"fold\"><summary>%s</summary>\n", html.EscapeString(f.Title))
			writeControls(&b, f.Keys)
			b.WriteString("</details>\n")
		}
		if s.Key == stage.Choose {
			b.WriteString(notes)
		}
		writeChips(&b, s)
		b.WriteString("</section>\n")
	}
	return b.String()
}

// standsAt is where a stage's controls stand. A comparison and a lesson begin with the
// dimensions of the boat, so these stand there too.
func standsAt(k stage.Key) string {
	if k == stage.Choose {
		return string(k) + " compare lessons"
	}
	return string(k)
}

// writeChips shows what a stage needs from others; a press takes it in hand.
func writeChips(b *strings.Builder, s *stage.Stage) {
	if len(s.Chips) == 0 {
		return
	}
	b.WriteString("<div class=\"chips\" role=\"group\" aria-label=\"Set at other stages\">\n")
	for _, key := range s.Chips {
		p, _ := design.Lookup(key)
		fmt.Fprintf(b, "<button type=\"button\" data-hold=\"%s\">%s <b data-chip=\"%s\">%s</b></button>\n", key,
			html.EscapeString(p.Label), key, html.EscapeString(opened().Reads(p)))
	}
	b.WriteString("</div>\n")
}

func writeControls(b *strings.Builder, keys []string) {
	for _, key := range keys {
		if p, ok := design.Lookup(key); ok {
			writeControl(b, p)
		}
	}
}

// writePaddler folds away what may differ from paddler to paddler. It is written for
// the first; the page's program repeats it for the others.
func writePaddler(b *strings.Builder) {
	b.WriteString("<details class=\"paddler\" data-paddler=\"1\"><summary>Paddler 1</summary>\n")
	for _, p := range design.Params() {
		if p.Paddler == 1 {
			writeControl(b, p)
		}
	}
	b.WriteString("</details>\n")
}

// boatsName and notes are the two parameters that are not numbers.
const boatsName = `<div class="control wide" data-control="name"><label for="name">Name of the boat</label>
<input type="text" id="name" name="name" maxlength="80" value="%s" aria-describedby="name-help name-fault">
<p class="help" id="name-help">It stands on every page of paper and names the files.</p><p class="fault" id="name-fault"></p></div>
`

const notes = `<div class="control wide" data-control="notes"><label for="notes">Notes</label>
<textarea id="notes" name="notes" rows="2" maxlength="2000" aria-describedby="notes-help notes-fault"></textarea>
<p class="help" id="notes-help">Your own words: kept with the boat, in its file and on its first build sheet.</p>
<p class="fault" id="notes-fault"></p></div>
`

// onHand is the list of sheets; the page's program writes its rows.
const onHand = `<fieldset id="onhand"><legend>Bark on hand</legend>
<p class="help" id="onhand-help">The sheets there are, each measured. The results say which lies where, what is missing,
and the longest boat of this shape they make. If you list none, the sheet size above is used.</p>
<table hidden><thead><tr><th scope="col">Sheet</th>
<th scope="col">Width, round the tree</th><th scope="col">Length, up the tree</th><td></td></tr></thead></table>
<button type="button" id="add-sheet">Add a sheet</button></fieldset>
`

func writeControl(b *strings.Builder, p design.Param) {
	key, label, gone := html.EscapeString(p.Key), html.EscapeString(p.Label), ""
	// The opening boat has no part that it is of.
	if i := slices.Index(design.ThwartKeys(), p.Key); i >= opened().Entered.OuterThwarts() {
		gone = " hidden"
	}
	help := ""
	if p.Help != "" {
		help = fmt.Sprintf(`<p class="help" id="%s-help">%s</p>`, key, html.EscapeString(p.Help))
	}
	if p.Options != nil {
		fmt.Fprintf(b, `<div class="control wide" data-control="%[1]s"><label for="%[1]s">%[2]s</label>
<select id="%[1]s" name="%[1]s" aria-describedby="%[1]s-fault">`, key, label)
		for i, o := range p.Options {
			fmt.Fprintf(b, `<option value="%d">%s</option>`, i, html.EscapeString(o))
		}
		fmt.Fprintf(b, "</select>%s<p class=\"fault\" id=\"%s-fault\"></p></div>\n", help, key)
		return
	}
	one, d := design.SliderUnit(p, units.Imperial16), design.Default() // as the page opens
	fmt.Fprintf(b, `<div class="control" data-control="%[1]s"%[9]s>
<label for="%[1]s">%[2]s</label>
<input type="text" class="typed" data-typed="%[1]s" value="%[8]s" inputmode="text" aria-label="%[2]s, typed"
aria-describedby="%[1]s-echo %[1]s-fault">
<button type="button" class="reset" data-reset="%[1]s" aria-label="%[2]s, back to its default">↺</button>
<button type="button" data-step="-1" aria-label="%[2]s, one step less">−</button>
<input type="range" class="slide" id="%[1]s" name="%[1]s" min="%[3]s" max="%[4]s" step="%[5]s" value="%[6]s">
<button type="button" data-step="1" aria-label="%[2]s, one step more">+</button>
<output aria-live="off" class="echo" id="%[1]s-echo" for="%[1]s"></output><p class="fault" id="%[1]s-fault"></p>%[7]s
</div>
`, key, label, plain(p.Min/one), plain(p.Max/one), plain(p.StepInch/one), plain(p.Get(&d)/one), help,
		html.EscapeString(p.Format(p.Get(&d), units.Imperial16)), gone)
}

// plain writes a number for an attribute, rounded where only its last bits differ.
func plain(v float64) string { return units.Trimmed(v, 6) }
