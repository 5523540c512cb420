package main

import (
	"barkwright/core/design"
	"bytes"
	"compress/gzip"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func real(t *testing.T) parts {
	p, err := read("..")
	require.NoError(t, err)
	p.Wasm = module()
	return p
}

// assemble makes the page that stands alone.
func assemble(p parts) ([]byte, error) {
	laid, err := p.lay()
	if err != nil {
		return nil, err
	}
	return alone(laid)
}

// What the browser will unpack is what went in.
func TestAssemble(t *testing.T) {
	p := real(t)
	page, err := assemble(p)
	require.NoError(t, err)
	text := string(page)
	assert.NotContains(t, text, "<!--")
	packed := unsevens(programIn(text))
	z, err := gzip.NewReader(bytes.NewReader(packed))
	require.NoError(t, err)
	apart, err := io.ReadAll(z)
	require.NoError(t, err)
	again, err := split(p.Wasm)
	require.NoError(t, err)
	assert.Equal(t, again, apart)

	assert.Less(t, strings.Index(text, `id="form"`), strings.Index(text, "data-program>"),
		"markup shows before the program is read")
	expected := regexp.MustCompile(`<link rel="expect" href="#(\w+)" blocking="render">`).FindStringSubmatch(text)
	require.NotNil(t, expected)
	laid := strings.Index(text, `id="`+expected[1]+`"`)
	assert.Greater(t, laid, strings.Index(text, "window.wakened"),
		"the page is painted first when its scripts have laid it out")
	assert.Less(t, laid, strings.Index(text, "data-program>"), "the page is painted before the program is read")
	assert.Contains(t, text, `content="default-src 'none';`)
	policy := regexp.MustCompile(`script-src ([^;]*);`).FindStringSubmatch(text)
	require.NotNil(t, policy)
	assert.NotContains(t, policy[1], "unsafe-inline")
	assert.Contains(t, text, "; worker-src blob:; img-src data: blob:;",
		"no thread and no picture comes from elsewhere")
	assert.Len(t, regexp.MustCompile(`'sha256-[A-Za-z0-9+/]{43}='`).FindAllString(policy[1], -1),
		strings.Count(text, "<script>"))
}

// programIn is the program's text as boot.js reads it from a page.
func programIn(page string) string {
	var text strings.Builder
	for _, found := range regexp.MustCompile(`<script type="text/plain" data-program>([^<]*)</script>`).FindAllStringSubmatch(page, -1) {
		text.WriteString(found[1])
	}
	return text.String()
}

// A text is parted between characters, and nothing of it is lost.
func TestInPieces(t *testing.T) {
	for _, text := range []string{"1:a.", strings.Repeat("a", pieceSize), strings.Repeat("a", pieceSize-1) + "\u00a0b.",
		strings.Repeat("a", pieceSize-2) + "\u00a0b.", "a" + strings.Repeat("\u00ff", pieceSize) + "."} {
		laid := inPieces(text)
		assert.Equal(t, text, programIn(laid))
		for _, each := range strings.SplitAfter(laid, "</script>") {
			assert.True(t, utf8.ValidString(each))
			assert.Less(t, len(each), pieceSize+100)
		}
		assert.Equal(t, (len(text)+pieceSize-1)/pieceSize, strings.Count(laid, "data-program"))
	}
}

// No part of ours may ask for anything: each of these must be refused.
func TestAssembleRefuses(t *testing.T) {
	for name, spoil := range map[string]func(*parts){
		"a picture from elsewhere": func(p *parts) { p.Page += `<img src="a.png">` },
		"an address in the style":  func(p *parts) { p.Style += `a{background:url(a.png)}` },
		"an address in a script":   func(p *parts) { p.Boot += `location = "https://example.org"` },
		"a fetch in a script":      func(p *parts) { p.Boot += "\nfetch('a')" },
		"a fetch in wasm_exec":     func(p *parts) { p.Exec += "\nfetch('a')" },
		"a frame in the form":      func(p *parts) { p.Form += `<iframe SRC = "a">` },
		"a script closed early":    func(p *parts) { p.Boot += "'</script>'" },
		"a hook gone":              func(p *parts) { p.Page = strings.Replace(p.Page, "<!--WASM-->", "", 1) },
		"a hook twice":             func(p *parts) { p.Page += "<!--FORM-->" },
	} {
		p := real(t)
		spoil(&p)
		_, err := assemble(p)
		assert.Error(t, err, name)
	}
}

// Every parameter has its control, and only the page's own text is markup.
func TestFormHasEveryParameter(t *testing.T) {
	text := form()
	for _, p := range design.Params() {
		if p.Paddler > 1 {
			continue // the page's program repeats the first one's
		}
		assert.Contains(t, text, ` name="`+p.Key+`"`)
	}
	assert.Contains(t, text, `name="length" min="96" max="444" step="0.25" value="192"`)
}

// An address is shown as it was written, and none is made up.
func TestContact(t *testing.T) {
	p := real(t)
	p.Contact = "corrections <at> example.org\n"
	page, err := assemble(p)
	require.NoError(t, err)
	assert.Contains(t, string(page), "ask: corrections &lt;at&gt; example.org</p>")
	assert.Contains(t, contact(" \n"), "no address yet")
}
