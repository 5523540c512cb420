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

// chartBroad is the chart's breadth on a sheet, CSS pixels.
const chartBroad = 718

// leastChart is how much of a page the chart's first part has at the least to begin on it.
const leastChart = 0.4

// askedPad is the air over and under a row of what the boat asks, mm.
const askedPad = 0.25

// PlanSheet is the plan of the work: how long it takes, what must be ready before the bark is laid,
// the hours, and its chart. For one boat that is a page, with its words in letters as small as the
// chart's if need be; the chart of several goes on over as many as its rows need.
func PlanSheet(j Job, o *core.Outlook) []draw.List {
	pages := planPages(j, o, smallLetter)
	for _, letter := range []float64{9 * point, leastLetter} {
		if fewer := planPages(j, o, letter); len(fewer) < len(pages) {
			return fewer
		}
	}
	return pages
}

func planPages(j Job, o *core.Outlook, letter float64) []draw.List {
	return j.pages("The work day by day", func(f fit) []strip {
		s := stageSheet{Job: j}
		s.flow = flow{fit: fit{letter: letter, pad: f.pad, figure: 1}, width: pageWidth}
		s.text(PlanWords(o))
		for _, r := range answer.PlanRemarks(o, j.System) {
			s.text(r.Text)
		}
		if o.State == plan.Made {
			s.text(readyWords(o, j))
			s.text(sumWords(o))
			s.chart(o)
		}
		return s.strips
	})
}

// PlanPart is the size of a part of the chart that has a page to itself.
func PlanPart() chart.DaySize { return chartSize(pageHeight, pageHeight) }

// chartSize is that of a chart of which the first part and the others may be so high, mm.
func chartSize(first, rest float64) chart.DaySize {
	return chart.DaySize{Width: chartBroad, Letter: leastLetter / millimetresPerPixel, Row: chart.PaperRow,
		Least: chart.LeastRow, First: first / millimetresPerPixel, Rest: rest / millimetresPerPixel}
}

// chart adds the chart of days, its first part in the room that is left of the page.
func (s *stageSheet) chart(o *core.Outlook) {
	const caption = "A heavy edge marks the longest chain; dotted: drying, settling, soaking."
	under := flow{fit: s.fit, width: s.width}
	under.small(caption)
	page := pageHeight - headHeight - length(under.strips)
	left := page - length(s.strips) - figureSpace
	if left < leastChart*page {
		left = 0
	}
	parts := chart.Days(o, chartSize(left, page))
	for i, part := range parts {
		words := caption
		if n := len(parts); n > 1 {
			words = fmt.Sprintf("Part %d of %d. %s", i+1, n, caption)
		}
		s.figure(Figure{words, part})
	}
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
				g := s.gridOf(t)
				g.reminders = answer.StillToBeware(o)
				s.grid(g)
			}
		}
		return s.strips
	})
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
		"together agree with published totals of 400 to 500 hours a boat, near half of it gathering.", answer.Tens(o.HoursLow),
		answer.Tens(o.HoursHigh), strings.Join(parts, ", "))
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
