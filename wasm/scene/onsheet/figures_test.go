package onsheet_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/pattern"
	"barkwright/core/plan"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/scene/onsheet"
)

// boats are the default, a child's, and a freight canoe near the ends of the ranges, with
// their bark laid flat.
func boats(t *testing.T) map[string]core.Canoe {
	out := map[string]core.Canoe{"default": core.Evaluate(design.Default())}
	for name, line := range map[string]string{
		"child":   "barkwright1_L96_Oh4_B24_D9_G12_E15_El10_R0.5_N3_P1_C0_Kw32",
		"freight": "barkwright1_L432_Oh18_B66_D30_G44_E56_El40_R3_N9_P8_C3000_Kw60_Ch12_Im3_It1.5",
	} {
		d, _, err := design.ReadLine(line)
		require.NoError(t, err)
		out[name] = core.Evaluate(d)
	}
	for name, c := range out {
		out[name] = c.WithFlat(core.LayFlat(c, bark.Resolution{Columns: 24, Rows: 8}, nil, nil))
	}
	return out
}

// Every stage's sheet has a drawing, as broad as the sheet, that says what it shows; on its
// page no lettering lies over other lettering, none reaches out of it or is too small to read.
func TestEverySheetHasDrawings(t *testing.T) {
	for name, c := range boats(t) {
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			for _, key := range stage.Keys() {
				figures := onsheet.Figures(c, s, nil, key, 1)
				assert.NotEmpty(t, figures, key)
				for _, f := range figures {
					assert.Equal(t, onsheet.Wide.Width, f.Drawing.Width)
					assert.NotEmpty(t, f.Caption)
					assert.NotEmpty(t, f.Drawing.Title)
				}
				j := sheet.Job{Canoe: c, System: s, Head: pattern.Head{Boat: name}, Sheets: []stage.Key{key},
					Figures: func(k stage.Key, share float64) []sheet.Figure { return onsheet.Figures(c, s, nil, k, share) }}
				pages := sheet.BuildSheets(j)
				drawn := 0
				for _, p := range pages {
					drawn += len(p.Ops)
					apart(t, fmt.Sprintf("%s, %s", name, p.Title), p)
				}
				for _, p := range pages[:len(pages)-1] {
					assert.Greater(t, filled(p), 0.6, "%s, %s is half empty, and others come after it", name, p.Title)
				}
				j.Figures = nil
				for _, p := range sheet.BuildSheets(j) {
					drawn -= len(p.Ops)
				}
				assert.Greater(t, drawn, 40, "%s: the drawings are on the pages", key)
			}
		}
	}
}

// filled is how far down a page lettering stands, as a share of it.
func filled(p draw.List) float64 {
	low := 0.0
	for _, op := range p.Ops {
		if text, ok := op.(draw.Text); ok {
			low = max(low, text.Bounds().Bottom)
		}
	}
	return low / p.Height
}

// leastLetter is the smallest lettering on a sheet, mm: eight points. Common practice, no
// published source.
const leastLetter = 8 * 25.4 / 72

func apart(t *testing.T, where string, p draw.List) {
	t.Helper()
	var texts []draw.Text
	for _, op := range p.Ops {
		text, ok := op.(draw.Text)
		if !ok {
			continue
		}
		assert.GreaterOrEqual(t, text.Size, leastLetter, "%s: %q", where, text.Text)
		assert.True(t, text.Bounds().Within(draw.Box{Right: p.Width, Bottom: p.Height}), "%s: %q", where, text.Text)
		for _, o := range texts {
			assert.False(t, text.Bounds().Meets(o.Bounds()), "%s: %q over %q", where, text.Text, o.Text)
		}
		texts = append(texts, text)
	}
}

// Repairs are marked where the boat is kept, on one drawing more. No drawing that a boat is built by has a line of
// theirs: on the bark laid flat it would look like one to cut by.
func TestRepairsStandWhereTheBoatIsKept(t *testing.T) {
	c := boats(t)["default"]
	log := tally.Log{}.Repair("keep", "2027-06-14", tally.Damage{Kind: tally.Hole, At: 3 * units.Foot, Along: 4 * units.Inch,
		Round: 4 * units.Inch})
	repairs := answer.Repairs(c, plan.NewSeason(), log)
	for _, key := range stage.Keys() {
		with, without := onsheet.Figures(c, units.Metric, repairs, key, 1), onsheet.Figures(c, units.Metric, nil, key, 1)
		if key != stage.Keep {
			assert.True(t, assert.ObjectsAreEqual(without, with), key)
			continue
		}
		require.Len(t, with, len(without)+1)
		for _, f := range with {
			assert.Contains(t, strings.Join(lettering(f.Drawing), "\n"), "1: hole", f.Caption)
		}
		j := sheet.Job{Canoe: c, Log: log, Season: plan.NewSeason(), Sheets: []stage.Key{key},
			Figures: func(k stage.Key, share float64) []sheet.Figure {
				return onsheet.Figures(c, units.Metric, repairs, k, share)
			}}
		for _, page := range sheet.BuildSheets(j) {
			apart(t, page.Title, page)
		}
	}
}

// lettering is all of a picture's, its key's included.
func lettering(l draw.List) (out []string) {
	for _, op := range l.Ops {
		if text, ok := op.(draw.Text); ok {
			out = append(out, text.Text)
		}
	}
	for _, k := range l.Key {
		out = append(out, k.Text)
	}
	return out
}

// The marks on the drawing of the gunwale stand where its table says, to scale.
func TestGunwaleMarksAreTheTables(t *testing.T) {
	for name, c := range boats(t) {
		f := onsheet.Figures(c, units.Imperial16, nil, stage.Gunwales, 1)[0]
		var rail draw.Box
		at := map[string]float64{}
		for _, op := range f.Drawing.Ops {
			switch op := op.(type) {
			case draw.Fill:
				if op.Role == draw.Cedar {
					rail = draw.BoxOf(op.Points)
				}
			case draw.Text:
				at[op.Text] = op.At.X
			}
		}
		for _, r := range c.Frame.Ribs {
			if x, there := at[fmt.Sprint(r.Number)]; there {
				assert.InDelta(t, r.Run/c.Frame.Gunwales.Run, (x-rail.Left)/rail.Width(), 1e-9, "%s, rib %d", name, r.Number)
			}
		}
		_, last := at[fmt.Sprint(c.Frame.Ribs[2].Number)]
		assert.True(t, last, name)
	}
}
