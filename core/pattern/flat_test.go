package pattern_test

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// paper is what scissors would find on the printed outline of the port side, m of
// bark: ten times the millimetres of the file. x is forward from amidships, y out
// from the centre line.
type paper struct {
	edges, gores [][]geom.Vec2 // of the sheet, from the middle forward; gores from edge to foot to edge
	panels       [][]geom.Vec2 // once round
}

// readOutline reads the SVG file and knows nothing of what it was written from: whole
// lines half a millimetre broad are cut, the dashed thin one that is level is the
// centre line, a line that comes back to its start is a panel's and one whose ends lie
// close together is a gore's.
func readOutline(t *testing.T, file []byte) paper {
	t.Helper()
	var root struct {
		Paths []struct {
			D     string `xml:"d,attr"`
			Fill  string `xml:"fill,attr"`
			Width string `xml:"stroke-width,attr"`
			Dash  string `xml:"stroke-dasharray,attr"`
		} `xml:"path"`
	}
	require.NoError(t, xml.Unmarshal(file, &root))
	var cut [][]geom.Vec2
	var middle geom.Vec2
	for _, p := range root.Paths {
		if p.Fill != "none" {
			continue
		}
		var line []geom.Vec2
		for _, pair := range strings.FieldsFunc(p.D, func(r rune) bool { return r == 'M' || r == 'L' }) {
			var q geom.Vec2
			_, err := fmt.Sscan(pair, &q.X, &q.Y)
			require.NoError(t, err, pair)
			line = append(line, q)
		}
		switch {
		case p.Width == "0.5" && p.Dash == "":
			cut = append(cut, line)
		case p.Width == "0.25" && p.Dash != "":
			middle = line[0].Lerp(line[1], 0.5)
		}
	}
	require.NotZero(t, middle)
	var out paper
	for _, line := range cut {
		least, most := math.Inf(1), math.Inf(-1)
		for i, q := range line {
			line[i] = geom.Vec2{X: (q.X - middle.X) / 100, Y: (middle.Y - q.Y) / 100}
			least, most = min(least, line[i].Y), max(most, line[i].Y)
		}
		ends := line[0].Sub(line[len(line)-1]).Len()
		switch {
		case most < 1e-4: // starboard
		case ends == 0:
			out.panels = append(out.panels, line)
		case ends < 0.2*geom.NewPolyline(line).Length():
			out.gores = append(out.gores, line)
		case least > 1e-4: // and not an end's, which starts on the centre line
			out.edges = append(out.edges, line)
		}
	}
	byPlace := func(a, b []geom.Vec2) int {
		return int(math.Copysign(1, a[len(a)/2].X-b[len(b)/2].X))
	}
	for _, list := range [][][]geom.Vec2{out.edges, out.gores, out.panels} {
		slices.SortFunc(list, byPlace)
	}
	return out
}

// forward joins the pieces of an edge from amidships to the bow as if the gores
// between were closed: where on paper each length along it lies.
func (p paper) forward() run {
	var r run
	for _, line := range p.edges {
		if line[0].X > line[len(line)-1].X {
			line = slices.Clone(line)
			slices.Reverse(line)
		}
		r.add(line)
	}
	return r
}

// run is lengths along an edge and the points there.
type run struct {
	along []float64
	at    []geom.Vec2
}

// add appends a line as far as it lies forward of amidships; what came before is
// closed up to it.
func (r *run) add(line []geom.Vec2) {
	for i, q := range line {
		if q.X < -1e-5 {
			continue
		}
		along := 0.0
		if n := len(r.along); n > 0 {
			along = r.along[n-1]
			if i > 0 {
				along += q.Sub(line[i-1]).Len()
			}
		}
		r.along, r.at = append(r.along, along), append(r.at, q)
	}
}

func (r run) point(along float64) geom.Vec2 {
	i := 1
	for i < len(r.along)-1 && r.along[i] < along {
		i++
	}
	step := r.along[i] - r.along[i-1]
	if step == 0 {
		return r.at[i]
	}
	return r.at[i-1].Lerp(r.at[i], (along-r.along[i-1])/step)
}

// halves are the lower and the upper edge of a panel, from amidships forward; none of
// one that does not go through amidships.
func halves(round []geom.Vec2) (seam, top run) {
	stern, bow := 0, 0
	for i, q := range round {
		if q.X < round[stern].X {
			stern = i
		}
		if q.X > round[bow].X {
			bow = i
		}
	}
	if round[stern].X > 0 || round[bow].X < 0 {
		return run{}, run{}
	}
	walk := func(step int) (r run) {
		n := len(round) - 1
		line := []geom.Vec2{round[stern]}
		for i := stern % n; i != bow%n; {
			i = (i + step + n) % n
			line = append(line, round[i])
		}
		r.add(line)
		return r
	}
	seam, top = walk(1), walk(-1)
	if seam.at[0].Y > top.at[0].Y {
		return top, seam
	}
	return seam, top
}

// hullRun is the length from amidships along a line on the hull.
func hullRun(x float64, at func(x float64) geom.Vec3) float64 {
	const pieces = 400
	sum := 0.0
	for i := range pieces {
		sum += at(x * float64(i+1) / pieces).Sub(at(x * float64(i) / pieces)).Len()
	}
	return sum
}

// The paper check: the outline is written as a file, and from its millimetres alone,
// gores closed and panels sewn on, the bark comes to the hull's girths within 1/8 in at
// full size: at each gore along both of its edges, and half-way between gores straight
// across. (Past the outermost gores a rib's line lies bent on the bark and cannot be
// found on its outline.) The top edge is the hull's within 1/4 in of half the boat. The
// tolerances are a choice of this project and what the flattening in memory is held to; the
// file is rounded to 1/100 mm of bark, and the straight way across bark that turns a
// degree or two at the gores' feet is under 1/64 in short. The girths are the hull's own.
func TestOutlineFileHasTheHullsGirths(t *testing.T) {
	// With so many gores that the bark lies flat within its limit.
	gores, ok := design.Lookup("gores")
	require.True(t, ok)
	boat := gores.Set(design.Starting()[0], 11)
	sheetWidth, ok := design.Lookup("sheetWidth")
	require.True(t, ok)
	for _, d := range []design.Design{boat, sheetWidth.Set(boat, sheetWidth.Max)} {
		c := core.Evaluate(d)
		c = c.WithFlat(core.LayFlat(c, bark.ForFigures, nil, nil))
		require.LessOrEqual(t, c.Skin.Flat.P95, d.StretchLimit)
		var file bytes.Buffer
		made := pattern.Make(c, "outline", pattern.Options{System: units.Imperial16})
		require.NoError(t, pattern.Stack(made).SVG(&file, head))
		p := readOutline(t, file.Bytes())
		require.Len(t, p.gores, len(c.Bark.Gores))
		w := newWay(c.Hull, p)
		last := 0.0
		for i, line := range p.gores {
			x := c.Bark.Gores[i].X
			if x < 0 {
				continue
			}
			foot := slices.IndexFunc(line, func(q geom.Vec2) bool { return q.Y == lowest(line) })
			for _, side := range [][]geom.Vec2{line[:foot+1], line[foot:]} {
				girth := line[foot].Y + geom.NewPolyline(side).Length() + w.panel(x)
				assert.InDelta(t, w.girth(x)/units.Inch, girth/units.Inch, 0.125, "gore at %v in", x/units.Inch)
			}
			between := (x + last) / 2
			girth := w.seam.point(hullRun(between, w.seamLine)).Sub(geom.Vec2{X: hullRun(between, w.bottom)}).Len() +
				w.panel(between)
			if x > 0 {
				assert.InDelta(t, w.girth(between)/units.Inch, girth/units.Inch, 0.125, "at %v in", between/units.Inch)
			}
			last = x
		}
		if len(c.Bark.Panels) == 0 {
			want := hullRun(c.Hull.HeelX, w.topEdge) + c.Hull.Edge.Length()
			assert.InDelta(t, want/units.Inch, w.seam.along[len(w.seam.along)-1]/units.Inch, 0.25, "edge")
		}
	}
}

func lowest(line []geom.Vec2) float64 {
	least := math.Inf(1)
	for _, q := range line {
		least = min(least, q.Y)
	}
	return least
}

// way is the way from the centre line to the gunwale on paper, beside the same on the
// hull: the sheet's edge, closed, and the two edges of the panel sewn to it.
type way struct {
	*hull.Hull
	seam, panelSeam, panelTop run
}

func newWay(h *hull.Hull, p paper) way {
	w := way{Hull: h, seam: p.forward()}
	for _, round := range p.panels {
		if s, top := halves(round); s.along != nil {
			w.panelSeam, w.panelTop = s, top
		}
	}
	return w
}

func (w way) topEdge(x float64) geom.Vec3 {
	return geom.Vec3{X: x, Y: w.SkinHalfBreadth(x), Z: w.TopEdge(x)}
}

func (w way) bottom(x float64) geom.Vec3 { return geom.Vec3{X: x, Z: w.Bottom(x)} }

// seamLine is where half a sheet comes to on the hull, or its top edge.
func (w way) seamLine(x float64) geom.Vec3 {
	s := w.Section(x)
	q := s.At(min(w.Design.SheetWidth/2, s.HalfGirth()))
	return geom.Vec3{X: x, Y: q.X, Z: q.Y}
}

// girth is the hull's, as far as the sheet goes where its panel is drawn out: less than
// 1/4 in beside the bark left to trim is given no shape.
func (w way) girth(x float64) float64 {
	girth := w.Section(x).HalfGirth()
	if w.panel(x) == 0 {
		return min(girth, w.Design.SheetWidth/2)
	}
	return girth
}

// panel is the width of the panel on paper from seam to top edge, 0 where none is.
func (w way) panel(x float64) float64 {
	at := hullRun(x, w.seamLine)
	if n := len(w.panelSeam.along); n == 0 || at > w.panelSeam.along[n-1] {
		return 0
	}
	return w.panelTop.point(hullRun(x, w.topEdge)).Sub(w.panelSeam.point(at)).Len()
}
