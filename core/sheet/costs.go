package sheet

import (
	"sort"

	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/weigh"
)

// Costs is what differs between a boat held and the one in hand.
type Costs struct {
	// Against is the name of the boat held, and Boats both of them.
	Against string
	Boats   Figure
	// Controls are what was set otherwise, Rows what differs, Most the places of the largest.
	Controls []weigh.Control
	Rows     []weigh.Row
	Most     []int
	// From says what brought a row's change about.
	From func(weigh.Row) string
}

// costsPad is the air over and under a row of what it costs, mm.
const costsPad = 0.25

// CostsSheet is what differs on one page: what was set, the largest, and the others by stage.
// Where there are too many the least are left out, and it says how many.
func CostsSheet(j Job, c Costs) []draw.List {
	pages := func(rows int, letter float64) []draw.List {
		return j.pages("What it costs", func(fit) []strip { return j.costs(c, rows, letter) })
	}
	if all := pages(len(c.Rows), cardLetter); len(all) == 1 {
		return all
	}
	// The most rows that go on one page; more never take less room.
	n := sort.Search(len(c.Rows), func(rows int) bool { return len(pages(rows+1, leastCardLetter)) > 1 })
	return pages(n, leastCardLetter)
}

// costs are the strips of a page with so many rows, lettered at a size.
func (j Job) costs(c Costs, rows int, letter float64) []strip {
	s := stageSheet{Job: j}
	s.flow = flow{fit: fit{letter: letter, pad: costsPad}, width: pageWidth}
	s.small("Held against " + c.Against + ". A teaching estimate.")
	s.figure(c.Boats)
	g := grid{head: []string{"What", "Held", "Now", "Differs by", "From what"}}
	add := func(cells ...string) {
		var row []square
		for _, text := range cells {
			row = append(row, square{text: text, words: true})
		}
		g.rows = append(g.rows, row)
	}
	part := func(name string) { g.rows = append(g.rows, over(name)) }
	row := func(r weigh.Row) { add(r.Name, r.Held, r.Now, r.Change, c.From(r)) }
	if len(c.Controls) > 0 {
		part("What was set otherwise")
	}
	for _, m := range c.Controls {
		who := "set"
		if m.Follows {
			who = "it followed"
		}
		add(m.Label, m.Held, m.Now, m.Change, who)
	}
	shown := map[string]bool{}
	for _, i := range weigh.Most(c.Rows, rows) {
		shown[c.Rows[i].Key] = true
	}
	left := len(c.Rows) - len(shown)
	for at, i := range c.Most {
		if r := c.Rows[i]; shown[r.Key] {
			if at == 0 {
				part("Most of all")
			}
			row(r)
			shown[r.Key] = false
		}
	}
	for _, st := range stage.All() {
		named := false
		for _, r := range c.Rows {
			if r.Home != st.Key || !shown[r.Key] {
				continue
			}
			if !named {
				part(st.Name)
				named = true
			}
			row(r)
		}
	}
	if len(g.rows) == 0 {
		s.text("Nothing differs.")
		return s.strips
	}
	if left > 0 {
		g.note = units.Count.Format(float64(left), j.System) + " more changed less, or hardly, and are left out."
	}
	s.grid(g)
	return s.strips
}
