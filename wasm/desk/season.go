package desk

import (
	"strings"
	"time"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/wasm/markup"
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
			"entries move; those that the new plan no longer has stay: delete them first, or keep a calendar for this alone.")
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

// WorkForm is what the form of what was done holds, as typed; Task is the key of the task.
type WorkForm struct{ Task, Done, Hours, Learners string }

// EnterWork enters in the log what was done on a day, one step of undo; what cannot be read is named at its field.
func (d *Desk) EnterWork(form WorkForm, day string) Reply {
	wrong := d.shown.AddWork(form.Task, day, form.Done, form.Hours, form.Learners)
	if wrong != (plan.Fault{}) {
		wrong.Key = "work-" + wrong.Key
	}
	r := atFields(markup.WorkFields, "work-says", wrong, "Entered. The plan goes from today.")
	if wrong == (plan.Fault{}) {
		r.Fields = map[string]string{"work-done": "", "work-hours": "", "work-learners": ""}
	}
	return r
}

// Asks is what the boat shown asks of whoever builds it, its plan worked out at once.
func (d *Desk) Asks() string {
	if d.shown.None {
		return ""
	}
	return markup.Asks(d.shown.Canoe(), d.outlook(), d.shown.System)
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
