package sheet_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
	"barkwright/core/lines"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/tally"
)

// cardBoxes are the four cards of a page.
var cardBoxes = func() (out []draw.Box) {
	for i := range 4 {
		x, y := float64(i%2)*page.Right/2, float64(i/2)*page.Bottom/2
		out = append(out, draw.Box{Left: x, Top: y, Right: x + page.Right/2, Bottom: y + page.Bottom/2})
	}
	return out
}()

// Cards of three boats: every line of every list once, with its figure and all else it tells;
// what stands on a card stays on it, and nothing lies over anything.
func TestCardsHoldEveryLine(t *testing.T) {
	atEveryStage(t, func(where string, j sheet.Job, key stage.Key) {
		j.Cards = []stage.Key{key}
		pages := sheet.Cards(j)
		st, _, _ := stage.Lookup(key)
		assert.Equal(t, len(lines.Lists(j.Canoe, st, j.System)) > 0, len(pages) > 0, where)
		said := ""
		for _, p := range pages {
			where := where + ", " + p.Title
			inOrder(t, where, p)
			onItsCard(t, where, p)
			said += p.Description + "\n"
		}
		for _, b := range st.Bench {
			b.Apart = false
			for _, l := range lines.Make(j.Canoe, b, j.System).Lines {
				// One of a run stands in its line.
				if !strings.Contains(said, l.What+": "+l.Figure+" (") {
					assert.Contains(t, said, " alike: "+l.Figure+" (", "%s, %s", where, l.What)
				}
				for _, also := range l.Also {
					assert.Contains(t, said, also, where)
				}
			}
		}
	})
}

func onItsCard(t *testing.T, where string, p draw.List) {
	t.Helper()
	inside := func(b draw.Box) bool {
		for _, c := range cardBoxes {
			if b.Within(c) {
				return true
			}
		}
		return false
	}
	cuts := 0
	for _, op := range p.Ops {
		switch op := op.(type) {
		case draw.Text:
			assert.True(t, inside(op.Bounds()), "%s: %q", where, op.Text)
			// Eight points: common practice, no published source.
			assert.GreaterOrEqual(t, op.Size, 8*25.4/72-1e-9, "%s: %q", where, op.Text)
		case draw.Stroke:
			if b := draw.BoxOf(op.Points); b.Width() == page.Right || b.Height() == page.Bottom {
				cuts++
			} else {
				assert.True(t, inside(b), "%s: line %v", where, b)
			}
		}
	}
	assert.Equal(t, 2, cuts, where)
}

// A line has a box for each of its pieces, ticked as the log has them.
func TestCardsTickEachPiece(t *testing.T) {
	j := everything()
	boxes := func(p []draw.List) (empty, ticked int) {
		for _, p := range p {
			for _, op := range p.Ops {
				if s, ok := op.(draw.Stroke); ok && s.Closed && len(s.Points) == 4 {
					empty++
				} else if ok && len(s.Points) == 3 {
					ticked++
				}
			}
		}
		return empty, ticked
	}
	// In a run of lines that say the same too: roots.
	for _, key := range []stage.Key{stage.Rib, stage.Gather} {
		j.Cards = []stage.Key{key}
		st, _, _ := stage.Lookup(key)
		want := 1 // round the cautions
		for _, l := range lines.Lists(j.Canoe, st, j.System) {
			want += len(l.Lines)
		}
		j.Log = nil
		empty, ticked := boxes(sheet.Cards(j))
		assert.Equal(t, want, empty, key)
		assert.Zero(t, ticked)
	}
	j.Cards = []stage.Key{stage.Rib}
	st, _, _ := stage.Lookup(stage.Rib)
	drive := lines.Make(j.Canoe, st.Bench[0], j.System)
	require.True(t, drive.Apart)
	j.Log = tally.Log{}.Tick(drive.Step, drive.Lines[0].Key, "2026-06-14", true)
	_, ticked := boxes(sheet.Cards(j))
	assert.Equal(t, 1, ticked)
}
