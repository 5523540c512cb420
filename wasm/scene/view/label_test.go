package view_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/view"
)

// extreme are boats far from the default, as lines of text: a child's, a freight canoe,
// recurved ends, none, wide, narrow and deep, bulging, many gores, none, few thwarts, many,
// narrow bark, and much rocker on a short boat and on a long one.
var extreme = []string{
	"L96_Oh4_B24_D9_G12_E15_El10_R0.5_N3_P1_C0_Kw32",
	"L432_Oh18_B66_D30_G44_E56_El40_R3_N9_P8_C3000_Kw60_Ch12_Im3_It1.5",
	"L192_Oh14_B33_D12.5_G22_E40_Es10_El24_Ef0.9",
	"L180_Oh0.25_B33_D12_Es0_R1_Ef1_G20_E22",
	"L192_B60_D9_G13_E17",
	"L192_B20_D20_G26_E31",
	"L192_B33_Bg42_D15",
	"Gn24",
	"Gn0",
	"N3",
	"L240_N9",
	"Kw20_Kl60",
	"L180_B35_D14_R7_Rs2",
	"L240_B40_D26_G34_E42_R12_Rs2.5",
}

// cells are the rooms that the page gives a picture, CSS pixels: a phone upright, its whole
// window, a tablet, a phone on its side, a laptop, a projector, and a laptop's whole window.
var cells = []draw.Size{
	{Width: 390, Height: 152, Letter: 16}, {Width: 390, Height: 700, Letter: 16}, {Width: 768, Height: 246, Letter: 16},
	{Width: 844, Height: 300, Letter: 16}, {Width: 760, Height: 267, Letter: 16}, {Width: 1200, Height: 380, Letter: 22},
	{Width: 1366, Height: 700, Letter: 16},
}

// looks are the views of a boat that are lettered.
var looks = []scene.View{
	{State: scene.OnTheBed, Handles: true}, {State: scene.Finished, Handles: true},
	{State: scene.LaidFlat}, {State: scene.LaidFlat, Only: scene.BySheet},
	{State: scene.SidesUp, Up: 0.3}, {State: scene.SidesUp, Up: 0.7}, {State: scene.SidesUp, Up: 1},
	{State: scene.SidesUp, Up: 0.3, Only: scene.RoundOnly}, {State: scene.SidesUp, Up: 0.7, Only: scene.SideOnly},
	{State: scene.InTheRound}, {State: scene.InTheRound, From: scene.Ahead}, {State: scene.InTheRound, From: scene.Above},
	{State: scene.InTheRound, Turned: 0.4},
	{State: scene.OnTheBed, Only: scene.TopOnly}, {State: scene.OnTheBed, Only: scene.SideOnly},
	{State: scene.OnTheBed, Only: scene.SectionsOnly}, {State: scene.Finished, Only: scene.TopOnly},
	{State: scene.Finished, Only: scene.SideOnly}, {State: scene.Finished, Only: scene.SectionsOnly},
	{State: scene.Finished, Only: scene.BodyPlan}, {State: scene.OnTheBed, Layer: scene.Names},
	{State: scene.Finished, Layer: scene.Names}, {State: scene.Finished, Layer: scene.Plain},
	{State: scene.LaidFlat, Layer: scene.Names}, {State: scene.LaidFlat, Layer: scene.Plain},
	{State: scene.Finished, Only: scene.Details, Layer: scene.Names},
	{State: scene.Finished, Only: scene.Details}, {State: scene.Finished, Only: scene.RibBlanks},
}

// everyLabel has the test look at every picture instead of a sample.
var everyLabel = os.Getenv("BARKWRIGHT_EVERY_LABEL") != ""

// lookDir takes every picture as SVG, to be looked at.
var lookDir = os.Getenv("BARKWRIGHT_LOOK")

// In every picture of every boat each label stands inside it, off other labels and off what
// it must not be read with, and what finds no room is in the key.
func TestLabelsAreWholeAndClear(t *testing.T) {
	n, asked, bare := 0, 0, 0
	for i, d := range lettered(t) {
		c := core.Evaluate(d)
		for k, v := range looks {
			v, c := v, c
			if v.State == scene.LaidFlat || v.State == scene.SidesUp {
				if !everyLabel && i%5 != 0 {
					continue
				}
				c, v = skinned(c, bark.ForPicture, v)
			}
			v.Zoom, v.Load, v.System = 1, scene.LoadOf(c), [2]units.System{units.Imperial16, units.Metric}[(i+k)%2]
			for j, size := range cells {
				if n++; !everyLabel && (i+j+k)%3 != 0 {
					continue
				}
				name := fmt.Sprintf("%02d %s %d %d %.1f %d %.0fx%.0f", i, v.State, v.Only, v.Layer,
					v.Up+v.Turned, v.From, size.Width, size.Height)
				l := view.Draw(c, v, size)
				all, without := clearLabels(t, name, l, size)
				asked, bare = asked+all, bare+without
				if lookDir != "" {
					var b strings.Builder
					require.NoError(t, draw.SVG{Palette: draw.Screen(), ID: "look"}.Write(&b, l))
					require.NoError(t, os.WriteFile(filepath.Join(lookDir, strings.ReplaceAll(name, " ", "-")+".svg"),
						[]byte(b.String()), 0o644))
				}
			}
		}
	}
	// In a crowd even a number may find no room; the key still has the words.
	assert.Less(t, 50*bare, asked, "%d of %d labels have not even a number in the picture", bare, asked)
	t.Logf("%d pictures, %d labels, %d without a number", n, asked, bare)
}

// lettered are the extreme boats and the starting ones.
func lettered(t *testing.T) []design.Design {
	t.Helper()
	var all []design.Design
	for _, line := range extreme {
		d, _, err := design.ReadLine("barkwright1_" + line)
		require.NoError(t, err)
		all = append(all, d)
	}
	return append(all, design.Starting()...)
}

// clearLabels checks the labels of a picture. It returns how many were asked for, and how
// many of the key have not even a number in the picture.
func clearLabels(t *testing.T, name string, l draw.List, size draw.Size) (asked, without int) {
	t.Helper()
	weight := max(1, size.Letter/16)
	var seen []draw.Text
	for i, op := range l.Ops {
		text, ok := op.(draw.Text)
		if !ok {
			continue
		}
		b := text.Bounds()
		assert.True(t, b.Left >= 0 && b.Top >= 0 && b.Right <= l.Width && b.Bottom <= l.Height, "%s: %q leaves the picture", name,
			text.Text)
		for _, o := range seen {
			assert.False(t, b.Meets(o.Bounds()), "%s: %q overlaps %q", name, text.Text, o.Text)
		}
		seen = append(seen, text)
		for k, other := range l.Ops {
			if scene.Misread(other, weight) && runsThrough(other, b) && !covered(l.Ops[k+1:i], other, b) {
				t.Errorf("%s: %q is struck by %#v", name, text.Text, short(other))
				break
			}
		}
	}
	for _, k := range l.Key {
		if k.Number == 0 {
			without++
		}
	}
	return len(seen) + len(l.Key), without
}

func short(op draw.Op) draw.Op {
	switch op := op.(type) {
	case draw.Stroke:
		if len(op.Points) > 4 {
			op.Points = op.Points[:4]
		}
		return op
	case draw.Hatch:
		op.Points = op.Points[:min(4, len(op.Points))]
		return op
	}
	return op
}

// covered reports whether a fill over the whole of a label's box lies between a line and
// the label, other than the label's own ground.
func covered(over []draw.Op, _ draw.Op, b draw.Box) bool {
	for _, op := range over[:max(0, len(over)-1)] {
		if f, ok := op.(draw.Fill); ok && f.Role == draw.Paper && len(f.Points) == 4 && b.Within(draw.BoxOf(f.Points)) {
			return true
		}
	}
	return false
}

// runsThrough walks along every line of an operation in steps of half a pixel.
func runsThrough(op draw.Op, b draw.Box) bool {
	walk := func(p, q draw.Point) bool {
		if max(p.X, q.X) < b.Left || min(p.X, q.X) > b.Right || max(p.Y, q.Y) < b.Top || min(p.Y, q.Y) > b.Bottom {
			return false
		}
		n := int(2*max(abs(q.X-p.X), abs(q.Y-p.Y))) + 1
		for i := range n + 1 {
			s := float64(i) / float64(n)
			x, y := p.X+s*(q.X-p.X), p.Y+s*(q.Y-p.Y)
			if x > b.Left && x < b.Right && y > b.Top && y < b.Bottom {
				return true
			}
		}
		return false
	}
	switch op := op.(type) {
	case draw.Stroke:
		for i := 1; i < len(op.Points); i++ {
			if walk(op.Points[i-1], op.Points[i]) {
				return true
			}
		}
		return op.Closed && walk(op.Points[len(op.Points)-1], op.Points[0])
	case draw.Hatch:
		for _, line := range op.Lines() {
			if walk(line[0], line[1]) {
				return true
			}
		}
	}
	return false
}

func abs(v float64) float64 { return max(v, -v) }

// The legends of the cap stand beside the boat, or in the key, and never on it: in a
// phone's low picture there is little room.
func TestCapLegendsOffTheBoat(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		for _, size := range []draw.Size{{Width: 320, Height: 109, Letter: 16}, {Width: 390, Height: 143, Letter: 16},
			{Width: 390, Height: 690, Letter: 16}} {
			for _, only := range []scene.Only{scene.Both, scene.TopOnly} {
				l := view.Draw(c, scene.View{State: scene.Finished, Only: only}, size)
				for _, op := range l.Ops {
					if text, ok := op.(draw.Text); ok && strings.HasPrefix(text.Text, "cap o") && text.Anchor == draw.End {
						middle := draw.Point{X: text.At.X - draw.Lettered(text.Text, text.Size, false)/2, Y: text.At.Y}
						part, on := l.Hit(middle, 0)
						assert.False(t, on, "%q on %s of %s, %v", text.Text, part, d.Name, size)
					}
				}
			}
		}
	}
}

// What says how the caps are drawn stands beside the boat, and so does the number that stands for it in the key: on a
// phone's sizes no corner of it and not its middle lies on the bark, from above or from the side.
func TestCapLegendIsBesideTheBoat(t *testing.T) {
	seen := 0
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		for _, width := range []float64{320, 350, 390, 430} {
			for height := 100.0; height <= 700; height += 60 {
				l := view.Draw(c, scene.View{State: scene.Finished, System: units.Imperial16, Handles: true},
					draw.Size{Width: width, Height: height, Letter: 16})
				marks := map[string]bool{"cap on": true, "cap off: lacing and pegs": true}
				for _, k := range l.Key {
					if marks[k.Text] && k.Number > 0 {
						marks[k.Mark()] = true
					}
				}
				for _, op := range l.Ops {
					// A rib's number is one too; the key's are bold.
					text, is := op.(draw.Text)
					if !is || !marks[text.Text] || len(text.Text) < 3 && !text.Bold {
						continue
					}
					seen++
					b := text.Bounds()
					middle := draw.Point{X: (b.Left + b.Right) / 2, Y: (b.Top + b.Bottom) / 2}
					for _, at := range []draw.Point{middle, {X: b.Left, Y: b.Top}, {X: b.Right, Y: b.Top}, {X: b.Left, Y: b.Bottom},
						{X: b.Right, Y: b.Bottom}} {
						for _, part := range l.Parts {
							if part.Name == answer.SheathingPart || part.Name == answer.BarkPart {
								assert.False(t, draw.Encloses(part.Points, at), "%s, %.0f by %.0f: %s", d.Name, width, height, text.Text)
							}
						}
					}
				}
			}
		}
	}
	assert.Greater(t, seen, 100)
}
