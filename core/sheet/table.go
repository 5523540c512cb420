package sheet

import (
	"barkwright/core/draw"
	"bufio"
	"io"
	"strconv"

	"barkwright/core/answer"
	"barkwright/core/units"
)

// HTMLTable writes a table: every number cell carries its column's key and its SI
// value, every row the part of the picture it stands for.
func HTMLTable(w io.Writer, t answer.Table, s units.System) error {
	b := bufio.NewWriter(w)
	b.WriteString(`<table data-table="` + draw.Escape(t.Key) + `"><caption>` + draw.Escape(t.Title) +
		`</caption><thead><tr>`)
	for _, c := range t.Columns {
		b.WriteString(`<th scope="col">` + draw.Escape(c.Label) + `</th>`)
	}
	b.WriteString("</tr></thead><tbody>")
	for _, r := range t.Rows {
		b.WriteString("<tr")
		if r.Part != "" {
			b.WriteString(` data-part="` + draw.Escape(r.Part) + `"`)
		}
		b.WriteString(">")
		for i, cell := range r.Cells {
			c := t.Columns[i]
			open, end := "<td", "</td>"
			if i == 0 {
				open, end = `<th scope="row"`, "</th>"
			}
			b.WriteString(open + ` data-column="` + draw.Escape(c.Key) + `"`)
			if cell.Text == "" {
				b.WriteString(` data-value="` + strconv.FormatFloat(cell.Value, 'g', 9, 64) + `"`)
			}
			b.WriteString(">" + draw.Escape(c.Format(cell, s)) + end)
		}
		b.WriteString("</tr>")
	}
	b.WriteString("</tbody></table>")
	return b.Flush()
}
