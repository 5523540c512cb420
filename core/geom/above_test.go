package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/geom"
)

// meshed is a square from -1 to 1 in n by n cells of two triangles, with a value at each corner.
func meshed(n int, value func(geom.Vec2) float64) (points []geom.Vec2, triangles [][3]int, values []float64) {
	for i := range n + 1 {
		for k := range n + 1 {
			q := geom.Vec2{X: 2*float64(i)/float64(n) - 1, Y: 2*float64(k)/float64(n) - 1}
			points, values = append(points, q), append(values, value(q))
			if i < n && k < n {
				at := i*(n+1) + k
				triangles = append(triangles, [3]int{at, at + n + 1, at + n + 2}, [3]int{at, at + n + 2, at + 1})
			}
		}
	}
	return points, triangles, values
}

func area(outlines [][]geom.Vec2) float64 {
	sum := 0.0
	for _, line := range outlines {
		for i, q := range line {
			sum += q.Cross(line[(i+1)%len(line)]) / 2
		}
	}
	return sum
}

// Where a value that falls with the square of the distance is over a level is a circle, and
// where it rises the square less a circle: areas are closed forms. Linear along an edge of length e
// the square is over by e squared over 4 at most, and the circle's area off by pi times that: with
// diagonals of sqrt(2)/40, 9.8e-4.
func TestAboveIsACircle(t *testing.T) {
	const radius, chords = 0.6, 9.8e-4
	points, triangles, values := meshed(80, func(q geom.Vec2) float64 { return -q.Dot(q) })
	inside := geom.Above(points, triangles, values, -radius*radius)
	require.Len(t, inside, 1)
	assert.InDelta(t, math.Pi*radius*radius, area(inside), chords)
	for i := range values {
		values[i] = -values[i]
	}
	ring := geom.Above(points, triangles, values, radius*radius)
	require.Len(t, ring, 2, "the square's own outline and the hole")
	assert.InDelta(t, 4-math.Pi*radius*radius, area(ring), chords)
}

// On a plane the level is a straight line, met exactly; over and under all values lies all and
// nothing.
func TestAboveOnAPlane(t *testing.T) {
	points, triangles, values := meshed(7, func(q geom.Vec2) float64 { return q.X })
	half := geom.Above(points, triangles, values, 0.3)
	require.Len(t, half, 1)
	assert.InDelta(t, 0.7*2, area(half), 1e-12)
	assert.InDelta(t, 4, area(geom.Above(points, triangles, values, -5)), 1e-12)
	assert.Empty(t, geom.Above(points, triangles, values, 5))
}

// Cut through, the two sides do not touch: what lies above on both is two outlines.
func TestAboveStopsAtASlit(t *testing.T) {
	points, _, values := meshed(1, func(geom.Vec2) float64 { return 1 })
	points = append(points, points[0], points[3])
	values = append(values, 1, 1)
	got := geom.Above(points, [][3]int{{0, 2, 3}, {4, 5, 1}}, values, 0)
	require.Len(t, got, 2)
	assert.InDelta(t, 4, area(got), 1e-12)
}
