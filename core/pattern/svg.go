package pattern

import (
	"bufio"
	"fmt"
	"hash/fnv"
	"io"
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
)

// svg writes one drawing in millimetres, black on white. The first error of the
// writer is kept and returned at its end.
type svg struct{ b *bufio.Writer }

func newSVG(w io.Writer, width, height float64) *svg {
	s := &svg{bufio.NewWriter(w)}
	size := Mm(width) + " " + Mm(height)
	s.printf(`<svg xmlns="http://www.w3.org/2000/svg" role="img" width="%smm" height="%smm" viewBox="0 0 %s" overflow="hidden" font-family="sans-serif" fill="#000">`+"\n",
		Mm(width), Mm(height), size)
	return s
}

func (s *svg) printf(format string, args ...any) { fmt.Fprintf(s.b, format, args...) }

func (s *svg) title(title, description string) {
	s.printf("<title>%s</title><desc>%s</desc>\n", draw.Escape(title), draw.Escape(description))
}

func (s *svg) line(l Line) {
	s.printf(`<path d="%s" fill="none" stroke="#000" stroke-width="%s"`, path(l.Points), Mm(l.Style.width()))
	if d := l.Style.dash(); d != "" {
		s.printf(` stroke-dasharray="%s"`, d)
	}
	s.printf("/>\n")
}

func (s *svg) rect(x, y, width, height float64) {
	s.printf(`<path d="M%s %sh%sv%sh%sZ"/>`+"\n", Mm(x), Mm(y), Mm(width), Mm(height), Mm(-width))
}

func (s *svg) label(l Label) { s.text(l, "") }
func (s *svg) bold(l Label)  { s.text(l, ` font-weight="700"`) }

func (s *svg) text(l Label, more string) {
	if l.End {
		more += ` text-anchor="end"`
	}
	if l.Turned {
		more += ` transform="rotate(-90 ` + Mm(l.At.X) + " " + Mm(l.At.Y) + `)"`
	}
	s.printf(`<text x="%s" y="%s" font-size="%s"%s>%s</text>`+"\n", Mm(l.At.X), Mm(l.At.Y), Mm(l.size()), more, draw.Escape(l.Text))
}

func (s *svg) end() error {
	s.printf("</svg>\n")
	return s.b.Flush()
}

// Mm writes millimetres to the thousandth, so that files are the same everywhere.
func Mm(v float64) string {
	text := strconv.FormatFloat(v, 'f', 3, 64)
	text = strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

func path(points []geom.Vec2) string {
	var b strings.Builder
	for i, p := range points {
		b.WriteByte("ML"[min(i, 1)])
		b.WriteString(Mm(p.X) + " " + Mm(p.Y))
	}
	return b.String()
}

// wrap breaks text at spaces into lines of at most so many letters; a longer word
// is broken.
func wrap(text string, letters float64) []string {
	most := max(1, int(letters))
	var lines []string
	line := []rune{}
	for _, word := range strings.Fields(text) {
		w := []rune(word)
		if len(line) > 0 && len(line)+1+len(w) > most {
			lines = append(lines, string(line))
			line = nil
		}
		if len(line) > 0 {
			line = append(line, ' ')
		}
		for len(w) > most {
			lines = append(lines, string(w[:most]))
			w = w[most:]
		}
		line = append(line, w...)
	}
	if len(line) > 0 {
		lines = append(lines, string(line))
	}
	return lines
}

// Mark is the short mark of the design's code that every sheet carries: sheets of
// two different designs do not bear the same one but by a chance of one in four
// thousand million. Empty where there is no code.
func (h Head) Mark() string {
	if h.Code == "" {
		return ""
	}
	f := fnv.New32a()
	f.Write([]byte(h.Code))
	text := strings.ToUpper(fmt.Sprintf("%08x", f.Sum32()))
	return text[:4] + "-" + text[4:]
}
