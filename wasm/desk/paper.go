package desk

import (
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/scene/onsheet"
)

// Where the paper's buttons and fields say what they do.
const (
	paperSays = "paper-says"
	scaleSays = "measured-says"
)

// paper is what was last asked of paper.
type paper struct {
	of      design.Design // what is said is of this boat
	ribs    []int         // whose sections are drawn
	checked bool          // a print was measured
	counted string        // what the pages are counted of, empty where none are
	seen    bool          // they are shown
}

// PaperForm is what the form of what can be printed holds.
type PaperForm struct {
	Sheets         []stage.Key // of the build sheets chosen
	Cards          []stage.Key // of the lists chosen as cards
	Patterns       []string    // the keys of the kinds chosen
	Drawing, Table string      // the key of the pattern and of the table to be handed over
	Ribs           string      // whose sections are wanted
	Bar            int         // which printed bar was measured
	Measured       string      // what it measured
	Day            string      // today, as a log has it
	Model          string      // the size of the model chosen, as Models lists it
	ModelPanels    bool        // its side panels are sewn on
	InSight        bool        // the form is on the screen
}

// PaperLists are the lists of what can be printed and handed over, as HTML.
func PaperLists(c core.Canoe) (sheets, cards, patterns, drawings, tables string) {
	for _, s := range stage.All() {
		sheets += markup.Choice("sheet", string(s.Key), s.Name, true)
		if len(s.Bench) > 0 {
			cards += markup.Choice("card", string(s.Key), s.Name, false)
		}
	}
	for _, k := range pattern.Kinds() {
		patterns += markup.Choice("pattern", k.Key, k.Label, false)
		drawings += markup.Option(k.Key, k.Label)
	}
	for _, key := range answer.TableKeys() {
		t, _ := answer.MakeTable(c, key)
		tables += markup.Option(key, t.Title)
	}
	return sheets, cards, patterns, drawings, tables
}

// Paper answers the buttons of what can be printed and handed over.
func (d *Desk) Paper(what string, form PaperForm) Reply {
	if what == "check" {
		return d.checkScale(form)
	}
	if d.shown.None {
		return d.onPaper("This boat could not be built so far: there is nothing of it to print or to hand over.")
	}
	switch what {
	case "print":
		return d.printChosen(form)
	case "model", "model-count":
		return d.model(what == "model", form)
	case "show":
		return d.showPages(form)
	case "roll":
		return d.drawn(form, func(b *strings.Builder, p pattern.Pattern) Reply {
			return d.printed(b, sheet.PrintRoll(b, p, d.head(form.Day)))
		})
	case "svg":
		return d.drawn(form, func(b *strings.Builder, p pattern.Pattern) Reply {
			return d.handed(b, p.SVG(b, d.head(form.Day)), form.Drawing, "svg", "image/svg+xml",
				": one unit is one millimetre.")
		})
	case "csv":
		return d.csv(form)
	}
	return Reply{}
}

// ShowPaper brings what is said under the paper's buttons to the boat shown and to what is
// chosen: what was said of another goes, a print is measured against this one, and its
// pages are counted.
func (d *Desk) ShowPaper(form PaperForm) Reply {
	r := d.Ribs(form.Ribs).and(d.countPages(form))
	if d.paper.of != d.shown.Canoe().Design {
		r = r.and(d.onPaper("")).and(say(modelSays, ""))
	}
	if d.paper.checked {
		r = r.and(d.checkScale(form))
	}
	return r
}

// ribsField is where it is typed which ribs' sections are drawn.
const ribsField = "section-ribs"

// Ribs reads which ribs' sections are wanted and says at the field which are drawn. What
// cannot be read is named there, and what was last read stays.
func (d *Desk) Ribs(text string) Reply {
	f, fault := d.shown.Canoe().Frame, ""
	if ribs, err := pattern.ReadRibs(text, f.Ribs); err != nil {
		fault = err.Error()
	} else {
		d.paper.ribs = ribs
	}
	r := say(ribsField+"-fault", fault).saying(ribsField+"-echo", "Drawn: "+pattern.SectionRibs(f, d.paper.ribs)+".")
	r.Invalid = map[string]bool{ribsField: fault != ""}
	return r
}

func (d *Desk) onPaper(text string) Reply {
	d.paper.of = d.shown.Canoe().Design
	return say(paperSays, text)
}

// laidFlat is the canoe with its bark laid flat for the figures.
func (d *Desk) laidFlat() core.Canoe {
	d.shown.Known().Need(pipeline.Figures)
	return d.shown.Canoe()
}

func (d *Desk) head(day string) pattern.Head {
	of := d.shown.Canoe().Design
	// A design that has been worked out has only finite numbers: its line is there.
	line, _ := design.Line(of)
	return pattern.Head{Boat: of.Name, Code: line, Date: d.Dates.Written(day)}
}

func (d *Desk) printChosen(form PaperForm) Reply {
	pages, _ := sheet.Pages(d.job(form))
	if len(pages) == 0 {
		return d.onPaper("Nothing is chosen to print.")
	}
	var b strings.Builder
	return d.printed(&b, sheet.Print(&b, pages))
}

// job is what the form asks to print of the boat shown.
func (d *Desk) job(form PaperForm) sheet.Job {
	c, system, repairs := d.laidFlat(), d.shown.System, d.shown.Repairs()
	return sheet.Job{Canoe: c, System: system, Head: d.head(form.Day), Sheets: form.Sheets, Cards: form.Cards,
		Patterns: form.Patterns, Ribs: d.paper.ribs, Log: d.notebook().Log, Dates: d.Dates,
		Season:  d.shown.Season(),
		Figures: func(k stage.Key, share float64) []sheet.Figure { return onsheet.Figures(c, system, repairs, k, share) }}
}

// printed is what was written, for the printer, or why it could not be.
func (d *Desk) printed(b *strings.Builder, err error) Reply {
	if err != nil {
		return d.onPaper(err.Error())
	}
	r := d.onPaper("")
	r.Print = b.String()
	return r
}

// handed is what was written, as a file, or why it could not be.
func (d *Desk) handed(b *strings.Builder, err error, part, ending, kind, more string) Reply {
	if err != nil {
		return d.onPaper(err.Error())
	}
	r := d.onPaper("Handed over as a file" + more)
	r.Save = &File{sheet.FileName(d.shown.Canoe().Design.Name, part, ending), kind, b.String()}
	return r
}

// drawn is what write makes of the pattern chosen, where the boat has it.
func (d *Desk) drawn(form PaperForm, write func(*strings.Builder, pattern.Pattern) Reply) Reply {
	p := pattern.Stack(pattern.Make(d.laidFlat(), form.Drawing, pattern.Options{System: d.shown.System,
		Ribs: d.paper.ribs}))
	if len(p.Lines) == 0 {
		return d.onPaper("This boat has none: there is nothing to draw.")
	}
	var b strings.Builder
	return write(&b, p)
}

func (d *Desk) csv(form PaperForm) Reply {
	t, ok := answer.MakeTable(d.laidFlat(), form.Table)
	if !ok {
		return Reply{}
	}
	var b strings.Builder
	return d.handed(&b, sheet.CSV(&b, d.shown.Canoe().Design.Name, t, d.shown.System), form.Table, "csv",
		"text/csv;charset=utf-8", ".")
}

// checkScale answers what a printed bar measured.
func (d *Desk) checkScale(form PaperForm) Reply {
	d.paper.checked = true
	// A bare number is in the unit that the bar is named in.
	system := [...]units.System{units.Metric, units.Imperial16}[form.Bar]
	v, _, err := units.SmallLength.Parse(form.Measured, system)
	if err != nil {
		return say(scaleSays, err.Error())
	}
	longest := d.shown.Canoe().Frame.Gunwales.Run
	return say(scaleSays, pattern.CheckScale(pattern.ScaleBars[form.Bar], v, longest).Text("the story stick",
		longest, d.shown.System))
}
