package markup

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/draw"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// PlanNumbers is the frame of the numbers of the plan.
func PlanNumbers(s units.System) string {
	var b strings.Builder
	for _, n := range answer.Planned(nil) {
		b.WriteString(number(n, s))
	}
	return b.String()
}

// Remarks are what a plan does not meet, and what would help.
func Remarks(o *core.Outlook, s units.System) string {
	var b strings.Builder
	for _, r := range answer.PlanRemarks(o, s) {
		b.WriteString(`<li data-remark="` + r.Key + `">` + draw.Escape(r.Text) + `</li>`)
	}
	return b.String()
}

// PlanHead says how long the work takes, the range first.
func PlanHead(o *core.Outlook, known bool) string {
	switch {
	case o == nil:
		return "Being worked out."
	case len(o.Faults) > 0:
		return "No plan: " + o.Faults[0].Text
	case !known:
		return "Being worked out anew. Before: " + sheet.PlanWords(o)
	}
	return sheet.PlanWords(o)
}

// widestPlan is the most that the chart of days is broad, CSS pixels; its letters grow with the
// page's. A part of it is at most highestPlan of its letters high.
const (
	leastPlan   = 300
	widestPlan  = 1100
	highestPlan = 130
)

// PlanChart is the plan day by day in a figure so many CSS pixels wide, lettered as the page is. Of
// several parts it is scrolled in a box of its own.
func PlanChart(o *core.Outlook, width, letter float64, p draw.Palette) string {
	small := 0.8 * letter
	return planParts(o, chart.DaySize{Width: max(leastPlan, min(widestPlan*letter/16, width)), Letter: small,
		Row: chart.ScreenRow, Least: chart.ScreenRow, First: highestPlan * small, Rest: highestPlan * small}, p)
}

// PaperPlan is PlanChart as the browser's own menu prints it: no part is higher than a page.
func PaperPlan(o *core.Outlook) string { return planParts(o, sheet.PlanPart(), draw.Print()) }

func planParts(o *core.Outlook, size chart.DaySize, p draw.Palette) string {
	if o == nil || len(o.Faults) > 0 || o.State != plan.Made {
		return ""
	}
	var b strings.Builder
	parts := chart.Days(o, size)
	for i, part := range parts {
		b.WriteString(SVG("plan-chart-"+strconv.Itoa(i), p, part))
	}
	if len(parts) > 1 {
		return `<div class="scroll" tabindex="0" role="region" aria-label="The work day by day">` + b.String() + `</div>`
	}
	return b.String()
}

// PlanTables are the tables of the plan, each in a fold; one that stands open stays so.
func PlanTables(o *core.Outlook, s units.System, open map[string]bool) string {
	var b strings.Builder
	for _, t := range answer.PlanTables(o, s) {
		is := ""
		if open[t.Key] {
			is = " open"
		}
		fmt.Fprintf(&b, `<details class="sheet" data-plan="%s"%s><summary>%s</summary><p class="help">%s</p>%s%s</div></details>`,
			t.Key, is, draw.Escape(t.Title), draw.Escape(t.Note), scrolled(t), Table(t, s))
	}
	return b.String()
}

// Asks is what the boat asks of whoever builds it.
func Asks(c core.Canoe, o *core.Outlook, s units.System) string {
	return Table(answer.AsksTable(c, o, s), s)
}

// RootLeft says what of the split root is left.
func RootLeft(have, wanted float64, split bool, s units.System) string {
	switch run := func(v float64) string { return units.Run.Rough(v, s) }; {
	case !split:
		return ""
	case have < wanted:
		return fmt.Sprintf("Split root left: about %s; still to sew and lace: %s. It is short by %s: dig and split more now.",
			run(max(0, have)), run(wanted), run(wanted-have))
	default:
		return fmt.Sprintf("Split root left: about %s; still to sew and lace: %s. It will do.", run(have), run(wanted))
	}
}

// BarkLeft says what of the bark taken is not laid yet, in sheets.
func BarkLeft(have, wanted float64, taken bool) string {
	if !taken {
		return ""
	}
	sheets := func(v float64) string {
		if text := strconv.FormatFloat(math.Round(10*v)/10, 'f', -1, 64); text != "1" {
			return text + " sheets"
		}
		return "1 sheet"
	}
	text := fmt.Sprintf("Bark taken and not laid: %s; still to lay: %s.", sheets(have), sheets(wanted))
	if short := wanted - have; short > 0.05 {
		return text + " It is short by " + sheets(short) + ": take more while bark peels."
	}
	return text + " It will do."
}

// Learned says what the log has taught of a task's time, minutes of one of its own unit; 0 is nothing.
func Learned(id plan.ID, minutes float64, s units.System) string {
	if minutes <= 0 {
		return ""
	}
	_, own := plan.Of(id).Counted(s)
	return "your log: " + strconv.FormatFloat(minutes*own, 'f', 1, 64)
}

// Mended is what a repair takes.
func Mended(r mend.Repair, s units.System) string {
	return Titled(answer.MendTable(r, s), s)
}

// Repairs are those that the log holds, each in a fold with what it took and a button to take it
// off; one that stands open stays so.
func Repairs(all []answer.Mended, dates tally.Dates, s units.System, open map[string]bool) string {
	var b strings.Builder
	for i, e := range all {
		n, is := strconv.Itoa(i), ""
		if open[n] {
			is = " open"
		}
		b.WriteString(`<details class="sheet" data-repair="` + n + `"` + is + `><summary><b>` + strconv.Itoa(i+1) + ": " +
			draw.Escape(dates.Written(e.When)) + `</b> ` +
			draw.Escape(answer.DamageWords(e.Repair, s)) + `</summary>` + Mended(e.Repair, s) +
			`<p class="row"><button type="button" data-mend="` + n + `">Take this repair off the log</button></p></details>`)
	}
	return b.String()
}
