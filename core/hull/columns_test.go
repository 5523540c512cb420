package hull_test

import (
	"math"

	"barkwright/core/hull"
)

// columns returns the places of n+1 columns, spread along the boat in proportion
// to its length before and past the heel.
func columns(h *hull.Hull, n int) []float64 {
	past := int(math.Round(float64(n) * h.Edge.Length() / (h.HeelX + h.Edge.Length())))
	past = max(2, min(n-2, past))
	out := make([]float64, 0, n+1)
	for i := 0; i <= n-past; i++ {
		out = append(out, float64(i)/float64(n-past))
	}
	for i := 1; i <= past; i++ {
		out = append(out, 1+float64(i)/float64(past))
	}
	return out
}
