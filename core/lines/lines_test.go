package lines_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/internal/check"
	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/core/units"
)

func list(t testing.TB, c core.Canoe, name string) lines.List {
	for _, st := range stage.All() {
		for _, l := range lines.Lists(c, st, units.Imperial16) {
			if l.Name == name {
				return l
			}
		}
	}
	require.Fail(t, "no list "+name)
	return lines.List{}
}

// Ribs are fitted in the order that the frame gives them, each with a line of its own; one
// that stands amidships has one line.
func TestRibsInFittingOrder(t *testing.T) {
	for _, ribs := range []float64{44, 45} {
		c := core.Evaluate(check.With(t, "ribs", ribs))
		l := list(t, c, "Ribs to fit")
		require.Len(t, l.Lines, int(ribs))
		next := 0
		for order := 1; order <= int(ribs); {
			at := slices.IndexFunc(c.Frame.Ribs, func(r frame.Rib) bool { return r.Order == order })
			require.GreaterOrEqual(t, at, 0)
			r := c.Frame.Ribs[at]
			pair := 2
			if r.Alone() {
				pair = 1
			}
			for range pair {
				line := l.Lines[next]
				assert.True(t, strings.HasPrefix(line.Key, answer.RibPart(r.Number)), "%s, rib %d", line.Key, r.Number)
				assert.Equal(t, units.Length.Format(r.Length, units.Imperial16), line.Figure)
				next++
			}
			order += pair
		}
	}
}

// Ribs are bent mates together, from the ends to the middle; those broken at the centre say
// so, and a rib under the middle thwart is bent last and alone.
func TestPairsToBend(t *testing.T) {
	for _, ribs := range []float64{44, 45} {
		c := core.Evaluate(check.With(t, "ribs", ribs, "ribsBroken", 3.0))
		l := list(t, c, "Pairs to bend")
		require.Len(t, l.Lines, len(c.Frame.Ribs))
		last := c.Frame.Ribs[len(c.Frame.Ribs)-1]
		assert.Equal(t, fmt.Sprintf("Pair 1: ribs %d fore and aft", last.Number), l.Lines[0].What)
		for i, line := range l.Lines {
			r := c.Frame.Ribs[len(c.Frame.Ribs)-1-i]
			assert.Equal(t, answer.RibPart(r.Number), line.Key)
			if i < 3 {
				assert.Equal(t, "broken at the centre", line.Figure)
				continue
			}
			assert.InDelta(t, r.BendFrom(c.Hull), line.Value, 1e-12)
			assert.Contains(t, line.Also, "The two bends apart: "+units.SmallLength.Format(2*line.Value, units.Imperial16))
		}
		assert.Equal(t, ribs == 45, strings.HasSuffix(l.Lines[len(l.Lines)-1].What, "alone"))
	}
}

// Roots are cut one after another, two strands from each: all groups come from them, and
// all root that the seams take, each strand's length and no more.
func TestRootsOneByOne(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		l := list(t, c, "Roots to cut")
		require.Len(t, l.Lines, len(c.Gather.Root.Strands.Cut))
		assert.Equal(t, "Root 1, second strand", l.Lines[1].What)
		table, _ := answer.MakeTable(c, "roots")
		column := func(key string) int {
			return slices.IndexFunc(table.Columns, func(c answer.Column) bool { return c.Key == key })
		}
		groups, sewn, before := 0.0, 0.0, math.Inf(1)
		for _, r := range table.Rows {
			n := r.Cells[column("groups")].Value
			used := n*c.Frame.Lacing.Group + r.Cells[column("sewn")].Value + r.Cells[column("left")].Value
			assert.InDelta(t, d.RootLength, used, 1e-9, "a strand is used up")
			assert.LessOrEqual(t, n, before, "those for the lacing first")
			groups, sewn, before = groups+n, sewn+r.Cells[column("sewn")].Value, n
		}
		assert.EqualValues(t, c.Frame.Lacing.Count, groups)
		assert.InDelta(t, c.Bark.Root.Split, sewn, 1e-9)
	}
}

// Every group is laced at both sides and both ends, but the middle one, which has no ends.
func TestLacingLines(t *testing.T) {
	c := core.Evaluate(design.Default())
	assert.Len(t, list(t, c, "Lacing").Lines, c.Frame.Lacing.Count)
	first := list(t, c, "Lacing").Lines[2]
	assert.Equal(t, "Group 1, port, forward", first.What)
	assert.Equal(t, "group.1/port/forward", first.Key)
	assert.Contains(t, first.Also, "Hole 2: "+units.Length.Format(c.Frame.Lacing.Groups[1].Holes[1], units.Imperial16))
}

// A stem of n laminations is split along n-1 lines, each measured from its outer face.
func TestStemSplits(t *testing.T) {
	c := core.Evaluate(check.With(t, "stemLaminations", 5.0))
	l := list(t, c, "Stem splits")
	require.Len(t, l.Lines, 4)
	for i, line := range l.Lines {
		assert.InDelta(t, c.Design.StemDepth*float64(i+1)/5, line.Value, 1e-12)
	}
}

// A thwart's clear length and the sheer over a post are read as measurements of a record.
func TestReadings(t *testing.T) {
	c := core.Evaluate(design.Default())
	thwart := list(t, c, "Thwarts").Lines[1]
	require.NotNil(t, thwart.Reading)
	assert.Equal(t, "Thwart clear length, at thwart 1", thwart.Reading.Named(units.Imperial16))
	post := list(t, c, "Sheer heights").Lines[0]
	assert.Equal(t, "Sheer height, amidships", post.Reading.Named(units.Imperial16))
	assert.Nil(t, list(t, c, "Posts to cut").Lines[0].Reading)
}

// Keys are short enough for a file, each there once, none of them empty, for any boat and
// in any units.
func TestKeys(t *testing.T) {
	for _, d := range append(check.SomeDesigns(6, 3), design.Default()) {
		c := core.Evaluate(d)
		for _, st := range stage.All() {
			for _, step := range st.Steps {
				if step.Counts == "" {
					continue
				}
				seen := map[string]bool{}
				for _, key := range lines.Keys(c, step.Counts) {
					assert.False(t, seen[key], "%s twice in %s", key, step.Counts)
					assert.NotEmpty(t, key)
					assert.LessOrEqual(t, utf8.RuneCountInString(key), 80)
					seen[key] = true
				}
			}
			for i, l := range lines.Lists(c, st, units.Imperial16) {
				metric := lines.Lists(c, st, units.Metric)[i]
				assert.Equal(t, fmt.Sprint(keys(l)), fmt.Sprint(keys(metric)), l.Name)
				for _, line := range metric.Lines {
					said := line.What + line.Figure + line.From + strings.Join(line.Also, " ")
					assert.NotContains(t, said, "{")
					assert.NotContains(t, line.Figure, `"`, l.Name)
				}
			}
		}
	}
}

func keys(l lines.List) (keys []string) {
	for _, line := range l.Lines {
		keys = append(keys, line.Key)
	}
	return keys
}
