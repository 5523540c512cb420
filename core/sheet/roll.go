package sheet

import (
	"bufio"
	"io"

	"barkwright/core/pattern"
	"barkwright/core/units"
)

// PrintRoll writes the pattern as HTML for a roll of paper: pages of its own size,
// none longer than readers of PDF show. It returns the writer's first error.
func PrintRoll(w io.Writer, p pattern.Pattern, h pattern.Head) error {
	b := bufio.NewWriter(w)
	block := p.Roll()
	across, down := block.Page()
	width, height := units.Trimmed(across, 3)+"mm", units.Trimmed(down, 3)+"mm"
	b.WriteString("<style>\n" + style + "@page { size: " + width + " " + height + "; margin: 0; }\n" +
		".sheets, .sheets .tile { width: " + width + "; }\n" +
		".sheets .tile { width: " + width + "; height: " + height + "; }\n</style>\n<div class=\"sheets\">\n")
	for _, t := range p.Tiles(block) {
		b.WriteString(`<section class="tile">`)
		if err := t.SVG(b, h); err != nil {
			return err
		}
		b.WriteString("</section>\n")
	}
	b.WriteString("</div>\n")
	return b.Flush()
}
