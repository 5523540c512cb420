package desk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/file"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

// planned has the plan of the boat shown worked out.
func planned(w *work.Work) {
	w.Known().WantPlan(true, true, "2027-05-01")
	for !w.Known().Known(pipeline.Sooner) {
		w.Known().Next()
	}
}

// What is pressed before the plan is known does not hold the page: it says that it waits, and is carried out once
// the plan is known. What was pressed before, another place and another boat drop it.
func TestPrintWaitsForThePlan(t *testing.T) {
	d, w := open(&memory.Store{})
	now := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC)
	require.Empty(t, w.SetSeason("begin", "2027-06-14"))
	press := func(what string) desk.Reply { return d.Season(what, desk.PaperForm{}, now) }
	follow := func() desk.Reply { return d.SeasonFollows(desk.PaperForm{}, now) }
	for what, at := range map[string]string{"print": "season-says", "days": "season-says", "asks": "asks-says"} {
		r := press(what)
		assert.Empty(t, r.Print)
		assert.Contains(t, said(r, at), "printed as soon as it stands")
		assert.True(t, d.AwaitsPlan())
		assert.Empty(t, follow().Print, "not known yet")
		assert.Empty(t, said(d.DropAwaited(), at))
		assert.False(t, d.AwaitsPlan())
	}
	press("print")
	assert.Contains(t, said(press("calendar"), "season-says"), "handed over as soon as it stands")
	planned(w)
	r := follow()
	assert.Empty(t, r.Print)
	require.NotNil(t, r.Save)
	assert.False(t, d.AwaitsPlan())
	assert.Contains(t, press("asks").Print, "<svg", "known")

	require.Empty(t, w.SetSeason("learners", "2"))
	press("print")
	d.Shelf.Copy()
	w = d.Show()
	planned(w)
	assert.Empty(t, follow().Print)
	assert.False(t, d.AwaitsPlan(), "it was of the boat before")
}

// A calendar needs dates; it is handed over under the boat's name, and paper carries the plan.
func TestSeasonButtons(t *testing.T) {
	d, w := open(&memory.Store{})
	now := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC)
	planned(w)
	assert.Nil(t, d.Season("calendar", desk.PaperForm{}, now).Save)
	require.Empty(t, w.SetSeason("begin", "2027-06-14"))
	planned(w)
	r := d.Season("calendar", desk.PaperForm{}, now)
	require.NotNil(t, r.Save)
	assert.Contains(t, r.Save.Name, ".ics")
	assert.Contains(t, r.Save.Text, "BEGIN:VEVENT")
	assert.Contains(t, r.Save.Text, "DTSTAMP:20270501T120000Z")
	// RFC 5546 section 3.2.2 lets an opened file add and move entries, and take none away.
	assert.Contains(t, fmt.Sprint(r), "delete them first")
	for _, what := range []string{"print", "days", "asks"} {
		assert.Contains(t, d.Season(what, desk.PaperForm{}, now).Print, "<svg", what)
	}
	require.Empty(t, w.SetSeason("practised", "0"))
	planned(w)
	assert.Empty(t, d.Season("print", desk.PaperForm{}, now).Print)
	assert.NotEmpty(t, d.Season("asks", desk.PaperForm{}, now).Print, "what the boat asks needs no crew")
}

// A repair is worked out from what is typed; what cannot be read, or lies past the boat, is named.
func TestMend(t *testing.T) {
	d, w := open(&memory.Store{})
	hole := desk.MendForm{Kind: "hole", At: "3'", Up: `10"`, Along: `6"`, Round: `4"`, Starboard: true}
	assert.Contains(t, d.Mend(hole).Markup["mend-table"], "42 stitches")
	for at, all := range map[string][]desk.MendForm{
		"mend-kind":  {{}},
		"mend-at":    {{Kind: "hole", At: "here"}, {Kind: "crack", At: "30'", Round: `4"`}, {Kind: "rib", At: "-2'"}},
		"mend-up":    {{Kind: "crack", Round: `4"`, Up: "9'"}},
		"mend-along": {{Kind: "hole"}, {Kind: "hole", Along: "40'", Round: `4"`}},
		"mend-round": {{Kind: "crack"}, {Kind: "hole", Along: `6"`}, {Kind: "crack", Round: `-4"`},
			{Kind: "crack", Round: "12'"}},
		"mend-groups": {{Kind: "lacing", Groups: "some"}, {Kind: "lacing", Groups: "99999999999999999999"},
			{Kind: "lacing"},
			{Kind: "lacing", Groups: "46"}}, // of 90, 45 are on a side
	} {
		for _, bad := range all {
			for _, r := range []desk.Reply{d.Mend(bad), d.KeepRepair(bad, "2027-06-14")} {
				assert.Empty(t, r.Markup["mend-table"])
				onlyAt(t, r, at)
			}
		}
	}
	assert.Empty(t, w.Notebook.Log.Repairs())
}

// What a repair takes is told for the boat, the times and the units that stand: a change of any of them tells it
// anew, or says at the field why this boat has no such damage.
func TestRepairFollowsTheBoat(t *testing.T) {
	d, w := open(&memory.Store{})
	assert.Equal(t, desk.Reply{}, d.MendAgain(), "nothing was asked")
	hole := desk.MendForm{Kind: "hole", At: "6'", Along: "6", Round: "4"}
	assert.Contains(t, d.Mend(hole).Markup["mend-table"], "42 stitches")
	assert.Equal(t, desk.Reply{}, d.MendAgain())
	d.SetSystem(units.Metric)
	noInch(t, "in metric", d.MendAgain().Markup["mend-table"])
	assert.Equal(t, desk.Reply{}, d.MendAgain(), "once")
	require.Empty(t, w.SetSeason("rate.seams.sew", "30"))
	assert.NotEmpty(t, d.MendAgain().Markup)

	w.Set("length", 11*units.Foot)
	w.Commit()
	r := d.MendAgain()
	assert.Contains(t, said(r, "mend-at-fault"), "past the end of the gunwale")
	assert.Empty(t, r.Markup["mend-table"])
	assert.Empty(t, r.Focus, "whoever changes the boat is elsewhere")
	d.Start(-1) // the boat of a new user
	w = d.Show()
	r = d.MendAgain()
	assert.Contains(t, r.Markup["mend-table"], "152 mm")
	assert.Empty(t, said(r, "mend-at-fault"))

	d.KeepRepair(hole, "2027-06-14")
	w.Set("depth", 0.3)
	assert.Equal(t, desk.Reply{}, d.MendAgain(), "it is in the log, which tells it")
}

// A size typed without its unit is written in the new ones when the units change; one with its unit, and what is
// no size, stays.
func TestTypedInOtherUnits(t *testing.T) {
	d, _ := open(&memory.Store{})
	hole := desk.MendForm{Kind: "hole", At: "3 ft", Up: "here", Along: "6", Round: `4"`}
	root := desk.WorkForm{Task: "roots.dig", Done: "100", Hours: "6"}
	assert.Equal(t, map[string]string{"mend-along": "152 mm", "work-done": "30.48"},
		d.TypedIn(hole, root, units.Metric).Fields, "100 ft are 30.48 m")
	assert.Empty(t, d.TypedIn(hole, root, units.Imperial8).Fields)
	for _, done := range []desk.WorkForm{{Task: "roots.dig", Done: "30 m"}, {Task: "ribs.split", Done: "12"},
		{Task: "roots.dig"},
		{Task: "roots.dig", Done: "some"}, {}} {
		assert.Empty(t, d.TypedIn(desk.MendForm{}, done, units.Metric).Fields, done)
	}
	d.SetSystem(units.Metric)
	hole.Along, root.Done = "152", "30.48"
	assert.Equal(t, map[string]string{"mend-along": `6"`, "work-done": "100"},
		d.TypedIn(hole, root, units.Imperial16).Fields)
}

// onlyAt looks that a reply says what is wrong at one field of a form, marks it and goes there.
func onlyAt(t *testing.T, r desk.Reply, at string) {
	t.Helper()
	assert.Equal(t, at, r.Focus)
	for id, wrong := range r.Invalid {
		assert.Equal(t, id == at, wrong, id)
		assert.Equal(t, id == at, said(r, id+"-fault") != "", id)
	}
}

// A damage is asked what it has: what stands in a field of another one is not read.
func TestMendAsks(t *testing.T) {
	d, w := open(&memory.Store{})
	hidden := func(kind string) (ids []string) {
		for id, hidden := range desk.MendAsks(kind).Hidden {
			if hidden {
				ids = append(ids, strings.TrimSuffix(strings.TrimPrefix(id, "mend-"), "-control"))
			}
		}
		slices.Sort(ids)
		return ids
	}
	assert.Equal(t, []string{"along", "groups"}, hidden("crack"))
	assert.Equal(t, []string{"groups"}, hidden("hole"))
	assert.Equal(t, []string{"along", "round", "up"}, hidden("lacing"))
	assert.Equal(t, []string{"along", "groups", "round", "side", "up"}, hidden("rib"))
	d.KeepRepair(desk.MendForm{Kind: "rib", At: "2'", Up: "what", Along: "40'", Round: "?", Groups: "many"},
		"2027-06-14")
	require.Len(t, w.Notebook.Log.Repairs(), 1)
	assert.Equal(t, tally.Damage{Kind: tally.BrokenRib, At: 2 * units.Foot}, w.Notebook.Log.Repairs()[0].Damage)
}

// What was done is entered, or what is wrong with it is said at its field and nothing is lost; a log that is full
// says so.
func TestEnterWork(t *testing.T) {
	d, w := open(&memory.Store{})
	good := desk.WorkForm{Task: "lacing.lace", Done: "24", Hours: "", Learners: "20"}
	for at, bad := range map[string]desk.WorkForm{
		"work-task":     {Task: "none", Done: "1"},
		"work-done":     {Task: "lacing.lace", Hours: "2"},
		"work-hours":    {Task: "lacing.lace", Done: "1", Hours: "-1"},
		"work-learners": {Task: "lacing.lace", Done: "1", Learners: "1001"},
	} {
		r := d.EnterWork(bad, "2027-06-20")
		onlyAt(t, r, at)
		assert.Empty(t, r.Fields, "what is typed stays")
	}
	for _, done := range []string{"-1", "100001", "1e308", "many"} {
		onlyAt(t, d.EnterWork(desk.WorkForm{Task: "lacing.lace", Done: done}, "2027-06-20"), "work-done")
	}
	assert.Empty(t, w.Notebook.Log)
	r := d.EnterWork(good, "2027-06-20")
	onlyAt(t, r, "")
	assert.NotEmpty(t, r.Fields)
	assert.Contains(t, said(r, "work-says"), "Entered.")
	onlyAt(t, d.EnterWork(desk.WorkForm{Task: "lacing.lace", Done: "100000", Hours: "1000", Learners: "1000"},
		"2027-06-20"), "")
	for len(w.Notebook.Log) < tally.MostEntries {
		n := *w.Notebook
		n.Log = append(slices.Clone(n.Log), make(tally.Log, tally.MostEntries-len(n.Log))...)
		*w.Notebook = n
	}
	r = d.EnterWork(good, "2027-06-21")
	assert.Contains(t, said(r, "work-says"), "full")
	assert.Empty(t, r.Fields)
}

// A repair that is entered is kept with its day, can be undone and done again and taken off, goes
// through the file, and stands on the stage's sheet.
func TestRepairsAreKept(t *testing.T) {
	d, w := open(&memory.Store{})
	before := w.Steps(stage.Keep)
	d.KeepRepair(desk.MendForm{Kind: "hole", At: "3'", Up: `10"`, Along: `6"`, Round: `4"`, Starboard: true},
		"2027-06-14")
	d.KeepRepair(desk.MendForm{Kind: "rib", At: "2'", Aft: true}, "2027-06-15")
	want := w.Notebook.Log.Repairs()
	require.Len(t, want, 2)
	assert.Equal(t, "2027-06-14", want[0].When)
	hole := want[0].Damage
	assert.Equal(t, tally.Hole, hole.Kind)
	for i, inches := range []float64{36, -10, 6, 4} {
		assert.InDelta(t, inches*units.Inch, []float64{hole.At, hole.Up, hole.Along, hole.Round}[i], 1e-12)
	}
	assert.Equal(t, tally.BrokenRib, want[1].Damage.Kind)
	assert.InDelta(t, -2*units.Foot, want[1].Damage.At, 1e-12)
	assert.Equal(t, before, w.Steps(stage.Keep), "a repair ticks no step")
	w.Undo()
	assert.Equal(t, want[:1], w.Notebook.Log.Repairs())
	w.Redo()
	assert.Equal(t, want, w.Notebook.Log.Repairs())

	kept, err := file.Kept{Boat: file.Boat{Design: w.Entered, Notebook: *w.Notebook}}.Encode()
	require.NoError(t, err)
	back, err := file.DecodeKept(kept)
	require.NoError(t, err)
	assert.Equal(t, want, back.Boat.Notebook.Log.Repairs())

	printed := d.Paper("print", desk.PaperForm{Sheets: []stage.Key{stage.Keep}}).Print
	assert.Contains(t, printed, "Repair 1, 14 June 2027")
	// Its hours go by the times that are set: pages shown before those were go.
	form := desk.PaperForm{Sheets: []stage.Key{stage.Keep}, InSight: true}
	d.Paper("show", form)
	assert.Empty(t, d.ShowPaper(form).Markup)
	require.Empty(t, w.SetSeason("rate.seams.sew", "60"))
	assert.Contains(t, d.ShowPaper(form).Markup, "paper-pages")

	w.StrikeRepair(0)
	assert.Equal(t, want[1:], w.Notebook.Log.Repairs())
	w.Undo()
	assert.Equal(t, want, w.Notebook.Log.Repairs())
}
