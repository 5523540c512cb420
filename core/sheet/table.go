package sheet

import (
	"bufio"
	"io"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/units"
)

// escape makes text safe between tags and inside quoted attributes.
var escape = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;", "'", "&#39;")

// HTMLTable writes a table: every number cell carries its column's key and its SI
// value, every row the part of the picture it stands for.
func HTMLTable(w io.Writer, t answer.Table, s units.System) error {
	b := bufio.NewWriter(w)
	b.WriteString(`<table data-table="` + escape.Replace(t.Key) + `"><caption>` + escape.Replace(t.Title) + `</caption><thead><tr>`)
	for _, c := range t.Columns {
		b.WriteString(`<th scope="col">` + escape.Replace(c.Label) + `</th>`)
	}
	b.WriteString("</tr></thead><tbody>")
	for _, r := range t.Rows {
		b.WriteString("<tr")
		if r.Part != "" {
			b.WriteString(` data-part="` + escape.Replace(r.Part) + `"`)
		}
		b.WriteString(">")
		for i, cell := range r.Cells {
			c := t.Columns[i]
			open, end := "<td", "</td>"
			if i == 0 {
				open, end = `<th scope="row"`, "</th>"
			}
			b.WriteString(open + ` data-column="` + escape.Replace(c.Key) + `"`)
			if cell.Text == "" {
				b.WriteString(` data-value="` + strconv.FormatFloat(cell.Value, 'g', 9, 64) + `"`)
			}
			b.WriteString(">" + escape.Replace(c.Format(cell, s)) + end)
		}
		b.WriteString("</tr>")
	}
	b.WriteString("</tbody></table>")
	return b.Flush()
}
