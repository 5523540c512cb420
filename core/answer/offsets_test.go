package answer_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
)

// The table of offsets has as many stations as are asked for, equally apart; what it says of each
// lies on the hull: the half breadth at a water line is where the section is as high as that. With 12 1/2 in
// of depth they are 2 in apart.
func TestOffsets(t *testing.T) {
	for _, n := range []int{2, 12, 40} {
		d := design.Default()
		d.Stations = n
		c := core.Evaluate(d)
		table, ok := answer.MakeTable(c, "offsets")
		require.True(t, ok)
		require.Len(t, table.Rows, n+1)
		for i, row := range table.Rows {
			x := row.Cells[1].Value
			assert.InDelta(t, float64(i)/float64(n)*table.Rows[n].Cells[1].Value, x, 1e-12)
			points := c.Hull.Section(x).Sample(400)
			for k, column := range table.Columns {
				if !strings.HasPrefix(column.Key, "level") || row.Cells[k].Text != "" {
					continue
				}
				z := 2 * units.Inch * float64(column.Key[len("level")]-'0')
				// The 400 chords stand off the tightest bend by 5e-6 m, and along a level line by up to twice that.
				assert.InDelta(t, breadthAt(points, z), row.Cells[k].Value, 1e-5, "station %d, %s", i, column.Label)
			}
		}
	}
}

// breadthAt is how far out a line through points of a section is at a height.
func breadthAt[P ~struct{ X, Y float64 }](points []P, height float64) float64 {
	for i := 1; i < len(points); i++ {
		a, b := struct{ X, Y float64 }(points[i-1]), struct{ X, Y float64 }(points[i])
		if a.Y <= height && height <= b.Y && b.Y > a.Y {
			return a.X + (b.X-a.X)*(height-a.Y)/(b.Y-a.Y)
		}
	}
	return math.NaN()
}

// Feet, inches and eighths, and millimetres.
func TestOffsetsAreShownAsLoftsmenDo(t *testing.T) {
	c := core.Evaluate(design.Default())
	table, _ := answer.MakeTable(c, "offsets")
	// 12 1/2 in of depth and 33 in of beam are 1-0-4 and 1-4-4 from the centre line.
	sheer, gunwale := table.Rows[0].Cells[2], 0
	for k, column := range table.Columns {
		if column.Key == "gunwale" {
			gunwale = k
		}
	}
	assert.Equal(t, "1-0-4", table.Columns[2].Format(sheer, units.Imperial16))
	assert.Equal(t, "318 mm", table.Columns[2].Format(sheer, units.Metric))
	assert.Equal(t, "1-4-4", table.Columns[gunwale].Format(table.Rows[0].Cells[gunwale], units.Imperial8))
}
