package refit

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// Measured against its own record the fitted boat gives the fit's own rows; an inch
// more of beam is an inch more at the middle thwart and nothing in the heights.
func TestMeasureFollowsTheDesign(t *testing.T) {
	_, data, refused := record.Read("beam inside the gunwales\t33\nmiddle thwart clear\t33\nlength overall\t16'\n"+
		"rail height at 0\t13", 0, units.Imperial16)
	require.LessOrEqual(t, len(refused), 1)
	rec := record.Record{Data: data}
	f := Fit(rec)
	rows := Measure(f.Design, rec)
	require.Len(t, rows, len(f.Rows))
	for i := range rows {
		assert.InDelta(t, f.Rows[i].Model, rows[i].Model, 1e-12, rows[i].Datum.String())
	}
	p, _ := design.Lookup("beam")
	wide := Measure(p.Set(f.Design, f.Design.Beam+units.Inch), rec)
	for i := range rows {
		switch rows[i].Kind {
		case record.BeamInside, record.ClearWidth:
			assert.InDelta(t, rows[i].Model+units.Inch, wide[i].Model, 1e-9)
		case record.RailHeight:
			assert.InDelta(t, rows[i].Model, wide[i].Model, 1e-9)
		}
	}
}
