package sheet

import (
	"math/rand/v2"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/internal/check"
)

// Strips of random heights, ties and heads: every one comes once and in order, those tied
// stand on one page where one holds them, none reaches out of its page, and a page that
// begins within a table has the table's head over it.
func TestPaginate(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	const high = 100.0
	for range 300 {
		var strips []strip
		for i := range 1 + r.IntN(60) {
			s := strip{high: 1 + 30*check.Share(r), space: 3 * check.Share(r), words: strconv.Itoa(i), tied: r.IntN(4) == 0}
			if r.IntN(2) == 0 {
				s.head = []strip{{high: 5, words: "head of " + s.words}}
			}
			strips = append(strips, s)
		}
		next := 0
		on := map[int]int{}
		for p, page := range paginate(strips, high, 0, high) {
			assert.NotEmpty(t, page)
			assert.LessOrEqual(t, height(page), high+1e-9)
			for i, s := range page {
				if i == 0 && s.high == 5 {
					assert.Equal(t, "head of "+strconv.Itoa(next), s.words)
					continue
				}
				assert.Equal(t, strconv.Itoa(next), s.words)
				on[next] = p
				next++
			}
		}
		assert.Equal(t, len(strips), next)
		for i := 0; i < len(strips); {
			n := i + 1
			for n < len(strips) && strips[n-1].tied {
				n++
			}
			if length(strips[i:n])-strips[i].space <= high-5 {
				assert.Equal(t, on[i], on[n-1], "strips %d to %d are tied", i, n)
			}
			i = n
		}
	}
}

// A sheet whose last page would hold one row is set more tightly, or its rows are shared
// out so that the last page holds a quarter.
func TestNoPageForNextToNothing(t *testing.T) {
	const high = 100
	rows := func(n int, squeezed float64) func(fit) []strip {
		return func(f fit) []strip {
			var out []strip
			for range n {
				h := 10.0
				if f != fits[0] {
					h *= squeezed
				}
				out = append(out, strip{high: h})
			}
			return out
		}
	}
	assert.Len(t, arrange(rows(10, 1), high), 1)
	assert.Len(t, arrange(rows(11, 0.9), high), 1, "set more tightly")
	even := arrange(rows(11, 1), high)
	assert.Len(t, even, 2)
	assert.GreaterOrEqual(t, height(even[1]), leastPage*high)
	assert.Len(t, arrange(rows(16, 0.9), high), 2)
}

// Drawings that their page has no room for go to the head of the next one, in their order,
// and what comes after them fills the page while anything comes after it. A table that goes on
// under a drawing has its head there.
func TestDrawingsAreNoHole(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 4))
	const high, row = 100.0, 4.0
	for range 300 {
		var strips []strip
		for i := range 20 + r.IntN(60) {
			s := strip{high: row, words: strconv.Itoa(i)}
			if r.IntN(12) == 0 {
				s = strip{high: 20 + 75*check.Share(r), words: "drawing " + strconv.Itoa(i), floats: true}
			} else if len(strips) > 0 {
				s.head = []strip{{high: 5, words: "head"}}
			}
			strips = append(strips, s)
		}
		rowsInAll := 0
		for _, s := range strips {
			if !s.floats {
				rowsInAll++
			}
		}
		var drawn, told []string
		pages := paginate(strips, high, 0, high)
		for p, page := range pages {
			assert.LessOrEqual(t, height(page), high+1e-9)
			rows := 0
			for i, s := range page {
				switch {
				case s.words == "head":
					assert.True(t, p > 0 && rows == 0, "a head stands over the first row of a page")
				case s.floats:
					drawn = append(drawn, s.words)
				default:
					if rows == 0 && p > 0 {
						assert.Equal(t, "head", page[max(0, i-1)].words)
					}
					rows++
					told = append(told, s.words)
				}
			}
			// A row with its head would have fitted it, where there still was one.
			if len(told) < rowsInAll {
				assert.Greater(t, height(page), high-row-5-1e-9, "page %d of %d", p+1, len(pages))
			}
		}
		var wantDrawn, wantTold []string
		for _, s := range strips {
			if s.floats {
				wantDrawn = append(wantDrawn, s.words)
			} else {
				wantTold = append(wantTold, s.words)
			}
		}
		assert.Equal(t, wantDrawn, drawn)
		assert.Equal(t, wantTold, told)
	}
}

// A drawing that is higher than a page with its caption is broken between them, and comes once.
func TestDrawingHigherThanAPage(t *testing.T) {
	const high = 100.0
	strips := []strip{{high: 10, words: "row"}, {high: 98, words: "drawing", tied: true, floats: true}, {high: 5, words: "caption"},
		{high: 60, words: "next drawing", floats: true}, {high: 4, words: "last row"}}
	var told []string
	for _, page := range paginate(strips, high, 0, high) {
		assert.LessOrEqual(t, height(page), high)
		for _, s := range page {
			told = append(told, s.words)
		}
	}
	assert.ElementsMatch(t, []string{"row", "last row", "drawing", "caption", "next drawing"}, told)
}
