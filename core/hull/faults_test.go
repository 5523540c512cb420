package hull_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

const inch = units.Inch

// faultsOf returns everything wrong with a design that stops short of the frame.
func faultsOf(d design.Design) []design.Fault {
	if faults := design.Validate(d); faults != nil {
		return faults
	}
	h := hull.New(d)
	return h.Faults()
}

func TestDefaultHullHasNoFaults(t *testing.T) {
	assert.Empty(t, faultsOf(design.Default()))
}

// Every relation that needs the shape has a design that breaks it; the value
// offered in each system mends it, and one step on the other side does not.
func TestShapeFaults(t *testing.T) {
	rows := []struct {
		key, says string
		d         design.Design
	}{
		{"frameWidth", "outside the bark", check.With(t, "frameWidth", 36*inch, "turnWidth", 25*inch)},
		{"frameLength", "outside the bark", check.With(t, "frameLength", 170*inch, "frameFull", 4.0, "frameFine", 0.8)},
		{"greatestBeam", "lean in by", check.With(t, "depth", 12.5*inch, "greatestBeam", 70*inch)},
		{"overhang", "outside the curve", check.With(t, "overhang", 0.5*inch, "endHeight", 36*inch, "endFull", 0.2)},
		{"rocker", "so steeply at the heels", check.With(t, "rocker", 6*inch, "rockerSpread", 8.0, "heelLength", 40*inch,
			"endHeight", 21*inch)},
		{"endHeight", "over the head", check.With(t, "sheerSweep", 10.0, "overhang", 30*inch, "endHeight", 21*inch)},
	}
	for _, row := range rows {
		require.Empty(t, design.Validate(row.d), row.key)
		found := false
		h := hull.New(row.d)
		for _, f := range h.Faults() {
			if f.Key != row.key || !strings.Contains(f.Message(units.Metric), row.says) {
				continue
			}
			found = true
			require.True(t, f.HasFit, f.Message(units.Metric))
			p, _ := design.Lookup(f.Key)
			for _, s := range []units.System{units.Imperial16, units.Imperial8, units.Metric} {
				v, ok := f.Suggest(s)
				require.True(t, ok)
				mended := p.Set(row.d, v)
				require.Empty(t, design.Validate(mended), "%s at %v", row.key, v)
				h := hull.New(mended)
				for _, still := range h.Faults() {
					assert.NotContains(t, still.Message(s), row.says, "%s at %v", row.key, v)
				}
			}
			beyond := f.Fit + 0.002
			if f.FitLeast {
				beyond = f.Fit - 0.002
			}
			assert.NotEmpty(t, faultsOf(p.Set(row.d, beyond)), "%s: 2 mm beyond the fit is still a fault", row.key)
		}
		assert.True(t, found, "%s: %v", row.key, faultsOf(row.d))
	}
}

func TestRandomDesignsShareValid(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 3))
	valid := 0
	const n = 2000
	for range n {
		if faultsOf(check.NearDesign(r, design.Default(), 0.3)) == nil {
			valid++
		}
	}
	assert.Greater(t, valid, n/4, "the fuzz tests need buildable designs")
}
