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

// wanted is a button of the plan that was pressed before the plan was known, empty for none, and the boat
// whose it is.
type wanted struct{ what, boat string }

// says is where what was done at a button of the plan is said.
func (w wanted) says() string {
	if w.what == "asks" {
		return "asks-says"
	}
	return "season-says"
}

// Season answers the buttons of the plan of the work. now is the time in UTC, which the
// calendar's entries are stamped with. A plan that is not known yet is waited for: SeasonFollows.
func (d *Desk) Season(what string, form PaperForm, now time.Time) Reply {
	d.plan = wanted{}
	w := wanted{what, d.Shelf.ID()}
	if d.shown.None {
		return say(w.says(), "This boat could not be built so far: there is no plan for it.")
	}
	o := d.outlook()
	if o == nil {
		d.plan = w
		done := "It is printed as soon as it stands, if you stay here."
		if what == "calendar" {
			done = "The calendar is handed over as soon as it stands, if you stay here."
		}
		return say(w.says(), "The plan is still being worked out. "+done)
	}
	if what == "asks" {
		return d.pages(w, sheet.AsksSheet(d.job(form), o))
	}
	if len(o.Faults) > 0 || o.State != plan.Made {
		return say(w.says(), "There is no plan to print or to hand over: what keeps it is named above.")
	}
	switch what {
	case "calendar":
		if !o.Dated {
			return say(w.says(), "Set a first or a last day: a calendar has dates.")
		}
		name := d.shown.Canoe().Design.Name
		r := say(w.says(), "Handed over as a calendar: an entry a day and task. Opened again after a change, its "+
			"entries move; those that the new plan no longer has stay: delete them first, or keep a calendar for this alone.")
		r.Save = &File{sheet.FileName(name, "calendar", "ics"), "text/calendar;charset=utf-8",
			o.Calendar(d.Shelf.ID(), name, now)}
		return r
	case "print":
		return d.pages(w, sheet.PlanSheet(d.job(form), o))
	case "days":
		return d.pages(w, sheet.DaySheets(d.job(form), o))
	}
	return Reply{}
}

// AwaitsPlan tells whether a button pressed waits for the plan.
func (d *Desk) AwaitsPlan() bool { return d.plan.what != "" }

// SeasonFollows carries out what waits for the plan once that is known. Of another boat than the one shown
// it is dropped.
func (d *Desk) SeasonFollows(form PaperForm, now time.Time) Reply {
	switch {
	case d.plan.boat != d.Shelf.ID():
		return d.DropAwaited()
	case d.outlook() == nil:
		return Reply{}
	}
	return d.Season(d.plan.what, form, now)
}

// DropAwaited drops what waits for the plan.
func (d *Desk) DropAwaited() Reply {
	w := d.plan
	d.plan = wanted{}
	if w.what == "" {
		return Reply{}
	}
	return say(w.says(), "")
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

// outlook is the plan of the boat shown with what would change it, nil where that is not known.
func (d *Desk) outlook() *core.Outlook {
	known := d.shown.Known()
	if !known.Known(pipeline.Figures) || !known.Known(pipeline.Season) || !known.Known(pipeline.Sooner) {
		return nil
	}
	o, _ := known.Outlook()
	return o
}

// pages are pages for the printer.
func (d *Desk) pages(at wanted, pages []draw.List) Reply {
	var b strings.Builder
	if err := sheet.Print(&b, pages); err != nil {
		return say(at.says(), err.Error())
	}
	r := say(at.says(), "")
	r.Print = b.String()
	return r
}
