package markup_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// Four odd boats stand side by side in either system: the shortest, the longest, the default and one
// on the bottom of its ranges. Every row has a cell for each, and none is no number.
func TestFourOddBoats(t *testing.T) {
	short, long := design.Default(), design.Default()
	for _, d := range design.Starting() {
		if d.Length < short.Length {
			short = d
		}
		if d.Length > long.Length {
			long = d
		}
	}
	flat := design.Default()
	for _, set := range []struct {
		key string
		to  float64
	}{{"rocker", 0}, {"gores", 0}, {"paddlers", 0}} {
		p, _ := design.Lookup(set.key)
		flat = p.Set(flat, max(p.Min, set.to))
	}
	var boats []markup.Column
	for _, d := range []design.Design{short, long, design.Default(), flat} {
		c, faults := core.Try(d)
		assert.Empty(t, faults)
		boats = append(boats, markup.Column{Name: d.Name, Canoe: c})
	}
	for _, s := range []units.System{units.Imperial16, units.Metric} {
		html := markup.Beside(boats, s, draw.Screen())
		whole(t, html)
		assert.Equal(t, len(boats), strings.Count(html, "<svg"))
		assert.NotContains(t, html, "NaN")
		for _, row := range strings.Split(html, "<tr data-beside=")[1:] {
			row, _, _ = strings.Cut(row, "</tr>")
			assert.Equal(t, len(boats), strings.Count(row, "<td"), row)
		}
	}
}
