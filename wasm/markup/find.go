package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/wasm/work"
)

// Found are the lines that answer what was looked for, as options of a list box.
func Found(lines []work.Found) string {
	var b strings.Builder
	for i, f := range lines {
		b.WriteString(`<li role="option" id="found-` + strconv.Itoa(i) + `" aria-selected="` + strconv.FormatBool(i == 0) +
			`" data-found="` + draw.Escape(f.Go) + `"><small>` + draw.Escape(f.Kind) + `</small> <span>` + draw.Escape(f.Name) +
			`</span> <b>` + draw.Escape(f.Value) + `</b> <small>` + draw.Escape(f.At) + `</small></li>`)
	}
	return b.String()
}
