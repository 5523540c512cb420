package chart

import (
	"fmt"
	"strings"

	"barkwright/core"
	"barkwright/core/plan"
)

// How high a row of the plan's chart is, in letters' heights: on the screen and on
// paper, and the least there.
const (
	ScreenRow = 1.5
	PaperRow  = 1.22
	LeastRow  = 1.0 // as high as its letters
)

// dayRow is a row of the chart of days: a heading, a task that the log has ticked whole, or a job.
type dayRow struct {
	heading string
	ticked  bool
	task    plan.ID
	job     int
}

// dayGroups are the rows that belong together: what is done once for all boats, what is finished
// first, and then each boat's own under its heading.
func dayGroups(o *core.Outlook) [][]dayRow {
	groups := make([][]dayRow, 1+o.Season.Int(plan.Boats))
	for id := range plan.Tasks {
		if o.Done.Units[id] > 0 && o.Season.Left(o.Counts, o.Done, id) <= 0 {
			groups[0] = append(groups[0], dayRow{ticked: true, task: id})
		}
	}
	for i, j := range o.Jobs {
		n := 0
		if o.Season.BoatByBoat(j.Task) {
			n = 1 + j.Boat
			if groups[n] == nil {
				heading := fmt.Sprintf("Boat %d", n)
				if team := o.Season.Team(j.Task, j.Boat); team > 0 {
					heading += fmt.Sprintf(", team %d", team)
				}
				groups[n] = append(groups[n], dayRow{heading: heading})
			}
		}
		groups[n] = append(groups[n], dayRow{job: i})
	}
	var out [][]dayRow
	for n, g := range groups {
		if n == 0 && len(groups) > 2 && len(g) > 0 {
			g = append([]dayRow{{heading: "For all boats"}}, g...)
		}
		if len(g) > 0 {
			out = append(out, g)
		}
	}
	return out
}

// leastRows is how many rows a part has room for at the least: a heading and a few jobs.
const leastRows = 5

// partRows deals groups of rows out to parts: first rows in the first, rest in each of the others. Of
// as few parts as that takes, none is left with much less than the others.
func partRows(groups [][]dayRow, first, rest int) [][]dayRow {
	rest = max(rest, leastRows)
	parts := dealRows(groups, first, rest)
	for even := rest - 1; even >= leastRows; even-- {
		fewer := dealRows(groups, min(first, even), even)
		if len(fewer) > len(parts) || count(fewer) > count(parts) {
			break
		}
		parts = fewer
	}
	return parts
}

// count is how many rows there are in all: more where a heading stands again.
func count(parts [][]dayRow) int {
	n := 0
	for _, p := range parts {
		n += len(p)
	}
	return n
}

// dealRows fills one part after the other. A group that has no room goes to the next part, but
// is broken where more than half a part would stay empty or no part could hold it whole.
func dealRows(groups [][]dayRow, first, rest int) [][]dayRow {
	var out [][]dayRow
	var now []dayRow
	room := first
	turn := func() {
		if len(now) > 0 {
			out = append(out, now)
		}
		now, room = nil, rest
	}
	for _, g := range groups {
		for len(g) > 0 {
			left := room - len(now)
			switch whole := len(g) <= left; {
			case whole:
				now, g = append(now, g...), nil
			case left < leastRows || len(g) <= rest && 2*left <= room:
				turn()
			default:
				now = append(now, g[:left]...)
				g = continued(g, left)
				turn()
			}
		}
	}
	if len(now) > 0 {
		out = append(out, now)
	}
	return out
}

// onward follows a heading that stands again.
const onward = ", continued"

// continued is what is left of a group after its first n rows, under its heading again.
func continued(g []dayRow, n int) []dayRow {
	if g[0].heading == "" {
		return g[n:]
	}
	again := g[0]
	again.heading = strings.TrimSuffix(again.heading, onward) + onward
	return append([]dayRow{again}, g[n:]...)
}
