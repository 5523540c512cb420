package weigh_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/weigh"
)

// Hamilton's apportionment of 120 seats among the fifteen states by the census of 1790, vetoed in
// 1792: the worked example of Balinski and Young, Fair Representation, 1982. Populations
// and seats are from memory; the populations add up to the printed 3,615,920 and the seats to
// 120.
func TestApportionAsPublished(t *testing.T) {
	people := []float64{630560, 475327, 432879, 353523, 331589, 278514, 236841, 206236, 179570, 141822, 85533, 70835, 68705,
		68446, 55540}
	seats := []int{21, 16, 14, 12, 11, 9, 8, 7, 6, 5, 3, 2, 2, 2, 2}
	sum := 0.0
	for _, p := range people {
		sum += p
	}
	assert.InDelta(t, 3615920, sum, 0)
	shares := make([]float64, len(people))
	for i, p := range people {
		shares[i] = p * 120 / sum
	}
	assert.Equal(t, seats, weigh.Apportion(shares, 120))
}

// By hand: signs differ, and what rounding left over goes to the largest share.
func TestApportionOfBothSigns(t *testing.T) {
	assert.Equal(t, []int{5, -2}, weigh.Apportion([]float64{5.3, -2.3}, 3))
	assert.Equal(t, []int{6, -3, 1}, weigh.Apportion([]float64{5.9, -2.6, 0.7}, 4))
	assert.Equal(t, []int{4}, weigh.Apportion([]float64{3.6}, 4))
	assert.Empty(t, weigh.Apportion(nil, 0))
	assert.Equal(t, []int{0, 0}, weigh.Apportion([]float64{0, 0}, 0))
}

// Shares add up to the whole, each within a step of what it was and its part of the rounding:
// of all sizes, whole ones, halves and the ends of the range too.
func TestSharesAddUp(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 15))
	for range 2000 {
		shares, sum := make([]float64, 1+r.IntN(6)), 0.0
		for i := range shares {
			shares[i] = 40 * (r.Float64() - 0.5)
			switch r.IntN(8) {
			case 0, 1:
				shares[i] = math.Round(shares[i])
			case 2:
				shares[i] = math.Copysign(20, shares[i])
			case 3:
				shares[i] = math.Floor(shares[i]) + 0.5
			}
			sum += shares[i]
		}
		total, got := int(math.Round(sum)), 0
		for i, n := range weigh.Apportion(shares, total) {
			got += n
			// What rounds the total, half a step at most, is the largest share's.
			assert.InDelta(t, shares[i], float64(n), 1.5+1e-9)
		}
		assert.Equal(t, total, got)
	}
}
