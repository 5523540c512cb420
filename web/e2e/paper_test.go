package e2e

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// paper is a paper's size in inches.
type paper struct {
	name          string
	width, height float64
}

var papers = []paper{{"A4", 210 / 25.4, 297 / 25.4}, {"Letter", 8.5, 11}}

// choose ticks what is printed, by keyboard.
func (p *tab) choose(names ...string) {
	p.Helper()
	p.press(`[data-paper="none"]`)
	for _, n := range names {
		eval[bool](p, `(e => { e.focus(); return document.activeElement === e;
			})(document.querySelector('#paper-form input[value="'+%q+'"]'))`, n)
		p.do(chromedp.KeyEvent(" "))
	}
}

// printed is the PDF of what the page hands the printer.
func (p *tab) printed(button string, on paper, cssSize bool) []byte {
	p.Helper()
	eval[bool](p, `window.asked = 0, window.print = () => {
		asked++;
		window.handed = document.getElementById('print').textContent;
	}, true`)
	p.press(button)
	p.wait(`asked === 1`)
	res, err := chromedp.Call(p.ctx, page.PrintToPDF, page.PrintToPDFParams{PaperWidth: on.width,
		PaperHeight: on.height, PreferCSSPageSize: &cssSize})
	require.NoError(p, err)
	if folder := os.Getenv("BARKWRIGHT_SHOTS"); folder != "" {
		require.NoError(p, os.WriteFile(filepath.Join(folder, "paper-"+on.name+".pdf"), res.Data, 0o644))
	}
	return res.Data
}

// stemTiles are the sheets of the default boat's stem-piece, as the core cuts them.
func stemTiles() []pattern.Tile {
	c := core.Evaluate(design.Default())
	c = c.WithFlat(core.LayFlat(c, bark.Resolution{Columns: 24, Rows: 8}, nil, nil))
	return pattern.Make(c, "stem", pattern.Options{System: units.Imperial16})[0].Tiles(pattern.Paper)
}

// blocks are the filled rectangles of a sheet of a breadth and height, mm.
func (s sheetOfPaper) blocks(width, height, within float64) int {
	n := 0
	for _, q := range s.painted {
		if !q.filled {
			continue
		}
		for _, part := range q.parts {
			low, high := reach([][]spot{part})
			if math.Abs(high.x-low.x-width) <= within && math.Abs(high.y-low.y-height) <= within {
				n++
			}
		}
	}
	return n
}

// frame is how wide and high the frame that proves the scale is within its four bars and
// over all, mm.
func (s sheetOfPaper) frame(t *testing.T, within float64) (inside, outside spot) {
	t.Helper()
	var lying, upright [][2]spot
	for _, q := range s.painted {
		for _, part := range q.parts {
			low, high := reach([][]spot{part})
			w, h := high.x-low.x, high.y-low.y
			switch {
			case !q.filled:
			case math.Abs(w-50.8) <= within && math.Abs(h-0.4) <= within:
				lying = append(lying, [2]spot{low, high})
			case math.Abs(w-0.4) <= within && math.Abs(h-50.8) <= within:
				upright = append(upright, [2]spot{low, high})
			}
		}
	}
	require.Len(t, lying, 2, "the frame's upper and lower bar")
	require.Len(t, upright, 2, "the frame's left and right bar")
	inside.x = max(upright[0][0].x, upright[1][0].x) - min(upright[0][1].x, upright[1][1].x)
	inside.y = max(lying[0][0].y, lying[1][0].y) - min(lying[0][1].y, lying[1][1].y)
	outside.x = max(upright[0][1].x, upright[1][1].x) - min(upright[0][0].x, upright[1][0].x)
	outside.y = max(lying[0][1].y, lying[1][1].y) - min(lying[0][0].y, lying[1][0].y)
	return inside, outside
}

// Bars, frame and safe area on both papers, from the browser's own PDF. The bars
// are to be true within 0.1 mm.
func TestPatternsPrintTrue(t *testing.T) {
	const within = 0.1
	p := open(t, desktop)
	tiles := stemTiles()
	require.Greater(t, len(tiles), 3)
	for _, on := range papers {
		t.Run(on.name, func(t *testing.T) {
			// With a build sheet before them: what is too broad on it shrinks all.
			p.choose("rib", "stem")
			pages := readPDF(t, p.printed(`[data-paper="print"]`, on, false))
			const theMap, first = 1, 2 // after the proof of scale
			require.Greater(t, len(pages), first+len(tiles), "and every sheet")
			pages = pages[len(pages)-first-len(tiles):]
			for i, s := range pages {
				name := fmt.Sprintf("page %d", i+1)
				assert.Equal(t, 1, s.blocks(150, 1, within), name+": the bar of 150 mm")
				assert.Equal(t, 1, s.blocks(152.4, 1, within), name+": the bar of 6 in")
				assert.Equal(t, 1, s.blocks(1, 150, within), name+": the bar of 150 mm, upright")
				assert.Equal(t, 1, s.blocks(1, 152.4, within), name+": the bar of 6 in, upright")
				if i != theMap {
					inside, outside := s.frame(t, within)
					assert.InDelta(t, 50, inside.x, within, name+": the frame inside")
					assert.InDelta(t, 50, inside.y, within, name+": the frame inside, upright")
					assert.InDelta(t, 50.8, outside.x, within, name+": the frame outside")
					assert.InDelta(t, 50.8, outside.y, within, name+": the frame outside, upright")
				}
				assert.InDelta(t, on.width*25.4, s.width, 25.4/96, "the paper, to a CSS pixel")
				s.insideMargin(t, name)
			}
			assertOverlaps(t, tiles, pages[first:])
		})
	}
}

// insideMargin checks that nothing is painted in the margin of 9 mm, to a CSS pixel.
func (s sheetOfPaper) insideMargin(t *testing.T, name string) {
	t.Helper()
	const margin, pixel = 9, 25.4 / 96
	for _, q := range s.painted {
		low, high := reach(q.parts)
		low = spot{max(low.x, q.low.x), max(low.y, q.low.y)}
		high = spot{min(high.x, q.high.x), min(high.y, q.high.y)}
		if low.x > high.x || low.y > high.y {
			continue // cut off altogether
		}
		// The paper's own white ground is no mark.
		if q.filled && high.x-low.x > 180 && high.y-low.y > 240 {
			continue
		}
		assert.GreaterOrEqual(t, min(low.x, low.y), margin-pixel, name)
		assert.LessOrEqual(t, high.x, s.width-margin+pixel, name)
		assert.LessOrEqual(t, high.y, s.height-margin+pixel, name)
	}
}

// assertOverlaps lays neighbouring sheets on one another: every corner of a line in
// the strip they share stands on both.
func assertOverlaps(t *testing.T, tiles []pattern.Tile, pages []sheetOfPaper) {
	t.Helper()
	const near = 0.03 // mm: PDF's digits and the pixel the block's corner falls on
	stepX, stepY := pattern.Paper.Width-pattern.Paper.Overlap, pattern.Paper.Height-pattern.Paper.Overlap
	shared := 0
	for i, a := range tiles {
		for j, b := range tiles {
			dx, dy := float64(b.Col-a.Col)*stepX, float64(b.Row-a.Row)*stepY
			if i >= j || b.Col-a.Col > 1 || a.Col > b.Col || b.Row-a.Row > 1 || (dx != 0 && dy != 0) {
				continue
			}
			from, onto := pages[i].corners(), pages[j].corners()
			for _, q := range from {
				moved := spot{q.x - dx, q.y - dy}
				if !inStrip(moved, dx > 0) {
					continue
				}
				shared++
				off := math.Inf(1)
				for _, r := range onto {
					off = min(off, math.Hypot(moved.x-r.x, moved.y-r.y))
				}
				assert.LessOrEqual(t, off, near, "%s and %s share %v", a.ID(), b.ID(), moved)
			}
		}
	}
	assert.Greater(t, shared, 50, "lines in the strips")
}

// corners are the corners of a sheet's lines in its block, mm.
func (s sheetOfPaper) corners() []spot {
	const margin = 9
	var out []spot
	for _, q := range s.painted {
		if q.filled || q.letters {
			continue
		}
		for _, part := range q.parts {
			for _, c := range part {
				out = append(out, spot{c.x - margin, c.y - margin})
			}
		}
	}
	return out
}

// inStrip tells whether a corner lies inside the strip at a block's left or upper
// edge, clear of its ends, where lines are cut, and of the edges' own lines.
func inStrip(q spot, left bool) bool {
	const clear = 0.2
	o := pattern.Paper.Overlap
	inside := func(v, most float64) bool { return v > clear && v < most-clear }
	if left {
		return inside(q.x, o) && inside(q.y, pattern.Paper.Height)
	}
	return inside(q.y, o) && inside(q.x, pattern.Paper.Width)
}

// A roll is one page of its own size, and its longest line is true within 2 mm in
// 16 ft; here within a tenth of that.
func TestRollPrintsTrue(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `document.getElementById('drawing').value = 'stick', true`)
	pages := readPDF(t, p.printed(`[data-paper="roll"]`, paper{name: "roll", width: 8.5, height: 11}, true))
	require.Len(t, pages, 1)
	run := core.Evaluate(design.Default()).Frame.Gunwales.Run * 1000
	longest := 0.0
	for _, q := range pages[0].painted {
		if low, high := reach(q.parts); !q.filled && !q.letters {
			longest = max(longest, high.y-low.y)
		}
	}
	assert.InDelta(t, run, longest, 0.2)
	assert.Equal(t, 1, pages[0].blocks(150, 1, 0.1))
}

// Build sheets: the name, the cautions and every stage, in place of the page; gone
// after printing.
func TestBuildSheetsPrint(t *testing.T) {
	p := open(t, desktop)
	p.choose("choose", "gather", "gunwales", "bed", "bark", "lace", "ends", "rib", "pitch", "keep")
	for _, on := range papers {
		pages := readPDF(t, p.printed(`[data-paper="print"]`, paper{"sheets-" + on.name, on.width, on.height}, false))
		assert.GreaterOrEqual(t, len(pages), 10)
		for i, s := range pages {
			lines := map[int]bool{}
			for _, q := range s.painted {
				if q.letters {
					lines[int(q.parts[0][0].y)] = true
				}
			}
			assert.Greater(t, len(lines), 1, "page %d of %s has more than its head", i+1, on.name)
			s.insideMargin(t, fmt.Sprintf("page %d", i+1))
		}
	}
	text := eval[string](p, `window.handed`)
	for _, word := range []string{"Heron Cove, first canoe", "WARNING", "DANGER", "rounded to 1/16 in",
		"life jacket", "barkwright3"} {
		assert.Contains(t, text, word)
	}
	eval[bool](p, `dispatchEvent(new Event('afterprint'))`)
	assert.Empty(t, eval[string](p, `document.getElementById('print').innerHTML`))
	assert.False(t, eval[bool](p, `'paper' in document.documentElement.dataset`))
}

// Files by keyboard: CSV, SVG; and the check of a print.
func TestPaperFilesAndCheck(t *testing.T) {
	p := open(t, phone)
	eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push({name, kind, text}), true`)
	p.press(`[data-paper="csv"]`)
	p.press(`[data-paper="svg"]`)
	require.Equal(t, 2, eval[int](p, `saved.length`))
	assert.Equal(t, "Heron-Cove-first-canoe-frame.csv", eval[string](p, `saved[0].name`))
	assert.Contains(t, eval[string](p, `saved[0].text`), "From amidships (ft and in),From amidships (m)")
	assert.Equal(t, "Heron-Cove-first-canoe-stem.svg", eval[string](p, `saved[1].name`))
	eval[bool](p, `(f => { f.focus(); return true; })(document.getElementById('measured'))`)
	p.do(chromedp.KeyEvent("146.1 mm\r"))
	p.wait(`document.getElementById('measured-says').textContent.includes('97.4 %%')`)
	assert.Contains(t, eval[string](p, `document.getElementById('measured-says').textContent`), "Letter page fitted to A4")
}

// The date on paper is written as the reader's browser writes one: Unicode Common Locale
// Data Repository, de, day first with a stop and the month's name in German.
func TestDateOfTheReader(t *testing.T) {
	p := open(t, desktop)
	_, err := chromedp.Call(p.ctx, emulation.SetLocaleOverride, emulation.SetLocaleOverrideParams{Locale: "de-DE"})
	require.NoError(t, err)
	// Other tests have the browser to themselves after this one.
	t.Cleanup(func() {
		_, _ = chromedp.Call(p.ctx, emulation.SetLocaleOverride, emulation.SetLocaleOverrideParams{})
	})
	p.goTo(fileAddress(pageFile(t)))
	p.ready()
	eval[bool](p, `window.asked = 0, window.print = () => {
		asked++;
		window.handed = document.getElementById('print').textContent;
	}, true`)
	p.choose("choose")
	p.press(`[data-paper="print"]`)
	p.wait(`asked === 1`)
	months := []string{"Januar", "Februar", "März", "April", "Mai", "Juni", "Juli", "August", "September",
		"Oktober", "November", "Dezember"}
	now := time.Now()
	assert.Contains(t, eval[string](p, `handed`), fmt.Sprintf("%d. %s %d", now.Day(), months[now.Month()-1], now.Year()))
}
