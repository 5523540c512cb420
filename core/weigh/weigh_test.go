package weigh_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/weigh"
)

var systems = []units.System{units.Imperial16, units.Imperial8, units.Metric}

// compared are the rows of what differs, with the shares of each.
func compared(held, now core.Canoe, s units.System) []weigh.Row {
	moved, _ := weigh.Moved(held.Design, now.Design, nil)
	return weigh.Compare(weigh.Of(held), weigh.Of(now), weigh.Path(held, now, moved), s)
}

func row(rows []weigh.Row, key string) (weigh.Row, bool) {
	for _, r := range rows {
		if r.Key == key {
			return r, true
		}
	}
	return weigh.Row{}, false
}

// read takes a change apart: 3 13/16" wider is less than zero for the words that say less.
func read(t *testing.T, k units.Kind, text string, s units.System) float64 {
	t.Helper()
	for _, word := range []string{"less stiff", "less by the bow", "more by the bow", "wider apart", "farther forward",
		"farther aft", "farther out", "farther in"} {
		text = strings.ReplaceAll(text, word, strings.ReplaceAll(word, " ", "-"))
	}
	at := strings.LastIndex(text, " ")
	require.Positive(t, at, text)
	amount, word := strings.TrimPrefix(text[:at], "about "), text[at+1:]
	v, _, err := k.Parse(amount, s)
	require.NoError(t, err, text)
	for _, less := range []string{"less", "fewer", "shorter", "narrower", "thinner", "lighter", "tighter", "lower", "shallower",
		"closer", "less-stiff", "less-by-the-bow", "farther-aft", "farther-in"} {
		if word == less {
			return -v
		}
	}
	return v
}

// What was shown and its change, read as a person would, come to what is shown now; and the
// shares to the change.
func TestSumsAsShown(t *testing.T) {
	r := rand.New(rand.NewPCG(15, 1))
	checked, shared := 0, 0
	for n := 0; n < 8; {
		now, faults := core.Try(check.NearDesign(r, design.Default(), 0.06))
		if len(faults) > 0 {
			continue
		}
		n++
		s := systems[n%3]
		held := built(t, design.Default())
		is := map[string]answer.Number{}
		for _, number := range answer.All(now) {
			is[number.Key] = number
		}
		for _, c := range compared(held, now, s) {
			k := is[c.Key].Kind
			if c.Change == "" || strings.HasPrefix(c.Change, "under ") || strings.Contains(c.Held+c.Now, " to ") ||
				k == units.Ratio || k == units.Temperature || k == units.Thickness {
				continue // a range has two changes, a ratio fewer places the larger it is
			}
			parse := func(text string) float64 {
				v, _, err := k.Parse(strings.TrimPrefix(text, "about "), s)
				require.NoError(t, err, c)
				return v
			}
			change := read(t, k, c.Change, s)
			step := is[c.Key].Step(s)
			// All are whole steps, but for rounding.
			assert.InDelta(t, parse(c.Now)-parse(c.Held), change, 1e-6*step, "%+v", c)
			checked++
			sum := 0.0
			for _, share := range c.From {
				sum += read(t, k, share.Change, s)
			}
			if len(c.From) > 0 {
				shared++
				assert.InDelta(t, change, sum, 1e-6*step, "%+v", c)
			}
		}
	}
	assert.Greater(t, checked, 80)
	assert.Greater(t, shared, 80)
}

// Two inches of depth: what the table of consequences makes of the changes, by hand from the
// shape's own rules. Both posts rise by 2 in, four times the half inch that posts are cut
// anew for; the sheet and the rib are paid twice, port and starboard.
func TestWhatTwoInchesOfDepthCost(t *testing.T) {
	rows := compared(built(t, design.Default()), built(t, check.With(t, "depth", 14.5*inch)), units.Imperial16)
	end, ok := row(rows, "post.end")
	require.True(t, ok)
	assert.InDelta(t, 4, end.Score, 1e-9)
	assert.Equal(t, `2" longer`, end.Change)
	require.Len(t, end.From, 1)
	assert.Empty(t, end.From[0].Keys, "it followed")
	rib, ok := row(rows, "ribs.longest")
	require.True(t, ok)
	require.Len(t, rib.From, 1)
	assert.Equal(t, []string{"depth"}, rib.From[0].Keys)
	assert.NotEmpty(t, rib.Twins, "the half girth says the same")
	_, listed := row(rows, "hull.halfGirth")
	assert.False(t, listed)
	freeboard, _ := row(rows, "afloat.freeboard")
	assert.Equal(t, `2" more`, freeboard.Change)
	assert.NotEmpty(t, freeboard.Finer, "an estimate is shown to a quarter inch")
	most := weigh.Most(rows, 5)
	require.Len(t, most, 5)
	assert.Equal(t, "afloat.loadAtSixInches", rows[most[0]].Key)
	for i, r := range rows[1:] {
		if r.Home == rows[i].Home {
			assert.GreaterOrEqual(t, rows[i].Score, r.Score)
		}
	}
	hardly := 0
	for _, r := range rows {
		if r.Score < weigh.Hardly {
			hardly++
		}
		assert.NotContains(t, r.Change+r.Finer, "NaN")
	}
	assert.Positive(t, hardly)
}

// A verdict that turns for the worse comes before everything, one for the better next.
func TestVerdictsThatTurn(t *testing.T) {
	one, many := built(t, check.With(t, "stemLaminations", 1.0)), built(t, design.Default())
	worse := compared(many, one, units.Metric)
	r, ok := row(worse, "stem.verdict")
	require.True(t, ok)
	assert.InDelta(t, weigh.TurnedWorse, r.Score, 0)
	assert.Equal(t, []string{"within guide", "too tight"}, []string{r.Held, r.Now})
	assert.Equal(t, "stem.verdict", worse[weigh.Most(worse, 1)[0]].Key)
	better := compared(one, many, units.Metric)
	r, _ = row(better, "stem.verdict")
	assert.InDelta(t, weigh.TurnedBetter, r.Score, 0)
}

// Two of the same boat: nothing differs.
func TestNothingDiffers(t *testing.T) {
	c := built(t, design.Default())
	named := c.Design
	named.Name, named.Notes = "Another name", "and notes"
	assert.Empty(t, compared(c, built(t, named), units.Imperial16))
	assert.Empty(t, weigh.PieceByPiece(c, c, units.Imperial16))
	moved, followers := weigh.Moved(c.Design, named, nil)
	assert.Empty(t, weigh.Controls(c.Design, named, moved, followers, units.Imperial16))
}

// Pieces are compared by name; one that a boat lacks is never a difference.
func TestPieceByPiece(t *testing.T) {
	held, now := built(t, design.Default()), built(t, check.With(t, "depth", 13.5*inch, "thwarts", 7.0, "ribs", 40.0))
	tables := map[string]weigh.Pieces{}
	for _, p := range weigh.PieceByPiece(held, now, units.Imperial16) {
		tables[p.Key] = p
		for _, r := range p.Rows {
			assert.Equal(t, r.Held == "" || r.Now == "", r.Change == "", "%s %+v", p.Key, r)
		}
	}
	only := 0
	for _, r := range tables["thwarts"].Rows {
		if r.Held == "" {
			only++
		}
	}
	assert.Equal(t, 1, only, "one more thwart a side")
	require.NotEmpty(t, tables["ribs"].Rows)
	assert.Contains(t, tables["ribs"].Rows[0].Change, "longer")
	gone := tables["ribs"].Rows[len(tables["ribs"].Rows)-1]
	assert.Empty(t, gone.Now)
	assert.NotEmpty(t, gone.Held)
}

// The list of controls says who moved each.
func TestControls(t *testing.T) {
	held, now := design.Default(), check.With(t, "depth", 14.5*inch, "posture", 1.0)
	moved, followers := weigh.Moved(held, now, nil)
	rows := weigh.Controls(held, now, moved, followers, units.Imperial16)
	require.GreaterOrEqual(t, len(rows), 4)
	assert.Equal(t, weigh.Control{Key: "depth", Label: "Depth amidships", Home: "choose", Held: `1' 0 1/2"`, Now: `1' 2 1/2"`,
		Change: `+2"`}, rows[0])
	assert.Equal(t, "kneeling", rows[1].Held)
	assert.Equal(t, "sitting on the bottom", rows[1].Now)
	follows := map[string]bool{}
	for _, c := range rows {
		follows[c.Key] = c.Follows
	}
	assert.True(t, follows["gunwaleEndHeight"])
	assert.NotContains(t, follows, "turnWidth", "it is worked out from others")
}

// Every row of the table of consequences is a number's, every twin has one too.
func TestConsequencesAreOfNumbers(t *testing.T) {
	c := built(t, design.Default())
	for _, n := range answer.All(c) {
		if n.Kind != units.Words && n.Word == "" {
			assert.Positive(t, weigh.Unit(n), n.Key)
		}
		if twin := weigh.Twin(n.Key); twin != "" {
			number(t, c, twin)
			assert.Empty(t, weigh.Twin(twin), n.Key)
		}
	}
}
