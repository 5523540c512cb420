package e2e

import (
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// printedBoats are those whose pages are printed beside the default: a child's canoe,
// and a freight canoe near the ends of the ranges.
var printedBoats = []string{
	"barkwright1_L96_Oh4_B24_D9_G12_E15_El10_R0.5_N3_P1_C0_Kw32",
	"barkwright1_L432_Oh18_B66_D30_G44_E56_El40_R3_N9_P8_C3000_Kw60_Ch12_Im3_It1.5",
}

var together = regexp.MustCompile(`together (\d+) pages, A4 or Letter`)

// Build sheets and patterns as the browser prints them, read back from the PDF's own
// lettering and lines: as many pages as were announced and shown, the bars true within
// 0.1 mm, no lettering over lettering, nothing in the margins or cut off. A few of the
// default boat; with BARKWRIGHT_EVERY_PAGE set, all there are of three boats on both papers.
func TestPrintedPagesInOrder(t *testing.T) {
	p := open(t, desktop)
	boats, on := []string{""}, papers[:1]
	every := os.Getenv("BARKWRIGHT_EVERY_PAGE") != ""
	if every {
		boats, on = append(boats, printedBoats...), papers
	}
	for _, line := range boats {
		if line != "" {
			eval[bool](p, `location.hash = '#d=' + %q, true`, line)
			length, _, _ := strings.Cut(strings.TrimPrefix(line, "barkwright1_"), "_")
			p.wait(`location.hash.includes('_%s_')`, length)
			p.settle()
		}
		if every {
			p.press(`[data-paper="all"]`)
		} else {
			p.choose("bark", "ends", "rib", "headboard", "gores", "tip")
		}
		eval[bool](p, `document.getElementById('paper-form').scrollIntoView(), true`)
		p.wait(`document.getElementById('paper-count').textContent.includes('together')`)
		said := together.FindStringSubmatch(eval[string](p, `document.getElementById('paper-count').textContent`))
		require.NotNil(t, said)
		announced, _ := strconv.Atoi(said[1])
		p.press(`[data-paper="show"]`)
		assert.Equal(t, announced, eval[int](p, `document.querySelectorAll('#paper-pages svg').length`), "pages shown")
		for _, paper := range on {
			pages := readPDF(t, p.printed(`[data-paper="print"]`, paper, false))
			assert.Len(t, pages, announced, "%s on %s", line, paper.name)
			bars := 0
			for i, s := range pages {
				bars += s.inOrder(t, fmt.Sprintf("%s, %s, page %d", line, paper.name, i+1))
			}
			assert.Greater(t, bars, announced/4, "pages of patterns")
			t.Logf("%s on %s: %d pages, %d with bars", line, paper.name, len(pages), bars)
			eval[bool](p, `dispatchEvent(new Event('afterprint'))`)
		}
	}
}

// inOrder checks a page, and returns 1 where it has scale bars.
func (s sheetOfPaper) inOrder(t *testing.T, name string) int {
	t.Helper()
	s.insideMargin(t, name)
	const touch, within = 0.05, 0.1 // mm
	lines := s.wholeLines(t, name)
	pattern := 0
	for i, q := range lines {
		low, high := reach([][]spot{q.parts[0][1:]})
		for _, o := range lines[:i] {
			below, above := reach([][]spot{o.parts[0][1:]})
			over := min(high.x, above.x)-max(low.x, below.x) > touch && min(high.y, above.y)-max(low.y, below.y) > touch
			assert.False(t, over, "%s: %q over %q", name, q.text, o.text)
		}
		if strings.Contains(q.text, "bars: inner") {
			pattern = 1
		}
	}
	assert.NotEmpty(t, lines, name)
	if pattern == 1 {
		assert.Equal(t, 1, s.blocks(150, 1, within), name+": the bar of 150 mm")
		assert.Equal(t, 1, s.blocks(152.4, 1, within), name+": the bar of 6 in")
		assert.Equal(t, 1, s.blocks(1, 150, within), name+": the bar of 150 mm, upright")
		assert.Equal(t, 1, s.blocks(1, 152.4, within), name+": the bar of 6 in, upright")
	}
	return pattern
}

// wholeLines are a page's lines of lettering, of which none is cut off.
func (s sheetOfPaper) wholeLines(t *testing.T, name string) []painted {
	t.Helper()
	const touch = 0.05 // mm
	var lines []painted
	for _, q := range s.painted {
		if !q.letters || strings.TrimSpace(q.text) == "" {
			continue
		}
		low, high := reach([][]spot{q.parts[0][1:]})
		assert.True(t, low.x >= q.low.x-touch && low.y >= q.low.y-touch && high.x <= q.high.x+touch && high.y <= q.high.y+touch,
			"%s: %q is cut off", name, q.text)
		lines = append(lines, q)
	}
	return lines
}
