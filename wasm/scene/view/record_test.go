package view

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// Measurements are drawn where they were taken, on both sides and at both ends, and can
// be read out. One that the boat misses looks different from one that it meets.
func TestMeasuredPointsAreDrawn(t *testing.T) {
	_, data, _ := record.Read("length overall\t16'\nlength over gunwales\t14' 6\nbeam inside the gunwales\t33\n"+
		"depth to inwale\t12 1/2\nfirst thwart, from middle\t36\nfirst thwart clear\t26\n"+
		"rail height at first thwart\t20\nend height\t25", 0, units.Imperial16)
	c := core.Evaluate(design.Default())
	rows := refit.Measure(c.Design, record.Record{Data: data})
	for _, state := range []scene.State{scene.OnTheBed, scene.Finished} {
		v := scene.View{State: state, Zoom: 1, Measured: rows}
		l := TopAndSide(c, v, draw.Size{Width: 1000, Height: 400, Letter: 16})
		bars := map[string]int{}
		for _, part := range l.Parts {
			if strings.HasPrefix(part.Name, "measured.") {
				bars[part.Name]++
				middle := draw.Point{X: (part.Points[0].X + part.Points[1].X) / 2, Y: (part.Points[0].Y + part.Points[2].Y) / 2}
				hit, ok := l.Hit(middle, 2)
				assert.True(t, ok)
				assert.Equal(t, part.Name, hit)
			}
		}
		require.Len(t, bars, 3, "a width, a rail height and the end height")
		for name, n := range bars {
			text := ReadMeasured(rows, name, units.Imperial16)
			assert.NotEmpty(t, text)
			want := 2
			if strings.Contains(text, "clear length") {
				want = 4
			}
			assert.Equal(t, want, n, text)
			if strings.Contains(text, "ail height") {
				assert.Contains(t, text, "outside tolerance")
			}
		}
	}
	assert.Empty(t, ReadMeasured(rows, "rib.1", units.Imperial16))
}
