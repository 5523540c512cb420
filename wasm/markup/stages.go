package markup

import (
	"slices"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// cautions are the one box of a stage: whom to ask first, and what can hurt someone.
func cautions(st *stage.Stage) string {
	var b strings.Builder
	b.WriteString(`<div class="cautions" role="note">`)
	line := func(h stage.Hazard) {
		b.WriteString(`<p class="caution" data-signal="` + string(h.Signal) + `"><b>` + string(h.Signal) + "</b> " +
			draw.Escape(h.Text) + "</p>")
	}
	if ask, ok := st.AskFirst(); ok {
		line(ask)
	}
	for _, h := range st.Cautions {
		line(h)
	}
	b.WriteString("</div>")
	return b.String()
}

// steps are what is done at a stage, in order, each with what it is done with and how it
// is known.
func steps(st *stage.Stage, s units.System) string {
	var b strings.Builder
	b.WriteString(`<details class="sheet" data-steps="` + string(st.Key) + `"><summary>Steps, ` +
		units.Count.Format(float64(len(st.Steps)), s) + `</summary><ol class="steps">`)
	for _, step := range st.Steps {
		b.WriteString(`<li><label class="choice"><input type="checkbox" data-tick="` + step.Key + `"><span data-said="` + step.Key +
			`">` + draw.Escape(step.Text(s)) + "</span></label>")
		var also []string
		if step.Tool != "" {
			also = append(also, "with "+step.Tool)
		}
		if from, _, ok := stage.Lookup(step.From); ok {
			also = append(also, "may be done beside "+from.Name)
		}
		if step.Hazard != "" {
			also = append(also, step.Hazard)
		}
		also = append(also, string(step.Basis)+pages(step))
		b.WriteString(` <small>` + draw.Escape(strings.Join(also, "; ")) +
			`</small> <b data-stands="` + step.Key + `"></b>`)
		if kind, ok := record.LookupKind(step.Reads); ok && kind.AsBuilt() {
			b.WriteString(` <button type="button" data-read="` + step.Reads + `">Write down what the tape reads</button>`)
		}
		b.WriteString("</li>")
	}
	b.WriteString("</ol>" + book(st) + `<div class="row"><input type="text" data-note="` + string(st.Key) +
		`" maxlength="500" aria-label="A note on ` +
		draw.Escape(st.Name) + `"><button type="button" data-jot="` + string(st.Key) +
		`">Note it down</button></div><ul class="noted" data-noted="` + string(st.Key) +
		`"></ul></details><p class="row"><button type="button" data-print="` + string(st.Key) +
		`">Print this stage</button>`)
	if len(st.Bench) > 0 {
		b.WriteString(` <button type="button" data-print="` + AsCards + string(st.Key) + `">Print its lists as cards</button>`)
	}
	b.WriteString("</p>")
	return b.String()
}

// AsCards begins what a button prints of a stage: its lists, as cards.
const AsCards = "cards:"

// book names the book whose pages the steps of a stage give.
func book(st *stage.Stage) string {
	if !slices.ContainsFunc(st.Steps, func(step stage.Step) bool { return step.Pages != "" }) {
		return ""
	}
	return `<p class="help">Pages are those of ` + draw.Escape(known.BarkCanoes) + ".</p>"
}

// pages are where in the book, or in what account, a step stands.
func pages(step stage.Step) string {
	if where := step.Pages + step.Account; where != "" {
		return ", " + where
	}
	return ""
}

// Noted are the notes of a stage with their days.
func Noted(notes []tally.Entry, dates tally.Dates) string {
	var b strings.Builder
	for _, e := range notes {
		b.WriteString("<li><b>" + draw.Escape(dates.Written(e.When)) + "</b> " + draw.Escape(e.Note) + "</li>")
	}
	return b.String()
}
