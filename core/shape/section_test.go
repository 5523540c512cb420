package shape_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/mathext"

	"barkwright/core/shape"
)

// With whole legs, a vertical side and a weight of sqrt(2)/2 the section is a
// quarter of an ellipse. Sources: area pi ab/4, Abramowitz and Stegun; girth
// a E(1 - b2/a2) by gonum's complete elliptic integral; least radius b2/a.
func TestQuarterEllipse(t *testing.T) {
	for _, row := range []struct{ a, b float64 }{{1, 0.5}, {0.40, 0.30}, {0.45, 0.33}, {0.43, 0.15}} {
		s := shape.WholeLegSection(row.a, row.b, math.Sqrt2/2)
		assert.InDelta(t, row.a*mathext.CompleteE(1-row.b*row.b/(row.a*row.a)), s.HalfGirth(), 1e-9)
		radius, at := s.TightestRadius()
		assert.InDelta(t, row.b*row.b/row.a, radius, 1e-9)
		// The ellipse's tight end is its long half-axis, the section's top edge.
		// A least radius is known by the square of how well its place is.
		assert.InDelta(t, s.HalfGirth(), at, 1e-6)
		assert.InDelta(t, math.Pi/2, s.Turning(), 1e-15)
		for i := 0; i <= 20; i++ {
			p := s.At(s.HalfGirth() * float64(i) / 20)
			on := math.Pow(p.X/row.a, 2) + math.Pow((p.Y-row.b)/row.b, 2)
			assert.InDelta(t, 1, on, 1e-12)
		}
		// Area between the section, the centre line and the top edge.
		area := quad.Fixed(func(u float64) float64 {
			return s.Bend.At(u).X * s.Bend.Derivative(u).Y
		}, 0, 1, 60, nil, 0)
		assert.InDelta(t, math.Pi*row.a*row.b/4, area, 1e-9)
	}
}
