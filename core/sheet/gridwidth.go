package sheet

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core/draw"
)

// rounding is what sums of breadths may be off by.
const rounding = 1e-6

// leastGridLetter is the smallest that a broad table's letters become, mm.
const leastGridLetter = 8.5 * point

// gridWidths finds the breadths of a table's columns and the letters with which they fit:
// those that make it lowest, and the largest letters unless smaller ones save many a wrapped
// line.
func (f *flow) gridWidths(g grid) (size float64, widths []float64) {
	const worth = 0.75
	best := math.Inf(1)
	for try := f.letter; ; try -= point / 2 {
		needs := gridNeeds(g, try)
		if least, _ := total(needs); least > f.width && try > leastGridLetter {
			continue
		}
		limit := worth * best
		for _, share := range ways {
			wide := shared(needs, f.width, share)
			if high := f.gridHeight(g, wide, try); high < limit {
				best, limit, size, widths = high, high, try, wide
			}
			if _, whole := total(needs); whole <= f.width {
				return size, widths
			}
		}
		if try-point/2 < min(smallLetter, size) {
			return size, widths
		}
	}
}

// gridHeight is how high a table is, with its head.
func (f *flow) gridHeight(g grid, widths []float64, size float64) float64 {
	_, high := f.wrapped(f.headSquares(g), widths, size)
	for _, r := range g.rows {
		if len(r) == len(widths) {
			_, row := f.wrapped(r, widths, size)
			high += row
		}
	}
	return high
}

// need is how broad a column is at the least, and with nothing wrapped; rows is how many
// of its rows that would spare a wrapped line, each by its share of what is wanted.
type need struct{ least, whole, rows float64 }

func (n need) wanted() float64 { return n.whole - n.least }

func total(all []need) (least, whole float64) {
	for _, n := range all {
		least, whole = least+n.least, whole+n.whole
	}
	return least, whole
}

func gridNeeds(g grid, size float64) []need {
	var out []need
	for i, title := range g.head {
		n := need{least: draw.WidestWord(title, size, true), whole: draw.Lettered(title, size, true)}
		broad := []float64{n.whole}
		for _, r := range g.rows {
			if len(r) < len(g.head) {
				continue
			}
			c := r[i]
			w := draw.Lettered(c.text, size, c.bold)
			broad = append(broad, w)
			n.whole = max(n.whole, w)
			switch {
			case c.words:
				n.least = max(n.least, draw.WidestWord(c.text, size, c.bold))
			case c.tick:
				n.least = max(n.least, tickSize)
			default:
				n.least = max(n.least, w)
			}
			if c.blank && c.words {
				n.least = max(n.least, notedWidth)
			} else if c.blank {
				n.least = max(n.least, blankWidth)
			}
		}
		n.whole = max(n.whole, n.least)
		for _, w := range broad {
			if w > n.least {
				n.rows += (w - n.least) / n.wanted()
			}
		}
		n.least, n.whole = n.least+2*beside, n.whole+2*beside
		out = append(out, n)
	}
	return out
}

// ways are how columns share what breadth is left over the least: by what each wants, by the
// root of it, alike so that those that want little have it first, and all to the one that
// spares the most rows a line, then to the next.
var ways = [...]func(of []need, over float64) []float64{
	func(of []need, _ float64) []float64 { return weights(of, 1) },
	func(of []need, _ float64) []float64 { return weights(of, 0.5) },
	func(of []need, _ float64) []float64 { return weights(of, 0) },
	mostFirst,
}

// weights are powers of what columns want, 0 for one that wants nothing.
func weights(of []need, power float64) []float64 {
	out := make([]float64, len(of))
	for i, n := range of {
		if n.wanted() > rounding {
			out[i] = math.Pow(n.wanted(), power)
		}
	}
	return out
}

// mostFirst are weights by which the columns that spare the most rows have all they want.
func mostFirst(of []need, over float64) []float64 {
	out, order := make([]float64, len(of)), make([]int, len(of))
	for i := range of {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(of[b].rows, of[a].rows) })
	for _, i := range order {
		out[i] = min(of[i].wanted(), over)
		over -= out[i]
	}
	return out
}

// shared gives columns a breadth between their least and their whole one by weights; what
// none wants goes to all alike.
func shared(of []need, width float64, share func([]need, float64) []float64) []float64 {
	out := make([]float64, len(of))
	for i, n := range of {
		out[i] = n.least
	}
	least, _ := total(of)
	over := width - least
	if over < 0 {
		for i := range out {
			out[i] *= width / least
		}
		return out
	}
	weight := share(of, over)
	for over > rounding {
		all := 0.0
		for i, n := range of {
			if out[i] < n.whole-rounding {
				all += weight[i]
			}
		}
		if all == 0 {
			break
		}
		left := over
		for i, n := range of {
			if out[i] < n.whole-rounding {
				more := min(n.whole-out[i], left*weight[i]/all)
				out[i] += more
				over -= more
			}
		}
	}
	for i := range out {
		out[i] += max(0, over) / float64(len(out))
	}
	return out
}
