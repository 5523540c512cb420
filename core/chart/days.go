package chart

import (
	"fmt"
	"math"
	"strconv"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/plan"
)

// How high a row of the plan's chart is, in letters' heights: on the screen and on
// paper, and the least there.
const (
	ScreenRow = 1.5
	PaperRow  = 1.22
	LeastRow  = 1.0 // as high as its letters
)

// The plan's chart, in letters' heights: a row for each task, its bar as thick as its hands
// are many, and below them the hands wanted.
const (
	barMost    = 1.0
	barLeast   = 0.3
	wantsRoom  = 5.0
	headRoom   = 3.6
	narrow     = 38.0 // with less breadth the names stand over the bars
	namesShare = 0.42
	mostHands  = 8.0 // a bar of more is no thicker
	heavy      = 2.4 // the edge of a bar of the longest chain, CSS pixels
)

// windowNames say what a shaded part of the year is for.
var windowNames = map[plan.Window]string{plan.BarkPeels: "bark peels", plan.Warm: "gum runs"}

// dayPlot is the chart of days being drawn.
type dayPlot struct {
	o      *core.Outlook
	list   draw.List
	letter float64
	left   float64 // of the first day
	day    float64 // breadth of one
	top    float64
	row    float64
	over   bool // names stand over the bars
	today  int  // a day of the plan, or -1
	// finished are the tasks that the log has ticked whole: they come first.
	finished []plan.ID
}

// Days draws a plan day by day, width CSS pixels broad and lettered at a size, each row so many
// letters high; today is marked where the plan reaches it.
func Days(o *core.Outlook, width, letter, row float64) draw.List {
	p := &dayPlot{o: o, letter: letter, row: row * letter, top: headRoom * letter, today: o.TodayAt()}
	for id := range plan.Tasks {
		if o.Done.Units[id] > 0 && o.Season.Left(o.Counts, o.Done, id) <= 0 {
			p.finished = append(p.finished, id)
		}
	}
	p.over = width < narrow*letter
	if p.over {
		p.row *= 1.7
		p.top += 1.2 * letter
	} else {
		for i := range plan.Tasks {
			p.left = max(p.left, draw.Lettered(plan.Of(i).Name, letter, true)+letter)
		}
		p.left = min(p.left, namesShare*width)
	}
	days := o.Through()
	p.day = (width - p.left - letter) / float64(days)
	p.list = draw.List{Width: width, Height: p.bottom() + wantsRoom*letter + 2*letter,
		Title: "The work day by day", Description: DaysWords(o)}
	p.seasons(days)
	if p.over {
		p.text(0, 0.8*letter, draw.Start, "Heavy: the longest chain", true)
	} else {
		p.text(p.left-0.5*letter, p.top-0.6*letter, draw.End, "Heavy: the longest chain", true)
	}
	p.scale(days)
	for i, id := range p.finished {
		p.ticked(i, id)
	}
	for i := range o.Jobs {
		p.job(i)
	}
	p.wants(days)
	return p.list
}

// DaysWords say in words what the chart shows.
func DaysWords(o *core.Outlook) string {
	after := ""
	if o.Through() > o.Days {
		after = " After the end, marked by a line, winter keeping."
	}
	return fmt.Sprintf("A row for each of %d tasks to do over %d days. The longest chain: %s.%s", len(o.Jobs), o.Days,
		answer.ChainWords(o), after)
}

func (p *dayPlot) x(day float64) float64 { return p.left + day*p.day }

func (p *dayPlot) text(x, y float64, anchor draw.Anchor, text string, bold bool) {
	p.list.Add(draw.Text{Role: draw.Ink, Halo: draw.Paper, Text: text, At: draw.Point{X: x, Y: y}, Anchor: anchor,
		Size: p.letter, Bold: bold})
}

func (p *dayPlot) line(r draw.Role, width float64, dash []float64, x1, y1, x2, y2 float64) {
	p.list.Add(draw.Stroke{Role: r, Width: width, Dash: dash, Points: []draw.Point{{X: x1, Y: y1}, {X: x2, Y: y2}}})
}

func (p *dayPlot) box(x1, y1, x2, y2 float64) []draw.Point {
	return []draw.Point{{X: x1, Y: y1}, {X: x2, Y: y1}, {X: x2, Y: y2}, {X: x1, Y: y2}}
}

// bottom is where the rows of tasks end.
func (p *dayPlot) bottom() float64 { return p.top + float64(len(p.finished)+len(p.o.Jobs))*p.row }

// seasons shades when bark peels and hatches when gum runs, each with its name at the top.
func (p *dayPlot) seasons(days int) {
	for n, w := range []plan.Window{plan.BarkPeels, plan.Warm} {
		for _, s := range p.o.Open(w) {
			from, to := p.x(float64(s[0])), p.x(math.Min(float64(s[1]+1), float64(days)))
			area := p.box(from, p.top, to, p.bottom())
			if w == plan.BarkPeels {
				p.list.Add(draw.Fill{Role: draw.Ground, Points: area})
			} else {
				p.list.Add(draw.Hatch{Role: draw.Faint, Points: area, Spacing: p.letter, Width: 0.4, Angle: math.Pi / 4})
			}
			p.name(from, p.top-(2.75-1.05*float64(n))*p.letter, windowNames[w], false)
		}
	}
}

// name writes a word that begins at x, or ends at the right edge where it would be cut there.
func (p *dayPlot) name(x, y float64, text string, bold bool) {
	p.text(min(x, p.list.Width-draw.Lettered(text, p.letter, bold)-1), y, draw.Start, text, bold)
}

// scale numbers the days or names their dates, over the tasks and under them.
func (p *dayPlot) scale(days int) {
	every := 1
	for _, n := range []int{1, 2, 7, 14, 28, 56, 112, 365} {
		if every = n; float64(n)*p.day > 4.6*p.letter {
			break
		}
	}
	low := p.bottom()
	for d := 0; d < days; d += every {
		p.line(draw.Faint, 0.5, nil, p.x(float64(d)), p.top, p.x(float64(d)), low)
		name := strconv.Itoa(d + 1)
		if p.o.Dated {
			name = p.o.Dates.Short(p.o.Date(d))
		}
		if x := p.x(float64(d)) + 0.15*p.letter; x+3*p.letter < p.list.Width {
			p.text(x, low+0.75*p.letter, draw.Start, name, false)
			// The word of today stands in the upper row.
			if p.today < 0 || math.Abs(p.x(float64(p.today))-x) > 4*p.letter {
				p.text(x, p.top-0.6*p.letter, draw.Start, name, false)
			}
		}
	}
	p.line(draw.Ink, 1, nil, p.left, low, p.x(float64(days)), low)
	if days > p.o.Days {
		p.line(draw.Ink, 1, nil, p.x(float64(p.o.Days)), p.top, p.x(float64(p.o.Days)), low)
	}
	if p.today >= 0 {
		x := p.x(float64(p.today) + 0.5)
		p.line(draw.Mark, 2, nil, x, p.top-0.2*p.letter, x, low)
		p.name(x, p.top-0.6*p.letter, "today", true)
	}
}

// ticked draws a task that is done: its name and a tick.
func (p *dayPlot) ticked(i int, id plan.ID) {
	mid := p.rowName(i, plan.Of(id).Name, "", false)
	x, l := p.left+0.4*p.letter, p.letter
	p.list.Add(draw.Stroke{Role: draw.Ink, Width: 2, Points: []draw.Point{{X: x, Y: mid}, {X: x + 0.25*l, Y: mid + 0.3*l},
		{X: x + 0.8*l, Y: mid - 0.4*l}}})
	p.text(x+1.1*l, mid, draw.Start, "done", false)
}

// rowName writes the name of a row and what follows it uncut, and returns the middle of its bar.
func (p *dayPlot) rowName(i int, name, tail string, bold bool) float64 {
	mid := p.top + (float64(i)+0.5)*p.row
	if p.over {
		p.text(0, mid-0.5*p.letter, draw.Start, name+tail, bold)
		return mid + 0.5*p.letter
	}
	p.text(p.left-0.5*p.letter, mid, draw.End, p.short(name, tail), bold)
	return mid
}

// job draws one task: its name, its bar on the days it is worked, its wait after it, and the
// word of the longest chain.
func (p *dayPlot) job(i int) {
	j := &p.o.Jobs[i]
	name := plan.Of(j.Task).Name
	if p.o.Season.BoatByBoat(j.Task) {
		name += ", " + strconv.Itoa(j.Boat+1)
	}
	tail := ""
	if done := p.o.Done.Units[j.Task]; done > 0 {
		tail = fmt.Sprintf(", %.0f %% done", 100*done/p.o.Season.Asked(p.o.Counts, j.Task))
	}
	mid := p.rowName(len(p.finished)+i, name, tail, j.OnChain)
	if from := p.x(float64(j.From)); !p.over && from > p.left {
		p.line(draw.Faint, 0.6, []float64{1, 4}, p.left, mid, from, mid)
	}
	for s := 0; s < len(j.Shifts); {
		e := s
		hands := p.hands(&j.Shifts[s])
		for e+1 < len(j.Shifts) && j.Shifts[e+1].Day == j.Shifts[e].Day+1 && p.hands(&j.Shifts[e+1]) == hands {
			e++
		}
		half := p.letter * (barLeast + (barMost-barLeast)*math.Min(1, float64(hands)/mostHands)) / 2
		area := p.box(p.x(float64(j.Shifts[s].Day)), mid-half, p.x(float64(j.Shifts[e].Day+1)), mid+half)
		p.list.Add(draw.Fill{Role: draw.Cedar, Points: area})
		edge := 0.8
		if j.OnChain {
			edge = heavy
		}
		p.list.Add(draw.Stroke{Role: draw.Ink, Width: edge, Points: area, Closed: true})
		s = e + 1
	}
	if d := p.o.WaitAfter(i); d > 0 {
		p.line(draw.Ink, 1.5, []float64{2, 3}, p.x(float64(j.To+1)), mid, p.x(float64(j.To+1)+d), mid)
	}
}

// hands are those at a task on a day.
func (p *dayPlot) hands(s *plan.Shift) int { return s.Practised + s.Others }

// short is a name with its tail, cut so that both are no longer than their column.
func (p *dayPlot) short(name, tail string) string {
	for r := []rune(name); len(r) > 1; r = r[:len(r)-1] {
		text := string(r)
		if len(r) < len([]rune(name)) {
			text += "…"
		}
		text += tail
		if draw.Lettered(text, p.letter, true) < p.left-0.7*p.letter {
			return text
		}
	}
	return name
}

// wants draws by day the hours of hands that could be used, and those there; the day short
// of most is named.
func (p *dayPlot) wants(days int) {
	base := p.list.Height - 0.6*p.letter
	room := (wantsRoom - 1.4) * p.letter
	wanted := p.o.Wanted()
	most := 1.0
	for d, w := range wanted {
		most = max(most, min(w, 3*p.o.There(0)), p.o.There(d))
	}
	y := func(v float64) float64 { return base - room*math.Min(1, v/most) }
	for d, w := range wanted {
		p.list.Add(draw.Fill{Role: draw.Cedar, Points: p.box(p.x(float64(d)), y(w), p.x(float64(d+1)), base)})
		there := y(p.o.There(d))
		p.line(draw.Ink, 1.5, nil, p.x(float64(d)), there, p.x(float64(d+1)), there)
	}
	p.line(draw.Ink, 1, nil, p.left, base, p.x(float64(days)), base)
	const label = "Hands wanted; the line: there"
	if p.over {
		p.text(0, base-room-0.9*p.letter, draw.Start, label, false)
	} else {
		p.text(p.left-0.5*p.letter, base-room/2, draw.End, p.short(label, ""), false)
	}
	if p.o.Short >= 0 {
		x := max(5, p.x(float64(p.o.Short)+0.5))
		p.list.Add(draw.Fill{Role: draw.Warn,
			Points: []draw.Point{{X: x, Y: base - 3}, {X: x - 5, Y: base + 5}, {X: x + 5, Y: base + 5}}})
		anchor := draw.Start
		if x > p.left+(p.list.Width-p.left)/2 {
			anchor = draw.End
		}
		p.text(x, base-0.8*p.letter, anchor, "most short", true)
	}
}
