package desk_test

import (
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
)

// A calendar needs dates; it is handed over under the boat's name, and paper carries the plan.
func TestSeasonButtons(t *testing.T) {
	d, w := open(&memory.Store{})
	now := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC)
	assert.Nil(t, d.Season("calendar", desk.PaperForm{}, now).Save)
	require.Empty(t, w.SetSeason("begin", "2027-06-14"))
	r := d.Season("calendar", desk.PaperForm{}, now)
	require.NotNil(t, r.Save)
	assert.Contains(t, r.Save.Name, ".ics")
	assert.Contains(t, r.Save.Text, "BEGIN:VEVENT")
	assert.Contains(t, r.Save.Text, "DTSTAMP:20270501T120000Z")
	for _, what := range []string{"print", "days", "asks"} {
		assert.Contains(t, d.Season(what, desk.PaperForm{}, now).Print, "<svg", what)
	}
	require.Empty(t, w.SetSeason("practised", "0"))
	assert.Empty(t, d.Season("print", desk.PaperForm{}, now).Print)
	assert.NotEmpty(t, d.Season("asks", desk.PaperForm{}, now).Print, "what the boat asks needs no crew")
}

// A repair is worked out from what is typed; what cannot be read, or lies past the boat, is named.
func TestMend(t *testing.T) {
	d, w := open(&memory.Store{})
	hole := desk.MendForm{Kind: "hole", At: "3'", Up: `10"`, Along: `6"`, Round: `4"`, Starboard: true}
	assert.Contains(t, d.Mend(hole).Markup["mend-table"], "42 stitches")
	for _, bad := range []desk.MendForm{{}, {Kind: "hole", At: "here"}, {Kind: "crack", At: "30'", Round: `4"`}, {Kind: "crack"},
		{Kind: "hole", Along: `6"`}, {Kind: "crack", Round: `4"`, Up: "9'"}, {Kind: "crack", Round: `-4"`},
		{Kind: "lacing", Groups: "some"}, {Kind: "lacing", Groups: "99999999999999999999"}, {Kind: "lacing"}} {
		for _, r := range []desk.Reply{d.Mend(bad), d.KeepRepair(bad, "2027-06-14")} {
			assert.Empty(t, r.Markup)
			assert.NotEmpty(t, r.Says[0].Text)
		}
	}
	assert.Empty(t, w.Notebook.Log.Repairs())
}

// A repair that is entered is kept with its day, can be undone and done again and taken off, goes
// through the file, and stands on the stage's sheet.
func TestRepairsAreKept(t *testing.T) {
	d, w := open(&memory.Store{})
	before := w.Steps(stage.Keep)
	d.KeepRepair(desk.MendForm{Kind: "hole", At: "3'", Up: `10"`, Along: `6"`, Round: `4"`, Starboard: true}, "2027-06-14")
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
	assert.Contains(t, printed, "Repair of 14 June 2027")
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
