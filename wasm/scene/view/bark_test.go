package view_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// skinned is a boat with its bark laid flat, and a view of it.
func skinned(c core.Canoe, res bark.Resolution, v scene.View) (core.Canoe, scene.View) {
	f := core.LayFlat(c, res, nil, nil)
	c = c.WithFlat(f)
	v.Flat, v.Zoom = &f, 1
	return c, v
}

var barkViews = []scene.View{{State: scene.LaidFlat}, {State: scene.SidesUp}, {State: scene.SidesUp, Up: 0.3},
	{State: scene.SidesUp, Up: 0.7}, {State: scene.SidesUp, Up: 1}}

var roundViews = []scene.View{{State: scene.InTheRound}, {State: scene.InTheRound, From: scene.Ahead}}

func TestBarkPictures(t *testing.T) {
	for _, b := range boats {
		for _, v := range slices.Concat(barkViews, roundViews) {
			c, v := skinned(b.Canoe, bark.ForPicture, v)
			for i, size := range sizes {
				v.System = [2]units.System{units.Imperial16, units.Metric}[i%2]
				t.Run(fmt.Sprintf("%s, %s %.1f %d, %.0f x %.0f", b.name, v.State, v.Up, v.From,
					size.Width, size.Height), func(t *testing.T) {
					l := view.Draw(c, v, size)
					points := 0
					for _, op := range l.Ops {
						for _, q := range pointsOf(op) {
							points++
							if q.X < -rest || q.Y < -rest || q.X > size.Width+rest || q.Y > size.Height+rest {
								t.Fatalf("%T at %v", op, q)
							}
						}
					}
					drawings := 1
					if v.State == scene.SidesUp {
						drawings = 3 // from above, from the side and in the round
					}
					assert.Less(t, points, 25000*drawings, "a redraw stays cheap")
					assert.GreaterOrEqual(t, labelsApart(t, size, l), 1)
					assert.NotEmpty(t, l.Description)
					assert.Empty(t, view.Handles(c, v, size))
					for _, p := range l.Parts {
						assert.NotEmpty(t, view.Readout(c, p.Name, v.System), p.Name)
					}
				})
			}
		}
	}
}

// Coarse grids keep the goldens short.
func TestBarkGoldens(t *testing.T) {
	for _, v := range []scene.View{barkViews[0], barkViews[2], roundViews[0]} {
		c, v := skinned(boats[0].Canoe, bark.Resolution{Columns: 16, Rows: 5}, v)
		var w bytes.Buffer
		require.NoError(t, view.Draw(c, v, sizes[0]).Dump(&w))
		file := filepath.Join("..", "..", "..", "testdata", "golden",
			"scene-default-"+strings.ReplaceAll(v.State.String(), " ", "-")+".txt")
		if *update {
			require.NoError(t, os.WriteFile(file, w.Bytes(), 0o644))
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		assert.Equal(t, string(want), w.String(), "run with -update and look at the difference")
	}
}

// The sheet is drawn to scale: its length in pixels to its length in metres is the
// same as the frame's.
func TestFlatIsToScale(t *testing.T) {
	c, v := skinned(boats[0].Canoe, bark.ForPicture, barkViews[0])
	l := view.Draw(c, v, sizes[0])
	var sheet, frame [2]float64
	for _, op := range l.Ops {
		switch op := op.(type) {
		case draw.Fill:
			if op.Role == draw.Bark {
				for _, q := range op.Points {
					sheet = reach(sheet, q.X-500)
				}
			}
		case draw.Stroke:
			if op.Role == draw.Frame {
				for _, q := range op.Points {
					frame = reach(frame, q.X-500)
				}
			}
		}
	}
	assert.InDelta(t, v.Flat.Length/c.Design.FrameLength, (sheet[1]-sheet[0])/(frame[1]-frame[0]), 1e-9)
	assert.InDelta(t, -sheet[0], sheet[1], 1e-9, "alike fore and aft")
}

func reach(r [2]float64, x float64) [2]float64 { return [2]float64{min(r[0], x), max(r[1], x)} }

// Without gores more of the sheet is hatched as over the limit.
func TestHatchGrowsWithStretch(t *testing.T) {
	over := func(gores float64) float64 {
		c, v := skinned(boat(map[string]float64{"sheetWidth": 70, "gores": gores}), bark.ForPicture, barkViews[0])
		long := 0.0
		for _, op := range view.Draw(c, v, sizes[0]).Ops {
			if h, ok := op.(draw.Hatch); ok && h.Role == draw.Warn {
				for _, line := range h.Lines() {
					long += math.Hypot(line[1].X-line[0].X, line[1].Y-line[0].Y)
				}
			}
		}
		return long
	}
	none, nine := over(0), over(9)
	assert.Greater(t, none, 2*nine, "%.0f and %.0f px of lines", none, nine)
}

// Until the bark is laid flat, and where it cannot be, the picture says so in words.
func TestBarkNotYetLaid(t *testing.T) {
	for _, v := range barkViews {
		v.Zoom = 1
		l := view.Draw(boats[0].Canoe, v, sizes[0])
		assert.Equal(t, []string{"The bark is being laid flat."}, texts(l))
	}
}

func texts(l draw.List) []string {
	var out []string
	for _, op := range l.Ops {
		if text, ok := op.(draw.Text); ok {
			out = append(out, text.Text)
		}
	}
	return out
}

func BenchmarkBarkPictures(b *testing.B) {
	for _, v := range slices.Concat(barkViews, roundViews) {
		c, v := skinned(boats[0].Canoe, bark.ForPicture, v)
		b.Run(fmt.Sprintf("%s %.1f %d", v.State, v.Up, v.From), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				view.Draw(c, v, sizes[0])
			}
		})
	}
}

// On a phone, in a picture as low as on the page and in a higher one, all nine gores of
// the default boat have their widths, and all four bands of the hatch their words.
func TestFlatOnAPhone(t *testing.T) {
	c, v := skinned(boats[0].Canoe, bark.ForPicture, barkViews[0])
	want := map[string]int{}
	for _, g := range c.Skin.Flat.Gores {
		text := units.SmallLength.Format(g.Width, v.System)
		if g.State == bark.GoreNotNeeded {
			text = "slit"
		}
		want[text]++
	}
	require.Len(t, c.Skin.Flat.Gores, 9)
	require.GreaterOrEqual(t, len(want), 2)
	for height, bands := range map[float64][]string{
		184: {"stretch ", "to 0.13", "0.25", "0.5 %", "over"},
		354: {"stretch left:", "under 0.13 %", "to 0.25 %", "to 0.5 %", "over 0.5 %, your limit"},
	} {
		size := draw.Size{Width: 358, Height: height, Letter: 16}
		l := view.Draw(c, v, size)
		labelsApart(t, size, l)
		shown := map[string]int{}
		for _, op := range l.Ops {
			if text, ok := op.(draw.Text); ok {
				shown[text.Text]++
			}
		}
		for text, n := range want {
			assert.Equal(t, n, shown[text], "%s, %v high", text, height)
		}
		for _, band := range bands {
			assert.Equal(t, 1, shown[band], "%s, %v high", band, height)
		}
	}
}

// The words for a picture of the boat being raised tell what is drawn: the boat in the round and its bar
// only where they are.
func TestRaisedIsDescribedAsDrawn(t *testing.T) {
	for _, size := range []draw.Size{large, {Width: 390, Height: 330, Letter: 16}} {
		for _, only := range []scene.Only{scene.Both, scene.TopOnly, scene.SideOnly, scene.RoundOnly} {
			c, v := skinned(boats[0].Canoe, bark.ForPicture, scene.View{State: scene.SidesUp, Only: only, Up: 0.3})
			l := view.Draw(c, v, size)
			name := fmt.Sprintf("%s, %v: %s", v.OnlyName(), size, l.Description)
			assert.Equal(t, strings.Contains(lettering(l), "no one scale"), strings.Contains(l.Description, "bar of"), name)
			switch only {
			case scene.TopOnly, scene.SideOnly:
				assert.NotContains(t, l.Description, "starboard bow", name)
			case scene.RoundOnly:
				assert.Contains(t, l.Description, "starboard bow", name)
			}
		}
	}
}

// However near the sheet is looked at, the legend over it has all its words.
func TestStretchLegendStandsWhenNear(t *testing.T) {
	c, v := skinned(boats[0].Canoe, bark.ForPicture, barkViews[0])
	for _, v.Zoom = range []float64{1, 1.25, 1.5, 2, 3, 5} {
		size := draw.Size{Width: 805, Height: 320, Letter: 16}
		l := view.Draw(c, v, size)
		shown := map[string]int{}
		for _, op := range l.Ops {
			if text, ok := op.(draw.Text); ok {
				shown[text.Text]++
			}
		}
		for _, words := range []string{"stretch left: ", "under 0.13 %", "to 0.25 %", "to 0.5 %", "over 0.5 %, your limit"} {
			assert.Equal(t, 1, shown[words], "%s at %v", words, v.Zoom)
		}
		labelsApart(t, size, l)
	}
}

// Every piece that is cut is named in the picture laid flat, and every missing piece on
// the bed.
func TestPiecesAreNamedInThePicture(t *testing.T) {
	d := boats[0].Canoe.Design
	d.OnHand = d.OnHand.Put(0, design.Sheet{Width: 42 * units.Inch, Length: 130 * units.Inch})
	for _, c := range []core.Canoe{core.Evaluate(boats[0].Canoe.Design), core.Evaluate(d)} {
		c, v := skinned(c, bark.ForPicture, barkViews[0])
		text := map[string]bool{}
		for _, op := range view.Draw(c, v, draw.Size{Width: 1600, Height: 900}).Ops {
			if t, ok := op.(draw.Text); ok {
				name, _, _ := strings.Cut(t.Text, ",")
				text[name] = true
			}
		}
		for _, p := range c.Bark.Pieces() {
			assert.True(t, text[p.Name], p.Name)
		}
		wanting := 0
		for _, op := range view.Draw(c, scene.View{State: scene.OnTheBed, Zoom: 1}, draw.Size{Width: 1600, Height: 900}).Ops {
			if h, ok := op.(draw.Hatch); ok && h.Role == draw.Warn {
				wanting++
			}
		}
		assert.Equal(t, len(c.Bark.Wanting()) > 0, wanting > 0)
	}
}

// Strips that bend round the bark are named beside them. The breadth stated is what goes
// round amidships: the tips, which stand higher, lie apart.
func TestBentPanelsAreNamed(t *testing.T) {
	c := core.Evaluate(design.Starting()[2])
	flat := core.LayFlat(c, bark.ForPicture, nil, nil)
	c = c.WithFlat(flat)
	require.Greater(t, len(c.Bark.Port), 2)
	said := map[string]bool{}
	v := scene.View{State: scene.LaidFlat, Zoom: 1, Flat: &flat}
	for _, op := range view.Draw(c, v, draw.Size{Width: 1000, Height: 620}).Ops {
		if text, ok := op.(draw.Text); ok {
			said[text.Text] = true
			name, _, _ := strings.Cut(text.Text, ",")
			said[name] = true
		}
	}
	for _, strip := range append(c.Bark.Port, c.Bark.Star...) {
		assert.True(t, said[strip.Name], strip.Name)
	}
	round := 2 * c.Hull.Section(0).HalfGirth()
	assert.True(t, said["breadth "+units.Length.Format(round, v.System)+` and 1 1/2" to trim`], "%v", said)
}
