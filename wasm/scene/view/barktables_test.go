package view_test

import (
	"slices"
	"strconv"
	"testing"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
)

// The cutting drawings letter what the tables say: of every gore what rides over, how far it is
// slashed and where it stands along the gunwale, and of every piece of bark its length and width.
func TestBarkDrawingsAgreeWithTheTables(t *testing.T) {
	for _, line := range []string{"", extreme[1], extreme[6], extreme[7], extreme[11]} {
		d := design.Default()
		if line != "" {
			d, _, _ = design.ReadLine("barkwright1_" + line)
		}
		c, v := skinned(core.Evaluate(d), bark.ForFigures, scene.View{State: scene.LaidFlat})
		for _, v.System = range []units.System{units.Imperial16, units.Metric} {
			said := lettering(view.Draw(c, v, draw.Size{Width: 1920, Height: 900, Letter: 16}))
			gores, _ := answer.MakeTable(c, "gores")
			for _, row := range gores.Rows {
				n := cellOf(gores, row, "gore", v.System)
				g := c.Skin.Flat.Gores
				if at := len(g)/2 + atoi(n); len(g)%2 == 0 || at >= len(g) || len(g[at].After) == 0 {
					continue
				}
				assert.Contains(t, said, cellOf(gores, row, "run", v.System), "%s gore %s", line, n)
				assert.Contains(t, said, cellOf(gores, row, "depth", v.System)+" in", "%s gore %s", line, n)
				if width := cellOf(gores, row, "width", v.System); width[0] >= '0' && width[0] <= '9' {
					assert.Contains(t, said, width, "%s gore %s", line, n)
				}
			}
			v.Only = scene.BySheet
			said = lettering(view.Draw(c, v, draw.Size{Width: 1920, Height: 900, Letter: 16}))
			cutting, _ := answer.MakeTable(c, "cutting")
			for _, row := range cutting.Rows {
				if name := cellOf(cutting, row, "piece", v.System); name != "none" {
					assert.Contains(t, said, name+", "+cellOf(cutting, row, "length", v.System)+" by "+
						cellOf(cutting, row, "width", v.System), "%s %s", line, name)
				}
			}
			v.Only = scene.Both
		}
	}
}

func atoi(s string) int {
	n, _ := strconv.Atoi(s)
	return n
}

// cellOf is a cell of a table as the page shows it.
func cellOf(t answer.Table, row answer.Row, key string, s units.System) string {
	i := slices.IndexFunc(t.Columns, func(c answer.Column) bool { return c.Key == key })
	return t.Columns[i].Format(row.Cells[i], s)
}
