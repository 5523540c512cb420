package core_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/units"
)

var nan = math.NaN()

// Boats that Validate passes and that stopped the program: the gores' feet on the
// frame itself, and an end so tight that its columns cut nothing at the last station.
func TestBoatsThatStoppedTheProgram(t *testing.T) {
	for _, line := range []string{
		"barkwright2_Gf0",
		"barkwright2_Gf0_Bg38",
		"barkwright2_L365_Oh13_D14_R6.75_Rs5.4_E22_Es11.5_El32_Ef0.92",
	} {
		d, _, err := design.ReadLine(line)
		require.NoError(t, err)
		c, faults := core.Try(d)
		require.Empty(t, faults, line)
		f := core.LayFlat(c, bark.ForFigures, nil, nil)
		assert.Equal(t, geom.Converged, f.State, line)
		assert.InDelta(t, f.Length, c.WithFlat(f).Bark.FlatLength, 1e-12, line)
	}
	for _, d := range design.Starting() {
		goreFoot, _ := design.Lookup("goreFoot")
		d = goreFoot.Set(d, 0)
		f := core.LayFlat(core.Evaluate(d), bark.ForFigures, nil, nil)
		assert.True(t, units.Shows(f.Length), d.Name)
	}
}

// A sheet that does not lie flat is named as that, and the seams, joints and root
// keep the lengths that are known without it.
func TestBarkThatDoesNotLieFlatIsNamed(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, state := range []geom.FlattenState{geom.NotConverged, geom.Flipped, geom.NoShape} {
		f := core.LayFlat(c, bark.ForPicture, nil, nil)
		f.State = state
		if state == geom.NoShape {
			f.Length, f.Breadth, f.P95 = nan, nan, nan
		}
		with := c.WithFlat(f)
		assert.Equal(t, c.Bark.FlatLength, with.Bark.FlatLength)
		assert.Equal(t, len(c.Bark.Joints), len(with.Bark.Joints))
		for _, n := range answer.All(with) {
			if n.Key == "bark.flatLength" || n.Key == "bark.stretch" {
				assert.Equal(t, "the bark does not lie flat: "+state.String(), n.Text(units.Metric))
				assert.Zero(t, n.Value)
			}
		}
	}
}

// A result that is not a finite number is named as not worked out wherever it is shown.
func TestNoNumberIsNamedInResultsAndTables(t *testing.T) {
	c := core.Evaluate(design.Default())
	c.Afloat.GMCrewHigher, c.Frame.Thwarts[0].Shoulder = nan, nan
	named := 0
	for _, n := range answer.All(c) {
		if n.Word == units.NotWorkedOut {
			named++
			assert.True(t, n.Absent, n.Key)
			assert.Zero(t, n.Value, n.Key)
		}
		assert.True(t, units.Shows(n.Value), n.Key)
	}
	assert.Equal(t, 1, named)
	table, _ := answer.MakeTable(c, "thwarts")
	assert.Contains(t, table.Rows[0].Cells, answer.Cell{Text: units.NotWorkedOut})
}
