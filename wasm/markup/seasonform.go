package markup

import (
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// seasonField is a control with its name, help and the place of its fault; what is the field.
func seasonField(key, label, help, what string) string {
	id := "season-" + key
	return `<div class="control wide"><label for="` + id + `">` + draw.Escape(label) + `</label>` + what +
		`<p class="help" id="` + id + `-help">` + draw.Escape(help) + `</p><p class="fault" id="` + id + `-fault"></p></div>`
}

func seasonAttributes(key string) string {
	return ` id="season-` + key + `" data-set="` + key + `" aria-describedby="season-` + key + `-help season-` + key + `-fault"`
}

// seasonGroups are the fields of the plan in the order of the form, those that are set first before the others.
// What has a usual value for most crews is folded away at first.
var seasonGroups = []struct {
	name   string
	folded bool
	fields []plan.Field
	dates  []plan.Date
}{
	{"Hands and boats", false, []plan.Field{plan.Practised, plan.Learners, plan.Boats, plan.Teams, plan.Beds}, nil},
	{"Days", false, nil, []plan.Date{plan.Begin, plan.End}},
	{"Hours", true, []plan.Field{plan.DaysAWeek, plan.Hours, plan.Travel, plan.Factor}, nil},
	{"The work", true, []plan.Field{plan.From, plan.SeamsLast, plan.StemsDry, plan.RibsDry, plan.Settle}, nil},
	{"The year where you are", true, nil,
		[]plan.Date{plan.Thaw, plan.PeelFrom, plan.PeelTo, plan.WarmFrom, plan.WarmTo, plan.Freeze}},
}

// SeasonForm is the form of a plan's crew and days. Its values are filled in afterwards.
func SeasonForm() string {
	var b strings.Builder
	for _, g := range seasonGroups {
		open, end := `<fieldset><legend>`+g.name+`</legend>`, `</fieldset>`
		if g.folded {
			open, end = `<details class="fold"><summary>`+g.name+`</summary>`, `</details>`
		}
		b.WriteString(open)
		for _, f := range g.fields {
			b.WriteString(numberField(plan.Rows()[f]))
		}
		for _, d := range g.dates {
			b.WriteString(dateField(plan.DateRows()[d]))
		}
		b.WriteString(end)
	}
	return b.String()
}

func numberField(r plan.Row) string {
	label := r.Label
	if r.Unit != "" && !strings.Contains(strings.ToLower(label), r.Unit) && r.Unit != "people" {
		label += ", " + r.Unit
	}
	what := `<input type="text" inputmode="decimal" autocomplete="off"` + seasonAttributes(r.Key) + `>`
	if r.Shape == plan.Choice {
		what = `<select` + seasonAttributes(r.Key) + `>`
		for i, name := range r.Names {
			what += Option(strconv.Itoa(i), name)
		}
		what += `</select>`
	}
	return seasonField(r.Key, label, r.Help, what)
}

func dateField(r plan.DateRow) string {
	what := `<input type="text" autocomplete="off" placeholder="06-14"` + seasonAttributes(r.Key) + `>`
	if r.Date == plan.Begin || r.Date == plan.End {
		what = `<input type="date"` + seasonAttributes(r.Key) + `>`
	}
	return seasonField(r.Key, r.Label, r.Help, what)
}

// rateHelpID and haveHelpID are the lines of help of a task's time and of what is at hand of it.
const rateHelpID, haveHelpID = "season-rate-help", "season-have-help"

// SeasonTasks is the table in which the time of each task is set, and what is at hand. What each is
// counted by has a place of its own: it changes with the units.
func SeasonTasks(s units.System) string {
	var b strings.Builder
	heading := func(name, id, help string) string {
		return `<th scope="col">` + name + `<p class="help" id="` + id + `">` + draw.Escape(help) + `</p></th>`
	}
	b.WriteString(`<table><thead><tr><th scope="col">Task</th><th scope="col">Counted by</th>` +
		heading("Minutes for one", rateHelpID, "Of one practised hand. Empty: the time shown.") +
		heading("At hand", haveHelpID, "Made, gathered or bought already.") +
		`<th scope="col">How the time is known</th></tr></thead><tbody>`)
	for i := range plan.All() {
		t := plan.Of(plan.ID(i))
		field := func(key, says, help, usual string) string {
			id := `season-` + key
			return `<td><input type="text" inputmode="decimal" size="5" autocomplete="off" id="` + id +
				`" data-set="` + key + `" aria-label="` + draw.Escape(t.Name+", "+says) +
				`" aria-describedby="` + help + ` season-unit-` + t.Key + ` ` + id + `-fault" placeholder="` + usual +
				`"><p class="fault" id="` + id + `-fault"></p></td>`
		}
		b.WriteString(`<tr><th scope="row">` + draw.Escape(t.Name) + `</th><td id="season-unit-` + t.Key + `">` +
			draw.Escape(CountedBy(t.ID, s)) + `</td>` +
			field(plan.RateKey(t.ID), "minutes for one", rateHelpID, UsualMinutes(t.ID, s)) +
			field(plan.HaveKey(t.ID), "at hand", haveHelpID, "0") +
			`<td><b id="season-learned-` + t.Key + `"></b> <small>` + draw.Escape(howKnown(t.Rate)) + `</small></td></tr>`)
	}
	b.WriteString(`</tbody></table>`)
	return b.String()
}

// howKnown is a source with its basis before it, unless it says that itself.
func howKnown(s known.Source) string {
	if strings.HasPrefix(s.Cited, string(s.Basis)) {
		return s.Cited
	}
	return string(s.Basis) + ": " + s.Cited
}

// CountedBy is what a task is counted by.
func CountedBy(id plan.ID, s units.System) string {
	unit, _ := plan.Of(id).Counted(s)
	return unit
}

// UsualMinutes is the usual time of one of what a task is counted by, to three figures.
func UsualMinutes(id plan.ID, s units.System) string {
	_, own := plan.Of(id).Counted(s)
	return units.Ratio.Format(plan.Of(id).Minutes.Likely*own, s)
}

// TaskOptions are the tasks to choose from.
func TaskOptions(s units.System) string {
	var b strings.Builder
	for _, t := range plan.All() {
		b.WriteString(Option(t.Key, t.Name+" ("+CountedBy(t.ID, s)+")"))
	}
	return b.String()
}

// MendOptions are the kinds of damage.
func MendOptions() string {
	var b strings.Builder
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		b.WriteString(Option(k.Key(), k.String()))
	}
	return b.String()
}
