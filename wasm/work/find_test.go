package work_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// A line that is found shows the value of the boat in hand, in its units, and the stage.
func TestFoundLinesShowTheBoatInHand(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	line := func(question, key string) work.Found {
		for _, f := range w.Find(question) {
			if f.Go == key {
				return f
			}
		}
		require.Fail(t, "not found", "%s by %q", key, question)
		return work.Found{}
	}
	assert.Equal(t, work.Found{Go: "set:ribs", Kind: "set", Name: "Ribs", Value: "44", At: "Gunwales"}, line("rib", "set:ribs"))
	w.Set("ribs", 40)
	assert.Equal(t, "40", line("rib", "set:ribs").Value)
	assert.Equal(t, "40", line("rib", "number:ribs.count").Value)
	assert.Equal(t, "steady", line("tippy", "check:afloat.steady").Value)
	assert.Empty(t, line("words", "place:#words").At)
	w.System = units.Metric
	assert.True(t, strings.HasSuffix(line("beam", "set:beam").Value, " mm"), line("beam", "set:beam").Value)
}
