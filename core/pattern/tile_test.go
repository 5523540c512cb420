package pattern_test

import (
	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/internal/check"
	"encoding/xml"
	"flag"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the goldens; look at git diff afterwards")

// head is an invented boat's.
var head = pattern.Head{Boat: "Heron Cove, first canoe", Code: "B1;length=192", Date: "3 May 2026"}

// evaluated is a boat with its bark laid flat, coarsely.
func evaluated(d design.Design) core.Canoe {
	c := core.Evaluate(d)
	return c.WithFlat(core.LayFlat(c, bark.Resolution{Columns: 24, Rows: 8}, nil, nil))
}

// patterns are all of a boat's, by kind.
func patterns(d design.Design) map[string][]pattern.Pattern {
	c := evaluated(d)
	out := map[string][]pattern.Pattern{}
	for _, k := range pattern.Kinds() {
		out[k.Key] = pattern.Make(c, k.Key, pattern.Options{System: units.Imperial16})
	}
	return out
}

// runOf is the length of lines, mm.
func runOf(lines []pattern.Line) float64 {
	sum := 0.0
	for _, l := range lines {
		sum += geom.NewPolyline(l.Points).Length()
	}
	return sum
}

// A long slanting line cut to sheets: what lies on two is there twice, so that the
// sheets' lengths less what they share are the line's.
func TestTilesShareTheirOverlaps(t *testing.T) {
	long := pattern.Line{Points: []geom.Vec2{{X: 0, Y: 0}, {X: 846, Y: 0}, {X: 0, Y: 950}, {X: 846, Y: 950}}}
	p := pattern.Pattern{Lines: []pattern.Line{long}, Size: geom.Vec2{X: 846, Y: 950}}
	tiles := p.Tiles(pattern.Paper)
	// 846 + 24 less 10 over 172, 950 + 24 less 10 over 241, with nothing over.
	assert.Equal(t, 5, tiles[0].Cols)
	assert.Equal(t, 4, tiles[0].Rows)
	marks := func(x pattern.Tile) []pattern.Line {
		return pattern.Tile{Block: x.Block, Row: x.Row, Col: x.Col, Rows: x.Rows, Cols: x.Cols}.Lines()
	}
	sum := 0.0
	for _, x := range tiles {
		for _, l := range x.Lines() {
			for _, q := range l.Points {
				assert.True(t, q.X >= -1e-9 && q.Y >= -1e-9 && q.X <= 182+1e-9 && q.Y <= 251+1e-9, "%s inside its block: %v",
					x.ID(), q)
			}
		}
		sum += runOf(x.Lines()) - runOf(marks(x))
	}
	// By inclusion and exclusion: the level lines lie in one row each and cross
	// four strips 10 mm broad; the slanting one crosses strips in both.
	slant := math.Hypot(846, 950)
	want := 2*846 + slant + 2*4*10 + 4*10*slant/846 + 3*10*slant/950
	// Where it crosses two strips at once it is there four times, of which the two
	// strips count three.
	corners := 0.0
	for _, a := range overlaps(5, 172) {
		for _, b := range overlaps(4, 241) {
			// The slant runs from (846, 0) to (0, 950): the share of it in both.
			lo := max(1-(a+10)/846, b/950)
			hi := min(1-a/846, (b+10)/950)
			corners += max(0, hi-lo) * slant
		}
	}
	assert.InDelta(t, want+corners, sum, 1e-9)
}

// overlaps are where the strips begin, on the pattern.
func overlaps(n int, step float64) (out []float64) {
	for i := 1; i < n; i++ {
		out = append(out, float64(i)*step-12)
	}
	return out
}

// Every corner of a mark or a line in a strip stands on both of the sheets that
// share it.
func TestNeighboursAreAlike(t *testing.T) {
	shared := 0
	for _, all := range patterns(design.Default()) {
		for _, p := range all {
			tiles := p.Tiles(pattern.Paper)
			require.NotEmpty(t, tiles, p.Name)
			for _, a := range tiles {
				for _, b := range tiles {
					if b.Col-a.Col+b.Row-a.Row == 1 && b.Col >= a.Col && b.Row >= a.Row {
						shared += alike(t, p.Name, a, b)
						shared += alike(t, p.Name, b, a)
					}
				}
			}
		}
	}
	assert.Greater(t, shared, 1000)
}

// alike looks for every corner of one sheet's lines on the other, inside what they
// share and clear of where lines are cut, and counts them.
func alike(t *testing.T, name string, a, b pattern.Tile) int {
	by := geom.Vec2{X: float64(b.Col-a.Col) * 172, Y: float64(b.Row-a.Row) * 241}
	n := 0
	for _, l := range a.Lines() {
		for _, q := range l.Points {
			q = q.Sub(by)
			here := q.Add(by)
			const clear = 1e-6
			if q.X < clear || q.Y < clear || q.X > 182-clear || q.Y > 251-clear || here.X < clear || here.Y < clear ||
				here.X > 182-clear || here.Y > 251-clear {
				continue
			}
			off := math.Inf(1)
			for _, m := range b.Lines() {
				for _, r := range m.Points {
					off = min(off, q.Sub(r).Len())
				}
			}
			assert.LessOrEqual(t, off, 1e-6, "%s: %s on %s at %v", name, a.ID(), b.ID(), q)
			n++
		}
	}
	return n
}

func TestTileNames(t *testing.T) {
	names := map[[2]int]string{{0, 0}: "A1", {1, 2}: "B3", {25, 0}: "Z1", {26, 0}: "AA1", {27, 11}: "AB12"}
	for at, want := range names {
		assert.Equal(t, want, pattern.Tile{Row: at[0], Col: at[1]}.ID())
	}
}

// A strip of 16 ft takes 21 sheets in one row, and a roll longer than
// readers of PDF show is cut: 14,400 points are 5080 mm.
func TestStripsAndRolls(t *testing.T) {
	strip := pattern.Pattern{Lines: []pattern.Line{{Points: []geom.Vec2{{}, {Y: 4877}}}}, Size: geom.Vec2{X: 60, Y: 4877}}
	tiles := strip.Tiles(pattern.Paper)
	assert.Len(t, tiles, 21)
	assert.Equal(t, 1, tiles[0].Cols)
	assert.Len(t, strip.Tiles(strip.Roll()), 1)
	strip.Size.Y = 6000
	strip.Lines[0].Points[1].Y = 6000
	roll := strip.Tiles(strip.Roll())
	assert.Len(t, roll, 2)
	_, long := roll[0].Block.Page()
	assert.InDelta(t, 5080, long, 1e-9)
	for kind, all := range patterns(design.Default()) {
		if kind == "frame" || kind == "stick" || kind == "tip" {
			for _, p := range all {
				assert.Equal(t, 1, p.Tiles(pattern.Paper)[0].Cols, "%s in one row", p.Name)
			}
		}
	}
}

// One unit of every drawing is a millimetre, and what it says is escaped.
func TestSVGInMillimetres(t *testing.T) {
	nasty := pattern.Head{Boat: `</svg><script>alert("x")</script> & "co"`, Code: "<b>", Date: "<i>"}
	for _, all := range patterns(design.Default()) {
		p := pattern.Stack(all)
		var b strings.Builder
		require.NoError(t, p.SVG(&b, nasty))
		var root struct {
			Width   string `xml:"width,attr"`
			Height  string `xml:"height,attr"`
			ViewBox string `xml:"viewBox,attr"`
		}
		require.NoError(t, xml.Unmarshal([]byte(b.String()), &root), "well formed")
		box := strings.Fields(root.ViewBox)
		require.Len(t, box, 4)
		assert.Equal(t, []string{"0", "0", strings.TrimSuffix(root.Width, "mm"), strings.TrimSuffix(root.Height, "mm")}, box)
		width, err := strconv.ParseFloat(box[2], 64)
		require.NoError(t, err)
		assert.GreaterOrEqual(t, width, p.Size.X+20)
		assert.NotContains(t, b.String(), "<script")
		bars := 0
		for _, op := range p.Tiles(p.Whole())[0].Draw(nasty, "").Ops {
			if fill, ok := op.(draw.Fill); ok {
				box := draw.BoxOf(fill.Points)
				if math.Abs(max(box.Width(), box.Height())-150) < 1e-9 {
					bars++
				}
			}
		}
		assert.Equal(t, 2, bars, "the bars of 150 mm, across and down")
	}
	assert.Error(t, pattern.Pattern{}.SVG(&strings.Builder{}, head), "nothing to draw")
}

func TestPatternGoldens(t *testing.T) {
	c := evaluated(design.Default())
	for _, key := range []string{"headboard", "gores", "outline"} {
		var b strings.Builder
		require.NoError(t, pattern.Stack(pattern.Make(c, key, pattern.Options{System: units.Imperial16})).SVG(&b, head))
		check.Golden(t, *update, "pattern-"+key+".svg", b.String())
	}
	var b strings.Builder
	require.NoError(t, draw.SVG{Palette: draw.Print(), MillimetresPerUnit: 1, ID: "tip"}.Write(&b,
		pattern.Pages(pattern.Make(c, "tip", pattern.Options{System: units.Metric}), head)[1]))
	check.Golden(t, *update, "pattern-tip-map.svg", b.String())
}
