package e2e

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf16"

	"github.com/stretchr/testify/require"
)

// pdfFont is a font of a PDF: how broad its glyphs are, in thousandths of their size, and
// what they stand for. ISO 32000-1, 9.7.4.3 and 9.10.3.
type pdfFont struct {
	widths map[int]float64
	usual  float64
	text   map[int]string
}

// The height of lettering over and under its base line, in its size: capitals and figures,
// and the tails of small letters. Between what common faces have; from memory.
const letterUp, letterDown = 0.73, 0.21

// written is a line of lettering as it is being read.
type written struct {
	font    pdfFont
	size    float64
	m       matrix
	x       float64 // how far the pen has come since m was set
	corners []spot  // where it starts, then the corners of every piece
	text    string
}

// show reads a string of two-byte glyphs.
func (w *written) show(word string) {
	hex := strings.Trim(word, "<>")
	from := w.x
	for i := 0; i+4 <= len(hex); i += 4 {
		code, _ := strconv.ParseInt(hex[i:i+4], 16, 32)
		width, known := w.font.widths[int(code)]
		if !known {
			width = w.font.usual
		}
		w.x += width * w.size / 1000
		w.text += w.font.text[int(code)]
	}
	at := func(x, y float64) spot {
		return spot{w.m[0]*x + w.m[2]*y + w.m[4], w.m[1]*x + w.m[3]*y + w.m[5]}
	}
	if len(w.corners) == 0 {
		w.corners = append(w.corners, at(from, 0))
	}
	// A space at either end marks nothing.
	for _, q := range [4][2]float64{{from, letterUp}, {w.x, letterUp}, {w.x, -letterDown}, {from, -letterDown}} {
		w.corners = append(w.corners, at(q[0], q[1]*w.size))
	}
}

var (
	pdfFontName   = regexp.MustCompile(`/(F\d+) (\d+) 0 R`)
	pdfDescendant = regexp.MustCompile(`/DescendantFonts \[(\d+) 0 R\]`)
	pdfToUnicode  = regexp.MustCompile(`/ToUnicode (\d+) 0 R`)
	pdfWidths     = regexp.MustCompile(`(?s)/W \[(.*?)\]>?\n?/DW ([\d.]+)`)
	pdfBetween    = regexp.MustCompile(`(?s)begin(bfchar|bfrange)(.*?)end`)
	pdfHex        = regexp.MustCompile(`<([0-9A-Fa-f]+)>`)
)

// object is a PDF's object of a number, up to its end.
func object(pdf []byte, number string) []byte {
	at := bytes.Index(pdf, []byte("\n"+number+" 0 obj"))
	if at < 0 {
		return nil
	}
	end := bytes.Index(pdf[at:], []byte("endobj"))
	return pdf[at : at+end]
}

// fontsOf reads the fonts that a page names.
func fontsOf(t testing.TB, pdf, page []byte) map[string]pdfFont {
	t.Helper()
	out := map[string]pdfFont{}
	for _, m := range pdfFontName.FindAllSubmatch(page, -1) {
		font := object(pdf, string(m[2]))
		f := pdfFont{widths: map[int]float64{}, text: map[int]string{}}
		if d := pdfDescendant.FindSubmatch(font); d != nil {
			w := pdfWidths.FindSubmatch(object(pdf, string(d[1])))
			require.NotNil(t, w, "the breadths of %s", m[1])
			f.usual, _ = strconv.ParseFloat(string(w[2]), 64)
			f.readWidths(string(w[1]))
		}
		if u := pdfToUnicode.FindSubmatch(font); u != nil {
			f.readText(t, object(pdf, string(u[1])))
		}
		out[string(m[1])] = f
	}
	return out
}

// readWidths reads "first [w w w]" and "first last w".
func (f *pdfFont) readWidths(text string) {
	fields := strings.Fields(strings.NewReplacer("[", " [ ", "]", " ] ").Replace(text))
	number := func(i int) float64 {
		v, _ := strconv.ParseFloat(fields[i], 64)
		return v
	}
	for i := 0; i+2 < len(fields); {
		first := int(number(i))
		if fields[i+1] != "[" {
			for code := first; code <= int(number(i+1)); code++ {
				f.widths[code] = number(i + 2)
			}
			i += 3
			continue
		}
		for i += 2; i < len(fields) && fields[i] != "]"; i++ {
			f.widths[first] = number(i)
			first++
		}
		i++
	}
}

func (f *pdfFont) readText(t testing.TB, stream []byte) {
	t.Helper()
	at := bytes.Index(stream, []byte(pdfStream))
	z, err := zlib.NewReader(bytes.NewReader(stream[at+len(pdfStream):]))
	require.NoError(t, err)
	text, err := io.ReadAll(z)
	require.NoError(t, err)
	letters := func(hex string) string {
		var units []uint16
		for i := 0; i+4 <= len(hex); i += 4 {
			v, _ := strconv.ParseUint(hex[i:i+4], 16, 16)
			units = append(units, uint16(v))
		}
		return string(utf16.Decode(units))
	}
	code := func(hex string) int {
		v, _ := strconv.ParseInt(hex, 16, 32)
		return int(v)
	}
	for _, m := range pdfBetween.FindAllSubmatch(text, -1) {
		all := pdfHex.FindAllSubmatch(m[2], -1)
		if string(m[1]) == "bfchar" {
			for i := 0; i+1 < len(all); i += 2 {
				f.text[code(string(all[i][1]))] = letters(string(all[i+1][1]))
			}
			continue
		}
		for i := 0; i+2 < len(all); i += 3 {
			first := code(string(all[i+2][1]))
			for c := code(string(all[i][1])); c <= code(string(all[i+1][1])); c++ {
				f.text[c] = letters(fmt.Sprintf("%04X", first))
				first++
			}
		}
	}
}
