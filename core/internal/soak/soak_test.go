package soak

import (
	"fmt"
	"math/rand/v2"
	"os"
	"runtime"
	"slices"
	"strconv"
	"sync"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/internal/check"
)

// drawn is the design of a number: any, near a starting boat, at two or more exact ends,
// or a starting boat with one number at an end.
func drawn(i uint64) design.Design {
	r := rand.New(rand.NewPCG(i, 5))
	starts := append(design.Starting(), design.Default())
	from := starts[r.IntN(len(starts))]
	switch i % 5 {
	case 0:
		return check.AnyDesign(r)
	case 1:
		return check.AtExtremes(r, from, 1)
	case 2:
		return check.AtExtremes(r, from, 2)
	case 3:
		from = check.AtExtremes(r, check.NearDesign(r, from, 0.15), 1)
	default:
		from = check.NearDesign(r, from, 0.3)
	}
	if r.IntN(4) == 0 {
		from.OnHand = from.OnHand.Put(0, design.Sheet{Width: from.SheetWidth, Length: from.SheetLength / 2}).
			Put(1, design.Sheet{Width: design.LeastSheetWidth, Length: design.MostSheetLength})
	}
	return from
}

// tally is what came of many designs.
type tally struct {
	sync.Mutex
	designs, built, walked int
	found                  map[string]string // the first line each was found in
	counts                 map[string]int
	slowest                time.Duration
	slowestLine            string
}

func (t *tally) add(d design.Design, built, walked bool, took time.Duration, f *finds) {
	t.Lock()
	defer t.Unlock()
	t.designs++
	if built {
		t.built++
	}
	if walked {
		t.walked++
	}
	if took > t.slowest {
		t.slowest, t.slowestLine = took, lineOf(d)
	}
	for _, what := range f.all {
		if t.counts[what]++; t.counts[what] == 1 {
			t.found[what] = lineOf(d)
		}
	}
}

// lineOf is the design's line, and the sheets on hand, which no line holds.
func lineOf(d design.Design) string {
	line, err := design.Line(d)
	if err != nil {
		return err.Error()
	}
	if d.OnHand.Count > 0 {
		line += fmt.Sprint(" with sheets ", d.OnHand.List())
	}
	return line
}

// run takes designs on all cores, from a number up: tries of them, or as many as give
// walks that can be built.
func run(from uint64, tries, walks int) *tally {
	t := &tally{found: map[string]string{}, counts: map[string]int{}}
	next := make(chan uint64)
	var all sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for i := range next {
				d, f, begun := drawn(i), &finds{}, time.Now()
				c, built := try(d, f)
				if built && walks > 0 {
					walk(c, f)
				}
				t.add(d, built, built && walks > 0, time.Since(begun), f)
			}
		})
	}
	for i := from; ; i++ {
		t.Lock()
		done := t.walked >= walks && t.designs >= tries
		t.Unlock()
		if done {
			break
		}
		next <- i
	}
	close(next)
	all.Wait()
	return t
}

func (t *tally) report(name string) string {
	out := fmt.Sprintf("%s: %d designs, %d of them built, %d walked through everything; slowest %s: %s\n",
		name, t.designs, t.built, t.walked, t.slowest.Round(time.Millisecond), t.slowestLine)
	var what []string
	for w := range t.found {
		what = append(what, w)
	}
	slices.Sort(what)
	for _, w := range what {
		out += fmt.Sprintf("  %d times %s\n    first in %s\n", t.counts[w], w, t.found[w])
	}
	return out
}

// Nothing about a few boats stops, is no number or is not worked out: as many as
// BARKWRIGHT_SOAK_TRY through core.Try and BARKWRIGHT_SOAK_WALK through everything.
func TestNothingStops(t *testing.T) {
	asked := func(name string, few int) int {
		text := os.Getenv(name)
		if text == "" {
			return few
		}
		n, err := strconv.Atoi(text)
		require.NoError(t, err)
		return n
	}
	tries, walks := asked("BARKWRIGHT_SOAK_TRY", 200), asked("BARKWRIGHT_SOAK_WALK", 2)
	from := uint64(asked("BARKWRIGHT_SOAK_FROM", 1))
	for _, of := range []struct {
		name         string
		tries, walks int
	}{{"core.Try", tries, 0}, {"everything", 0, walks}} {
		done := run(from, of.tries, of.walks)
		if os.Getenv("BARKWRIGHT_SOAK_TRY") != "" {
			fmt.Print(done.report(of.name))
		}
		assert.Empty(t, done.found, done.report(of.name))
	}
}
