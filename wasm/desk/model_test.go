package desk_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
)

// A model is counted before it is printed, by the same number of pages, and what was said of
// another boat goes.
func TestModelIsCountedAndPrinted(t *testing.T) {
	d, w := open(&memory.Store{})
	assert.Contains(t, desk.Models(), `value="fit3"`)
	f := desk.PaperForm{Model: "8", Day: "2026-05-01"}
	counted := said(d.Paper("model-count", f), "model-says")
	assert.Contains(t, counted, "1:8: 12 paper pages")
	r := d.Paper("model", f)
	assert.Equal(t, counted, said(r, "model-says"))
	assert.Equal(t, 12, strings.Count(r.Print, `<section class="tile">`))
	// The bark of a model fitted to one page is one piece, on one page.
	f.Model = "fit1"
	fitted := d.Paper("model", f).Print
	assert.Contains(t, fitted, "bark, piece 1 of 1")
	assert.NotContains(t, fitted, "joint 1")
	assert.Contains(t, said(d.Paper("model-count", f), "model-says"), "Every second rib is left out.")
	w.SetText("name", "Otter")
	assert.Contains(t, d.ShowPaper(f).Says, desk.Said{At: "model-says"})
	assert.Empty(t, d.Paper("model", desk.PaperForm{Model: "none"}).Print)
}
