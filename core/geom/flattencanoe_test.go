package geom_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/geom"
)

// illustrativeCanoe is a made-up double-ended skin, not a real boat: length 4.6,
// breadth 0.86 and depth 0.30 in metres, sections quarter superellipses of power
// 2.6, rocker 0.04 and sheer 0.18 at the ends, gridded to 88 % of the half length.
// The source of the printed values names these numbers and no curves along the
// length; the simplest ones that come near are used: half-breadth
// (breadth/2)(1 - t^2.5), rocker t^2, sheer t^3.
type illustrativeCanoe struct{ breadth float64 }

// section returns the keel and gunwale of the section at a share t of the half length.
func (k illustrativeCanoe) section(t float64) (half, bottom, top float64) {
	t = math.Abs(t)
	return k.breadth / 2 * (1 - math.Pow(t, 2.5)), 0.04 * t * t, 0.30 + 0.18*t*t*t
}

// grid returns columns+1 sections from the share from to 0.88 of the half length,
// each of rows+1 points equally spaced along its girth from the keel.
func (k illustrativeCanoe) grid(from float64, columns, rows int) geom.Grid {
	const power, fine = 2.6, 2000
	var at []geom.Vec3
	line, arc := make([]geom.Vec3, fine+1), make([]float64, fine+1)
	for c := range columns + 1 {
		t := from + (0.88-from)*float64(c)/float64(columns)
		half, bottom, top := k.section(t)
		for i := range line {
			sin, cos := math.Sincos(math.Pi / 2 * float64(i) / fine)
			line[i] = geom.Vec3{
				X: 2.3 * t,
				Y: half * math.Pow(sin, 2/power),
				Z: top - (top-bottom)*math.Pow(max(cos, 0), 2/power),
			}
			if i > 0 {
				arc[i] = arc[i-1] + line[i].Sub(line[i-1]).Len()
			}
		}
		i := 0
		for r := range rows + 1 {
			want := arc[fine] * float64(r) / float64(rows)
			for i < fine-1 && arc[i+1] < want {
				i++
			}
			at = append(at, line[i].Lerp(line[i+1], (want-arc[i])/(arc[i+1]-arc[i])))
		}
	}
	return geom.Grid{Cols: columns + 1, Rows: rows + 1, At: at}
}

// problem is the half skin with evenly spaced gores from 45 % of the girth, its keel
// on the line of symmetry.
func (k illustrativeCanoe) problem(columns, rows, gores int) geom.FlattenProblem {
	return geom.FlattenProblem{
		Grid:  k.grid(-0.88, columns, rows),
		Slits: evenSlits(columns, int(0.45*float64(rows)), gores),
		Hold:  func(c, r int) geom.Held { return geom.Held{X: r == 0 && c == columns/2, Y: r == 0} },
	}
}

func evenSlits(columns, foot, gores int) []geom.Slit {
	var slits []geom.Slit
	for i := 1; i <= gores; i++ {
		slits = append(slits, geom.Slit{Col: int(math.Round(float64(columns*i) / float64(gores+1))), Foot: foot})
	}
	return slits
}

// The curves along the length are not those of the source (see illustrativeCanoe), so
// the tolerances are 5 % and, for a gore's width, 1 mm: enough to catch a wrong energy,
// weight or mesh, which all change the strains by a third or more, and no claim that
// the surfaces are one.
func TestFlattenIllustrativeCanoe(t *testing.T) {
	for _, test := range []struct {
		gores    int
		p95, rms float64   // per cent
		widths   []float64 // millimetres, the first half
	}{
		{0, 1.54, 0.709, nil},
		{3, 0.78, 0.432, []float64{19.6, 11.3}},
		{5, 0.49, 0.290, []float64{16.1, 15.1, 8.3}},
		{7, 0.36, 0.212, []float64{11.8, 14.6, 10.8, 6.2}},
		{11, 0.23, 0.131, []float64{6.0, 10.6, 10.4, 8.9, 6.6, 4.0}},
	} {
		p := illustrativeCanoe{0.86}.problem(96, 20, test.gores)
		f := flatten(t, p)
		assert.InEpsilon(t, test.p95, 100*f.P95, 0.05, "%d gores", test.gores)
		assert.InEpsilon(t, test.rms, 100*f.RMS, 0.05, "%d gores", test.gores)
		for i, width := range test.widths {
			assert.InDelta(t, width, 1000*f.Gore(i).Width, 1, "gore %d of %d", i, test.gores)
		}
		if test.gores == 0 {
			edge := rowLengths(f, p.Grid, 20)
			assert.InEpsilon(t, 1.73, 100*(edge.Flat/edge.Surface-1), 0.05)
		}
	}
}

// rowLengths returns the chord lengths of row r of the sheet laid flat from g, the
// openings of slits left out.
func rowLengths(f geom.Flat, g geom.Grid, r int) geom.Lengths {
	var l geom.Lengths
	for _, piece := range f.Row(r) {
		l.Flat += geom.NewPolyline(piece).Length()
	}
	for c := 1; c < g.Cols; c++ {
		l.Surface += g.Point(c, r).Sub(g.Point(c-1, r)).Len()
	}
	return l
}

// closing returns, for the middle of column c, the gap per unit of base length that
// the formula g(h) = 1 - lam(h) gives for a base that is a geodesic, with
// lam” = -K lam, lam(0) = 1, lam'(0) = 0 up the girth (Fermi coordinates; do
// Carmo, Differential Geometry of Curves and Surfaces, 1976, from memory). K dt is
// the angle defect of each grid point over the width its cells have there.
func closing(g geom.Grid, f geom.Flat, c int) float64 {
	defect, area := make([]float64, len(g.At)), make([]float64, len(g.At))
	for _, s := range f.Stretches {
		for i := range 3 {
			at := g.At[s.Corners[i]]
			u, v := g.At[s.Corners[(i+1)%3]].Sub(at), g.At[s.Corners[(i+2)%3]].Sub(at)
			defect[s.Corners[i]] -= math.Atan2(u.Cross(v).Len(), u.Dot(v))
			area[s.Corners[i]] += s.Area / 3
		}
	}
	lam, slope := 1.0, 0.0
	for r := 1; r < g.Rows; r++ {
		i := c*g.Rows + r
		dt := g.At[i].Sub(g.At[i-1]).Len()
		lam += slope * dt
		slope -= (2*math.Pi + defect[i]) / area[i] * lam * dt
	}
	return 1 - lam
}

// The formula takes the pieces between gores as unstretched and their foot at the
// keel. Real ones keep some of the angle as strain, and the free ends open instead
// of the gores next to them, so the middle five of eleven must open by 0.75 to 1 of
// it, and the middle one come nearer when there are twice as many. The pan's test
// is the one that holds the formula tightly.
func TestGoreWidthsAgainstGirths(t *testing.T) {
	const columns, rows = 96, 20
	g := illustrativeCanoe{0.86}.grid(-0.88, columns, rows)
	whole := flatten(t, illustrativeCanoe{0.86}.problem(columns, rows, 0))
	share := func(f geom.Flat, i, spacing int) float64 {
		formula := 0.0
		for step := range spacing {
			c := columns/2 + (i-len(f.Slits())/2)*spacing + step - spacing/2
			keel := g.Point(c+1, 0).Sub(g.Point(c, 0)).Len()
			formula += keel * (closing(g, whole, c) + closing(g, whole, c+1)) / 2
		}
		return f.Gore(i).Width / formula
	}
	few := flatten(t, illustrativeCanoe{0.86}.problem(columns, rows, 11))
	for i := 3; i <= 7; i++ {
		assert.InDelta(t, 0.875, share(few, i, 8), 0.125, "gore %d", i)
	}
	many := flatten(t, illustrativeCanoe{0.86}.problem(columns, rows, 23))
	assert.Greater(t, share(many, 11, 4), share(few, 5, 8))
	assert.Less(t, share(many, 11, 4), 1.0)
}

func BenchmarkFlatten(b *testing.B) {
	for _, size := range []struct {
		name          string
		columns, rows int
	}{{"48x12", 48, 12}, {"96x20", 96, 20}} {
		p := illustrativeCanoe{0.86}.problem(size.columns, size.rows, 5)
		near := flatten(b, illustrativeCanoe{0.865}.problem(size.columns, size.rows, 5))
		for _, start := range []struct {
			name string
			warm *geom.Flat
		}{{"cold", nil}, {"warm", &near}} {
			b.Run(size.name+"/"+start.name, func(b *testing.B) {
				p.Warm = start.warm
				b.ReportAllocs()
				var w geom.FlattenWorkspace
				iterations := 0
				for b.Loop() {
					iterations = geom.Flatten(p, &w).Iterations
				}
				b.ReportMetric(float64(iterations), "iterations")
			})
		}
	}
}
