package mesh

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/draw"
)

// alpha is what a pixel takes of a triangle's colour.
func (v Vertex) alpha() float64 {
	return float64(v.A) * min(max(float64(v.Reach)-math.Abs(float64(v.Across)), 0), 1)
}

// cover is the integral of alpha over the mesh, square pixels. Cut where alpha begins, is whole and
// where a line's middle is, each piece of a triangle has it linear: its area times the mean of the
// corners, exactly.
func (m *Mesh) cover() float64 {
	sum := 0.0
	for i := 0; i < len(m.Indices); i += 3 {
		corners := []Vertex{m.Vertices[m.Indices[i]], m.Vertices[m.Indices[i+1]], m.Vertices[m.Indices[i+2]]}
		reach := corners[0].Reach
		pieces := [][]Vertex{corners}
		for _, at := range []float32{-reach, 1 - reach, 0, reach - 1, reach} {
			var cut [][]Vertex
			for _, piece := range pieces {
				for _, side := range []float32{-1, 1} {
					// What lies on the cut all over goes to one side.
					level := !slices.ContainsFunc(piece, func(v Vertex) bool { return v.Across != at })
					if part := clipped(piece, at, side); len(part) > 2 && (!level || side > 0) {
						cut = append(cut, part)
					}
				}
			}
			pieces = cut
		}
		for _, p := range pieces {
			for k := 2; k < len(p); k++ {
				a, b, c := p[0], p[k-1], p[k]
				area := (float64(b.X-a.X)*float64(c.Y-a.Y) - float64(b.Y-a.Y)*float64(c.X-a.X)) / 2
				sum += math.Abs(area) * (a.alpha() + b.alpha() + c.alpha()) / 3
			}
		}
	}
	return sum
}

// clipped is the part of a piece on one side of where Across has a value.
func clipped(piece []Vertex, at, side float32) []Vertex {
	var out []Vertex
	for i, a := range piece {
		b := piece[(i+1)%len(piece)]
		da, db := side*(a.Across-at), side*(b.Across-at)
		if da >= 0 {
			out = append(out, a)
		}
		if da*db < 0 {
			k := da / (da - db)
			c := a
			c.X, c.Y, c.Across = a.X+k*(b.X-a.X), a.Y+k*(b.Y-a.Y), at
			out = append(out, c)
		}
	}
	return out
}

// rounded is the share by which a covered area may be off: vertices are of 32 bits, whose last one
// is worth 8e-6 pixels at a hundred, and lines are drawn a pixel wide and more.
const rounded = 1e-5

func shoelace(p []draw.Point) float64 {
	sum := 0.0
	for i, a := range p {
		b := p[(i+1)%len(p)]
		sum += a.X*b.Y - b.X*a.Y
	}
	return math.Abs(sum) / 2
}

func triangleArea(p []draw.Point, triangles [][3]uint32) float64 {
	sum := 0.0
	for _, t := range triangles {
		sum += math.Abs(cross(p[t[0]], p[t[1]], p[t[2]])) / 2
	}
	return sum
}

// Triangles of a simple polygon cover it once: their areas sum to the shoelace
// area, which is exact.
func TestTriangulateCoversOnce(t *testing.T) {
	star := func(rng *rand.Rand, n int) []draw.Point {
		p := make([]draw.Point, n)
		for i := range p {
			r := 20 + 200*rng.Float64()
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			p[i] = draw.Point{X: 300 + r*cos, Y: 300 + r*sin}
		}
		return p
	}
	var c clipper
	rng := rand.New(rand.NewPCG(1, 1))
	for n := 3; n < 120; n++ {
		p := star(rng, n)
		triangles, area := c.triangulate(p)
		assert.InEpsilon(t, shoelace(p), triangleArea(p, triangles), 1e-9, "star of %d", n)
		assert.InEpsilon(t, shoelace(p), area, 1e-9, "star of %d", n)
		for i, j := 0, n-1; i < j; i, j = i+1, j-1 {
			p[i], p[j] = p[j], p[i]
		}
		triangles, area = c.triangulate(p)
		assert.InEpsilon(t, shoelace(p), triangleArea(p, triangles), 1e-9, "star of %d, wound the other way", n)
		assert.InEpsilon(t, -shoelace(p), area, 1e-9, "star of %d, wound the other way", n)
	}
	for name, p := range map[string][]draw.Point{
		"comb": {{X: 0, Y: 0}, {X: 50, Y: 0}, {X: 50, Y: 30}, {X: 40, Y: 5}, {X: 30, Y: 30}, {X: 20, Y: 5},
			{X: 10, Y: 30}, {X: 0, Y: 5}},
		"points in line":     {{X: 0, Y: 0}, {X: 5, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 5}, {X: 10, Y: 10}, {X: 0, Y: 10}},
		"points that repeat": {{X: 0, Y: 0}, {X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 10}, {X: 0, Y: 10}, {X: 0, Y: 0}},
	} {
		triangles, _ := c.triangulate(p)
		assert.InEpsilon(t, shoelace(p), triangleArea(p, triangles), 1e-9, name)
	}
	for name, p := range map[string][]draw.Point{"no points": nil, "no area": {{X: 1, Y: 1}, {X: 2, Y: 2}, {X: 3, Y: 3}}} {
		triangles, _ := c.triangulate(p)
		assert.Empty(t, triangles, name)
	}
	assert.NotPanics(t, func() {
		for n := 3; n < 60; n++ {
			p := make([]draw.Point, n)
			for i := range p {
				p[i] = draw.Point{X: rng.Float64(), Y: rng.Float64()}
			}
			c.triangulate(p)
		}
	}, "polygons that cross themselves")
}

// A line of width w and length L covers w L: the feather loses inside what it
// gains outside, and a mitre gains outside what it loses inside.
func TestStrokeCoversWidthTimesLength(t *testing.T) {
	gentle := make([]draw.Point, 200)
	length := 0.0
	for i := range gentle {
		x := float64(i)
		gentle[i] = draw.Point{X: x, Y: 40 * math.Sin(x/30)}
		if i > 0 {
			length += math.Hypot(1, gentle[i].Y-gentle[i-1].Y)
		}
	}
	side := []draw.Point{{X: 10, Y: 10}, {X: 110, Y: 10}, {X: 110, Y: 60}, {X: 10, Y: 60}}
	for _, c := range []struct {
		name   string
		stroke draw.Stroke
		scale  float64
		want   float64
	}{
		{"straight", draw.Stroke{Points: side[:2], Width: 3}, 1, 300},
		{"straight at three pixels a point", draw.Stroke{Points: side[:2], Width: 3}, 3, 2700},
		{"thinner than a pixel", draw.Stroke{Points: side[:2], Width: 0.4}, 1, 40},
		{"mitred corner", draw.Stroke{Points: side[:3], Width: 4}, 1, 600},
		{"closed", draw.Stroke{Points: side, Width: 4, Closed: true}, 1, 1200},
		{"curve", draw.Stroke{Points: gentle, Width: 2}, 1, 2 * length},
		{"dashed, three fifths drawn", draw.Stroke{Points: side[:2], Width: 2, Dash: []float64{6, 4}}, 1, 120},
		{"dashes run round corners", draw.Stroke{Points: side, Width: 2, Dash: []float64{6, 4}, Closed: true}, 1, 360},
		{"a pattern without length is whole", draw.Stroke{Points: side[:2], Width: 2, Dash: []float64{0}}, 1, 200},
	} {
		var m Mesh
		l := draw.List{}
		c.stroke.Role = draw.Ink
		l.Add(c.stroke)
		m.Build(l, draw.Screen(), 0, 0, c.scale)
		assert.InEpsilon(t, c.want, m.cover(), rounded, c.name)
	}
}

// A turn back on itself has no mitre: both lines end square, half a width past
// the corner, and nothing flies off.
func TestSharpTurn(t *testing.T) {
	var m Mesh
	l := draw.List{}
	l.Add(draw.Stroke{Role: draw.Ink, Width: 4, Points: []draw.Point{{X: 0, Y: 0}, {X: 50, Y: 0}, {X: 0, Y: 1}}})
	m.Build(l, draw.Screen(), 0, 0, 1)
	for _, v := range m.Vertices {
		assert.LessOrEqual(t, v.X, float32(52.1))
		assert.GreaterOrEqual(t, v.X, float32(-0.1))
	}
	assert.InEpsilon(t, 4*(52+50.01+2), m.cover(), rounded)
}

func TestBuild(t *testing.T) {
	var m Mesh
	l := draw.List{}
	box := []draw.Point{{X: 0, Y: 0}, {X: 100, Y: 0}, {X: 100, Y: 50}, {X: 0, Y: 50}}
	l.Add(
		draw.Fill{Role: draw.Bark, Points: box},
		draw.Hatch{Role: draw.Warn, Points: box, Spacing: 10, Width: 1},
		draw.Text{Role: draw.Ink, Text: "no triangles"},
		draw.Stroke{Role: draw.Ink, Points: box[:1], Width: 2},
		draw.Stroke{Role: draw.Ink, Width: 2},
		draw.Fill{Role: draw.Bark, Points: box[:2]},
	)
	m.Build(l, draw.Screen(), 0, 0, 1)
	// 5000 of fill, its rim, and five lines of 100: at 0, 10, 20, 30 and 40.
	assert.InEpsilon(t, 5000+rimOfBox(100, 50)+500, m.cover(), rounded)

	require.NotEmpty(t, m.Vertices)
	bark := draw.Screen().Of(draw.Bark)
	assert.Equal(t, Vertex{X: 0, Y: 0, Reach: 1, R: float32(bark.R) / 255, G: float32(bark.G) / 255, B: float32(bark.B) / 255,
		A: 1}, m.Vertices[0])
	for _, v := range m.Vertices {
		assert.LessOrEqual(t, v.R, v.A+1e-6, "premultiplied")
	}
	first := len(m.Indices)
	m.Build(l, draw.Screen(), 0, 0, 1)
	assert.Len(t, m.Indices, first, "a second build starts afresh")
}

// The paper lies under everything and covers the picture whole, without a rim.
func TestPaperCoversThePicture(t *testing.T) {
	var m Mesh
	l := draw.List{}
	l.Add(draw.Stroke{Role: draw.Ink, Points: []draw.Point{{X: 0, Y: 10}, {X: 50, Y: 10}}, Width: 2})
	m.Build(l, draw.Screen(), 300, 200, 1)
	assert.InEpsilon(t, 300*200+100, m.cover(), rounded)
	paper := draw.Screen().Of(draw.Paper)
	for _, v := range m.Vertices[:4] {
		assert.Equal(t, float32(paper.R)/255, v.R)
	}
	assert.Equal(t, []uint32{0, 1, 2, 0, 2, 3}, m.Indices[:6])
}

// rimOfBox is the integral of alpha over a box's feathered rim: at d outside the box alpha is 1 - d, and
// the line there is that much longer at each of the four mitred corners.
func rimOfBox(width, height float64) float64 {
	round := 2 * (width + height)
	return round/2 + 8*(1.0/2-1.0/3)
}

// A fill is feathered outward, whichever way its outline is wound.
func TestRimLiesOutside(t *testing.T) {
	box := []draw.Point{{X: 10, Y: 10}, {X: 40, Y: 10}, {X: 40, Y: 30}, {X: 10, Y: 30}}
	for range 2 {
		var m Mesh
		l := draw.List{}
		l.Add(draw.Fill{Role: draw.Bark, Points: box})
		m.Build(l, draw.Screen(), 0, 0, 1)
		assert.InEpsilon(t, 600+rimOfBox(30, 20), m.cover(), rounded)
		for _, v := range m.Vertices {
			if inside := v.X > 9.5 && v.X < 40.5 && v.Y > 9.5 && v.Y < 30.5; inside {
				assert.Equal(t, 1.0, v.alpha(), "%v", v)
			} else {
				assert.Zero(t, v.alpha(), "%v", v)
			}
		}
		slices.Reverse(box)
	}
}

// A line is two triangles a piece, however wide it is: what fades at its sides is worked out for each
// pixel. Triangles are what a picture costs graphics without a GPU.
func TestLinesTakeTwoTrianglesAPiece(t *testing.T) {
	for _, width := range []float64{0.3, 1, 1.01, 3} {
		var m Mesh
		l := draw.List{}
		l.Add(draw.Stroke{Role: draw.Ink, Points: []draw.Point{{X: 0, Y: 0}, {X: 50, Y: 0}, {X: 90, Y: 20}}, Width: width})
		m.Build(l, draw.Screen(), 0, 0, 1)
		assert.Len(t, m.Indices, 12, "%v wide", width)
		assert.Len(t, m.Vertices, 6, "%v wide", width)
	}
}

func BenchmarkBuild(b *testing.B) {
	outline := make([]draw.Point, 240)
	for i := range outline {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / 240)
		outline[i] = draw.Point{X: 400 + 380*cos, Y: 200 + 90*sin - 60*cos*cos}
	}
	l := draw.List{}
	for range 4 {
		l.Add(draw.Fill{Role: draw.Bark, Points: outline},
			draw.Stroke{Role: draw.Ink, Points: outline, Width: 1.5, Closed: true})
	}
	for i := range 50 {
		l.Add(draw.Stroke{Role: draw.Root, Points: []draw.Point{{X: float64(16 * i), Y: 0}, {X: float64(16 * i), Y: 400}},
			Width: 1, Dash: []float64{4, 3}})
	}
	var m Mesh
	b.ReportAllocs()
	for b.Loop() {
		m.Build(l, draw.Screen(), 0, 0, 2)
	}
}
