package sheet

import (
	"bufio"
	"io"

	"barkwright/core/pattern"
)

// PrintRoll writes the pattern as HTML for a roll of paper: pages of its own size,
// none longer than readers of PDF show. It returns the writer's first error.
func PrintRoll(w io.Writer, p pattern.Pattern, h pattern.Head) error {
	b := bufio.NewWriter(w)
	block := p.Roll()
	size := pattern.Mm(block.Width) + "mm " + pattern.Mm(block.Height) + "mm"
	b.WriteString("<style>\n" + style + "@page { size: " + size + "; margin: 0; }\n" +
		".sheets, .sheets .tile { width: " + pattern.Mm(block.Width) + "mm; }\n.sheets .tile { width: " + pattern.Mm(block.Width) + "mm; height: " + pattern.Mm(block.Height) + "mm; }\n</style>\n<div class=\"sheets\">\n")
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
