package answer_test

import (
	"regexp"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

func checkOf(t testing.TB, d design.Design, key string) answer.Warning {
	t.Helper()
	for _, w := range answer.Checks(core.Evaluate(d)) {
		if w.Key == key {
			return w
		}
	}
	require.Fail(t, "no check "+key)
	return answer.Warning{}
}

// No boat that the page brings opens with ribs tighter than published ones.
func TestStartingBoatsBendAsPublished(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		w := checkOf(t, d, "ribs.verdict")
		assert.Equal(t, answer.Within, w.State, "%s: %s, %s", d.Name, w.Word, w.Text(units.Imperial16))
	}
}

// Nor with gunwales or stems worse than a published boat's.
func TestStartingBoatsAreNotWorseThanPublished(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		for _, key := range []string{"stem.verdict", "ribs.verdict", "gunwales.verdict", "afloat.steady",
			"afloat.state"} {
			w := checkOf(t, d, key)
			assert.Equal(t, answer.Within, w.State, "%s: %s %s, %s", d.Name, w.Label, w.Word, w.Text(units.Imperial16))
		}
	}
}

// What the message says would clear the ribs does, in every system; a step thicker does
// not, where it is the rib's thickness amidships alone.
func TestRibsMessageNamesWhatClearsThem(t *testing.T) {
	named := regexp.MustCompile(`(Rib thickness amidships|Rib thickness at the ends) ([0-9/ ]+"|[0-9]+ mm)`)
	for _, s := range systems {
		for _, thick := range []float64{0.5, 0.625, 0.75} {
			d := check.With(t, "ribThickness", thick*units.Inch, "ribThicknessEnd", 0.5*units.Inch)
			w := checkOf(t, d, "ribs.verdict")
			require.Equal(t, answer.Beyond, w.State, "%v in: %s", thick, w.Word)
			text := w.Text(s)
			assert.Contains(t, text, "Published ribs measure 10 to 23 times")
			set := named.FindAllStringSubmatch(text, -1)
			require.NotEmpty(t, set, text)
			for _, m := range set {
				key := map[string]string{"Rib thickness amidships": "ribThickness",
					"Rib thickness at the ends": "ribThicknessEnd"}[m[1]]
				v, _, err := units.SmallLength.Parse(m[2], s)
				require.NoError(t, err, m[2])
				d = check.Of(t, d, key, v)
			}
			assert.Equal(t, answer.Within, checkOf(t, d, "ribs.verdict").State, text)
		}
	}
}

// How many ribs are broken is a setting, and those are not judged.
func TestBrokenRibsAreASetting(t *testing.T) {
	for _, n := range []float64{0, 3, 5} {
		c := core.Evaluate(check.With(t, "ribsBroken", n))
		for _, r := range answer.All(c) {
			if r.Key == "ribs.broken" {
				assert.Equal(t, n, r.Value)
			}
		}
		table, _ := answer.MakeTable(c, "ribs")
		broken := 0
		for _, row := range table.Rows {
			for _, cell := range row.Cells {
				if cell.Text == "broken at the centre" {
					broken++
				}
			}
		}
		assert.Equal(t, int(n), broken)
	}
	w := checkOf(t, check.With(t, "ribsBroken", 0.0), "ribs.verdict")
	assert.NotEqual(t, answer.Within, w.State, "the last ribs are too sharp to bend whole")
	assert.Contains(t, w.Text(units.Imperial16), "Ribs broken at the centre, each end ")
}

// A cold rib is judged by the guide and told to be bent hot.
func TestColdRibs(t *testing.T) {
	w := checkOf(t, check.With(t, "ribCondition", 2.0), "ribs.verdict")
	assert.NotEqual(t, answer.Within, w.State)
	assert.Contains(t, w.Text(units.Metric), "Bent hot")
	assert.NotEqual(t, "as published ribs bend", w.Word)
}

// The list of pieces adds up to the boat that it ends with, bark, root and pitch too.
func TestPiecesAddUp(t *testing.T) {
	c := core.Evaluate(design.Default())
	table, _ := answer.MakeTable(c, "pieces")
	sum, last, column := 0.0, 0.0, 0
	for i, col := range table.Columns {
		if col.Key == "mass" {
			column = i
		}
	}
	for i, r := range table.Rows {
		if i == len(table.Rows)-1 {
			last = r.Cells[column].Value
			break
		}
		sum += r.Cells[column].Value
	}
	assert.InDelta(t, last, sum, 1e-9)
	assert.InDelta(t, c.Gather.Weight.Typical, last, 1e-9)
}

// A rib has one rough length: that of the list of ribs is the one it is split to.
func TestOneRoughLengthOfARib(t *testing.T) {
	c := core.Evaluate(design.Default())
	ribs, _ := answer.MakeTable(c, "ribs")
	pieces, _ := answer.MakeTable(c, "pieces")
	cell := func(table answer.Table, row int, key string) float64 {
		for i, col := range table.Columns {
			if col.Key == key {
				return table.Rows[row].Cells[i].Value
			}
		}
		require.Fail(t, "no column "+key)
		return 0
	}
	longest := 0.0
	for i := range ribs.Rows {
		longest = max(longest, cell(ribs, i, "rough"))
	}
	// The list of pieces begins with what is gathered, in the same order.
	at := slices.IndexFunc(c.Gather.Pieces, func(p gather.Piece) bool { return p.Kind == gather.Ribs })
	require.GreaterOrEqual(t, at, 0)
	assert.InDelta(t, longest, cell(pieces, at, "length"), 1e-9)
}

// No more layers are named than the gunwales' ends can be set to: this boat's outwale turns up so
// sharply past the gunwale's end that two dozen would be wanted.
func TestNoMoreLayersThanCanBeSet(t *testing.T) {
	d := check.With(t, "length", 100*units.Inch, "overhang", 4*units.Inch, "beam", 22*units.Inch, "depth", 8*units.Inch,
		"gunwaleEndHeight", 11*units.Inch, "endHeight", 14*units.Inch, "rocker", units.Inch/2, "thwarts", 3.0)
	require.Empty(t, core.Validate(d))
	w := checkOf(t, d, "gunwales.verdict")
	assert.Contains(t, w.Text(units.Imperial16), "more than 8 layers")
	assert.NotContains(t, w.Text(units.Imperial16), "24 layers")
	table, _ := answer.MakeTable(core.Evaluate(d), "bends")
	i := slices.IndexFunc(table.Rows, func(r answer.Row) bool { return r.Cells[0].Text == "outwale, past the gunwale's end" })
	last := table.Rows[i].Cells
	assert.Equal(t, "more than 8", last[len(last)-1].Text)
}
