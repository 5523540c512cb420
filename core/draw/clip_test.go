package draw_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
)

var room = draw.Box{Left: 0, Top: 0, Right: 10, Bottom: 10}

// A circle of radius 5 about a corner of the box keeps a quarter of its area, about the middle
// of a side half, and about the middle all of it (the area of a circle: closed form).
func TestClippedCircles(t *testing.T) {
	for _, c := range []struct {
		at    draw.Point
		share float64
	}{{draw.Point{}, 0.25}, {draw.Point{X: 5}, 0.5}, {draw.Point{X: 5, Y: 5}, 1}} {
		ops := draw.Clip(draw.Fill{Role: draw.Ink, Points: draw.Polygon(c.at, 5, 720, 0)}, room)
		require.Len(t, ops, 1)
		points, twice := ops[0].(draw.Fill).Points, 0.0
		for i, p := range points {
			q := points[(i+1)%len(points)]
			twice += p.X*q.Y - q.X*p.Y
		}
		// A polygon of 720 sides has 1 - 1.3e-5 of the circle's area.
		assert.InDelta(t, c.share*math.Pi*25, math.Abs(twice)/2, 1e-3)
	}
	assert.Empty(t, draw.Clip(draw.Fill{Points: draw.Polygon(draw.Point{X: 30}, 5, 12, 0)}, room))
}

// A line that leaves the box and comes back is two lines; a closed one is open where it was cut.
func TestClippedLines(t *testing.T) {
	zigzag := draw.Stroke{Role: draw.Seam,
		Points: []draw.Point{{X: -2, Y: 2}, {X: 2, Y: 2}, {X: 12, Y: 2}, {X: 12, Y: 8}, {X: 5, Y: 8}}}
	ops := draw.Clip(zigzag, room)
	require.Len(t, ops, 2)
	assert.Equal(t, []draw.Point{{X: 0, Y: 2}, {X: 2, Y: 2}, {X: 10, Y: 2}}, ops[0].(draw.Stroke).Points)
	assert.Equal(t, []draw.Point{{X: 10, Y: 8}, {X: 5, Y: 8}}, ops[1].(draw.Stroke).Points)
	square := draw.Stroke{Points: []draw.Point{{X: 5, Y: 5}, {X: 15, Y: 5}, {X: 15, Y: 15}, {X: 5, Y: 15}}, Closed: true}
	for _, op := range draw.Clip(square, room) {
		assert.False(t, op.(draw.Stroke).Closed)
		for _, p := range op.(draw.Stroke).Points {
			assert.True(t, p.X <= 10 && p.Y <= 10)
		}
	}
	square.Points = []draw.Point{{X: 5, Y: 5}, {X: 6, Y: 5}, {X: 6, Y: 6}}
	assert.Equal(t, []draw.Op{square}, draw.Clip(square, room))
}
