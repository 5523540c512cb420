package e2e

import (
	"bytes"
	"compress/zlib"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// sheetOfPaper is what a page of a PDF shows, read from its own drawing
// instructions: millimetres from the paper's upper left corner.
type sheetOfPaper struct {
	width, height float64
	painted       []painted
}

// painted is one path with the box it was cut to.
type painted struct {
	filled    bool
	parts     [][]spot
	low, high spot // the clip
	letters   bool // lettering: parts holds where it starts, then its corners
	text      string
}

type spot struct{ x, y float64 }

const mmPerPoint = 25.4 / 72

var (
	pdfPage     = regexp.MustCompile(`(?s)/Type /Page\n.*?/MediaBox \[0 0 ([\d.]+) ([\d.]+)\].*?/Contents (\d+) 0 R`)
	pdfStream   = "stream\n"
	pdfOperator = regexp.MustCompile(`^[A-Za-z*]+$`)
)

// readPDF reads the pages of a PDF as Chromium writes them: objects in the open,
// one compressed stream of instructions a page.
func readPDF(t testing.TB, pdf []byte) []sheetOfPaper {
	t.Helper()
	var out []sheetOfPaper
	for _, m := range pdfPage.FindAllSubmatch(pdf, -1) {
		at := bytes.Index(pdf, []byte("\n"+string(m[3])+" 0 obj"))
		require.Positive(t, at)
		begin := at + bytes.Index(pdf[at:], []byte(pdfStream)) + len(pdfStream)
		z, err := zlib.NewReader(bytes.NewReader(pdf[begin:]))
		require.NoError(t, err)
		text, err := io.ReadAll(z)
		require.NoError(t, err)
		width, _ := strconv.ParseFloat(string(m[1]), 64)
		height, _ := strconv.ParseFloat(string(m[2]), 64)
		s := sheetOfPaper{width: width * mmPerPoint, height: height * mmPerPoint}
		s.run(t, string(text), height, fontsOf(t, pdf, m[0]))
		out = append(out, s)
	}
	require.NotEmpty(t, out)
	return out
}

// matrix maps x, y to a x + c y + e, b x + d y + f, as PDF has it.
type matrix [6]float64

func (m matrix) by(n matrix) matrix {
	return matrix{
		n[0]*m[0] + n[1]*m[2], n[0]*m[1] + n[1]*m[3],
		n[2]*m[0] + n[3]*m[2], n[2]*m[1] + n[3]*m[3],
		n[4]*m[0] + n[5]*m[2] + m[4], n[4]*m[1] + n[5]*m[3] + m[5],
	}
}

// takes is how many numbers an instruction takes.
var takes = map[string]int{"cm": 6, "Tm": 6, "c": 6, "re": 4, "m": 2, "l": 2, "Td": 2, "Tf": 1}

type drawing struct {
	m         matrix
	low, high spot
}

// run plays a page's instructions.
func (s *sheetOfPaper) run(t testing.TB, text string, height float64, fonts map[string]pdfFont) {
	t.Helper()
	now := drawing{m: matrix{1, 0, 0, 1, 0, 0}, high: spot{math.Inf(1), math.Inf(1)}, low: spot{math.Inf(-1), math.Inf(-1)}}
	var kept []drawing
	var parts [][]spot
	var numbers []float64
	clipping := false
	var line written
	var name string
	place := func(x, y float64) spot {
		m := now.m
		return spot{(m[0]*x + m[2]*y + m[4]) * mmPerPoint, (height - (m[1]*x + m[3]*y + m[5])) * mmPerPoint}
	}
	paint := func(filled bool) {
		s.painted = append(s.painted, painted{filled: filled, parts: parts, low: now.low, high: now.high})
		parts = nil
	}
	for _, word := range strings.Fields(text) {
		if v, err := strconv.ParseFloat(word, 64); err == nil {
			numbers = append(numbers, v)
			continue
		}
		switch {
		case strings.HasPrefix(word, "<"):
			line.show(word)
			continue
		case strings.HasPrefix(word, "/"):
			name = word[1:]
			continue
		case !pdfOperator.MatchString(word):
			continue
		}
		n := numbers
		numbers = nil
		// What an instruction takes stands right before it; other numbers may stand
		// before that, in marks of contents.
		if most := takes[word]; len(n) > most {
			n = n[len(n)-most:]
		}
		switch word {
		case "q":
			kept = append(kept, now)
		case "Q":
			now, kept = kept[len(kept)-1], kept[:len(kept)-1]
		case "cm":
			now.m = now.m.by(matrix(n))
		case "m":
			parts = append(parts, []spot{place(n[0], n[1])})
		case "l":
			parts[len(parts)-1] = append(parts[len(parts)-1], place(n[0], n[1]))
		case "c":
			parts[len(parts)-1] = append(parts[len(parts)-1], place(n[4], n[5]))
		case "re":
			x, y, w, h := n[0], n[1], n[2], n[3]
			parts = append(parts, []spot{place(x, y), place(x+w, y), place(x+w, y+h), place(x, y+h)})
		case "W", "W*":
			clipping = true
		case "n":
			if clipping && len(parts) > 0 {
				low, high := reach(parts)
				now.low = spot{max(now.low.x, low.x), max(now.low.y, low.y)}
				now.high = spot{min(now.high.x, high.x), min(now.high.y, high.y)}
			}
			clipping, parts = false, nil
		case "f", "f*", "F":
			paint(true)
		case "S", "s":
			paint(false)
		case "BT":
			line = written{}
		case "Tf":
			line.font, line.size = fonts[name], n[0]
		case "Tm":
			line.m = matrix(n)
		case "Td":
			line.m = matrix{1, 0, 0, 1, n[0], n[1]}.by(line.m)
			line.x = 0
		case "ET":
			if len(line.corners) == 0 {
				continue
			}
			p := painted{letters: true, parts: [][]spot{nil}, low: now.low, high: now.high, text: line.text}
			for _, q := range line.corners {
				p.parts[0] = append(p.parts[0], place(q.x, q.y))
			}
			s.painted = append(s.painted, p)
		}
	}
}

// reach is the box of some paths.
func reach(parts [][]spot) (low, high spot) {
	low, high = spot{math.Inf(1), math.Inf(1)}, spot{math.Inf(-1), math.Inf(-1)}
	for _, part := range parts {
		for _, p := range part {
			low = spot{min(low.x, p.x), min(low.y, p.y)}
			high = spot{max(high.x, p.x), max(high.y, p.y)}
		}
	}
	return low, high
}
