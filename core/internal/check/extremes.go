package check

import (
	"testing"

	"github.com/stretchr/testify/require"

	"barkwright/core/design"
)

// Extremes are the default boat, a child's, and a freight canoe near the ends of the
// ranges, by name.
func Extremes(t testing.TB) map[string]design.Design {
	t.Helper()
	out := map[string]design.Design{"default": design.Default()}
	for name, line := range map[string]string{
		"child":   "barkwright1_L96_Oh4_B24_D9_G12_E15_El10_R0.5_N3_P1_C0_Kw32",
		"freight": "barkwright1_L432_Oh18_B66_D30_G44_E56_El40_R3_N9_P8_C3000_Kw60_Ch12_Im3_It1.5",
	} {
		d, _, err := design.ReadLine(line)
		require.NoError(t, err)
		out[name] = d
	}
	return out
}
