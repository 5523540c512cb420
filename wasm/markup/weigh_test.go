package markup_test

import (
	"encoding/xml"
	"io"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/sure"
	"barkwright/core/units"
	"barkwright/core/weigh"
	"barkwright/core/whatif"
	"barkwright/wasm/markup"
)

// whole fails where markup is not well formed.
func whole(t *testing.T, html string) {
	t.Helper()
	closed := strings.NewReplacer("<br>", "<br/>", " checked>", ` checked="">`).Replace(html)
	d := xml.NewDecoder(strings.NewReader("<all>" + closed + "</all>"))
	d.Entity = xml.HTMLEntity
	for {
		if _, err := d.Token(); err == io.EOF {
			return
		} else if !assert.NoError(t, err, html) {
			return
		}
	}
}

// Strips say what they show, a press in the middle of one is the value there, on the control's step,
// and what cannot be built has its reason.
func TestStrips(t *testing.T) {
	d := design.Default()
	for _, key := range []string{"beam", "stemLaminations", "posture", "rocker"} {
		w, ok := whatif.NewSweep(d, key, units.Imperial16, key == "rocker")
		require.True(t, ok)
		require.True(t, w.Run(nil))
		s := markup.Strips{Sweep: w, Held: answer.All(core.Evaluate(d)), At: w.Present()}
		html := s.Figures(230, draw.Screen())
		whole(t, html)
		assert.Equal(t, len(w.Keys), strings.Count(html, "<svg"), key)
		assert.NotContains(t, html, "NaN")
		table := s.Table()
		whole(t, table)
		assert.Equal(t, len(w.Samples)+1, strings.Count(table, "<tr>"), key)
		v := s.ValueAt(115, 230)
		n := (v - w.Param.Min) / w.Param.StepInch
		assert.InDelta(t, n, float64(int(n+0.5)), 1e-9, key)
		// To the nearest step.
		assert.InDelta(t, (w.Low+w.High)/2, v, w.Param.StepInch/2+1e-9, key)
		if key == "rocker" {
			assert.Contains(t, html, "not past")
		}
	}
	assert.Empty(t, markup.Strips{}.Figures(230, draw.Screen()))
}

// A strip is set by keys as a slider is (ARIA Authoring Practices, slider pattern: arrows by a step,
// Home and End to the ends, the keys of a page by more), and says its value and its guide's word.
func TestStripKeys(t *testing.T) {
	w, ok := whatif.NewSweep(design.Default(), "beam", units.Imperial16, false)
	require.True(t, ok)
	require.True(t, w.Run(nil))
	s := markup.Strips{Sweep: w}
	at, step := w.Present(), w.Param.StepInch
	for key, want := range map[string]float64{"ArrowRight": at + step, "ArrowUp": at + step, "ArrowLeft": at - step,
		"ArrowDown": at - step, "Home": w.Low, "End": w.High, "PageUp": at + 10*step, "PageDown": at - 10*step} {
		v, moves := s.KeyTo(key, at)
		assert.True(t, moves, key)
		assert.InDelta(t, want, v, 1e-9, key)
	}
	v, _ := s.KeyTo("ArrowRight", w.Param.Max)
	assert.InDelta(t, w.Param.Max, v, 1e-9)
	_, moves := s.KeyTo("h", at)
	assert.False(t, moves)

	html := s.Figures(230, draw.Screen())
	assert.Equal(t, len(w.Keys), strings.Count(html, `role="slider" tabindex="0"`))
	assert.Contains(t, html, "up to", "it says where the guide's word turns")
	c := w.Curves()[0]
	require.Greater(t, len(c.Bands), 1)
	for _, b := range c.Bands {
		assert.Contains(t, html, b.Word)
		assert.Contains(t, s.ValueText(c.Number.Key, b.First), ", "+b.Word)
		assert.Contains(t, s.ValueText(c.Number.Key, b.First), w.Param.Format(b.First, units.Imperial16)+": ")
	}
}

// What to leave on names pieces as their tables do, at each stage those that are cut there.
func TestSure(t *testing.T) {
	c := core.Evaluate(design.Default())
	s := sure.New(c)
	assert.Contains(t, markup.Sure(c, nil, stage.Rib, units.Imperial16), "…")
	for s.Next() {
	}
	ribs := markup.Sure(c, s, stage.Rib, units.Imperial16)
	whole(t, ribs)
	assert.Equal(t, len(c.Frame.Ribs)+1, strings.Count(ribs, "<tr"))
	assert.Contains(t, ribs, "half girth")
	assert.NotContains(t, ribs, "post under")
	assert.Contains(t, markup.Sure(c, s, stage.Lace, units.Metric), "post under the middle thwart")
	assert.Equal(t, len(s.Figures)+1, strings.Count(markup.Sure(c, s, "", units.Metric), "<tr"))
}

// Where the bark lies flat, how much rides over at each gore is among what may be off; near an end it
// may stay a slit.
func TestSureOfGores(t *testing.T) {
	c := core.Evaluate(design.Default())
	c = c.WithFlat(core.LayFlat(c, bark.ForCurve, nil, nil))
	s := sure.WithGores(c, nil)
	for s.Next() {
	}
	html := markup.Sure(c, s, stage.Bark, units.Imperial16)
	whole(t, html)
	assert.Contains(t, html, "gore 0, rides over")
	assert.Contains(t, html, "trimmed once the sides are up")
	assert.Contains(t, html, "may stay a slit")
	assert.NotContains(t, html, "NaN")
}

// What an inch costs, ranked, with a dash where it costs nothing that is shown.
func TestInches(t *testing.T) {
	c := core.Evaluate(design.Default())
	costs := whatif.NewCosts(c.Design)
	for costs.Next() {
	}
	html := markup.Inches(c, costs, "afloat.gm", units.Imperial16)
	whole(t, html)
	assert.Less(t, strings.Index(html, `data-hold="beam"`), strings.Index(html, `data-hold="depth"`),
		"beam moves GM more than depth")
	assert.Contains(t, html, "by 2", "thwarts come in pairs")
	assert.Contains(t, html, `One inch more of</th><th scope="col" aria-sort="descending">Stiffness`,
		"the one ranked by stands first")
	assert.Contains(t, markup.Ranks(c, units.Imperial16), "afloat.gm")
	metric := markup.Ranks(c, units.Metric) + markup.Inches(c, costs, "", units.Metric)
	assert.Equal(t, 4, strings.Count(metric, "152 mm of freeboard"), "in the list and over the three tables")
	assert.NotContains(t, html, "NaN")
	// Thickness of timber is told by the sixteenth: no inch of it is to be had.
	sizes := html[strings.Index(html, `data-inches="sizes"`):strings.Index(html, `data-inches="pieces"`)]
	assert.Contains(t, sizes, `1/16&#34; more of</th>`)
	assert.Contains(t, sizes, `data-hold="inwaleThickness"`)
	assert.NotContains(t, html[:strings.Index(html, `data-inches="sizes"`)], `data-hold="inwaleThickness"`)
	assert.Contains(t, metric, "1 mm more of</th>")
	// 10 mm more of depth change the longest rib by 10/25.4 of what an inch does.
	assert.NotRegexp(t, `(?i)inch more`, metric)
	assert.Contains(t, metric, "10 mm more of")
	for _, cost := range costs.Lengths {
		if cost.Param.Key == "depth" {
			want := units.Length.Difference(0, cost.Slopes[1]*10/25.4, units.Metric)
			require.NotEmpty(t, want)
			assert.Contains(t, metric, "<td>"+want+"</td>", whatif.Costed()[1])
		}
	}
}

// A row that one control brought about says so in four words; one of several says each.
func TestFromWhat(t *testing.T) {
	assert.Equal(t, "all from depth amidships",
		markup.FromWhat(weigh.Row{From: []weigh.Share{{Keys: []string{"depth"}, Change: `2" more`}}}))
	assert.Equal(t, `2" more from depth amidships; 1" less from what followed; and smaller`, markup.FromWhat(weigh.Row{Smaller: 1,
		From: []weigh.Share{{Keys: []string{"depth"}, Change: `2" more`}, {Change: `1" less`}}}))
	assert.Equal(t, "all from beam inside the gunwales and length overall together with what follows",
		markup.FromWhat(weigh.Row{From: []weigh.Share{{Keys: []string{"beam", "length"}, Along: true, Change: "x"}}}))
	assert.Empty(t, markup.FromWhat(weigh.Row{}))
}
