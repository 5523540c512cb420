package sheet

import (
	"bufio"
	_ "embed" // for the style of the sheets
	"io"
	"slices"
	"strconv"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/pattern"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Job is what is to be printed of a boat, and for whom.
type Job struct {
	Canoe  core.Canoe
	System units.System
	Head   pattern.Head
	// Figures are the views for the summary.
	Figures []Figure
	// Sheets are the stages whose build sheets are printed, and Patterns the keys of the
	// kinds of pattern, in the order printed.
	Sheets   []stage.Key
	Patterns []string
	// Log is what is done of the work so far.
	Log tally.Log
	// Ribs are those whose sections are drawn, as in Options.
	Ribs []int
}

// Figure is a drawing as a whole SVG element, trusted as it stands.
type Figure struct{ Caption, SVG string }

//go:embed paper.css
var style string

// Print writes the whole job, sheets first, as HTML that carries its own style. It
// returns the writer's first error.
func Print(w io.Writer, j Job) error {
	b := bufio.NewWriter(w)
	b.WriteString("<style>\n" + style + "</style>\n<div class=\"sheets\">\n")
	if err := BuildSheets(b, j); err != nil {
		return err
	}
	var patterns []pattern.Pattern
	for _, key := range j.Patterns {
		patterns = append(patterns, pattern.Make(j.Canoe, key, pattern.Options{System: j.System, Ribs: j.Ribs})...)
	}
	if len(patterns) > 0 {
		if err := pattern.Print(b, patterns, j.Head); err != nil {
			return err
		}
	}
	b.WriteString("</div>\n")
	return b.Flush()
}

// BuildSheets writes the build sheets named in the job as HTML without their
// style. It returns the writer's first error.
func BuildSheets(w io.Writer, j Job) error {
	b := bufio.NewWriter(w)
	for _, key := range j.Sheets {
		if st, place, ok := stage.Lookup(key); ok {
			out := page{b, j, st}
			out.open(place)
			out.body()
			out.close()
		}
	}
	return b.Flush()
}

// page is the sheet of one stage being written. Its writer keeps its first error for Flush.
type page struct {
	*bufio.Writer
	Job
	*stage.Stage
}

// body writes what is at home at the stage.
func (s *page) body() {
	s.cautions()
	own := own[s.Key]
	if own.before != nil {
		own.before(s)
	}
	s.numbers(on(answer.All(s.Canoe), s.Key))
	s.checks(slices.DeleteFunc(answer.Checks(s.Canoe), func(w answer.Warning) bool {
		return s.Verdict != stage.WorstOfAll && w.Home != s.Key
	}))
	s.steps()
	s.tables(own.arrange)
	if own.after != nil {
		own.after(s)
	}
}

// open starts a sheet. It is a table whose head every page of the sheet repeats.
func (s *page) open(number int) {
	s.raw(`<table class="stage"><thead><tr><td><div class="head"><b>`)
	s.text(s.Head.Boat)
	s.raw("</b>")
	for _, part := range []string{codeLine(s.Head), s.Head.Date, s.System.Rounding()} {
		if part != "" {
			s.element("span", part)
		}
	}
	s.raw("</div></td></tr></thead><tbody><tr><td>")
	s.element("h2", strconv.Itoa(number)+". "+s.Name)
}

func (s *page) close() { s.raw("</td></tr></tbody></table>\n") }

func codeLine(h pattern.Head) string {
	if m := h.Mark(); m != "" {
		return "design code " + m + " (changes with any number), " + pattern.VersionLine
	}
	return pattern.VersionLine
}

func (s *page) raw(markup string) { s.WriteString(markup) }
func (s *page) text(text string)  { s.WriteString(draw.Escape(text)) }

func (s *page) element(tag, text string) {
	s.raw("<" + tag + ">")
	s.text(text)
	s.raw("</" + tag + ">")
}

// on are the results that a stage's sheet shows, in the order of the work.
func on(all []answer.Number, k stage.Key) []answer.Number {
	return slices.DeleteFunc(slices.Clone(all), func(n answer.Number) bool { return !n.On(k) })
}

// numbers writes results as label, value and how it is known, in two columns.
func (s *page) numbers(all []answer.Number) {
	s.raw(`<dl class="numbers">`)
	for _, n := range all {
		s.raw("<div><dt>")
		s.text(n.Label(s.System))
		if n.Basis != known.Computed {
			s.raw(" ")
			s.element("small", "("+string(n.Basis)+")")
		}
		s.raw("</dt>")
		s.element("dd", n.Text(s.System))
		s.raw("</div>")
	}
	s.raw("</dl>")
}

// checks writes checks, word first.
func (s *page) checks(all []answer.Warning) {
	if len(all) == 0 {
		return
	}
	s.raw(`<ul class="verdicts">`)
	for _, c := range all {
		s.raw("<li><b>")
		s.text(shapes[c.State] + " " + c.Label + ": " + c.Word)
		s.raw("</b>: ")
		s.text(c.Text(s.System))
		s.raw(".</li>")
	}
	s.raw("</ul>")
}

// shapes are the states' shapes on paper, beside their words.
var shapes = [...]string{answer.Within: "✓", answer.Near: "◐", answer.Beyond: "⬣", answer.NotChecked: "☐"}
