package core_test

import (
	"math/rand/v2"
	"os"
	"runtime"
	"slices"
	"strconv"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/internal/check"
)

// A sweep works random boats out on every core, with their faults looked for: a hundred
// here; in make bench as many as BARKWRIGHT_SWEEP says, 10 000 of them within 4 s on two
// cores and no slower each than the same boats by the hundred. Every boat comes out as it does alone.
func TestSweep(t *testing.T) {
	n, timed := 100, false
	if text := os.Getenv("BARKWRIGHT_SWEEP"); text != "" {
		var err error
		n, err = strconv.Atoi(text)
		require.NoError(t, err)
		timed = true
	}
	boats := buildable(t, n)
	sweep(boats[:min(n, 100)]) // what is done once is done
	start := time.Now()
	for some := range slices.Chunk(boats, 100) {
		sweep(some)
	}
	byHundreds := time.Since(start)
	start = time.Now()
	stiffness := sweep(boats)
	all := time.Since(start)
	for k := 0; k < n; k += max(1, n/50) {
		assert.Equal(t, core.Evaluate(boats[k]).Afloat.GMLow, stiffness[k], "boat %d", k)
	}
	if !timed {
		return
	}
	cores := time.Duration(runtime.GOMAXPROCS(0))
	budget := 4 * time.Second * time.Duration(n) / 10_000 * 2 / cores
	t.Logf("sweep of %d boats on %d cores: %v (budget %v), %v a boat, by the hundred %v", n, cores,
		all.Round(time.Millisecond), budget, (all / time.Duration(n)).Round(time.Microsecond),
		(byHundreds / time.Duration(n)).Round(time.Microsecond))
	assert.LessOrEqual(t, all, budget)
	// A twentieth is what two runs of the same ten thousand differ by.
	assert.LessOrEqual(t, all, byHundreds*21/20)
}

// sweep works boats out, each on the first core that is free, and returns a number of each
// that all of its working out has gone into.
func sweep(boats []design.Design) []float64 {
	out := make([]float64, len(boats))
	var next atomic.Int64
	var all sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for i := next.Add(1) - 1; i < int64(len(boats)); i = next.Add(1) - 1 {
				if c, faults := core.Try(boats[i]); len(faults) == 0 {
					out[i] = c.Afloat.GMLow
				}
			}
		})
	}
	all.Wait()
	return out
}

// buildable draws n random boats that can be built.
func buildable(t *testing.T, n int) []design.Design {
	t.Helper()
	r := rand.New(rand.NewPCG(18, 4))
	starts := append(design.Starting(), design.Default())
	out := make([]design.Design, 0, n)
	for tries := 0; len(out) < n; tries++ {
		require.Less(t, tries, 100*n, "too few designs can be built")
		if d := check.NearDesign(r, starts[tries%len(starts)], 0.2); len(core.Validate(d)) == 0 {
			out = append(out, d)
		}
	}
	return out
}
