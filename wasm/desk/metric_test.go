package desk_test

import (
	"html"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/lesson"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/core/units/inches"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/markup"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// notRead are parts of HTML that no one reads, and told what is read out in place of an element.
var (
	notRead = regexp.MustCompile(`(?s)<style.*?</style>|<script.*?</script>`)
	told    = regexp.MustCompile(`(?:aria-label|placeholder|title|alt)="([^"]*)"`)
	// quoted is what was typed, said again.
	quoted = regexp.MustCompile(`"[a-z]+"`)
	tag    = regexp.MustCompile(`(?s)<[^>]*>`)
)

// noInch fails where HTML says a length or a weight for readers of feet and pounds alone.
func noInch(t *testing.T, where, shown string) {
	t.Helper()
	shown = notRead.ReplaceAllString(shown, "")
	texts := strings.Split(tag.ReplaceAllString(shown, "\n"), "\n")
	for _, m := range told.FindAllStringSubmatch(shown, -1) {
		texts = append(texts, m[1])
	}
	read := 0
	for _, text := range texts {
		text = quoted.ReplaceAllString(html.UnescapeString(text), "")
		read += len(text)
		if found := inches.In(text); found != "" {
			t.Errorf("%s: %q in %q", where, found, text)
		}
	}
	assert.Positive(t, read, "%s says nothing", where)
}

// metric is a desk whose reader has chosen metres.
func metric() (*desk.Desk, *work.Work) {
	d, w := open(&memory.Store{})
	d.SetSystem(units.Metric)
	return d, w
}

// The season, on the page and on paper, says nothing in feet to a reader of metres: what is set, what is
// planned, what helps, what is left and what is wrong.
func TestSeasonHasNoInch(t *testing.T) {
	const s = units.Metric
	d, w := metric()
	noInch(t, "form", markup.SeasonForm())
	noInch(t, "times", markup.SeasonTasks(s))
	noInch(t, "tasks", markup.TaskOptions(s))
	noInch(t, "numbers", markup.PlanNumbers(s))
	for _, fields := range [][]markup.Field{markup.WorkFields, markup.MendFields, markup.HoldFields, markup.RankFields} {
		noInch(t, "fields", markup.Fields(fields))
	}
	require.Empty(t, w.SetSeason("begin", "2027-06-14"))
	require.Empty(t, w.SetSeason("end", "2027-07-01"))
	require.Empty(t, w.SetSeason("have.roots.splitSeams", "20"))
	require.Empty(t, w.SetSeason("learners", "5"))
	require.Empty(t, w.AddWork("pitch.inside", "2027-06-20", "3", "1", ""))
	planned(w)
	for _, what := range []string{"print", "days", "asks"} {
		noInch(t, what, d.Season(what, desk.PaperForm{}, time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC)).Print)
	}
	o, known := w.Known().Outlook()
	require.True(t, known && o.Helped)
	noInch(t, "head", markup.PlanHead(o, true))
	noInch(t, "remarks", markup.Remarks(o, s))
	noInch(t, "tables", markup.PlanTables(o, s, nil))
	noInch(t, "asks", markup.Asks(w.Canoe(), o, s))
	for _, n := range answer.Planned(o) {
		noInch(t, n.Key, n.Label(s)+": "+n.Text(s)+"; "+n.Working(s)+"; "+n.Cited)
	}
	have, wanted, split := w.RootLeft()
	noInch(t, "root left", markup.RootLeft(have, wanted, split, s))
	for _, key := range []string{"have.roots.dig", "rate.roots.dig", "have.bark.lay", "have.gum.gather", "rate.gum.melt"} {
		for _, bad := range []string{"99999999", "-1", "some", "1,5,0,0"} {
			noInch(t, key, w.SetSeason(key, bad))
		}
	}
	for _, bad := range []string{"", "-1", "some", "1,500"} {
		noInch(t, "done", w.AddWork("roots.dig", "2027-06-20", bad, "", "").Text)
	}
}

// Nor do repairs: what each takes, those in the log, the sheet, and what is wrong with one.
func TestMendingHasNoInch(t *testing.T) {
	d, w := metric()
	noInch(t, "kinds", markup.MendOptions())
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		form := desk.MendForm{Kind: k.Key(), At: "900", Up: "250", Along: "150", Round: "100", Groups: "3", Aft: true}
		noInch(t, k.String(), d.Mend(form).Markup["mend-table"])
		noInch(t, k.String()+" kept", said(d.KeepRepair(form, "2027-06-14"), "mend-says"))
		for _, bad := range []desk.MendForm{{}, {At: "here"}, {At: "9 m"}, {Up: "3 m"}, {Round: "-4"}, {Round: "4 m"},
			{Along: "12 m", Round: "100"}, {At: "1,500"}} {
			bad.Kind = k.Key()
			for _, s := range d.Mend(bad).Says {
				if s.Text != "" {
					noInch(t, k.String()+" wrong", s.Text)
				}
			}
		}
	}
	require.Len(t, w.Notebook.Log.Repairs(), int(tally.DamageKinds-tally.Crack))
	noInch(t, "log", markup.Repairs(w.Repairs(), tally.Dates{}, units.Metric, nil))
	noInch(t, "sheet", d.Paper("print", desk.PaperForm{Sheets: []stage.Key{stage.Keep}}).Print)
}

// Nor do the lessons: the list, each in all its parts, and its paper.
func TestLessonsHaveNoInch(t *testing.T) {
	d, _ := metric()
	list, _ := d.ShowLesson()
	noInch(t, "list", list)
	for _, l := range lesson.All() {
		d.Lesson("open:"+l.Key, "")
		for range markup.LessonParts {
			d.Lesson("next", "")
		}
		of := d.Show().Known()
		of.Ask(pipeline.Asked{Lesson: l.Key, On: d.LessonBase()})
		of.Need(pipeline.Taught)
		noInch(t, l.Key, shownLesson(d))
		noInch(t, l.Key+" on paper", d.Lesson("print", "26 November 2026").Print)
		d.Lesson("close", "")
	}
}

// Nor does what a change costs: the list, what came from what, boats beside one another, each control's
// cost and how sure the figures are, and the page that is printed.
func TestCostsHaveNoInch(t *testing.T) {
	const s = units.Metric
	d, w := metric()
	d.Hold("now", "9:00")
	w.Set("length", w.Entered.Length+0.3)
	w.Set("depth", w.Entered.Depth+0.03)
	w.Commit()
	w.Known().Need(pipeline.Water)
	noInch(t, "costs", d.Costs(true))
	noInch(t, "costs on paper", d.PrintCosts("26 November 2026").Print)
	w.Known().Ask(pipeline.Asked{Inches: true, Spreads: true})
	w.Known().Need(pipeline.Inches)
	w.Known().Need(pipeline.Spreads)
	require.NotNil(t, w.Known().Inches())
	require.NotNil(t, w.Known().Spreads())
	noInch(t, "each control", markup.Inches(w.Canoe(), w.Known().Inches(), "", s))
	noInch(t, "ranks", markup.Ranks(w.Canoe(), s))
	for _, st := range stage.Keys() {
		noInch(t, "how sure", markup.Sure(w.Canoe(), w.Known().Spreads(), st, s))
	}
	d.Start(2)
	_, beside := d.Beside(map[int]bool{0: true, 1: true}, draw.Print())
	require.Contains(t, beside, "<svg")
	noInch(t, "side by side", beside)
	for _, n := range answer.Hours(w.Canoe(), w.Season(), plan.Progress{}) {
		noInch(t, n.Key, n.Label(s)+": "+n.Text(s)+"; "+n.Cited)
	}
}
