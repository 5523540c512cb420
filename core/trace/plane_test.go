package trace_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"gonum.org/v1/gonum/stat"

	"barkwright/core/geom"
	"barkwright/core/trace"
)

// pressed is a point with a spread of one pixel.
func pressed(x, y float64) trace.Point { return trace.Point{Vec2: vec{X: x, Y: y}, Spread: 1} }

// drawing is a setting of a drawing at 2 mm a pixel, its base line at y = 500 from x = 100 to
// 1100 and its middle at 600.
func drawing(sizes ...trace.Size) trace.Setting {
	return trace.Setting{Base: [2]trace.Point{pressed(100, 500), pressed(1100, 500)}, Middle: pressed(600, 420),
		Up: vec{Y: -1}, Sizes: sizes, Uneven: 0.01}
}

func size(ax, ay, bx, by, length, spread float64) trace.Size {
	return trace.Size{A: pressed(ax, ay), B: pressed(bx, by), Length: length, Spread: spread}
}

// One size scales both axes; heights are over the base line and places from the middle.
func TestOneSize(t *testing.T) {
	p, err := trace.New(drawing(size(100, 500, 1100, 500, 2, 0.001)))
	require.NoError(t, err)
	at, ok := p.At(vec{X: 850, Y: 300})
	require.True(t, ok)
	assert.InDelta(t, 0.5, at.X, 1e-9)
	assert.InDelta(t, 0.4, at.Y, 1e-9)
	back, ok := p.Pixel(at)
	require.True(t, ok)
	assert.InDelta(t, 850, back.X, 1e-9)
	assert.InDelta(t, 300, back.Y, 1e-9)
	along, up := p.ScaleSpread()
	// One pixel at either end of a thousand, and half a thousandth of the length. To the square
	// of a pixel in a thousand: a moved point turns the base line, too.
	assert.InDelta(t, math.Hypot(math.Sqrt2/1000, 0.0005), along, 1e-6)
	// No size says how high a pixel is: the paper may have grown by a hundredth. To the square
	// of that.
	assert.InDelta(t, math.Hypot(along, 0.01), up, 1e-4)
}

// Sizes along and up give each axis its own scale, and one aslant takes part in both.
func TestEachAxisItsOwn(t *testing.T) {
	aslant := math.Hypot(300*0.002, 400*0.0021)
	p, err := trace.New(drawing(size(100, 500, 1100, 500, 2, 1e-4), size(200, 100, 200, 500, 400*0.0021, 1e-4),
		size(400, 500, 700, 100, aslant, 1e-4)))
	require.NoError(t, err)
	s := p.Scale()
	// A pixel at either end of four hundred is a spread of 0.35 %, so that the 1 % by which paper
	// may well be uneven pulls the 5 % in by an eighth of itself at most.
	assert.InDelta(t, 0.002, s.Along, 0.002*0.003)
	assert.InDelta(t, 0.0021, s.Up, 0.0021*0.006)
	require.Len(t, s.Misses, 3)
}

// Two sizes along one line come to their mean, weighed by one over the square of their
// spreads: the closed form of least squares for one unknown.
func TestSizesAreWeighed(t *testing.T) {
	const k, l1, l2, s1, s2 = 1000, 2.00, 2.03, 0.02, 0.04
	q := drawing(size(100, 500, 1100, 500, l1, s1), size(100, 400, 1100, 400, l2, s2))
	for i := range q.Sizes {
		q.Sizes[i].A.Spread, q.Sizes[i].B.Spread = 0, 0
	}
	p, err := trace.New(q)
	require.NoError(t, err)
	w1, w2 := 1/(s1*s1), 1/(s2*s2)
	want := (w1*l1 + w2*l2) / (w1 + w2)
	assert.InDelta(t, want/k, p.Scale().Along, 1e-9)
	assert.InDelta(t, want-l1, p.Scale().Misses[0], 1e-9)
	assert.InDelta(t, want-l2, p.Scale().Misses[1], 1e-9)
	assert.InDelta(t, math.Sqrt((want-l1)*(want-l1)*w1+(want-l2)*(want-l2)*w2), p.Scale().Chi, 1e-9)
}

// The spread that a reading is given is the one that its points, pressed again and again with their spreads on paper
// that is as uneven as it may be, have: four thousand times, to a twentieth. The spread of so many has itself one of
// 1 in the root of 8000, 1.1 %, and a twentieth is more than four of those (sampling of a normal distribution).
func TestSpreadIsThatOfPressingAgain(t *testing.T) {
	askew := func(x, y float64) trace.Point {
		// A picture of the plane seen from one side: what is farther right is smaller.
		k := 1 / (1 + 0.0003*x)
		return pressed(100+x*k, 900-y*k)
	}
	photograph := trace.Setting{Rectangle: &trace.Rectangle{Corners: [4]trace.Point{askew(100, 100), askew(1000, 100),
		askew(1000, 600), askew(100, 600)}, Wide: 1.8, High: 1, Spread: 0.002},
		Base: [2]trace.Point{askew(0, 0), askew(1200, 0)}, Middle: askew(600, 300), Up: vec{Y: -1}, Uneven: 1e-4}
	for name, s := range map[string]trace.Setting{
		"drawing":    drawing(size(100, 500, 1100, 500, 2, 0.004), size(150, 100, 150, 500, 0.8, 0.004)),
		"photograph": photograph,
	} {
		r := rand.New(rand.NewPCG(17, 2))
		// Some were pressed with more care than others.
		points := []trace.Point{pressed(900, 250), pressed(300, 330)}
		points[0].Spread, s.Base[0].Spread, s.Base[1].Spread, s.Middle.Spread = 0.4, 3, 0.5, 2
		values := map[string]func([]vec) float64{
			"height":   func(p []vec) float64 { return p[0].Y },
			"place":    func(p []vec) float64 { return p[0].X },
			"distance": func(p []vec) float64 { return p[0].Sub(p[1]).Len() },
		}
		sampled := map[string][]float64{}
		for range 4000 {
			// The paper is longer one way than the other by what it may be.
			longer := 1 + s.Uneven*r.NormFloat64()
			q, err := trace.New(shaken(r, s, longer))
			require.NoError(t, err)
			var again []vec
			for _, at := range points {
				at.X *= longer
				v, ok := q.At(shake(r, at).Vec2)
				require.True(t, ok)
				again = append(again, v)
			}
			for what, value := range values {
				sampled[what] = append(sampled[what], value(again))
			}
		}
		p, err := trace.New(s)
		require.NoError(t, err)
		for what, value := range values {
			_, spread, err := p.Read(points, value)
			require.NoError(t, err)
			assert.InEpsilon(t, stat.StdDev(sampled[what], nil), spread, 0.05, "%s, %s", name, what)
		}
	}
}

func shake(r *rand.Rand, p trace.Point) trace.Point {
	p.X += p.Spread * r.NormFloat64()
	p.Y += p.Spread * r.NormFloat64()
	return p
}

// shaken is a setting on paper that is longer along the picture, with every point and every length off by its spread.
func shaken(r *rand.Rand, s trace.Setting, longer float64) trace.Setting {
	shake := func(r *rand.Rand, p trace.Point) trace.Point {
		p.X *= longer
		return shake(r, p)
	}
	for i := range s.Base {
		s.Base[i] = shake(r, s.Base[i])
	}
	s.Middle = shake(r, s.Middle)
	s.Sizes = append([]trace.Size(nil), s.Sizes...)
	for i := range s.Sizes {
		z := &s.Sizes[i]
		z.A, z.B, z.Length = shake(r, z.A), shake(r, z.B), z.Length+z.Spread*r.NormFloat64()
	}
	if s.Rectangle != nil {
		q := *s.Rectangle
		for i := range q.Corners {
			q.Corners[i] = shake(r, q.Corners[i])
		}
		q.Wide += q.Spread * r.NormFloat64()
		q.High += q.Spread * r.NormFloat64()
		s.Rectangle = &q
	}
	return s
}

// What cannot be scaled is refused by name.
func TestRefusals(t *testing.T) {
	good := size(100, 500, 1100, 500, 2, 0.001)
	short, upright, near := drawing(good), drawing(good), drawing(size(100, 500, 105, 500, 2, 0.001))
	short.Base[1] = pressed(103, 500)
	upright.Base[1] = pressed(100, 900)
	upside := drawing(good)
	upside.Up = vec{Y: 1}
	for want, s := range map[trace.Refusal]trace.Setting{
		trace.NoSize: drawing(), trace.ShortBase: short, trace.NoUp: upright, trace.ShortSize: near,
		// A foot taken for an inch.
		trace.SizesDisagree: drawing(good, size(200, 300, 700, 300, 12, 0.001)),
	} {
		_, err := trace.New(s)
		assert.ErrorIs(t, err, want)
	}
	p, err := trace.New(upside)
	require.NoError(t, err)
	at, _ := p.At(vec{X: 600, Y: 700})
	assert.InDelta(t, 0.4, at.Y, 1e-9, "a picture upside down has its heights downward")
}

// A plane turned by any angle reads the same as one that lies straight.
func TestTurned(t *testing.T) {
	for deg := range 24 {
		sin, cos := math.Sincos(float64(deg) * math.Pi / 12)
		turn := func(p trace.Point) trace.Point {
			d := p.Sub(vec{X: 600, Y: 500})
			p.Vec2 = vec{X: 600 + cos*d.X - sin*d.Y, Y: 500 + sin*d.X + cos*d.Y}
			return p
		}
		s := drawing(size(100, 500, 1100, 500, 2, 0.001), size(200, 100, 200, 500, 0.81, 0.001))
		straight, err := trace.New(s)
		require.NoError(t, err)
		s.Base[0], s.Base[1], s.Middle = turn(s.Base[0]), turn(s.Base[1]), turn(s.Middle)
		s.Up = geom.Vec2{X: sin, Y: -cos}
		for i := range s.Sizes {
			s.Sizes[i].A, s.Sizes[i].B = turn(s.Sizes[i].A), turn(s.Sizes[i].B)
		}
		p, err := trace.New(s)
		require.NoError(t, err)
		want, _ := straight.At(vec{X: 850, Y: 300})
		got, _ := p.At(turn(pressed(850, 300)).Vec2)
		assert.InDelta(t, 0, got.Sub(want).Len(), 1e-9)
	}
}
