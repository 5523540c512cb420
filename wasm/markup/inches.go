package markup

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/core/whatif"
)

// Ranks lists the results that the table of costs can be ranked by.
func Ranks(c core.Canoe, s units.System) string {
	list := Option("", "the order of the form")
	for _, n := range costed(c) {
		list += Option(n.Key, name(n, s))
	}
	return list
}

// costed are the results that the table has columns for.
func costed(c core.Canoe) []answer.Number {
	out := make([]answer.Number, len(whatif.Costed()))
	for _, n := range answer.All(c) {
		for i, key := range whatif.Costed() {
			if key == n.Key {
				out[i] = n
			}
		}
	}
	return out
}

func name(n answer.Number, s units.System) string {
	if n.Short != "" {
		return n.Short
	}
	return n.Label(s)
}

// tenMM is what a metric reader's more of a length is, m.
const tenMM = 0.010

// Inches are the tables of what one more inch of each length costs, 10 mm for a metric reader,
// one more step of each small size, and one more of each count.
func Inches(c core.Canoe, costs *whatif.Costs, rank string, s units.System) string {
	if costs == nil {
		return "<p>…</p>"
	}
	title, lengths, sizes := "One inch more of", costs.Lengths, costs.Sizes
	step := ""
	if s == units.Metric {
		title, lengths = "10 mm more of", per(lengths, func(design.Param) float64 { return tenMM })
		sizes = per(sizes, func(p design.Param) float64 { return p.Step(units.Metric) })
	}
	if len(sizes) > 0 {
		step = inchTable(units.SmallLength.Format(sizes[0].Per, s)+" more of", "sizes", c, sizes, rank, s)
	}
	return inchTable(title, "inches", c, lengths, rank, s) + step +
		inchTable("One more of", "pieces", c, costs.Pieces, rank, s)
}

// per are slopes for so much more of each control.
func per(costs []whatif.Cost, more func(design.Param) float64) []whatif.Cost {
	out := slices.Clone(costs)
	for i, cost := range out {
		out[i].Per, out[i].Slopes = more(cost.Param), slices.Clone(cost.Slopes)
		for k := range cost.Slopes {
			out[i].Slopes[k] *= out[i].Per / cost.Per
		}
	}
	return out
}

// rankedFirst are the places of the columns, with that of the result ranked by before the others.
func rankedFirst(rank string) []int {
	var first, others []int
	for i, key := range whatif.Costed() {
		if key == rank {
			first = append(first, i)
		} else {
			others = append(others, i)
		}
	}
	return append(first, others...)
}

func inchTable(title, key string, c core.Canoe, costs []whatif.Cost, rank string, s units.System) string {
	columns, order := costed(c), rankedFirst(rank)
	var b strings.Builder
	b.WriteString(`<div class="scroll" tabindex="0" role="region" aria-label="` + draw.Escape(title) +
		` each control"><table class="costs" data-inches="` + key + `"><thead><tr><th scope="col">` + draw.Escape(title) + "</th>")
	for _, i := range order {
		sorted := ""
		if columns[i].Key == rank {
			sorted = ` aria-sort="descending"`
		}
		b.WriteString(`<th scope="col"` + sorted + `>` + draw.Escape(name(columns[i], s)) + "</th>")
	}
	b.WriteString("</tr></thead><tbody>")
	for _, cost := range whatif.Ranked(costs, rank) {
		b.WriteString(`<tr><th scope="row"><button type="button" data-hold="` + cost.Param.Key + `">` +
			draw.Escape(cost.Param.Label) + "</button>")
		if cost.Per != 1 && cost.Param.Whole() {
			b.WriteString(" <small>by " + strconv.Itoa(int(cost.Per)) + "</small>")
		}
		if cost.OneSided {
			b.WriteString(" <small>one way only: the other cannot be built</small>")
		}
		b.WriteString("</th>")
		for _, i := range order {
			b.WriteString("<td>" + draw.Escape(slope(columns[i].Kind, cost.Slopes[i], s)) + "</td>")
		}
		b.WriteString("</tr>")
	}
	b.WriteString("</tbody></table></div>")
	return b.String()
}

// slope is a change as shown, with its sign; a dash for less than is shown.
func slope(k units.Kind, v float64, s units.System) string {
	if math.IsNaN(v) {
		return answer.Dash
	}
	if text := k.Difference(0, v, s); text != "" {
		return text
	}
	return answer.Dash
}
