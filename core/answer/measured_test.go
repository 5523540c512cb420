package answer_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// Half an inch more at the first thwart moves the ribs near it most, by a quarter to
// half an inch, and the one next to the middle by less than a tape shows.
func TestReadingsMoveTheRibsNearThem(t *testing.T) {
	d := design.Default()
	before := core.Evaluate(d)
	clear := before.Frame.Thwarts[1].Shoulder
	rebuilt := refit.AsBuilt(d, []record.Datum{{Kind: record.ClearWidth, Number: 1, Value: clear + 0.5*units.Inch}},
		units.Imperial16)
	require.Empty(t, rebuilt.Conflicts)
	after := core.Evaluate(rebuilt.Design)
	assert.InDelta(t, clear+0.5*units.Inch, after.Frame.Thwarts[1].Shoulder, units.Inch/32,
		"half of a tape's sixteenth")
	table := answer.RibsMoved(before, after, units.Imperial16)
	require.NotEmpty(t, table.Rows)
	most, at := 0.0, 0.0
	for _, r := range table.Rows {
		if change := r.Cells[3].Value; change > most {
			most, at = change, r.Cells[4].Value
		}
	}
	assert.Greater(t, most, 0.25*units.Inch)
	assert.Less(t, most, 0.5*units.Inch)
	assert.InDelta(t, before.Frame.Thwarts[1].Run, at, 12*units.Inch, "the rib moved most stands by the thwart")
	assert.InDelta(t, before.Frame.Ribs[0].Length, after.Frame.Ribs[0].Length, units.Inch/16)
	moved := answer.MovedTable(rebuilt, units.Imperial16)
	require.Len(t, moved.Rows, 1)
	assert.Contains(t, moved.Rows[0].Cells[0].Text, "Thwart clear length, 3'")
	// No rib past the next thwart, where nothing was read, changes.
	for _, r := range table.Rows {
		assert.Less(t, r.Cells[4].Value, before.Frame.Thwarts[2].Run+units.Inch)
	}
}

// Where the number of ribs changes, those that only one of the boats has are listed,
// and each other stands beside the one of its own number.
func TestRibsOfOneBoatOnlyAreListed(t *testing.T) {
	few, many := core.Evaluate(check.With(t, "ribs", 43.0)), core.Evaluate(check.With(t, "ribs", 46.0))
	only := func(before, after core.Canoe, column int) (numbers []float64) {
		for _, r := range answer.RibsMoved(before, after, units.Imperial16).Rows {
			if r.Cells[column].Text == "none" {
				numbers = append(numbers, r.Cells[0].Value)
			}
		}
		return numbers
	}
	assert.Equal(t, []float64{22, 23}, only(few, many, 1))
	assert.Equal(t, []float64{0}, only(few, many, 2), "the one under the middle thwart")
	assert.Equal(t, []float64{0}, only(many, few, 1))
	assert.Equal(t, []float64{22, 23}, only(many, few, 2))
	assert.Empty(t, answer.RibsMoved(few, few, units.Imperial16).Rows)
}

// A measurement that the boat has none of is held at none, not at nothing long.
func TestHeldAtNone(t *testing.T) {
	f := refit.Fit(record.Record{Data: []record.Datum{{Kind: record.LengthOverall, Value: 4.9}}})
	for _, r := range answer.HeldTable(f.Held, units.Imperial16).Rows {
		if r.Cells[0].Text == "Greatest breadth of bark" {
			assert.Equal(t, "none", r.Cells[1].Text)
			return
		}
	}
	t.Fatal("it is not listed")
}

func TestMeasuredTables(t *testing.T) {
	_, data, _ := record.Read("length overall\t16'\nbeam inside the gunwales\t33\tlocked\ndepth to inwale\t12 "+
		"1/2\nribs\t44\nfirst thwart clear\t26\nend thwart clear\t10\nfirst thwart, from middle\t36\nend thwart, "+
		"from middle\t68\nrail height at 0\t12 7/8\nrail height at first thwart\t13\nrail height at end "+
		"thwart\t15\nrail height at 80\t18", 0, units.Imperial16)
	require.NotEmpty(t, data)
	rec := record.Record{Data: data}
	f := refit.Fit(rec)
	predicted, ok := refit.Predict(rec, len(data)-1)
	require.True(t, ok)
	for _, table := range []answer.Table{answer.MeasuredTable(f.Rows, units.Metric), answer.HeldTable(f.Held,
		units.Metric), answer.PredictedTable([]refit.Prediction{predicted}, units.Metric)} {
		require.NotEmpty(t, table.Rows, table.Key)
		for _, r := range table.Rows {
			require.Len(t, r.Cells, len(table.Columns))
			if table.Key == "measured" && r.Cells[2].Text == "" {
				// Whole millimetres show: the difference is of those.
				assert.Equal(t, math.Round(r.Cells[2].Value*1000)-math.Round(r.Cells[1].Value*1000),
					math.Round(r.Cells[3].Value*1e9)/1e6, r.Cells[0].Text)
			}
		}
	}
}
