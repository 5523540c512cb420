package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
)

// Pages shows pages as they are printed, each over its title.
func Pages(pages []draw.List) string {
	var b strings.Builder
	b.WriteString(`<ol class="pages">`)
	for i, p := range pages {
		b.WriteString("<li>" + SVG("seen-"+strconv.Itoa(i+1), draw.Print(), p) + "<p>" + strconv.Itoa(i+1) + ". " +
			draw.Escape(p.Title) + "</p></li>")
	}
	b.WriteString("</ol>")
	return b.String()
}
