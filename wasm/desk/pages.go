package desk

import (
	"fmt"

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
	return fmt.Sprint(d.shown.Canoe().Design, form.Date, d.shown.System, form.Sheets, form.Patterns, d.paper.ribs,
		d.notebook().Log)
}

func countWords(sheets, patterns int) string {
	pages := func(n int) string {
		if n == 1 {
			return "1 page"
		}
		return fmt.Sprint(n, " pages")
	}
	switch {
	case sheets+patterns == 0:
		return "Nothing is chosen to print."
	case patterns == 0:
		return "Build sheets: " + pages(sheets) + ", A4 or Letter."
	case sheets == 0:
		return "Patterns: " + pages(patterns) + ", A4 or Letter."
	}
	return "Build sheets: " + pages(sheets) + "; patterns: " + pages(patterns) + "; together " + pages(sheets+patterns) +
		", A4 or Letter."
}

// showPages shows the pages as they will be printed.
func (d *Desk) showPages(form PaperForm) Reply {
	job := d.job(form)
	pages := sheet.Pages(job)
	if len(pages) == 0 {
		return d.onPaper("Nothing is chosen to print.")
	}
	r := d.onPaper("")
	d.paper.seen, d.paper.counted = true, d.pagesOf(form)
	r.Markup, r.Focus = map[string]string{paperPages: markup.Pages(pages)}, paperPages
	job.Sheets = nil // they have been drawn once
	_, patterns := sheet.Count(job)
	return r.saying(paperCount, countWords(len(pages)-patterns, patterns))
}
