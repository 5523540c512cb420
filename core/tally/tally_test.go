package tally_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/tally"
)

// A tick is taken back by another entry; the day is that of the tick that stands.
func TestTicks(t *testing.T) {
	var l tally.Log
	first := l.Tick("rib.drive", "rib.18", "2026-06-14", true)
	when, done := first.Done("rib.drive", "rib.18")
	assert.True(t, done)
	assert.Equal(t, "2026-06-14", when)
	assert.Empty(t, l, "the log before is as it was")
	assert.Len(t, first.Tick("rib.drive", "rib.18", "2026-06-15", true), 1, "ticked already")
	assert.Len(t, first.Tick("rib.drive", "rib.17", "2026-06-15", false), 1, "not ticked before")

	back := first.Tick("rib.drive", "rib.18", "2026-06-15", false)
	_, done = back.Done("rib.drive", "rib.18")
	assert.False(t, done)
	_, done = first.Done("rib.drive", "rib.18")
	assert.True(t, done, "an earlier log can be gone back to")
	again := back.Tick("rib.drive", "rib.18", "2026-06-16", true)
	when, _ = again.Done("rib.drive", "rib.18")
	assert.Equal(t, "2026-06-16", when)
	assert.Equal(t, 1, again.Rows("rib.drive"))
	_, done = again.Done("rib.drive", "")
	assert.False(t, done, "a row is not the whole step")
}

// A step that is ticked as a whole ticks its rows, and taken back leaves those that were
// ticked by themselves.
func TestWholeStepsTickRows(t *testing.T) {
	l := tally.Log{}.Tick("rib.drive", "rib.18", "2026-06-14", true).Tick("rib.drive", "", "2026-06-20", true)
	for row, day := range map[string]string{"rib.18": "2026-06-14", "rib.1": "2026-06-20"} {
		when, done := l.Done("rib.drive", row)
		assert.True(t, done, row)
		assert.Equal(t, day, when, row)
	}
	_, done := l.Done("rib.dry", "rib.1")
	assert.False(t, done, "another step")
	l = l.Tick("rib.drive", "", "2026-06-21", false)
	_, done = l.Done("rib.drive", "rib.1")
	assert.False(t, done)
	_, done = l.Done("rib.drive", "rib.18")
	assert.True(t, done)
}

// Two logs that grow from one do not write into each other.
func TestLogsAreApart(t *testing.T) {
	l := tally.Log{}.Tick("a", "", "2026-06-14", true)
	x, y := l.Tick("b", "", "2026-06-14", true), l.Tick("c", "", "2026-06-14", true)
	_, b := x.Done("b", "")
	_, c := y.Done("c", "")
	assert.True(t, b && c)
	assert.Equal(t, y, append(tally.Log{}, l...).Tick("c", "", "2026-06-14", true))
}

// Notes are kept short and on a line, and are no ticks.
func TestNotes(t *testing.T) {
	l := tally.Log{}.Note("gather", "2026-06-14", "  two\nlines ").Note("gather", "2026-06-14", " \n ")
	require.Len(t, l, 1)
	assert.Equal(t, "two lines", l[0].Note)
	_, done := l.Done("gather", "")
	assert.False(t, done)
	assert.Len(t, l.Note("gather.dig", "2026-06-15", "roots").Notes("gather"), 2)
	assert.Empty(t, l.Notes("gat"))
	l = l.Note("gather", "2026-06-15", strings.Repeat("ä", tally.LongestNote+5))
	assert.Equal(t, tally.LongestNote, len([]rune(l[1].Note)))
}

// A log that is full takes no more.
func TestMostEntries(t *testing.T) {
	l := make(tally.Log, tally.MostEntries)
	assert.Len(t, l.Tick("a", "", "2026-06-14", true), tally.MostEntries)
}

func TestDay(t *testing.T) {
	assert.True(t, tally.Day("2026-06-14"))
	for _, bad := range []string{"", "2026-13-01", "14 June", "2026-6-4"} {
		assert.False(t, tally.Day(bad), bad)
	}
}

// What is done of a task counts; nothing done, and hours less than none, are no entry.
func TestWork(t *testing.T) {
	l := tally.Log{}.Work("roots.dig", "2026-06-14", 40, 3, 0.5)
	require.Len(t, l, 1)
	assert.Equal(t, tally.Entry{Step: "roots.dig", When: "2026-06-14", Units: 40, Hours: 3, Learners: 0.5}, l[0])
	for _, none := range [][3]float64{{0, 1, 1}, {-1, 1, 1}, {1, -1, 0}, {1, 0, -1}} {
		assert.Equal(t, l, l.Work("roots.dig", "2026-06-15", none[0], none[1], none[2]), "%v", none)
	}
	assert.Len(t, l.Work("roots.dig", "2026-06-15", 1, 0, 0), 2, "hours need not be known")
}

// Of the repairs in a log one is struck and nothing else; the log before stays as it was.
func TestRepairs(t *testing.T) {
	crack, hole := tally.Damage{Kind: tally.Crack, At: 1, Round: 0.1},
		tally.Damage{Kind: tally.Hole, At: -1, Along: 0.05}
	l := tally.Log{}.Repair("keep.patch", "2027-05-01", crack).Note("keep", "2027-05-02", "dry now").
		Repair("keep.patch", "2027-05-03", hole)
	assert.Equal(t, l, l.Repair("keep.patch", "2027-05-04", tally.Damage{}), "no damage is no repair")
	of := func(l tally.Log) (out []tally.Damage) {
		for _, e := range l.Repairs() {
			out = append(out, e.Damage)
		}
		return out
	}
	require.Equal(t, []tally.Damage{crack, hole}, of(l))
	assert.Equal(t, []tally.Damage{hole}, of(l.Struck(0)))
	assert.Equal(t, []tally.Damage{crack}, of(l.Struck(1)))
	assert.Len(t, l.Struck(0).Notes("keep"), 1)
	assert.Equal(t, l, l.Struck(2), "there is no third")
	assert.Equal(t, []tally.Damage{crack, hole}, of(l))
}

// A file names a kind of damage by its key; what is no key is no damage.
func TestDamageByKey(t *testing.T) {
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		of, ok := tally.DamageOf(k.Key())
		assert.True(t, ok, k)
		assert.Equal(t, k, of)
	}
	for _, key := range []string{"", "none", "Crack", "dent"} {
		of, ok := tally.DamageOf(key)
		assert.False(t, ok, key)
		assert.Equal(t, tally.NoDamage, of)
	}
}
