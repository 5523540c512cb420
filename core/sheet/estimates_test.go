package sheet_test

import (
	"encoding/csv"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// estimates are the columns of estimates, by table: nearest are rounded either way, up
// upward because too little spoils the work, and some have an estimate here and there.
var estimates = map[string]struct{ nearest, up, some string }{
	"panels":        {nearest: "bow aft", up: "length width"},
	"cutting":       {nearest: "bow aft", up: "length width"},
	"trees":         {up: "there girth least most diameter", some: "width"},
	"stakes":        {nearest: "station out"},
	"joinery":       {some: "size"},
	"closing":       {some: "from"},
	"ribs":          {nearest: "lean", up: "rough"},
	"pairs":         {up: "rough"},
	"sheathing":     {up: "shortest length"},
	"seams":         {nearest: "each root"},
	"strands":       {nearest: "sewn left", up: "cut"},
	"roots":         {nearest: "sewn left", up: "cut last"},
	"lacingchoices": {nearest: "left share", up: "group"},
	"logs":          {nearest: "left", up: "girth diameter", some: "clear"},
	"pieces":        {nearest: "mass", up: "length"},
	"figures":       {nearest: "length area volume ratio"},
	"righting":      {nearest: "heel arm freeboard draught trim"},
	"carries":       {nearest: "load all"},
	"push":          {nearest: "friction waves low high"},
	"stretch":       {nearest: "p95 rms most"},
}

// goodFor is what an estimate is good for, in SI: choices of this project, listed here a
// second time. Zero is for kinds whose shown digits are coarse enough.
func goodFor(k units.Kind, size float64, up bool, s units.System) float64 {
	const inch, foot, pound = 0.0254, 0.3048, 0.45359237
	metric := s == units.Metric
	pick := func(imperial, other float64) float64 {
		if metric {
			return other
		}
		return imperial
	}
	switch k {
	case units.Length, units.SmallLength, units.Offset:
		if up {
			return pick(inch/2, 0.010)
		}
		return pick(inch/4, 0.005)
	case units.Run:
		if size >= pick(100*foot, 30) {
			return pick(10*foot, 5)
		}
		return pick(foot, 0.5)
	case units.Mass:
		unit := pick(pound, 1)
		for _, row := range []struct{ from, step float64 }{{200, 10}, {10, 1}, {2, 0.5}} {
			if size >= row.from*unit {
				return row.step * unit
			}
		}
		return 0.1 * unit
	case units.Angle:
		return math.Pi / 180
	case units.Percent:
		return 0.01
	case units.Strain:
		return 0.001
	}
	return 0
}

func estimatedTables(d design.Design) []answer.Table {
	c := core.Evaluate(d)
	tables := answer.CurveTables(core.OnWater(c))
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		tables = append(tables, table)
	}
	return tables
}

var roundingBoats = append(design.Starting(), design.Default())

// In tables every estimate stands on a step that it is good to, upward where too little
// spoils the work, and no other number is rounded as one.
func TestTablesRoundEstimates(t *testing.T) {
	in := func(list, key string) bool { return strings.Contains(" "+list+" ", " "+key+" ") }
	for _, d := range roundingBoats {
		for _, table := range estimatedTables(d) {
			of := estimates[table.Key]
			for i, column := range table.Columns {
				where := table.Key + " " + column.Key
				up, nearest := in(of.up, column.Key), in(of.nearest, column.Key)
				for _, row := range table.Rows {
					cell := row.Cells[i]
					if cell.Text != "" {
						continue
					}
					if !in(of.some, column.Key) {
						require.Equal(t, up || nearest, cell.Rounding != answer.Exact, where)
						require.Equal(t, up, cell.Rounding == answer.RoughUp, where)
						guessed := column.Kind == units.Mass || column.Kind == units.Force ||
							column.Kind == units.Percent && table.Key != "laminations"
						require.False(t, guessed && cell.Rounding == answer.Exact, where)
					}
					if cell.Rounding != answer.Exact {
						for _, s := range []units.System{units.Imperial16, units.Metric} {
							onStep(t, where, column, cell, s)
						}
					}
				}
			}
		}
	}
}

// onStep holds a cell as shown, read back, to the step its estimate is good to.
func onStep(t *testing.T, where string, column answer.Column, cell answer.Cell, s units.System) {
	t.Helper()
	step := goodFor(column.Kind, math.Abs(cell.Value), cell.Rounding == answer.RoughUp, s)
	if step == 0 {
		return
	}
	text := column.Format(cell, s)
	got, _, err := column.Kind.Parse(text, s)
	require.NoError(t, err, where)
	const last = 1e-9
	assert.InDelta(t, math.Round(got/step)*step, got, last, "%s: %s", where, text)
	if cell.Rounding == answer.RoughUp {
		assert.GreaterOrEqual(t, got, cell.Value-last, "%s: %s is too little", where, text)
		assert.Less(t, got, cell.Value+step, "%s: %s", where, text)
	} else {
		assert.InDelta(t, cell.Value, got, step/2+last, "%s: %s", where, text)
	}
}

// So do the numbers that the page and the sheets give one by one.
func TestNumbersRoundEstimates(t *testing.T) {
	for _, d := range roundingBoats {
		c := core.Evaluate(d)
		for _, n := range append(answer.All(c), answer.Water(c, core.OnWater(c))...) {
			if n.Word != "" || !n.Up && n.Basis != known.Estimate {
				continue
			}
			for _, s := range []units.System{units.Imperial16, units.Metric} {
				ends := strings.Split(strings.TrimPrefix(n.Text(s), "about "), " to ")
				for i, text := range ends {
					v := []float64{n.Low, n.High}[i]
					step := goodFor(n.Kind, math.Abs(v), n.Up, s)
					got, _, err := n.Kind.Parse(text, s)
					require.NoError(t, err, n.Key)
					if step == 0 {
						continue
					}
					assert.InDelta(t, math.Round(got/step)*step, got, 1e-9, "%s: %s", n.Key, text)
					if n.Up {
						assert.GreaterOrEqual(t, got, v-1e-9, "%s: %s is too little", n.Key, text)
					}
				}
			}
		}
	}
}

// CSV gives an estimate as the page does, and its number in SI is that rounded one.
func TestCSVRoundsEstimates(t *testing.T) {
	for _, s := range []units.System{units.Imperial16, units.Metric} {
		for _, table := range estimatedTables(design.Default()) {
			var b strings.Builder
			require.NoError(t, sheet.CSV(&b, "", table, s))
			lines, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
			require.NoError(t, err)
			for i, column := range table.Columns {
				for n, row := range table.Rows {
					cell := row.Cells[i]
					if cell.Text != "" || cell.Rounding == answer.Exact || column.Kind.SI() == "" {
						continue
					}
					for at, heading := range lines[0] {
						if heading != column.Label+" ("+column.Kind.SI()+")" {
							continue
						}
						// What stands there once, in a unit that is shown alike, is as shown.
						got, err := strconv.ParseFloat(lines[n+1][at], 64)
						if err != nil {
							got, _, err = column.Kind.Parse(lines[n+1][at], s)
						}
						require.NoError(t, err, table.Key)
						// An estimate has three decimals.
						assert.InDelta(t, column.Rounded(cell, s), got, 0.5e-3+1e-9, "%s %s", table.Key, column.Key)
					}
				}
			}
		}
	}
}

// A build sheet gives an estimate as the page does: its tables' cells and its numbers.
func TestBuildSheetsRoundEstimates(t *testing.T) {
	j := everything()
	cells, numbers := 0, 0
	for _, key := range stage.Keys() {
		text := words(j, key)
		for _, table := range estimatedTables(j.Canoe.Design) {
			_, after, there := strings.Cut(text, "\n"+table.Title+"\n")
			if !there || table.Home != key {
				continue
			}
			printed := strings.FieldsFunc(after, func(r rune) bool { return r == '\n' || r == '|' })
			for i, column := range table.Columns {
				for _, row := range table.Rows {
					if cell := row.Cells[i]; cell.Rounding != answer.Exact && !column.ScreenOnly {
						assert.True(t, slices.ContainsFunc(printed, func(p string) bool {
							return strings.TrimSpace(p) == column.Format(cell, j.System)
						}), "%s %s", table.Key, column.Key)
						cells++
					}
				}
			}
		}
		for _, n := range answer.All(j.Canoe) {
			if n.On(key) && (n.Up || n.Basis == known.Estimate) && n.Word == "" {
				basis := ""
				if n.Basis != known.Computed {
					basis = " (" + string(n.Basis) + ")"
				}
				assert.Contains(t, text, n.Label(j.System)+basis+": "+n.Text(j.System)+". ", n.Key)
				numbers++
			}
		}
	}
	assert.Greater(t, cells, 100)
	assert.Greater(t, numbers, 10)
}
