package answer_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/known"
	"barkwright/core/units"
)

// skinned is a boat with everything about its bark worked out, on a coarse grid.
func skinned(d design.Design) core.Canoe {
	coarse := bark.Resolution{Columns: 24, Rows: 8}
	c := core.Evaluate(d)
	c = c.WithFlat(core.LayFlat(c, coarse, nil, nil))
	var curve []bark.CurvePoint
	for n := range core.MostCurved + 1 {
		curve = append(curve, bark.StretchAt(c.Hull, c.Bark, n, coarse, &geom.FlattenWorkspace{}))
	}
	return c.WithCurve(curve).WithMakes(nil)
}

// barkBoats turn the rules about bark the other way: no gore, no panel, hollow
// gunwales that want bark let in, and lists of sheets too short and long enough.
func barkBoats() map[string]design.Design {
	all := boats()
	with := func(values map[string]float64) design.Design {
		d := design.Default()
		for _, p := range design.Params() {
			if v, ok := values[p.Key]; ok {
				d = p.Set(d, v)
			}
		}
		return d
	}
	all["no gore"] = with(map[string]float64{"gores": 0})
	all["bark let in"] = with(map[string]float64{"beamFine": 2.2, "frameLength": 140 * units.Inch,
		"sheetWidth": 70 * units.Inch})
	short, long := design.Default(), design.Default()
	short.OnHand = short.OnHand.Put(0, design.Sheet{Width: 30 * units.Inch, Length: 80 * units.Inch})
	long.OnHand = long.OnHand.Put(0, design.Sheet{Width: 60 * units.Inch, Length: 240 * units.Inch})
	all["a short sheet"], all["a long sheet"] = short, long
	return all
}

func find(t *testing.T, all []answer.Number, key string) answer.Number {
	t.Helper()
	for _, n := range all {
		if n.Key == key {
			return n
		}
	}
	require.Fail(t, "no result "+key)
	return answer.Number{}
}

// With the skin the results are the same ones, none still being worked out; and
// tables are whole.
func TestResultsWithTheSkin(t *testing.T) {
	for name, d := range barkBoats() {
		require.Empty(t, core.Validate(d), name)
		c := skinned(d)
		before, now := answer.All(core.Evaluate(d)), answer.All(c)
		require.Len(t, now, len(before))
		for i, n := range now {
			assert.Equal(t, before[i].Key, n.Key)
			assert.False(t, n.NotYet(), "%s: %s", name, n.Key)
			assert.False(t, math.IsNaN(n.Value) || math.IsInf(n.Value, 0), "%s: %s", name, n.Key)
			for _, s := range systems {
				assert.NotContains(t, n.Working(s), "#")
				assert.NotEmpty(t, n.Text(s))
			}
		}
		for _, key := range []string{"gores", "stretch", "panels", "onhand", "cutting", "trees", "strands",
			"lacingchoices"} {
			table, ok := answer.MakeTable(c, key)
			require.True(t, ok, key)
			require.NotEmpty(t, table.Rows, "%s: %s", name, key)
			for _, r := range table.Rows {
				require.Len(t, r.Cells, len(table.Columns), "%s: %s", name, key)
				for _, cell := range r.Cells {
					assert.False(t, math.IsNaN(cell.Value) || math.IsInf(cell.Value, 0), "%s: %s", name, key)
				}
			}
		}
	}
}

// States are named in words.
func TestStatesOfTheBark(t *testing.T) {
	all := barkBoats()
	assert.True(t, find(t, answer.All(core.Evaluate(design.Default())), "bark.stretch").NotYet())
	letIn := skinned(all["bark let in"])
	assert.Contains(t, find(t, answer.All(letIn), "bark.goresCut").Word, "bark to be let in at")
	assert.Contains(t, cells(t, letIn, "gores"), "no gore here, bark to be let in")
	assert.Equal(t, "no sheets listed", find(t, answer.All(skinned(all["as it opens"])), "bark.largest").Word)
	short, long := skinned(all["a short sheet"]), skinned(all["a long sheet"])
	assert.Positive(t, find(t, answer.All(short), "bark.short").Value)
	assert.Contains(t, cells(t, short, "cutting"), "B1; on the bed; wanting")
	assert.Equal(t, "none: they cover this boat", find(t, answer.All(long), "bark.short").Word)
	assert.NotContains(t, cells(t, long, "cutting"), "wanting")
	assert.Greater(t, find(t, answer.All(long), "bark.largest").Value, all["a long sheet"].Length)
	assert.Contains(t, cells(t, long, "panels"), "none: the sheets are wide enough")
	assert.Zero(t, find(t, answer.All(long), "seams.panels").Value)
	assert.Positive(t, find(t, answer.All(short), "seams.panels").Value)
}

// cells are the words of a table.
func cells(t *testing.T, c core.Canoe, key string) string {
	t.Helper()
	table, ok := answer.MakeTable(c, key)
	require.True(t, ok)
	var words []string
	for _, r := range table.Rows {
		for _, cell := range r.Cells {
			words = append(words, cell.Text)
		}
	}
	return strings.Join(words, "; ")
}

// The limit names the fewest gores and nothing else.
func TestLimitNamesTheFewestGores(t *testing.T) {
	p, _ := design.Lookup("stretchLimit")
	fewest := func(limit float64) answer.Number {
		return find(t, answer.All(skinned(p.Set(design.Default(), limit))), "bark.fewestGores")
	}
	loose, tight := fewest(0.03), fewest(0.001)
	assert.Zero(t, loose.Value)
	assert.Equal(t, "more than 13", tight.Word)
	assert.Greater(t, fewest(0.006).Value, loose.Value)
	assert.Equal(t, known.Estimate, loose.Basis)
	assert.Contains(t, loose.Cited, "no published strain limit")
}

// The words of the table of stretch go by its figures as they are shown: none that
// reads the limit or less is called over it, and the first within it is the fewest.
func TestStretchTableAgreesWithItsFigures(t *testing.T) {
	p, _ := design.Lookup("stretchLimit")
	c := skinned(design.Default())
	limits := []float64{0.005, 0.006}
	for _, point := range c.Skin.Curve {
		// A limit that some of them reads though it is a little more.
		limits = append(limits, math.Floor(point.P95*1e4)/1e4)
	}
	for _, limit := range limits {
		c.Design = p.Set(design.Default(), limit)
		table, ok := answer.MakeTable(c, "stretch")
		require.True(t, ok)
		shown := func(v float64) float64 {
			v, _, err := units.Strain.Parse(units.Strain.Format(v, units.Metric), units.Metric)
			require.NoError(t, err)
			return v
		}
		first := -1.0
		for _, r := range table.Rows {
			within := strings.HasPrefix(r.Cells[3].Text, "within")
			assert.Equal(t, shown(r.Cells[1].Value) <= shown(limit)+1e-12, within, "%v gores", r.Cells[0].Value)
			if within && first < 0 {
				first = r.Cells[0].Value
			}
		}
		if first >= 0 {
			assert.Equal(t, first, find(t, answer.All(c), "bark.fewestGores").Value)
		}
	}
}
