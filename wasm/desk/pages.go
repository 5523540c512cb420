package desk

import (
	"fmt"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/sheet"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
)

// Where the pages are counted and shown before they are printed.
const (
	paperCount = "paper-count"
	paperPages = "paper-pages"
)

// countPages says how many pages what is chosen takes, once the bark lies flat. Pages that
// were shown of something else go.
func (d *Desk) countPages(form PaperForm) Reply {
	of := d.pagesOf(form)
	if of == d.paper.counted {
		return Reply{}
	}
	r := Reply{}
	if d.paper.seen {
		d.paper.seen, r.Markup = false, map[string]string{paperPages: ""}
	}
	if !form.InSight || d.shown.None || !d.shown.Known().Known(pipeline.Figures) {
		d.paper.counted = ""
		return r.saying(paperCount, "")
	}
	d.paper.counted = of
	return r.saying(paperCount, countWords(sheet.Count(d.job(form))))
}

// pagesOf tells what is printed from anything else that is.
func (d *Desk) pagesOf(form PaperForm) string {
	if d.shown.None {
		return "none"
	}
	return fmt.Sprint(d.shown.Canoe().Design, form.Day, d.shown.System, form.Sheets, form.Patterns, form.Cards, d.paper.ribs,
		d.notebook().Log, d.shown.Season())
}

func countWords(n sheet.Counts) string {
	var parts []string
	all := 0
	for _, p := range []struct {
		name  string
		pages int
	}{{"build sheets", n.Sheets}, {"cards", n.Cards}, {"patterns", n.Patterns}} {
		if p.pages > 0 {
			parts = append(parts, p.name+": "+counted(p.pages, "page", "pages"))
			all += p.pages
		}
	}
	if len(parts) == 0 {
		return "Nothing is chosen to print."
	}
	said := strings.Join(parts, "; ")
	if len(parts) > 1 {
		said += "; together " + counted(all, "page", "pages")
	}
	return answer.AtStart(said) + ", A4 or Letter."
}

// showPages shows the pages as they will be printed.
func (d *Desk) showPages(form PaperForm) Reply {
	pages, n := sheet.Pages(d.job(form))
	if len(pages) == 0 {
		return d.onPaper("Nothing is chosen to print.")
	}
	r := d.onPaper("")
	d.paper.seen, d.paper.counted = true, d.pagesOf(form)
	r.Markup, r.Focus = map[string]string{paperPages: markup.Pages(pages)}, paperPages
	return r.saying(paperCount, countWords(n))
}
