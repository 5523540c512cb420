package work

import (
	"math"
	"strconv"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/units"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/keep"
	"barkwright/wasm/pipeline"
)

// set types texts for the plan at their controls, each of which takes it.
func set(t *testing.T, w *Work, typed ...[2]string) {
	t.Helper()
	for _, row := range typed {
		require.Empty(t, w.SetSeason(row[0], row[1]), row[0])
	}
}

// What is typed in a field of the plan and cannot be read, or was not left, stays with its boat and says why it does
// not count; what is read, and what stands there already, is not half typed.
func TestHalfTypedSeason(t *testing.T) {
	store := &memory.Store{}
	s := NewShelf(keep.Open(store, &memory.Store{}, time.Now), units.Imperial16)
	s.Add(design.Default())
	w := s.InHand()
	wrong := w.SetSeason("practised", "many")
	w.TypeSeason("learners", "5")
	w.TypeSeason("boats", "2")
	w.TypeSeason("boats", "1")
	require.NoError(t, s.Keep().Err)

	s = NewShelf(keep.Open(store, &memory.Store{}, time.Now), units.Imperial16)
	s.Open()
	w = s.InHand()
	text, why, half := w.HalfSeason("practised")
	assert.Equal(t, []any{"many", wrong, true}, []any{text, why, half})
	text, why, half = w.HalfSeason("learners")
	assert.Equal(t, []any{"5", HalfTyped, true}, []any{text, why, half})
	_, _, half = w.HalfSeason("boats")
	assert.False(t, half, "it stands there")
	season := w.Season()
	assert.Equal(t, 0, season.Int(plan.Learners), "it does not count yet")
	require.Empty(t, w.SetSeason("learners", "5"))
	_, _, half = w.HalfSeason("learners")
	assert.False(t, half)
	s.Add(design.Default())
	_, _, half = s.InHand().HalfSeason("practised")
	assert.False(t, half, "another boat's")
}

// What is typed for the plan is set in one step of undo, with a point or a comma; what cannot be
// read or lies out of its range says so and changes nothing.
func TestSetSeason(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	set(t, w, [2]string{"learners", " 12 "}, [2]string{"travel", "2,5"}, [2]string{"begin", "2027-06-14"},
		[2]string{"rate.roots.dig", "1.5"}, [2]string{"have.bark.take", "2"})
	s := w.Season()
	assert.Equal(t, 12, s.Int(plan.Learners))
	assert.InDelta(t, 2.5, s.Number(plan.Travel), 1e-12)
	assert.Equal(t, "2027-06-14", w.SeasonText("begin"))
	assert.Equal(t, "1.5", w.SeasonText("rate.roots.dig"))
	assert.Empty(t, w.SeasonText("rate.lacing.lace"))
	for key, text := range map[string]string{"learners": "99", "practised": "two", "begin": "14 June",
		"peelFrom":       "31-12",
		"rate.roots.dig": "0", "have.bark.take": "-1", "hours": "NaN", "factor": "inf"} {
		assert.NotEmpty(t, w.SetSeason(key, text), key)
	}
	assert.Equal(t, s, w.Season())
	assert.Empty(t, w.SetSeason("no such", "1"))
	require.True(t, w.Undo())
	assert.Empty(t, w.SeasonText("have.bark.take"))
	require.Empty(t, w.SetSeason("rate.roots.dig", ""))
	assert.Empty(t, w.SeasonText("rate.roots.dig"), "empty goes back to the table's time")
}

// What is counted by measure is taken and shown in the reader's units, and kept in the plan's own: by the
// definitions of the foot and the pound, 30 m are 98.4252 ft, 2 m2 21.5278 ft2, 5 lb 2.26796 kg, and a
// minute of a metre 0.3048 of a foot. What is typed comes back as it was typed, in the other units rounded.
func TestSeasonInTheReadersUnits(t *testing.T) {
	w := New(design.Default(), units.Metric)
	set(t, w, [2]string{"have.roots.dig", "30"}, [2]string{"have.bark.lay", "2,00"},
		[2]string{"have.roots.peel", "100 ft"},
		[2]string{"have.pegs.make", "12"}, [2]string{"rate.roots.dig", "5"})
	s := w.Season()
	assert.InDelta(t, 98.4252, s.Have[plan.DigRoots], 5e-5)
	assert.InDelta(t, 21.5278, s.Have[plan.LayBark], 5e-5)
	assert.Equal(t, 100.0, s.Have[plan.PeelRoots], "in the plan's own unit it is kept as typed")
	assert.Equal(t, 12.0, s.Have[plan.MakePegs])
	assert.InDelta(t, 1.524, s.Minutes(plan.DigRoots).Likely, 1e-12)
	for key, text := range map[string]string{"have.roots.dig": "30", "have.bark.lay": "2", "have.roots.peel": "30.48",
		"have.pegs.make": "12", "rate.roots.dig": "5"} {
		assert.Equal(t, text, w.SeasonText(key), key)
	}
	w.System = units.Imperial16
	for key, text := range map[string]string{"have.roots.dig": "98.43", "have.bark.lay": "21.53",
		"have.roots.peel": "100", "rate.roots.dig": "1.524"} {
		assert.Equal(t, text, w.SeasonText(key), key)
	}
	require.Empty(t, w.SetSeason("have.gum.gather", "5"))
	s = w.Season()
	assert.InDelta(t, 2.26796, s.Have[plan.GatherGum], 5e-6)
	assert.Equal(t, "5", w.SeasonText("have.gum.gather"))

	w.System = units.Metric
	require.Empty(t, w.AddWork("seams.sew", "2027-06-20", "24", "", ""))
	require.Empty(t, w.AddWork("pitch.inside", "2027-06-20", "3", "1", ""))
	require.Empty(t, w.AddWork("pitch.inside", "2027-06-20", "10 ft", "", ""))
	assert.InDelta(t, 24, w.Notebook.Log[0].Units, 1e-12)
	assert.InDelta(t, 9.84252, w.Notebook.Log[1].Units, 5e-6)
	assert.Equal(t, 10.0, w.Notebook.Log[2].Units)
	for _, bad := range []string{"1,500", "-3", "3 lb", ""} {
		assert.NotEmpty(t, w.AddWork("pitch.inside", "2027-06-20", bad, "", ""), bad)
	}
	assert.Contains(t, w.SetSeason("have.roots.dig", "30481"), "from 0 to 30480.", "100000 ft")
	assert.Contains(t, w.SetSeason("rate.roots.dig", "19686"), "no more than 19685.", "6000 minutes of a foot")
	require.Empty(t, w.SetSeason("have.roots.dig", "30480"))
	require.Empty(t, w.SetSeason("rate.roots.dig", "19685"))
}

// Every number of the crew is taken at both ends of its range and refused at its control past them, with
// the range said there: no days a week are none.
func TestNumbersOfTheCrewKeepTheirRange(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	text := func(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
	for _, r := range plan.Rows() {
		for _, v := range []float64{r.Low - r.Step, r.High + r.Step} {
			assert.Equal(t, r.Label+": "+text(r.Low)+" to "+text(r.High)+".", w.SetSeason(r.Key, text(v)), r.Key)
		}
		assert.Equal(t, text(r.Default), w.SeasonText(r.Key))
		for _, v := range []float64{r.Low, r.High, r.Default} {
			assert.Empty(t, w.SetSeason(r.Key, text(v)), r.Key)
		}
	}
	assert.Equal(t, "Days a week: 1 to 7.", w.SetSeason("daysAWeek", "0"))
	assert.NotEmpty(t, w.SetSeason("daysAWeek", ""))
}

// The plan is of the boat in hand and of what is set: it follows both, and says nothing old.
func TestPlannedFollows(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	assert.Equal(t, "being worked out", w.Planned()[0].Text())
	w.Known().Need(pipeline.Season)
	two := w.Planned()[0].SI()
	assert.NotEmpty(t, two)
	w.SetSeason("practised", "4")
	assert.Equal(t, "being worked out", w.Planned()[0].Text())
	w.Known().Need(pipeline.Season)
	assert.NotEqual(t, two, w.Planned()[0].SI())
	w.Set("length", 15*units.Foot)
	assert.Equal(t, "being worked out", w.Planned()[0].Text())
}

// Work entered in the log is done, and its hours teach the time of one.
func TestAddWork(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	assert.NotEmpty(t, w.AddWork("lacing.lace", "2027-06-20", "", "2", ""))
	assert.NotEmpty(t, w.AddWork("lacing.lace", "2027-06-20", "many", "", ""))
	assert.NotEmpty(t, w.AddWork("no.task", "2027-06-20", "1", "", ""))
	assert.Empty(t, w.Notebook.Log)
	require.Empty(t, w.AddWork("lacing.lace", "2027-06-20", "24", "", "20"))
	require.Len(t, w.Notebook.Log, 1)
	assert.InDelta(t, 24, w.Notebook.Log[0].Units, 1e-12)
}

// Root that is split, less what is sewn in, against what is still to be sewn; short where less was
// split than is asked for.
func TestRootLeft(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	_, all, split := w.RootLeft()
	assert.False(t, split)
	c := w.Canoe()
	assert.InDelta(t, c.Bark.Root.WithWaste+c.Frame.Lacing.WithWaste, all, 1e-9)
	w.SetSeason("have.roots.splitLacing", "600")
	w.AddWork("lacing.lace", "2027-06-20", "45", "", "")
	have, wanted, split := w.RootLeft()
	assert.True(t, split)
	assert.InDelta(t, 600*units.Foot-c.Frame.Lacing.WithWaste/2, have, 1e-9)
	assert.InDelta(t, c.Bark.Root.WithWaste+c.Frame.Lacing.WithWaste/2, wanted, 1e-9)
}

// The ends take root too: once all other seams are sewn, what the ends' stitches take is still wanted, counted by the
// root of each stitch there, and none once they are sewn.
func TestRootLeftForTheEnds(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	c := w.Canoe()
	asks := c.Asks()
	entered := func(id plan.ID, share float64) {
		t.Helper()
		n := strconv.FormatFloat(asks.Units[id]*share, 'f', -1, 64)
		require.Empty(t, w.AddWork(plan.Of(id).Key, "2027-06-20", n, "", ""))
	}
	entered(plan.SplitSeamRoot, 1)
	entered(plan.SplitLacingRoot, 1)
	entered(plan.Lace, 1)
	entered(plan.SewSeams, 1)
	entered(plan.SewEnds, 0.25)
	ends := c.Bark.Seams[bark.EndSeams]
	want := 0.75 * float64(ends.Stitches) * ends.Sewing.PerStitch() * (1 + c.Design.RootWaste)
	have, wanted, _ := w.RootLeft()
	assert.InDelta(t, want, wanted, 1e-9)
	assert.InDelta(t, want, have, 1e-9)
	entered(plan.SewEnds, 0.75)
	_, wanted, _ = w.RootLeft()
	assert.InDelta(t, 0, wanted, 1e-9)
}

// Bark taken, less what is laid, against what is still to be laid; laid bark was taken.
func TestBarkLeft(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	_, all, taken := w.BarkLeft()
	assert.False(t, taken)
	assert.Equal(t, w.Canoe().Asks().Units[plan.TakeBark], all)
	require.Empty(t, w.AddWork("bark.take", "2027-06-20", "2", "", ""))
	require.Empty(t, w.SetSeason("have.bark.take", "1"))
	half := w.Canoe().Asks().Units[plan.LayBark] / 2
	require.Empty(t, w.SetSeason("have.bark.lay", strconv.FormatFloat(half, 'f', -1, 64)))
	have, wanted, taken := w.BarkLeft()
	assert.True(t, taken)
	assert.InDelta(t, 3-all/2, have, 1e-9)
	assert.InDelta(t, all/2, wanted, 1e-9)

	w = New(design.Default(), units.Imperial16)
	require.Empty(t, w.AddWork("bark.lay", "2027-06-20", "10000", "", ""))
	have, wanted, taken = w.BarkLeft()
	assert.True(t, taken)
	assert.Zero(t, have)
	assert.Zero(t, wanted)
}

// The time that the log shows of a task is the plan's own rule: of 90 groups 18 weigh as the
// table, 24 as the log (a default boat of other groups: by its own count).
func TestLearnedMinutes(t *testing.T) {
	w := New(design.Default(), units.Imperial16)
	assert.Zero(t, w.LearnedMinutes()[plan.Lace])
	require.Empty(t, w.AddWork("lacing.lace", "2027-06-20", "24", "", "20"))
	groups, table := w.Canoe().Asks().Units[plan.Lace], plan.Of(plan.Lace).Minutes
	factor := plan.NewSeason().Numbers[plan.Factor]
	mean := (groups/5*table.Mean() + 60*20/factor) / (groups/5 + 24)
	drawn := math.Sqrt(groups / 5 / (groups/5 + 24))
	likely := mean + (table.Likely*mean/table.Mean()-mean)*drawn
	assert.InDelta(t, likely, w.LearnedMinutes()[plan.Lace], 1e-9)
	require.Empty(t, w.AddWork("pegs.make", "2027-06-20", "1", "200", ""))
	assert.Zero(t, w.LearnedMinutes()[plan.MakePegs], "hours so far off are not taken")
}
