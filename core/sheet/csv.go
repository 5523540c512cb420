package sheet

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode"

	"barkwright/core/answer"
	"barkwright/core/units"
)

// CSV writes a table as comma-separated values after RFC 4180, UTF-8: the boat's
// name before every row, so that rows of several boats can be put together, and
// every quantity twice, as a tape shows it and as a plain number in the SI unit its
// heading names; once where the two units are one. It returns the writer's first
// error.
func CSV(w io.Writer, boat string, t answer.Table, s units.System) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	// The writer keeps its first error for Error.
	_ = out.Write(cells(headings(t, s)))
	for _, r := range t.Rows {
		fields := []string{boat}
		for i, cell := range r.Cells {
			c := t.Columns[i]
			shown, si := unitsOf(t, i, s)
			text := cell.Text
			if text == "" && (shown != "" || si == "") {
				text = c.Kind.FormatASCII(c.Rounded(cell, s), s)
			}
			if shown != "" || si == "" || cell.Text != "" {
				fields = append(fields, text)
			}
			switch {
			case si == "" || (shown == "" && cell.Text != ""):
			case cell.Text != "":
				fields = append(fields, "")
			default:
				places := siPlaces
				if cell.Rounding != answer.Exact {
					places = siPlacesRough
				}
				fields = append(fields, strconv.FormatFloat(c.Rounded(cell, s), 'f', places, 64))
			}
		}
		_ = out.Write(cells(fields))
	}
	out.Flush()
	return out.Error()
}

// headings name the columns with their units.
func headings(t answer.Table, s units.System) []string {
	out := []string{"Boat"}
	for i, c := range t.Columns {
		shown, si := unitsOf(t, i, s)
		if si == "" {
			out = append(out, c.Label)
			continue
		}
		if shown != "" {
			out = append(out, c.Label+" ("+shown+")")
		}
		out = append(out, c.Label+" ("+si+")")
	}
	return out
}

// unitsOf are the units a column is written in: as shown, and the SI one; neither
// for words and plain numbers, one where they are the same.
func unitsOf(t answer.Table, column int, s units.System) (shown, si string) {
	k := t.Columns[column].Kind
	if si = k.SI(); si == "" || !hasNumber(t, column) {
		return "", ""
	}
	if shown = shownUnit(k, s); shown == si {
		shown = ""
	}
	return shown, si
}

// siPlaces gives a length to a hundredth of a millimetre, finer than any tape, and
// siPlacesRough an estimate to a millimetre.
const siPlaces, siPlacesRough = 5, 3

// shownUnit names how the first of the two columns is written.
func shownUnit(k units.Kind, s units.System) string {
	if s != units.Metric {
		switch k {
		case units.Length, units.Offset:
			return "ft and in"
		}
	}
	return strings.NewReplacer("°", "deg", "²", "2", "³", "3", "·", " ").Replace(k.Unit(s))
}

// hasNumber tells whether any cell of a column is a number.
func hasNumber(t answer.Table, column int) bool {
	for _, r := range t.Rows {
		if r.Cells[column].Text == "" {
			return true
		}
	}
	return false
}

// cells puts an apostrophe before text that a spreadsheet would run as a formula; plain
// numbers stay.
func cells(fields []string) []string {
	for i, f := range fields {
		if _, err := strconv.ParseFloat(f, 64); err != nil {
			fields[i] = guarded(f)
		}
	}
	return fields
}

// formulas begin what spreadsheets run, in the full width of East Asian letters too,
// and parting is what some of them part cells at, quoted or not: OWASP, CSV Injection.
const (
	formulas = "=+-@＝＋－＠"
	parting  = ";\t\r\n"
)

// guarded puts an apostrophe before every place where a cell might begin as a
// formula, spaces and signs that do not show before it left out of account.
func guarded(s string) string {
	var b strings.Builder
	begins := true
	for i, r := range s {
		switch {
		case begins && (strings.ContainsRune(formulas, r) || i == 0 && strings.ContainsRune(parting, r)):
			b.WriteByte('\'')
			begins = strings.ContainsRune(parting, r)
		case strings.ContainsRune(parting, r):
			begins = true
		case !unicode.IsSpace(r) && !unicode.Is(unicode.Cf, r):
			begins = false
		}
		b.WriteRune(r)
	}
	return b.String()
}
