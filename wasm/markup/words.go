package markup

import (
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Said is all that is read at a stage apart from values: of its controls, numbers,
// tables and steps.
func Said(st *stage.Stage, c core.Canoe, w core.Water, s units.System) []string {
	said := []string{st.Name, st.Asked}
	for _, p := range design.Params() {
		if p.Home == st.Key {
			said = append(said, p.Label, p.Help)
		}
	}
	for _, n := range append(answer.All(c), answer.Water(c, w)...) {
		if n.Home == st.Key {
			said = append(said, n.Label(s))
		}
	}
	table := func(t answer.Table) {
		if t.Home != st.Key {
			return
		}
		said = append(said, t.Title, t.Note)
		for _, column := range t.Columns {
			said = append(said, column.Label)
		}
	}
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(c, key)
		table(t)
	}
	for _, t := range answer.CurveTables(w) {
		table(t)
	}
	for _, step := range st.Steps {
		said = append(said, step.Text(s), step.Tool)
	}
	return said
}

// wordsFold is the fold at a stage's end for the words of the trade met there. They are
// looked for in all that is said at the stage, so only once the fold is opened.
func wordsFold(st *stage.Stage) string {
	return `<details class="sheet" data-words="` + string(st.Key) +
		`"><summary>Words met here</summary><dl class="words"></dl></details>`
}

// WordsMet are the words of the trade met at a stage.
func WordsMet(st *stage.Stage, c core.Canoe, w core.Water, s units.System) string {
	return Words(stage.Met(Said(st, c, w, s)...), s)
}

// Words is a list of words of the trade with their senses; one whose sense has a size in
// it is marked, to be written again in other units.
func Words(words []stage.Word, s units.System) string {
	var b strings.Builder
	for _, w := range words {
		mark := ""
		if w.Sized() {
			mark = ` data-sense="` + draw.Escape(w.Term) + `"`
		}
		b.WriteString("<dt>" + draw.Escape(w.Term) + "</dt><dd" + mark + ">" + draw.Escape(w.Sense(s)) + "</dd>")
	}
	return b.String()
}
