package core_test

import (
	"math"
	"math/rand/v2"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// Any design that validates gives numbers, all of them finite and inside physical
// bounds, and every one can be written: a few hundred here, as many as
// BARKWRIGHT_DESIGNS says in make bench.
func TestRandomDesignsGiveCanoes(t *testing.T) {
	want := 400
	if text := os.Getenv("BARKWRIGHT_DESIGNS"); text != "" {
		n, err := strconv.Atoi(text)
		require.NoError(t, err)
		want = n
	}
	r := rand.New(rand.NewPCG(11, 7))
	starts := append(design.Starting(), design.Default())
	built := 0
	for tries := 0; built < want; tries++ {
		require.Less(t, tries, 400*want, "too few designs can be built")
		d := check.NearDesign(r, starts[tries%len(starts)], 0.2)
		switch tries % 4 {
		case 0:
			d = check.AnyDesign(r)
		case 1:
			d = check.AtExtremes(r, starts[r.IntN(len(starts))], 2)
		}
		if built%4 == 1 {
			// From a source of its own, so that the boats stay the same.
			d = check.Corrected(rand.New(rand.NewPCG(uint64(tries), 7)), d)
		}
		if len(core.Validate(d)) > 0 {
			continue
		}
		built++
		bounded(t, d)
		if t.Failed() {
			line, _ := design.Line(d)
			t.Fatalf("design %d: %s", built, line)
		}
	}
}

func bounded(t *testing.T, d design.Design) {
	t.Helper()
	c := core.Evaluate(d)
	for _, n := range answer.All(c) {
		for _, v := range []float64{n.Value, n.Low, n.High} {
			assert.False(t, math.IsNaN(v) || math.IsInf(v, 0), n.Key)
		}
		assert.NotEmpty(t, n.Text(units.Imperial16), n.Key)
		assert.NotEmpty(t, n.Working(units.Metric), n.Key)
	}
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		for _, row := range table.Rows {
			for i, cell := range row.Cells {
				assert.False(t, math.IsNaN(cell.Value) || math.IsInf(cell.Value, 0), "%s %s", key, table.Columns[i].Key)
			}
		}
	}
	girth := 2 * c.Hull.Section(0).HalfGirth()
	assert.Greater(t, c.Gather.Weight.Typical, 0.0)
	assert.Less(t, c.Gather.Weight.Typical, 600.0, "kg, twice the weight of the longest boat printed")
	assert.Greater(t, girth, c.Design.Beam, "a girth goes round the beam")
	assert.Less(t, girth, 2*(d.Depth+d.OutsideBreadth()+d.GreatestBeam))
	assert.Greater(t, c.Frame.Gunwales.Run, c.Hull.GunwaleX, "a curve is longer than its chord")
	assert.Greater(t, c.Bark.Needs.SkinArea, d.Length*d.Beam/3)
	assert.Less(t, math.Abs(c.Afloat.Load.Centre.X), d.Length/2)
	assert.Greater(t, c.Afloat.Load.Centre.Z, 0.0)
	assert.Less(t, c.Afloat.Load.Centre.Z, d.EndHeight+2)
}
