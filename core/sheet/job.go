package sheet

import (
	"bufio"
	_ "embed" // for the style of the sheets
	"io"
	"slices"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/pattern"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Job is what is to be printed of a boat, and for whom.
type Job struct {
	Canoe  core.Canoe
	System units.System
	Head   pattern.Head
	// Figures makes the drawings of a stage's sheet, with a share of the height that they
	// have where there is room for it, or is nil.
	Figures func(k stage.Key, share float64) []Figure
	// Sheets are the stages whose build sheets are printed, Cards those whose lists are as
	// cards, and Patterns the keys of the kinds of pattern, in the order printed.
	Sheets, Cards []stage.Key
	Patterns      []string
	// Log is what is done of the work so far.
	Log tally.Log
	// Dates is how its days are written.
	Dates tally.Dates
	// Season is what is set for the plan: the times that a repair's hours go by.
	Season plan.Season
	// Ribs are those whose sections are drawn, as in Options.
	Ribs []int
}

// Figure is a drawing in CSS pixels, at most as broad as a sheet, and what it shows.
type Figure struct {
	Caption string
	Drawing draw.List
}

//go:embed paper.css
var style string

// Counts are how many pages a job takes.
type Counts struct{ Sheets, Cards, Patterns int }

// Pages draws the whole job in millimetres, sheets first, then cards: a picture a page. It
// counts them too.
func Pages(j Job) ([]draw.List, Counts) {
	sheets, cards, patterns := BuildSheets(j), Cards(j), pattern.Pages(patterns(j), j.Head)
	return slices.Concat(sheets, cards, patterns), Counts{len(sheets), len(cards), len(patterns)}
}

// Count is how many pages a job takes, of which the patterns need not be drawn.
func Count(j Job) Counts {
	return Counts{len(BuildSheets(j)), len(Cards(j)), pattern.Count(patterns(j))}
}

func patterns(j Job) []pattern.Pattern {
	var out []pattern.Pattern
	for _, key := range j.Patterns {
		out = append(out, pattern.Make(j.Canoe, key, pattern.Options{System: j.System, Ribs: j.Ribs})...)
	}
	return out
}

// Print writes pages as HTML that carries its own style. It returns the writer's first
// error.
func Print(w io.Writer, pages []draw.List) error {
	b := bufio.NewWriter(w)
	b.WriteString("<style>\n" + style + "</style>\n<div class=\"sheets\">\n")
	for i, p := range pages {
		b.WriteString(`<section class="tile">`)
		svg := draw.SVG{Palette: draw.Print(), MillimetresPerUnit: 1, ID: "page-" + strconv.Itoa(i+1)}
		if err := svg.Write(b, p); err != nil {
			return err
		}
		b.WriteString("</section>\n")
	}
	b.WriteString("</div>\n")
	return b.Flush()
}

// BuildSheets draws the build sheets named in the job.
func BuildSheets(j Job) []draw.List {
	var out []draw.List
	for _, key := range j.Sheets {
		if st, place, ok := stage.Lookup(key); ok {
			out = append(out, buildSheet(j, st, place)...)
		}
	}
	return out
}

// pageWidth and pageHeight are the page's inside its margins, mm.
var pageWidth, pageHeight = pattern.Paper.Page()

// stageSheet is the sheet of one stage being made.
type stageSheet struct {
	flow
	Job
	*stage.Stage
}

// buildSheet draws the pages of one stage.
func buildSheet(j Job, st *stage.Stage, place int) []draw.List {
	s := stageSheet{Job: j, Stage: st}
	return j.pages(strconv.Itoa(place)+". "+st.Name, s.body)
}

// pages lays strips out on pages under a title.
func (j Job) pages(title string, body func(fit) []strip) []draw.List {
	on := arrange(body, pageHeight-headHeight)
	pages := make([]draw.List, len(on))
	for i, strips := range on {
		of := "page " + strconv.Itoa(i+1) + " of " + strconv.Itoa(len(on))
		p := newPaper(title + ", " + of)
		p.head(j, title, of)
		var words []string
		for _, st := range strips {
			st.draw(p, headHeight+st.top)
			if st.words != "" {
				words = append(words, st.words)
			}
		}
		p.Description = strings.Join(words, "\n")
		pages[i] = p.List
	}
	return pages
}

// body makes what is at home at the stage, set so tightly.
func (s stageSheet) body(f fit) []strip {
	s.flow = flow{fit: f, width: pageWidth}
	s.cautions()
	if s.Figures != nil {
		for _, g := range s.Figures(s.Key, f.figure) {
			s.figure(g)
		}
	}
	own := own[s.Key]
	if own.before != nil {
		own.before(&s)
	}
	all := answer.All(s.Canoe)
	numbers := on(all, s.Key)
	if own.first != nil {
		numbers = append(own.first(all), numbers...)
	}
	s.numbers(numbers)
	s.checks(slices.DeleteFunc(answer.Checks(s.Canoe), func(w answer.Warning) bool {
		return s.Verdict != stage.WorstOfAll && w.Home != s.Key
	}))
	s.steps()
	s.tables(own.arrange)
	if own.after != nil {
		own.after(&s)
	}
	return s.strips
}

// headHeight is the room of what stands at the head of every page, mm, and headLetter what
// its last line is lettered with.
const (
	headHeight = 19.5
	headLetter = 9 * point
)

// head writes what every page says: of which stage and boat it is, and where in the sheet
// it comes.
func (p *paper) head(j Job, title, of string) {
	const size, boat, gap = 15 * point, 11 * point, 4.0
	across := func(y float64, left string, size float64, bold bool, right string) {
		p.lines(0, y, []string{cut(left, size, bold, p.Width-draw.Lettered(right, boat, bold)-gap)}, size, bold, draw.Start)
		p.lines(p.Width, y, []string{right}, min(size, boat), bold, draw.End)
	}
	across(0, title, size, true, of)
	across(7, j.Head.Boat, boat, true, j.Head.Date)
	across(12.2, codeLine(j.Head), headLetter, false, j.System.Rounding())
	p.rule(ruleLine, 0, headHeight-3, p.Width, headHeight-3)
}

// cut is as much of a line as fits a breadth.
func cut(text string, size float64, bold bool, width float64) string {
	lines := draw.Wrapped(text, size, bold, width-draw.Lettered("…", size, bold))
	switch {
	case draw.Lettered(text, size, bold) <= width:
		return text
	case len(lines) == 0:
		return ""
	}
	return lines[0] + "…"
}

func codeLine(h pattern.Head) string {
	if m := h.Mark(); m != "" {
		return "design code " + m + ", " + pattern.VersionLine
	}
	return pattern.VersionLine
}
