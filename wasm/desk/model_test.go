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
	f := desk.PaperForm{Model: "8", Date: "1 May 2026"}
	counted := said(d.Paper("model-count", f), "model-says")
	assert.Contains(t, counted, "1:8: 17 paper pages")
	r := d.Paper("model", f)
	assert.Equal(t, counted, said(r, "model-says"))
	assert.Equal(t, 17, strings.Count(r.Print, `<section class="tile">`))
	f.Model = "fit1"
	assert.Contains(t, said(d.Paper("model-count", f), "model-says"), "Every second rib is left out.")
	w.SetText("name", "Otter")
	assert.Contains(t, d.ShowPaper(f).Says, desk.Said{At: "model-says"})
	assert.Empty(t, d.Paper("model", desk.PaperForm{Model: "none"}).Print)
}
