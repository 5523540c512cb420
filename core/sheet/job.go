package sheet

import (
	"bufio"
	_ "embed" // for the style of the sheets
	"io"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/units"
)

// Job is what is to be printed of a boat, and for whom.
type Job struct {
	Canoe  core.Canoe
	System units.System
	Head   Head
	// Figures are the views for the summary.
	Figures []Figure
	// Sheets are the keys of the build sheets, and Patterns those of the kinds of
	// pattern, in the order printed.
	Sheets, Patterns []string
	// Ribs are those whose sections are drawn, as in Options.
	Ribs []int
}

// Figure is a drawing as a whole SVG element, trusted as it stands.
type Figure struct{ Caption, SVG string }

// Stage is one build sheet: a step of the work.
type Stage struct {
	Key, Title string
	write      func(*stage)
}

var stages = []Stage{
	{"summary", "The boat", summaryStage},
	{"bark", "Bark and trees", barkStage},
	{"bed", "Building frame and bed", bedStage},
	{"marks", "Gunwale marks", marksStage},
	{"root", "Lacing, seams and root", rootStage},
	{"ribs", "Ribs in fitting order", ribsStage},
	{"ends", "Stems, headboards, thwarts", endsStage},
	{"load", "Load and cautions", loadStage},
}

// Stages lists the build sheets in the order of the work.
func Stages() []Stage { return append([]Stage(nil), stages...) }

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
	var patterns []Pattern
	for _, key := range j.Patterns {
		patterns = append(patterns, Patterns(j.Canoe, key, Options{System: j.System, Ribs: j.Ribs})...)
	}
	if len(patterns) > 0 {
		if err := PrintPatterns(b, patterns, j.Head); err != nil {
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
		for i, s := range stages {
			if s.Key == key {
				out := stage{Writer: b, Job: j}
				out.open(i+1, s.Title)
				s.write(&out)
				out.close()
			}
		}
	}
	return b.Flush()
}

// stage is one sheet being written. Its writer keeps its first error for Flush.
type stage struct {
	*bufio.Writer
	Job
}

// open starts a sheet. It is a table whose head every page of the sheet repeats.
func (s *stage) open(number int, title string) {
	s.raw(`<table class="stage"><thead><tr><td><div class="head"><b>`)
	s.text(s.Head.Boat)
	s.raw("</b>")
	for _, part := range []string{codeLine(s.Head), s.Head.Date, rounding(s.System)} {
		if part != "" {
			s.element("span", part)
		}
	}
	s.raw("</div></td></tr></thead><tbody><tr><td>")
	s.element("h2", decimal(float64(number), 0)+". "+title)
}

func (s *stage) close() { s.raw("</td></tr></tbody></table>\n") }

func codeLine(h Head) string {
	if m := h.Mark(); m != "" {
		return "code " + m + ", " + versionLine
	}
	return versionLine
}

// rounding states the units and how the numbers were rounded.
func rounding(s units.System) string {
	return [...]string{
		units.Imperial16: "feet and inches, rounded to 1/16 in, estimates to 1/4 in",
		units.Imperial8:  "feet and inches, rounded to 1/8 in, estimates to 1/4 in",
		units.Metric:     "millimetres, rounded to 1 mm, estimates to 5 mm",
	}[s]
}

func (s *stage) raw(markup string) { s.WriteString(markup) }
func (s *stage) text(text string)  { s.WriteString(escape.Replace(text)) }

func (s *stage) element(tag, text string) {
	s.raw("<" + tag + ">")
	s.text(text)
	s.raw("</" + tag + ">")
}

// numbers writes results as label, value and how it is known, in two columns.
func (s *stage) numbers(keys ...string) {
	all := answer.All(s.Canoe)
	s.raw(`<dl class="numbers">`)
	for _, key := range keys {
		for _, n := range all {
			if n.Key != key {
				continue
			}
			s.raw("<div><dt>")
			s.text(n.Label(s.System))
			if n.Basis != answer.Computed {
				s.raw(" ")
				s.element("small", "("+string(n.Basis)+")")
			}
			s.raw("</dt>")
			s.element("dd", n.Text(s.System))
			s.raw("</div>")
		}
	}
	s.raw("</dl>")
}

// checks writes the checks of some steps of the work, word first.
func (s *stage) checks(groups ...answer.Group) {
	s.raw(`<ul class="verdicts">`)
	for _, c := range answer.Checks(s.Canoe) {
		for _, g := range groups {
			if c.Group == g {
				s.raw("<li><b>")
				s.text(shapes[c.State] + " " + c.Label + ": " + c.Word)
				s.raw("</b>: ")
				s.text(c.Text(s.System))
				s.raw(".</li>")
			}
		}
	}
	s.raw("</ul>")
}

// shapes are the states' shapes on paper, beside their words.
var shapes = [...]string{answer.Within: "✓", answer.Near: "◐", answer.Beyond: "⬣", answer.NotChecked: "☐"}
