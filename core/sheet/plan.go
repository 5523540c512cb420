package sheet

import (
	"fmt"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/plan"
	"barkwright/core/stage"
)

// The chart's breadth on a sheet and its letters, CSS pixels: eight points, or seven where
// there is much to say beside it.
const (
	chartBroad       = 718
	chartLetter      = 8 * 96 / 72.0
	leastChartLetter = 7 * 96 / 72.0
)

// askedPad is the air over and under a row of what the boat asks, mm.
const askedPad = 0.25

// PlanSheet is the plan of the work on one page: how long it takes, its chart, what must be
// ready before the bark is laid, and the hours.
func PlanSheet(j Job, o *core.Outlook) []draw.List {
	var pages []draw.List
	// Much to say leaves the chart's rows less room, and still one page of it.
	for _, letter := range []float64{chartLetter, leastChartLetter} {
		for _, row := range []float64{chart.PaperRow, 1.1, chart.LeastRow} {
			if pages = planPages(j, o, letter, row); len(pages) == 1 {
				return pages
			}
		}
	}
	return pages
}

func planPages(j Job, o *core.Outlook, letter, row float64) []draw.List {
	return j.pages("The work day by day", func(f fit) []strip {
		s := stageSheet{Job: j}
		s.flow = flow{fit: fit{letter: smallLetter, pad: f.pad, figure: 1}, width: pageWidth}
		s.text(PlanWords(o))
		for _, r := range answer.PlanRemarks(o, j.System) {
			s.small(r.Text)
		}
		if o.State == plan.Made {
			s.figure(Figure{"A heavy edge marks the longest chain; dotted: drying, settling, soaking.",
				chart.Days(o, chartBroad, letter, row)})
			s.small(readyWords(o, j))
			s.small(sumWords(o))
		}
		return s.strips
	})
}

// DaySheets are the list of each day, for as many pages as it takes.
func DaySheets(j Job, o *core.Outlook) []draw.List {
	return j.pages("What is done on each day", func(f fit) []strip {
		s := stageSheet{Job: j}
		s.flow = flow{fit: f, width: pageWidth}
		if st, _, ok := stage.Lookup(stage.Gather); ok {
			s.Stage = st
			s.cautions()
		}
		for _, t := range answer.PlanTables(o, j.System) {
			if t.Key == "plan.days" {
				s.table(everyDay(t))
			}
		}
		return s.strips
	})
}

// everyDay names the day in each of its rows: a page may begin with any.
func everyDay(t answer.Table) answer.Table {
	for i := 1; i < len(t.Rows); i++ {
		if t.Rows[i].Cells[0].Text == answer.Dash {
			t.Rows[i].Cells[0] = t.Rows[i-1].Cells[0]
		}
	}
	return t
}

// PlanWords say how long it takes, the range first.
func PlanWords(o *core.Outlook) string {
	if o.State != plan.Made {
		return "There is no plan."
	}
	days := fmt.Sprintf("Likely %d to %d days", o.Low, o.High)
	if o.Low == o.High {
		days = fmt.Sprintf("Likely %d days", o.Days)
	}
	when := ""
	if o.Dated {
		when = fmt.Sprintf(", from %s to about %s", o.Say(o.First), o.Say(o.Date(o.Days-1)))
	}
	boats := ""
	if n := o.Season.Int(plan.Boats); n > 1 {
		boats = fmt.Sprintf(" for %d boats", n)
	}
	if n := o.Season.Int(plan.Teams); n > 1 {
		boats += fmt.Sprintf(" in %d teams", n)
	}
	return fmt.Sprintf("%s%s, %d to %d of them worked%s: %s, %d days a week, %d hours a day.", days, boats, o.WorkLow,
		o.WorkHigh, when, plan.Hands(o.Season.Int(plan.Practised), o.Season.Int(plan.Learners)),
		o.Season.Int(plan.DaysAWeek), o.Season.Int(plan.Hours))
}

func readyWords(o *core.Outlook, j Job) string {
	for _, t := range answer.PlanTables(o, j.System) {
		if t.Key != "plan.ready" {
			continue
		}
		var words []string
		for _, r := range t.Rows {
			words = append(words, strings.ToLower(r.Cells[0].Text)+" ("+r.Cells[2].Text+")")
		}
		return "Ready before the bark is laid: " + strings.Join(words, "; ") + "."
	}
	return ""
}

// sumWords are the hours by part, and how they are known.
func sumWords(o *core.Outlook) string {
	var parts []string
	for p := range plan.Parts {
		parts = append(parts, fmt.Sprintf("%s %.0f", p, o.Sums.Of(p)))
	}
	return fmt.Sprintf("Hours of practised hands, about %.0f to %.0f: %s. Estimates: the times of each task are set so that all "+
		"together agree with published totals of 400 to 500 hours, near half of it gathering.", o.HoursLow, o.HoursHigh,
		strings.Join(parts, ", "))
}

// AsksSheet is what the boat asks of whoever builds it, before anything is cut.
func AsksSheet(j Job, o *core.Outlook) []draw.List {
	return j.pages("What this boat asks of you", func(f fit) []strip {
		s := stageSheet{Job: j}
		// It goes on one page whatever air there is.
		s.flow = flow{fit: fit{letter: smallLetter, pad: min(f.pad, askedPad), figure: 1}, width: pageWidth}
		if st, _, ok := stage.Lookup(stage.Gather); ok {
			s.Stage = st
			s.cautions()
		}
		t := answer.AsksTable(j.Canoe, o, j.System)
		t.Title, t.Note = "", "" // the head of the page says what it is
		s.small("Before anything is cut.")
		s.table(t)
		return s.strips
	})
}
