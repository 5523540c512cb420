package chart

import (
	"fmt"
	"math"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/plan"
)

// The plan's chart, in letters' heights: a row for each task, its bar as thick as its hands
// are many, and below them the hands wanted.
const (
	barMost    = 1.0
	barLeast   = 0.3
	wantsRoom  = 5.0
	headRoom   = 3.6
	footRoom   = wantsRoom + 2
	overRow    = 1.7  // how much higher a row is with its name over its bar
	narrow     = 38.0 // with less breadth the names stand over the bars
	namesShare = 0.42
	mostHands  = 8.0 // a bar of more is no thicker
	heavy      = 2.4 // the edge of a bar of the longest chain, CSS pixels
)

// windowNames say what a shaded part of the year is for.
var windowNames = map[plan.Window]string{plan.BarkPeels: "bark peels", plan.Warm: "gum runs"}

// DaySize is how large a chart of days is drawn, CSS pixels.
type DaySize struct {
	// Width is how broad it is, Letter how high its letters are.
	Width, Letter float64
	// Row is how high a row of it is, in letters' heights. Where that saves a part, or keeps a boat's
	// rows together, rows are lower, down to Least.
	Row, Least float64
	// First is how high its first part may be, Rest how high each of the others.
	First, Rest float64
}

// dayPlot is a part of the chart of days being drawn.
type dayPlot struct {
	o      *core.Outlook
	list   draw.List
	rows   []dayRow
	letter float64
	left   float64 // of the first day
	day    float64 // breadth of one
	top    float64
	row    float64
	over   bool // names stand over the bars
	today  int  // a day of the plan, or -1
}

// Days draws a plan day by day; today is marked where the plan reaches it. What is higher than the
// size allows is parted, each part with its own heading and scale of days.
func Days(o *core.Outlook, size DaySize) []draw.List {
	p := newDayPlot(o, size)
	parts := p.parted(dayGroups(o), size)
	out := make([]draw.List, len(parts))
	for i, part := range parts {
		q := *p
		q.rows = part
		q.list = draw.List{Width: size.Width, Height: q.bottom() + footRoom*q.letter, Title: "The work day by day"}
		if len(parts) > 1 {
			q.list.Title += fmt.Sprintf(", part %d of %d", i+1, len(parts))
		}
		if i == 0 {
			q.list.Description = daysWords(o)
		}
		q.draw()
		out[i] = q.list
	}
	return out
}

func newDayPlot(o *core.Outlook, size DaySize) *dayPlot {
	p := &dayPlot{o: o, letter: size.Letter, row: size.Row * size.Letter, top: headRoom * size.Letter,
		today: o.TodayAt()}
	p.over = size.Width < narrow*p.letter
	if p.over {
		p.row *= overRow
		p.top += 1.2 * p.letter
	} else {
		for i := range plan.Tasks {
			p.left = max(p.left, draw.Lettered(plan.Of(i).Name, p.letter, true)+p.letter)
		}
		p.left = min(p.left, namesShare*size.Width)
	}
	p.day = (size.Width - p.left - p.letter) / float64(o.Through())
	return p
}

// parted deals the rows out to as few parts as they take at any height of row that may be read, with as
// few groups broken; of the heights that do, the rows have the largest.
func (p *dayPlot) parted(groups [][]dayRow, size DaySize) [][]dayRow {
	const step = 0.02 // letters
	tries := math.Ceil((size.Row - size.Least) / step)
	around := p.top + footRoom*p.letter
	letters := p.row / size.Row
	rows := func(high, row float64) int { return max(0, int((high-around)/row)) }
	var best [][]dayRow
	for i := range int(tries) + 1 {
		row := max(size.Row-step*float64(i), size.Least) * letters
		parts := partRows(groups, rows(size.First, row), rows(size.Rest, row))
		if best == nil || len(parts) < len(best) || len(parts) == len(best) && count(parts) < count(best) {
			best, p.row = parts, row
		}
	}
	return best
}

func (p *dayPlot) draw() {
	days := p.o.Through()
	p.seasons(days)
	if p.over {
		p.text(0, 0.8*p.letter, draw.Start, "Heavy: the longest chain", true)
	} else {
		p.text(p.left-0.5*p.letter, p.top-0.6*p.letter, draw.End, "Heavy: the longest chain", true)
	}
	p.scale(days)
	for i, r := range p.rows {
		switch {
		case r.heading != "":
			p.heading(i, r.heading)
		case r.ticked:
			p.ticked(i, r.task)
		default:
			p.job(i, r.job)
		}
	}
	p.wants(days)
}

// daysWords say in words what the chart shows.
func daysWords(o *core.Outlook) string {
	after := ""
	if o.Through() > o.Days {
		after = " After the end, marked by a line, winter keeping."
	}
	return fmt.Sprintf("A row for each of %d tasks to do over %d days. The longest chain: %s.%s", len(o.Jobs), o.Days,
		answer.ChainWords(o), after)
}
