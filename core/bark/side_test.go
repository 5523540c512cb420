package bark_test

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
)

// neck is how deep the bark between two panels is taken where they are laid flat as one piece.
const neck = 2 * inch

// inOnePiece lays two panels flat with the bark between them, which is neck deep under the edge, as one
// piece, and returns what a strip between two places must cover of it.
func inOnePiece(t *testing.T, h *hull.Hull, l *bark.Layout, f *bark.Flat, aft, bow float64) []geom.Vec2 {
	t.Helper()
	const rows, between = 9, 16
	var places, lows []float64
	for i := range f.Panels {
		p := &f.Panels[i]
		if i > 0 {
			from := places[len(places)-1]
			for k := 1; k < between; k++ {
				place := from + (p.Places[0]-from)*float64(k)/between
				c := h.Column(place)
				places, lows = append(places, place), append(lows, c.Girth())
			}
		}
		for c, place := range p.Places {
			places, lows = append(places, place), append(lows, p.Girths[c*p.Rows])
		}
	}
	foot := make([]float64, len(places))
	grid := geom.NewGrid(len(places), rows, func(c, r int) geom.Vec3 {
		column := h.Column(places[c])
		foot[c] = max(0, min(lows[c], column.Girth()-neck))
		return column.At(foot[c] + (column.Girth()-foot[c])*float64(r)/(rows-1))
	})
	flat := geom.Flatten(geom.FlattenProblem{Grid: grid}, nil)
	require.Equal(t, geom.Converged, flat.State)
	// The after panel lies as the boat does: the edge of both pieces runs the same way over it.
	first := &f.Panels[0]
	top := func(c int) geom.Vec2 { return first.Points[c*first.Rows+first.Rows-1] }
	n := len(first.Places)
	way, lies := top(n-1).Sub(top(0)).Unit(), flat.Points[n*rows-1].Sub(flat.Points[rows-1]).Unit()
	cos, sin := way.Dot(lies), lies.Cross(way)
	for i, q := range flat.Points {
		flat.Points[i] = geom.Vec2{X: cos*q.X - sin*q.Y, Y: sin*q.X + cos*q.Y}
	}
	var out []geom.Vec2
	last := 0.0
	at := func(c int) (seam, top geom.Vec2) {
		column := h.Column(places[c])
		row := (lows[c] - foot[c]) / (column.Girth() - foot[c]) * (rows - 1)
		under := min(int(row), rows-2)
		return flat.Points[c*rows+under].Lerp(flat.Points[c*rows+under+1], row-float64(under)), flat.Points[c*rows+rows-1]
	}
	for c, place := range places {
		x, _ := geom.Bisect(func(x float64) float64 { return l.PlaceAt(h, x) - place }, 0, l.FlatLength/2, 1e-9)
		seam, top := at(c)
		for _, end := range []float64{aft, bow} {
			if c > 0 && last < end && end < x {
				before, above := at(c - 1)
				share := (end - last) / (x - last)
				out = append(out, before.Lerp(seam, share), above.Lerp(top, share))
			}
		}
		if x >= aft && x <= bow {
			out = append(out, seam, top)
		}
		last = x
	}
	return out
}

// A strip that lies over two panels holds both as they lie to one another: beside both of them laid flat in
// one piece with the bark between. That piece is 2 in deep where the strip goes by the edge alone, and
// stretches a little for it: a sixteenth.
func TestStripsOverTwoPanels(t *testing.T) {
	r := rand.New(rand.NewPCG(3, 21))
	over := 0
	for over < 2 {
		d := check.NearDesign(r, design.Default(), 0.4)
		d.SheetWidth = []float64{28, 34, 40}[r.IntN(3)] * inch
		if len(design.Validate(d)) > 0 || len(hullFaults(d)) > 0 {
			continue
		}
		h := hull.New(d)
		plain := bark.Plan(h)
		if len(plain.Panels) < 2 {
			continue
		}
		f := bark.Flatten(h, plain, bark.ForPicture, nil, nil)
		if f.State != geom.Converged || len(f.Panels) != 2 {
			continue
		}
		l := plain.OnFlat(h, f)
		for _, s := range l.Port {
			points := inOnePiece(t, h, &l, &f, s.Aft, s.Bow)
			if s.Aft < 0 || len(stripRegion(h, &l, &f.Panels[0], s, 1)) < 4 || len(stripRegion(h, &l, &f.Panels[1], s, 1)) < 4 {
				continue
			}
			over++
			length := straightLength(points, s.Width+inch/16, d.GunwaleTurn+d.SeamLap)
			assert.LessOrEqual(t, length, s.Length()+inch/16, "%s %.3f by %.3f", s.Name, s.Length()/inch, s.Width/inch)
			t.Logf("%s %.3f by %.3f: asks %.3f", s.Name, s.Length()/inch, s.Width/inch, length/inch)
		}
	}
}
