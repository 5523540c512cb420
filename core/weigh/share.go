package weigh

import (
	"cmp"
	"math"
	"slices"

	"barkwright/core/geom"
)

// Apportion gives each of shares a whole number of steps, so that they add up to total: the
// floor of each, and the steps left over to the largest remainders, of equal ones to the
// first. Shares are in steps and add up to total but for its rounding, by less than their
// number: the difference goes to the largest share.
//
// It is the method of largest remainders: Balinski and Young, Fair Representation, 1982.
func Apportion(shares []float64, total int) []int {
	out := make([]int, len(shares))
	if len(shares) == 0 {
		return out
	}
	exact := slices.Clone(shares)
	largest, sum := 0, 0.0
	for i, v := range exact {
		sum += v
		if math.Abs(v) > math.Abs(exact[largest]) {
			largest = i
		}
	}
	exact[largest] += float64(total) - sum
	left := total
	order := make([]int, len(exact))
	for i, v := range exact {
		out[i] = int(geom.Floor(v))
		left -= out[i]
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(exact[b]-float64(out[b]), exact[a]-float64(out[a]))
	})
	for _, i := range order[:max(0, min(left, len(order)))] {
		out[i]++
	}
	return out
}
