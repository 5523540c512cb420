package desk

import (
	"strconv"
	"strings"
	"time"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/core/units"
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

// MendForm is what the form of a repair holds, as typed.
type MendForm struct {
	Kind                     int
	At, Along, Round, Groups string
	Aft                      bool
}

// Mend is what a repair takes; a size that cannot be read is named.
func (d *Desk) Mend(form MendForm) Reply {
	const at, says = "mend-table", "mend-says"
	damage := mend.Damage{Kind: mend.Kind(max(0, min(int(mend.Kinds)-1, form.Kind)))}
	length := func(text string, into *float64) error {
		if strings.TrimSpace(text) == "" {
			return nil
		}
		v, _, err := units.Length.Parse(text, d.shown.System)
		*into = v
		return err
	}
	for _, f := range []struct {
		text string
		into *float64
	}{{form.At, &damage.At}, {form.Along, &damage.Along}, {form.Round, &damage.Round}} {
		if err := length(f.text, f.into); err != nil {
			return say(says, err.Error())
		}
	}
	if text := strings.TrimSpace(form.Groups); text != "" {
		n, err := strconv.Atoi(text)
		if err != nil || n < 0 {
			return say(says, "Groups of lacing torn: a whole number, such as 3.")
		}
		damage.Groups = n
	}
	if form.Aft {
		damage.At = -damage.At
	}
	if half := d.shown.Canoe().Frame.Gunwales.Run; max(damage.At, -damage.At) > half {
		return say(says, "The place lies past the end of the gunwale, "+units.Length.Format(half, d.shown.System)+
			" from the middle.")
	}
	if damage.Kind != mend.BrokenRib && damage.Along+damage.Round == 0 && damage.Groups == 0 {
		return say(says, "Say how large it is.")
	}
	r := say(says, "")
	r.Markup = map[string]string{at: markup.Mended(d.shown.Canoe(), d.shown.Season(), damage, d.shown.System)}
	return r
}
