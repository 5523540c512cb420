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

// The length of a bend against a finer sum by gonum's Gauss rule, at both sides of each weight
// at which the number of pieces changes, at both ends of what designs ask for and at
// an arc's: to the part of it that bendPanels names.
func TestBendsLength(t *testing.T) {
	for _, weight := range []float64{0.5, math.Nextafter(0.6, 0), 0.6, math.Sqrt2 / 2, 1.7, math.Nextafter(1.7, 2),
		3, math.Nextafter(3, 4), 17.0 / 3} {
		for _, legs := range [][2]float64{{1, 1}, {1, 0.5}, {1, 0.25}, {0.3, 1}} {
			s := shape.WholeLegSection(legs[0], legs[1], weight)
			sum := 0.0
			for i := range 64 {
				sum += quad.Fixed(s.Bend.Speed, float64(i)/64, float64(i+1)/64, 20, quad.Legendre{}, 0)
			}
			assert.InEpsilon(t, sum, s.HalfGirth(), 1e-8, "%v on legs %v", weight, legs)
		}
	}
}
