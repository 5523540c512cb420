package desk

import (
	"strings"
	"time"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/wasm/pipeline"
)

// seasonSays is where what was done with the plan is said.
const seasonSays = "season-says"

// Season answers the buttons of the plan of the work. now is the time in UTC, which the
// calendar's entries are stamped with.
func (d *Desk) Season(what string, form PaperForm, now time.Time) Reply {
	if d.shown.None {
		return say(seasonSays, "This boat could not be built so far: there is no plan for it.")
	}
	o := d.outlook()
	if what == "asks" {
		return d.pages(sheet.AsksSheet(d.job(form), o))
	}
	if len(o.Faults) > 0 || o.State != plan.Made {
		return say(seasonSays, "There is no plan to print or to hand over: what keeps it is named above.")
	}
	switch what {
	case "calendar":
		if !o.Dated {
			return say(seasonSays, "Set a first or a last day: a calendar has dates.")
		}
		name := d.shown.Canoe().Design.Name
		r := say(seasonSays, "Handed over as a calendar: an entry a day and task. Opened again after a change, its "+
			"entries move.")
		r.Save = &File{sheet.FileName(name, "calendar", "ics"), "text/calendar;charset=utf-8",
			o.Calendar(d.Shelf.ID(), name, now)}
		return r
	case "print":
		return d.pages(sheet.PlanSheet(d.job(form), o))
	case "days":
		return d.pages(sheet.DaySheets(d.job(form), o))
	}
	return Reply{}
}

// outlook is the plan of the boat shown, worked out at once where it is not known.
func (d *Desk) outlook() *core.Outlook {
	known := d.shown.Known()
	known.Need(pipeline.Figures)
	known.Need(pipeline.Season)
	known.Need(pipeline.Sooner)
	o, _ := known.Outlook()
	return o
}

// pages are pages for the printer.
func (d *Desk) pages(pages []draw.List) Reply {
	var b strings.Builder
	if err := sheet.Print(&b, pages); err != nil {
		return say(seasonSays, err.Error())
	}
	r := say(seasonSays, "")
	r.Print = b.String()
	return r
}
