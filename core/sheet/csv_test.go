package sheet_test

import (
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/sheet"
	"barkwright/core/units"
)

// The standard library reads back what is written: the same number of fields a
// line, quantities within the five places they are written to.
func TestCSVReadsBack(t *testing.T) {
	c := evaluated(design.Default())
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			var b strings.Builder
			require.NoError(t, sheet.CSV(&b, "A boat", table, s))
			assert.True(t, utf8.ValidString(b.String()))
			assert.Equal(t, strings.Count(b.String(), "\n"), strings.Count(b.String(), "\r\n"),
				"RFC 4180 ends lines with CR LF")
			lines, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
			require.NoError(t, err, key)
			require.Len(t, lines, len(table.Rows)+1)
			for i, row := range table.Rows {
				at := 1
				for k, cell := range row.Cells {
					label := table.Columns[k].Label
					if at+1 < len(lines[0]) && strings.HasPrefix(lines[0][at],
						label+" (") && strings.HasPrefix(lines[0][at+1], label+" (") {
						assert.NotEqual(t, lines[0][at], lines[0][at+1], "two headings, two units")
						at++
					}
					if strings.HasSuffix(lines[0][at], " (m)") && cell.Text == "" {
						got, err := strconv.ParseFloat(lines[i+1][at], 64)
						require.NoError(t, err)
						// An estimate stands as rounded, to a millimetre.
						half := 0.5e-5
						if cell.Rounding != answer.Exact {
							half = 0.5e-3
						}
						assert.InDelta(t, table.Columns[k].Rounded(cell, s), got, half+1e-12)
					}
					at++
				}
				assert.Equal(t, len(lines[0]), at, "%s: every column read", key)
			}
		}
	}
}

// Cells that spreadsheets take for formulas (OWASP, CSV Injection: = + - @, tab,
// carriage return) come out as text; a negative number stays a number.
func TestCSVRunsNothing(t *testing.T) {
	table := answer.Table{
		Columns: []answer.Column{{Key: "a", Label: "=HYPERLINK(1)", Kind: units.Count}, {Key: "b", Label: "Offset",
			Kind: units.Offset}},
		Rows: []answer.Row{
			{Cells: []answer.Cell{{Text: "+1+cmd"}, {Value: -3.5 * units.Inch}}},
			{Cells: []answer.Cell{{Text: "@SUM(A1)"}, {Value: math.Copysign(2, -1)}}},
			{Cells: []answer.Cell{{Text: "\tx"}, {Value: 0}}},
		},
	}
	for _, name := range []string{`=1+1`, `-2+3`, `@x`, "+7,\"a\"", "\r=1", "plain \"quoted\", name"} {
		var b strings.Builder
		require.NoError(t, sheet.CSV(&b, name, table, units.Imperial16))
		lines, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
		require.NoError(t, err)
		for _, line := range lines {
			for _, f := range line {
				if _, err := strconv.ParseFloat(f, 64); err == nil || f == "" {
					continue
				}
				assert.NotContains(t, "=+-@\t\r", f[:1], "%q", f)
			}
		}
		assert.Equal(t, "-0.08890", lines[1][3])
		// Quoted line ends are read back without their carriage return by the library.
		assert.Equal(t, strings.ReplaceAll(name, "\r", ""), strings.NewReplacer("\r", "", "'", "").Replace(lines[1][0]))
	}
}

// A spreadsheet that parts cells at semicolons, tabs or line ends, quotes or none, and
// trims them, finds no formula either; what is not at a cell's beginning stays as it is.
func TestCSVGuardsEveryParting(t *testing.T) {
	for name, want := range map[string]string{
		"Rose;=1+1":              "Rose;'=1+1",
		" =1+1":                  " '=1+1",
		"\u00a0\u200b@SUM(A1)":   "\u00a0\u200b'@SUM(A1)",
		"a; -2+3;+4":             "a; '-2+3;'+4",
		"a\t=1":                  "a\t'=1",
		"a\n+1":                  "a\n'+1",
		"＝1+1":                   "'＝1+1",
		";=1":                    "';'=1",
		"half-beam = 16; 2 - 1":  "half-beam = 16; 2 - 1",
		"Heron Cove; first boat": "Heron Cove; first boat",
	} {
		var b strings.Builder
		table := answer.Table{Columns: []answer.Column{{Label: "A"}},
			Rows: []answer.Row{{Cells: []answer.Cell{{Text: "b"}}}}}
		require.NoError(t, sheet.CSV(&b, name, table, units.Imperial16))
		lines, err := csv.NewReader(strings.NewReader(b.String())).ReadAll()
		require.NoError(t, err)
		assert.Equal(t, want, lines[1][0], "%q", name)
	}
}

func TestCSVGolden(t *testing.T) {
	c := evaluated(design.Default())
	var all strings.Builder
	for _, key := range []string{"marks", "posts", "seams"} {
		table, _ := answer.MakeTable(c, key)
		require.NoError(t, sheet.CSV(&all, c.Design.Name, table, units.Imperial16))
	}
	golden(t, "tables.csv.txt", strings.ReplaceAll(all.String(), "\r\n", "\n"))
}
