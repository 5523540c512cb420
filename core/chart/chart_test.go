package chart_test

import (
	"bytes"
	"encoding/xml"
	"flag"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the goldens; look at git diff afterwards")

func drawn(t testing.TB, ch chart.Chart, width float64) string {
	t.Helper()
	var b strings.Builder
	require.NoError(t, draw.SVG{Palette: draw.Print(), ID: ch.Key}.Write(&b, ch.Draw(width)))
	return b.String()
}

func TestChartGoldens(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	for name, of := range map[string]struct {
		system units.System
		width  float64
	}{"desk": {units.Imperial16, 560}, "phone": {units.Metric, 330}} {
		var b strings.Builder
		for _, ch := range chart.Water(c, w, of.system) {
			require.NoError(t, ch.Draw(of.width).Dump(&b))
		}
		check.Golden(t, *update, "chart-"+name+".txt", b.String())
	}
}

type box struct {
	left, top, right, bottom float64
	text                     string
}

// boxes are the labels' rooms, by the advances of a broad face, as draw.Lettered holds them.
func boxes(t testing.TB, l draw.List) (labels []box) {
	t.Helper()
	for _, op := range l.Ops {
		text, ok := op.(draw.Text)
		if !ok {
			continue
		}
		require.GreaterOrEqual(t, text.Size, 12.0, "letters are read at 12 pixels or more")
		wide := draw.Lettered(text.Text, text.Size, text.Bold)
		left := text.At.X - wide*map[draw.Anchor]float64{draw.Start: 0, draw.Middle: 0.5, draw.End: 1}[text.Anchor]
		labels = append(labels, box{left, text.At.Y - text.Size/2, left + wide, text.At.Y + text.Size/2, text.Text})
	}
	require.NotEmpty(t, labels)
	return labels
}

// On a phone, a desk and paper no label covers another or leaves the chart, and
// every chart is well formed and says in words what it shows.
func TestChartLabelsKeepApart(t *testing.T) {
	r := rand.New(rand.NewPCG(6, 6))
	for n := 0; n < 40; {
		d := check.NearDesign(r, design.Default(), 0.25)
		if n == 0 {
			d = design.Default()
		}
		if core.Validate(d) != nil {
			continue
		}
		n++
		c := core.Evaluate(d)
		w := core.OnWater(c)
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			for _, ch := range chart.Water(c, w, s) {
				for _, width := range []float64{300, 340, 480, 680} {
					svg := drawn(t, ch, width)
					require.NoError(t, wellFormed(svg), svg)
					require.NotContains(t, svg, "NaN")
					require.NotContains(t, svg, "Inf")
					require.Contains(t, svg, `role="img"`)
					require.NotEmpty(t, ch.Description)
					picture := ch.Draw(width)
					labels, wide, high := boxes(t, picture), picture.Width, picture.Height
					for i, a := range labels {
						require.True(t, a.left >= -1 && a.right <= wide+1 && a.top >= -1 && a.bottom <= high+1,
							"%q leaves %s at %v", a.text, ch.Key, width)
						for _, b := range labels[i+1:] {
							require.False(t, a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom,
								fmt.Sprintf("%q on %q in %s at %v", a.text, b.text, ch.Key, width))
						}
					}
				}
			}
		}
	}
}

func wellFormed(svg string) error {
	d := xml.NewDecoder(bytes.NewReader([]byte(svg)))
	for {
		if _, err := d.Token(); err != nil {
			if err.Error() == "EOF" {
				return nil
			}
			return err
		}
	}
}

// The boat as it opens is marked on every chart at every width, and its curve ends,
// named, where it swamps.
func TestChartsSayYouAreHere(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	for _, ch := range chart.Water(c, w, units.Imperial16) {
		for width := 300.0; width <= 700; width += 20 {
			svg := drawn(t, ch, width)
			assert.Contains(t, svg, "you are here", "%s at %v", ch.Key, width)
			if ch.Key == "righting" {
				assert.Contains(t, svg, "swamped", "%v", width)
			}
		}
	}
	over := core.Evaluate(check.With(t, "cargo", 4000*units.Pound))
	for _, ch := range chart.Water(over, core.OnWater(over), units.Imperial16) {
		if ch.Key != "carries" {
			assert.Contains(t, drawn(t, ch, 400), "overloaded", ch.Key)
		}
	}
}
