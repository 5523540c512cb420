package answer_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
)

// The closing's stitches are those that the ends' root is counted for, its numbers those
// of its table, and the joints' table has it for both ends.
func TestClosingAgreesWithTheSeams(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		table, ok := answer.MakeTable(c, "closing")
		require.True(t, ok)
		sum := 0.0
		for _, r := range table.Rows {
			if r.Cells[4].Text == "" {
				sum += r.Cells[3].Value
			}
		}
		assert.Equal(t, c.Bark.Seams[bark.EndSeams].Stitches, 2*c.Frame.Closing.Stitches())
		assert.EqualValues(t, c.Frame.Closing.Stitches(), sum)
		assert.InDelta(t, c.Bark.EndSeam, table.Rows[0].Cells[2].Value, 1e-12)
		joints, _ := answer.MakeTable(c, "joinery")
		for _, r := range joints.Rows {
			if r.Cells[0].Text == "stitches through the stem-pieces" {
				assert.EqualValues(t, 2*c.Frame.Closing.ThroughStem(), r.Cells[3].Value)
			}
		}
	}
}
