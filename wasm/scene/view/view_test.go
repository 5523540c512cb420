package view_test

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "rewrite the goldens")

// boat works a design out as far as the views need it.
func boat(set map[string]float64) core.Canoe {
	d := design.Default()
	for _, p := range design.Params() {
		if inches, ok := set[p.Key]; ok {
			v := inches
			if p.Kind == units.Length || p.Kind == units.SmallLength {
				v *= units.Inch
			}
			d = p.Set(d, v)
		}
	}
	h := hull.New(d)
	return core.Canoe{Design: d, Hull: h, Frame: frame.Build(h), Bark: bark.Plan(h)}
}

// The canned boats, invented: the default, a short one whose sides bulge, and a
// long one for freight.
var boats = []struct {
	name string
	core.Canoe
}{
	{"default", boat(nil)},
	{"bulging", boat(map[string]float64{"length": 150, "beam": 28, "greatestBeam": 33, "depth": 12, "ribs": 35,
		"thwarts": 3})},
	{"freight", boat(map[string]float64{"length": 396, "beam": 62, "depth": 26, "gunwaleEndHeight": 38, "endHeight": 56,
		"heelLength": 36, "overhang": 18, "thwarts": 9, "ribs": 65, "sheetWidth": 60})},
}

// views are what is drawn of each boat.
func views() []scene.View {
	return []scene.View{
		{State: scene.OnTheBed, Zoom: 1, Handles: true},
		{State: scene.Finished, Zoom: 1, Handles: true, Load: &scene.Load{Height: 0.12, Slope: 0.002}},
	}
}

var sizes = []draw.Size{{Width: 1000, Height: 560, Letter: 16}, {Width: 358, Height: 420, Letter: 16},
	{Width: 358, Height: 184, Letter: 16},
	{Width: 1300, Height: 760, Letter: 16}, {Width: 1000, Height: 378, Letter: 16}, {Width: 1400, Height: 432, Letter: 22}}

// eachPicture draws every boat, state and size.
func eachPicture(t *testing.T, look func(t *testing.T, c core.Canoe, v scene.View, size draw.Size, l draw.List)) {
	for _, b := range boats {
		for _, v := range views() {
			for i, size := range sizes {
				v.System = [2]units.System{units.Imperial16, units.Metric}[i%2]
				t.Run(fmt.Sprintf("%s, %s, %.0f x %.0f", b.name, v.State, size.Width, size.Height), func(t *testing.T) {
					look(t, b.Canoe, v, size, view.TopAndSide(b.Canoe, v, size))
				})
			}
		}
	}
}

func TestViewGoldens(t *testing.T) {
	for _, b := range boats {
		for _, v := range views() {
			l := view.TopAndSide(b.Canoe, v, sizes[0])
			var w bytes.Buffer
			require.NoError(t, l.Dump(&w))
			file := filepath.Join("..", "..", "..", "testdata", "golden",
				fmt.Sprintf("scene-%s-%s.txt", b.name, strings.ReplaceAll(v.State.String(), " ", "-")))
			if *update {
				require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
				require.NoError(t, os.WriteFile(file, w.Bytes(), 0o644))
			}
			want, err := os.ReadFile(file)
			require.NoError(t, err)
			assert.Equal(t, string(want), w.String(), "run with -update and look at the difference")
		}
	}
}

// rest is how far outside the picture a line of the drawing may reach: half its width
// and the ticks of a dimension line.
const rest = 4

func TestNothingOutsideThePicture(t *testing.T) {
	eachPicture(t, func(t *testing.T, _ core.Canoe, _ scene.View, size draw.Size, l draw.List) {
		points := 0
		for _, op := range l.Ops {
			for _, q := range pointsOf(op) {
				points++
				if q.X < -rest || q.Y < -rest || q.X > size.Width+rest || q.Y > size.Height+rest {
					t.Fatalf("%T at %v", op, q)
				}
			}
		}
		assert.Less(t, points, 6600, "a redraw stays cheap")
		assert.NotEmpty(t, l.Title)
		assert.NotEmpty(t, l.Description)
	})
}

func pointsOf(op draw.Op) []draw.Point {
	switch op := op.(type) {
	case draw.Fill:
		return op.Points
	case draw.Stroke:
		return op.Points
	case draw.Hatch:
		return op.Points
	case draw.Text:
		return []draw.Point{op.At}
	}
	return nil
}

// Labels are measured by the advances of a broad face, as draw.Lettered holds them.
func TestLabelsDoNotOverlap(t *testing.T) {
	eachPicture(t, func(t *testing.T, _ core.Canoe, _ scene.View, size draw.Size, l draw.List) {
		assert.GreaterOrEqual(t, labelsApart(t, size, l)+len(l.Key), 3, "length, beam and depth are always said")
	})
}

// labelsApart checks the labels of a picture and returns how many there are.
func labelsApart(t *testing.T, size draw.Size, l draw.List) int {
	type rect struct{ left, top, right, bottom float64 }
	var seen []rect
	var texts []string
	for _, op := range l.Ops {
		text, ok := op.(draw.Text)
		if !ok {
			continue
		}
		assert.GreaterOrEqual(t, text.Size, 11.0, text.Text)
		b := text.Bounds()
		r := rect{b.Left, b.Top, b.Right, b.Bottom}
		assert.True(t, r.left >= 0 && r.top >= 0 && r.right <= size.Width && r.bottom <= size.Height,
			"%q leaves the picture", text.Text)
		for i, o := range seen {
			if r.left < o.right && o.left < r.right && r.top < o.bottom && o.top < r.bottom {
				t.Errorf("%q overlaps %q", text.Text, texts[i])
			}
		}
		seen, texts = append(seen, r), append(texts, text.Text)
	}
	return len(texts)
}

func BenchmarkTopAndSide(b *testing.B) {
	for _, v := range views() {
		b.Run(v.State.String(), func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				view.TopAndSide(boats[0].Canoe, v, sizes[0])
			}
		})
	}
}
