package pipeline

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
)

// What a step of a slider costs by the number of ribs, the boat's length and the rows of a
// record beside it: make bench prints the table. None grows faster than its number does.
func TestCostGrows(t *testing.T) {
	if os.Getenv("BARKWRIGHT_SWEEP") == "" {
		t.Skip("make bench sets BARKWRIGHT_SWEEP")
	}
	step := func(d design.Design) func() {
		return func() {
			_, faults := core.Try(d)
			assert.Empty(t, faults)
		}
	}
	for _, by := range []struct {
		name string
		at   []float64
		cost func(v float64) func()
	}{
		{"ribs", []float64{8, 20, 44, 80, 110},
			func(v float64) func() { return step(with(t, "length", 360*inch, "ribs", v).Design) }},
		{"length, ft", []float64{10, 14, 16, 20, 24, 30},
			func(v float64) func() { return step(with(t, "length", v*12*inch).Design) }},
		{"rows of record", []float64{1, 10, 20, 40, 80}, func(v float64) func() {
			b := New(with(t), units.Imperial16)
			n := &record.Notebook{}
			for i := range int(v) {
				n.Record.Data = append(n.Record.Data, record.Datum{Kind: record.HalfGirth, Value: 26 * inch,
					At: record.Place{Distance: float64(i%40) * inch}})
			}
			b.Measure(n, units.Imperial16)
			return func() {
				b.forget(Beside)
				b.Need(Beside)
			}
		}},
	} {
		var line strings.Builder
		costs := make([]time.Duration, len(by.at))
		for i, v := range by.at {
			costs[i] = fastest(by.cost(v))
			fmt.Fprintf(&line, "  %g: %.3f ms", v, costs[i].Seconds()*1e3)
		}
		t.Logf("a step by %s:%s", by.name, line.String())
		last := len(by.at) - 1
		assert.LessOrEqual(t, float64(costs[last])/float64(costs[0]), by.at[last]/by.at[0], by.name)
	}
}

// fastest is the least time of some runs: what else the machine is doing only adds.
func fastest(act func()) time.Duration {
	least := time.Hour
	for range 40 {
		start := time.Now()
		act()
		least = min(least, time.Since(start))
	}
	return least
}
