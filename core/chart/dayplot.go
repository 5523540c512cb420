package chart

import (
	"fmt"
	"math"
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/plan"
)

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
func (p *dayPlot) bottom() float64 { return p.top + float64(len(p.rows))*p.row }

// seasons shades when bark peels and hatches when gum runs, each with its name at the top.
func (p *dayPlot) seasons(days int) {
	for n, w := range []plan.Window{plan.BarkPeels, plan.Warm} {
		for _, s := range p.o.Open(w) {
			from, to := p.x(float64(s[0])), p.x(math.Min(float64(s[1]+1), float64(days)))
			area := p.box(from, p.top, to, p.bottom())
			if w == plan.BarkPeels {
				p.list.Add(draw.Fill{Role: draw.Ground, Points: area})
			} else {
				p.list.Add(draw.Hatch{Role: draw.Faint, Points: area, Spacing: p.letter, Width: 0.4,
					Angle: math.Pi / 4})
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
	p.list.Add(draw.Stroke{Role: draw.Ink, Width: 2,
		Points: []draw.Point{{X: x, Y: mid}, {X: x + 0.25*l, Y: mid + 0.3*l}, {X: x + 0.8*l, Y: mid - 0.4*l}}})
	p.text(x+1.1*l, mid, draw.Start, "done", false)
}

// heading names what the rows under it are of.
func (p *dayPlot) heading(i int, text string) {
	y := p.top + float64(i)*p.row
	p.line(draw.Ink, 0.6, nil, p.left, y, p.list.Width, y)
	p.text(0, y+0.5*p.row, draw.Start, text, true)
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

// job draws job i of the plan in a row: its name, its bar on the days it is worked and its wait
// after it.
func (p *dayPlot) job(row, i int) {
	j := &p.o.Jobs[i]
	tail := ""
	if done := p.o.Done.Units[j.Task]; done > 0 {
		tail = fmt.Sprintf(", %.0f %% done", 100*done/p.o.Season.Asked(p.o.Counts, j.Task))
	}
	mid := p.rowName(row, plan.Of(j.Task).Name, tail, j.OnChain)
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
	const label = "Hands wanted; the line: hands there"
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
		p.text(x, base-0.8*p.letter, anchor, "short of hands", true)
	}
}
