package sheet_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/sheet"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the goldens; look at git diff afterwards")

// golden compares text with testdata/golden/sheet-<name>.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("..", "..", "testdata", "golden", "sheet-"+name)
	if *update {
		require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "run with -update to write it")
	wanted, gotten := strings.Split(string(want), "\n"), strings.Split(got, "\n")
	for i := range min(len(wanted), len(gotten)) {
		if !assert.Equal(t, wanted[i], gotten[i], "line %d of %s; rewrite with make golden and look at git diff", i+1, file) {
			return
		}
	}
	assert.Len(t, gotten, len(wanted), file)
}

// head is an invented boat's.
var head = sheet.Head{Boat: "Heron Cove, first canoe", Code: "B1;length=192", Date: "3 May 2026"}

// evaluated is a boat with its bark laid flat, coarsely.
func evaluated(d design.Design) core.Canoe {
	c := core.Evaluate(d)
	return c.WithFlat(core.LayFlat(c, bark.Resolution{Columns: 24, Rows: 8}, nil, nil))
}

// everything is a job of all there is to print.
func everything() sheet.Job {
	j := sheet.Job{Canoe: evaluated(design.Default()), System: units.Imperial16, Head: head}
	for _, s := range sheet.Stages() {
		j.Sheets = append(j.Sheets, s.Key)
	}
	for _, k := range sheet.Kinds() {
		j.Patterns = append(j.Patterns, k.Key)
	}
	return j
}
