package main

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"errors"
	"fmt"
	"html"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"unicode/utf8"

	"barkwright/core/pattern"
)

// parts are what a page is laid together from.
type parts struct {
	Page, Style, Boot string
	// Form, Notches and Cells are written from the tables of the core; they, Headline, Held,
	// First and Key show the boat that the page opens with.
	Form, Notches, Cells, Headline, Held, First, Key string
	// Notices is what goes with each copy, for the fold at the page's foot.
	Notices string
	// Contact is where a correction or a removal is asked for, empty if the owner set none.
	Contact string
	// Exec is wasm_exec.js of the toolchain that compiled Wasm; no other fits.
	Exec string
	Wasm []byte
}

// read gathers every part but the program from the web folder.
func read(web string) (parts, error) {
	p := parts{Form: form(), Notches: notches(), Cells: cells(), Headline: headline(), Held: held()}
	p.First, p.Key = pictures()
	var unpack, write, first, early, media, paper, shed, bench, tracing string
	for name, to := range map[string]*string{"index.html": &p.Page, "style.css": &p.Style,
		"paper.css": &paper, "shed.css": &shed, "media.css": &media,
		"bench.css": &bench, "tracing.css": &tracing, "boot.js": &p.Boot,
		"write.js": &write, "unpack.js": &unpack, "first.js": &first, "early.js": &early, "CONTACT.txt": &p.Contact} {
		text, err := os.ReadFile(filepath.Join(web, name))
		if err != nil {
			return p, err
		}
		*to = string(text)
	}
	p.Style += paper + shed + media + bench + tracing
	p.Boot = unpack + write + p.Boot + first + early
	root, err := goroot()
	if err != nil {
		return p, err
	}
	text, err := os.ReadFile(filepath.Join(root, "lib", "wasm", "wasm_exec.js"))
	p.Exec = string(text)
	return p, err
}

// lay lays the parts into the page's hooks but those that tell a page that stands alone
// from one that is served. Each hook must be there once, and nothing of ours may ask for
// anything outside the file.
func (p parts) lay() (string, error) {
	packed, err := pack(p.Wasm)
	if err != nil {
		return "", err
	}
	if strings.Contains(packed, "<") {
		return "", errors.New("the program would close its script early")
	}
	for name, text := range map[string]string{"index.html": p.Page, "style": p.Style, "boot.js": p.Boot,
		"form": p.Form + p.Notches + p.Cells + p.Headline + p.Held, "wasm_exec.js": uncommented(p.Exec)} {
		found := outside.FindString(text)
		if found == "" && name != "wasm_exec.js" {
			found = loaded.FindString(text)
		}
		if found != "" {
			return "", fmt.Errorf("%s reaches outside the file: %q", name, found)
		}
	}
	page := p.Page
	for _, hook := range []struct{ name, text string }{
		{"STYLE", p.Style}, {"FORM", p.Form}, {"NOTCHES", p.Notches}, {"CELLS", p.Cells},
		{"HEADLINE", p.Headline}, {"HELD", p.Held}, {"FIRST", p.First}, {"KEY", p.Key},
		{"VERSION", version()}, {"NOTICES", p.Notices}, {"CONTACT", contact(p.Contact)}, {"EXEC", p.Exec},
		{"BOOT", uncommented(p.Boot)},
	} {
		if strings.Contains(strings.ToLower(hook.text), "</script") {
			return "", fmt.Errorf("%s would close its script early", hook.name)
		}
		if page, err = hang(page, hook.name, hook.text); err != nil {
			return "", err
		}
	}
	return hang(page, "WASM", inPieces(packed))
}

// pieceSize is how many bytes of the program's text stand in one element: some three milliseconds
// of reading. Between elements a browser may paint what stands before them.
const pieceSize = 1 << 18

// inPieces lays the program's text into elements which boot.js reads in turn.
func inPieces(text string) string {
	var b strings.Builder
	for from := 0; from < len(text); {
		to := min(from+pieceSize, len(text))
		for to < len(text) && !utf8.RuneStart(text[to]) {
			to++
		}
		b.WriteString(`<script type="text/plain" data-program>` + text[from:to] + "</script>")
		from = to
	}
	return b.String()
}

// hang puts a text in the place of a hook.
func hang(page, hook, text string) (string, error) {
	mark := "<!--" + hook + "-->"
	if strings.Count(page, mark) != 1 {
		return "", fmt.Errorf("index.html has %d of the hook %s", strings.Count(page, mark), mark)
	}
	return strings.Replace(page, mark, strings.TrimSpace(text), 1), nil
}

// alone finishes a page that stands alone.
func alone(laid string) ([]byte, error) {
	return finish(laid, "", "it makes no request of any kind")
}

// finish writes into the page what it asks of anyone, in markup and in words, and last
// of all its policy.
func finish(laid, served, asks string) ([]byte, error) {
	page, err := hang(laid, "SERVED", served)
	if err != nil {
		return nil, err
	}
	if page, err = hang(page, "ASKS", asks); err != nil {
		return nil, err
	}
	return []byte(strings.Replace(page, "<!--HASHES-->", hashes(page), 1)), nil
}

// version is the one that every sheet printed from the page names.
func version() string { return pattern.VersionLine }

// contact says where to ask for a correction or a removal.
func contact(address string) string {
	if address = strings.TrimSpace(address); address == "" {
		return "To have something here corrected or removed, ask whoever gave you this page: its makers have set no address yet."
	}
	return "To have something here corrected or removed, ask: " + html.EscapeString(address)
}

// script finds the scripts that the browser runs; the program stands in one that it
// does not.
var script = regexp.MustCompile(`(?s)<script>(.*?)</script>`)

// hashes are the sources of the page's scripts as its policy names them, so that no
// other script and no handler in the markup runs: W3C, Content Security Policy 3.
func hashes(page string) string {
	var sources []string
	for _, found := range script.FindAllStringSubmatch(page, -1) {
		sum := sha256.Sum256([]byte(found[1]))
		sources = append(sources, "'sha256-"+base64.StdEncoding.EncodeToString(sum[:])+"'")
	}
	return strings.Join(sources, " ")
}

// outside finds what would make the browser ask for something, and loaded what
// an element would load, apart from wasm_exec.js, which has a variable so named.
var (
	loaded  = regexp.MustCompile(`(?i)\bsrc\s*=`)
	outside = regexp.MustCompile(`(?i)https?:|\bfetch\(|@import|XMLHttpRequest|WebSocket|sendBeacon|\burl\(`)
)

var comment = regexp.MustCompile(`(?s:/\*.*?\*/)|(?m:^\s*//.*$)|(?m:\s//\s.*$)`)

// uncommented leaves out comments of a script: they may name addresses, and weigh.
func uncommented(script string) string { return comment.ReplaceAllString(script, "") }

// pack takes the program apart, compresses it as hard as gzip goes and writes the
// result as text.
func pack(wasm []byte) (string, error) {
	apart, err := split(wasm)
	if err != nil {
		return "", err
	}
	var b bytes.Buffer
	z, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return "", err
	}
	if _, err := z.Write(apart); err != nil {
		return "", err
	}
	if err := z.Close(); err != nil {
		return "", err
	}
	return sevens(b.Bytes()), nil
}

// barePage is the least page that boots the same way: what Ebitengine alone costs.
const barePage = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Bare</title>
<style>#view{position:relative;height:420px}<!--STYLE--></style>
<div id="view"></div><p id="picture-note"></p><!--FORM--><!--NOTCHES--><!--CELLS-->
<!--HEADLINE--><!--HELD--><!--FIRST--><!--KEY--><!--NOTICES--><!--VERSION--><!--CONTACT--><!--SERVED--><!--ASKS-->
<script><!--EXEC--></script><script><!--BOOT--></script><!--WASM--></html>`
