package answer_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
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

// Whatever stations are asked for, by their number or by how far they are apart, each row is the hull
// there: its heights and half breadths are those of points of the section, 400 of them, whose lengths
// add up to the half girth. Shown, they are off by at most half an eighth, or half a millimetre.
func TestOffsetsAtAnyStations(t *testing.T) {
	apart, _ := design.Lookup("stationsApart")
	const least = 3 * units.Inch
	r := rand.New(rand.NewPCG(14, 4))
	choices := []struct {
		apart float64
		n     int
	}{{0, 2}, {0, 40}, {0, 12}, {least, 12}, {apart.Max, 12}, {units.Foot, 12}}
	tried := 0
	for _, d := range check.SomeDesigns(60, 41) {
		if len(design.Validate(d)) > 0 || len(core.Validate(d)) > 0 {
			continue
		}
		d.StationsApart = least + r.Float64()*(apart.Max-least)
		if tried < len(choices) {
			d.StationsApart, d.Stations = choices[tried].apart, choices[tried].n
		}
		tried++
		c := core.Evaluate(d)
		h := c.Hull
		table, ok := answer.MakeTable(c, "offsets")
		require.True(t, ok)
		last := len(table.Rows) - 1
		end := min(h.GunwaleX, h.HeelX)
		assert.Zero(t, table.Rows[0].Cells[1].Value, "from amidships")
		assert.InDelta(t, end, table.Rows[last].Cells[1].Value, 1e-12, "to the end")
		for k, row := range table.Rows {
			x := row.Cells[1].Value
			if d.StationsApart == 0 {
				// A few units in the last place of a metre: the one divides first.
				assert.InDelta(t, float64(k)*end/float64(d.Stations), x, 1e-12)
			} else if k < last {
				assert.InDelta(t, float64(k)*d.StationsApart, x, 1e-12)
			}
			points := h.Section(x).Sample(400)
			top, girth := points[len(points)-1], 0.0
			for j := 1; j < len(points); j++ {
				girth += math.Hypot(points[j].X-points[j-1].X, points[j].Y-points[j-1].Y)
			}
			want := map[string]float64{"sheer": top.Y, "bottom": points[0].Y, "bark": top.X, "girth": girth}
			for j, column := range table.Columns {
				cell := row.Cells[j]
				if v, ok := want[column.Key]; ok {
					// The error of the chords, as in TestOffsets.
					assert.InDelta(t, v, cell.Value, 1e-5, "%s at %v", column.Label, x)
				}
				if column.Kind != units.Length || cell.Text != "" {
					continue
				}
				assert.InDelta(t, cell.Value, lofted(t, column.Format(cell, units.Imperial16)), units.Inch/16+1e-12)
				mm, err := strconv.ParseFloat(strings.TrimSuffix(column.Format(cell, units.Metric), " mm"), 64)
				require.NoError(t, err)
				assert.InDelta(t, cell.Value, mm/1000, 0.0005+1e-12)
			}
		}
	}
	assert.Greater(t, tried, 10, "enough of the boats can be built")
}

// lofted reads feet-inches-eighths, in metres.
func lofted(t *testing.T, text string) float64 {
	t.Helper()
	var feet, inches, eighths float64
	sign := 1.0
	if rest, less := strings.CutPrefix(text, "-"); less {
		text, sign = rest, -1
	}
	_, err := fmt.Sscanf(text, "%g-%g-%g", &feet, &inches, &eighths)
	require.NoError(t, err, text)
	return sign * (feet*12 + inches + eighths/8) * units.Inch
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
