package sheet_test

import (
	"flag"
	"testing"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the goldens; look at git diff afterwards")

// golden compares text with a golden of the sheets.
func golden(t *testing.T, name, got string) {
	t.Helper()
	check.Golden(t, *update, "sheet-"+name, got)
}

// head is an invented boat's.
var head = pattern.Head{Boat: "Heron Cove, first canoe", Code: "B1;length=192", Date: "3 May 2026"}

// evaluated is a boat with its bark laid flat, coarsely.
func evaluated(d design.Design) core.Canoe {
	c := core.Evaluate(d)
	return c.WithFlat(core.LayFlat(c, bark.Resolution{Columns: 24, Rows: 8}, nil, nil))
}

// everything is a job of all there is to print.
func everything() sheet.Job {
	j := sheet.Job{Canoe: evaluated(design.Default()), System: units.Imperial16, Head: head}
	j.Sheets = stage.Keys()
	for _, k := range pattern.Kinds() {
		j.Patterns = append(j.Patterns, k.Key)
	}
	return j
}
