package markup

import (
	"strconv"
	"strings"

	"barkwright/wasm/work"
)

// MeasureRow is an empty row of a list of measurements, its fields in the order of
// work.Field.
func MeasureRow(l work.List) string {
	var b strings.Builder
	b.WriteString(`<li>`)
	for f := range work.Fields {
		b.WriteString(`<label><span>` + f.String() + `</span>`)
		data := ` data-field="` + strconv.Itoa(int(f)) + `"`
		switch f {
		case work.What:
			b.WriteString(`<select` + data + `>`)
			for _, k := range work.KindsOf(l) {
				b.WriteString(Option(k.ID(), k.String()))
			}
			b.WriteString(`</select>`)
		case work.Locked:
			b.WriteString(`<input type="checkbox" value="yes"` + data + `>`)
		default:
			b.WriteString(`<input type="text" spellcheck="false" autocomplete="off"` + data + `>`)
		}
		b.WriteString(`</label>`)
	}
	b.WriteString(`<button type="button">✕</button><p class="fault"></p></li>`)
	return b.String()
}
