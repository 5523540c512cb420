package refit_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// plan is a drawing of a known boat: its three views on one sheet, the paper shrunk along,
// then the sheet turned. Points are pressed on it with a spread of a pixel.
type plan struct {
	*testing.T
	hull   *hull.Hull
	r      *rand.Rand
	scale  float64 // pixels to a metre
	shrunk float64
	turn   float64
	bow    float64 // 1 where it lies to the right, -1 to the left
	// lens bends the picture as a photograph taken aslant does, nil for a sheet scanned flat.
	lens func(geom.Vec2) geom.Vec2
	record.Tracing
}

// origins are where the middles of the views lie on the sheet before it is turned, pixels.
var origins = [record.Views]geom.Vec2{record.FromSide: {X: 1000, Y: 500}, record.FromAbove: {X: 1000, Y: 800},
	record.InSection: {X: 1000, Y: 1300}}

// pixel is where a place of a view lies, metres along and up.
func (p *plan) pixel(v record.View, along, up float64) geom.Vec2 {
	if v != record.InSection {
		along *= p.bow
	}
	at := origins[v].Add(geom.Vec2{X: along * p.shrunk, Y: -up}.Scale(p.scale)).Sub(geom.Vec2{X: 1000, Y: 800})
	if p.lens != nil {
		return p.lens(at).Add(geom.Vec2{X: 1000, Y: 800})
	}
	sin, cos := math.Sincos(p.turn)
	return geom.Vec2{X: 1000 + cos*at.X - sin*at.Y, Y: 800 + sin*at.X + cos*at.Y}
}

// press marks points of a view, metres along and up, for one thing.
func (p *plan) press(v record.View, what string, change func(*record.Mark), points ...geom.Vec2) {
	m := record.Mark{View: v, What: what}
	if change != nil {
		change(&m)
	}
	p.Tracing = p.Put(m)
	i := len(p.Marks) - 1
	for k, at := range points {
		q := p.pixel(v, at.X, at.Y).Add(geom.Vec2{X: p.r.NormFloat64(), Y: p.r.NormFloat64()})
		p.Tracing = p.Press(i, k, q, 1)
	}
}

func at(x, y float64) geom.Vec2 { return geom.Vec2{X: x, Y: y} }

func lettered(v float64) func(*record.Mark) {
	return func(m *record.Mark) { m.Length = math.Round(v/units.Inch*8) / 8 * units.Inch }
}

// readPlan presses on a plan of a boat all that a record can be read from.
func readPlan(t *testing.T, d design.Design, seed uint64) *plan {
	r := rand.New(rand.NewPCG(17, seed))
	p := &plan{T: t, hull: hull.New(d), r: r, scale: 1700 / d.Length, shrunk: 1 - 0.015*r.Float64(),
		turn: 0.3 * (r.Float64() - 0.5), bow: 1}
	if seed%2 == 1 {
		p.bow = -1
	}
	h, half := p.hull, d.Length/2
	p.Tracing = record.NewTracing(2000, 1600, 0)
	p.Line = 0
	// Its user turns it straight.
	p.Turn = -p.turn
	for v := range record.Views {
		reach := half
		if v == record.InSection {
			reach = d.Beam / 2
		}
		p.press(v, record.BaseLine, nil, at(-reach, 0), at(reach, 0))
		p.press(v, record.MiddlePoint, nil, at(0, 0.05))
	}
	p.press(record.FromSide, record.LetteredSize, lettered(d.Length), at(-half, 0.3), at(half, 0.3))
	p.press(record.FromSide, record.LetteredSize, lettered(d.EndHeight), at(h.HeadX, 0), at(h.HeadX, d.EndHeight))
	p.press(record.FromAbove, record.LetteredSize, lettered(d.Beam), at(0, -d.Beam/2), at(0, d.Beam/2))

	side := func(what string, points ...geom.Vec2) { p.press(record.FromSide, what, nil, points...) }
	side(record.LengthOverall.ID(), at(-half, 0.2), at(half, 0.2))
	side(record.LengthOverGunwales.ID(), at(-h.GunwaleX, 0.4), at(h.GunwaleX, 0.4))
	side(record.EndHeight.ID(), at(h.HeadX, d.EndHeight))
	side(record.HeadboardPosition.ID(), at(h.HeadboardX(), 0.3))
	var sheer, bottom, end, gunwale []geom.Vec2
	for i := range 9 {
		x := h.GunwaleX * 0.98 * float64(i) / 8
		sheer = append(sheer, at(x, h.Sheer(x)))
		gunwale = append(gunwale, at(x, h.HalfBeam(x)))
		x = h.HeelX * float64(i) / 8
		bottom = append(bottom, at(x, h.Bottom(x)))
		e := h.End.At(0.1 + 0.85*float64(i)/8)
		end = append(end, e)
	}
	side("sheerCurve", sheer...)
	side("bottomCurve", bottom...)
	side("endCurve", end...)
	above := func(what string, change func(*record.Mark), points ...geom.Vec2) {
		p.press(record.FromAbove, what, change, points...)
	}
	above("gunwaleCurve", nil, gunwale...)
	above(record.BeamInside.ID(), nil, at(0, -d.Beam/2), at(0, d.Beam/2))
	for n := range d.OuterThwarts() {
		x := h.StationAt(d.ThwartAt[n] * h.Gunwale.Length())
		above(record.ThwartPosition.ID(), func(m *record.Mark) { m.Number = n + 1 }, at(x, 0))
	}
	p.press(record.InSection, "sectionCurve", nil, h.Section(0).Sample(12)...)
	p.press(record.InSection, record.DepthInwale.ID(), nil, at(d.Beam/2, d.Depth))
	return p
}

// flatBoats are boats whose section a record of half girths decides.
func flatBoats() []design.Design {
	var list []design.Design
	for _, d := range append(design.Starting(), design.Default()) {
		if !d.Bulges() && d.BuiltOn == design.OnFrame {
			list = append(list, d)
		}
	}
	return list
}

// A record read off a drawing of a known boat, turned, shrunk along and pressed with a spread
// of a pixel, is that boat's within its stated tolerances nineteen times in twenty; and so is
// the boat fitted from it. Tolerances stay as narrow as pixels let them.
func TestRecordReadOffADrawing(t *testing.T) {
	rows, inside, fitted := 0, 0, 0
	for b, d := range flatBoats() {
		for i := range 6 {
			p := readPlan(t, d, uint64(10*b+i))
			n := record.Notebook{}.Traced(p.Tracing)
			rec := record.Record{Data: n.Record.Data}
			require.Greater(t, len(rec.Data), 40)
			truth := refit.Measure(d, rec)
			f := refit.Fit(rec)
			assert.Empty(t, f.Conflicts, d.Name)
			pixel := 1 / p.scale
			for k, row := range truth {
				rows++
				within := row.Within()
				if math.Abs(row.Difference) <= within {
					inside++
				}
				if math.Abs(f.Rows[k].Model-row.Model) <= within {
					fitted++
				}
				assert.Less(t, within, 20*pixel, "%v", row.Named(units.Imperial16))
			}
		}
	}
	assert.GreaterOrEqual(t, float64(inside), 0.95*float64(rows))
	assert.GreaterOrEqual(t, float64(fitted), 0.95*float64(rows))
}

// seenFrom is a plane turned by an angle about its upright middle line, radians, as a pinhole
// camera sees it from so many pixels away: the closed form of a perspective view.
func seenFrom(away, angle float64) func(geom.Vec2) geom.Vec2 {
	sin, cos := math.Sincos(angle)
	return func(p geom.Vec2) geom.Vec2 {
		k := away / (away + p.X*sin)
		return geom.Vec2{X: p.X * cos * k, Y: p.Y * k}
	}
}

// photograph is one of a boat's side, with a rectangle of 2 m by 0.4 m in its middle plane.
func photograph(t *testing.T, d design.Design, seed uint64, sort record.Sort, lens func(geom.Vec2) geom.Vec2) *plan {
	p := &plan{T: t, hull: hull.New(d), r: rand.New(rand.NewPCG(17, seed)), scale: 1700 / d.Length, shrunk: 1, bow: 1,
		lens: lens}
	h, half := p.hull, d.Length/2
	p.Tracing = record.NewTracing(2000, 1600, 0)
	p.Line, p.Sort = 0, sort
	side := func(what string, change func(*record.Mark), points ...geom.Vec2) {
		p.press(record.FromSide, what, change, points...)
	}
	side(record.BaseLine, nil, at(-half, 0), at(half, 0))
	side(record.MiddlePoint, nil, at(0, 0.3))
	side(record.KnownRectangle, func(m *record.Mark) { m.Length, m.High = 2, 0.4 }, at(-1, 0.05), at(1, 0.05), at(1, 0.45),
		at(-1, 0.45))
	if sort == record.SquareOn {
		side(record.LetteredSize, lettered(d.Length), at(-half, 0.3), at(half, 0.3))
	}
	side(record.LengthOverall.ID(), nil, at(-half, 0.2), at(half, 0.2))
	side(record.DepthInwale.ID(), nil, at(0, d.Depth))
	side(record.EndHeight.ID(), nil, at(h.HeadX, d.EndHeight))
	var sheer []geom.Vec2
	for i := range 9 {
		x := h.GunwaleX * (0.98*float64(i)/4 - 0.98)
		sheer = append(sheer, at(x, h.Sheer(math.Abs(x))))
	}
	side("sheerCurve", nil, sheer...)
	return p
}

// A photograph taken aslant is set square by the rectangle, and one taken nearly square on
// carries the tolerance for it: what is read off either is the boat's nineteen times in
// twenty. The first says so at its rows.
func TestRecordReadOffAPhotograph(t *testing.T) {
	for name, c := range map[string]struct {
		sort record.Sort
		lens func(geom.Vec2) geom.Vec2
	}{
		"set square":  {record.SetSquare, seenFrom(4000, 0.4)},
		"square on":   {record.SquareOn, seenFrom(12000, 0)},
		"a bit askew": {record.SquareOn, seenFrom(60000, 8*math.Pi/180)},
	} {
		rows, inside := 0, 0
		for b, d := range flatBoats() {
			for i := range 10 {
				p := photograph(t, d, uint64(100*b+i), c.sort, c.lens)
				n := record.Notebook{}.Traced(p.Tracing)
				require.Len(t, n.Record.Data, 12, name)
				for _, row := range refit.Measure(d, n.Record) {
					rows++
					if math.Abs(row.Difference) <= row.Within() {
						inside++
					}
					assert.Contains(t, row.Note, "photograph")
				}
			}
		}
		assert.GreaterOrEqual(t, float64(inside), 0.95*float64(rows), name)
	}
	p := photograph(t, flatBoats()[0], 1, record.SetSquare, seenFrom(4000, 0.4))
	n := record.Notebook{}.Traced(p.Tracing)
	assert.Contains(t, n.Record.Data[0].Note, "true in that plane only")
}
