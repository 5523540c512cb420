package check

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// With is the default with some parameters set: keys, each before its value in SI.
func With(t testing.TB, pairs ...any) design.Design {
	t.Helper()
	return Of(t, design.Default(), pairs...)
}

// Of is With on another design.
func Of(t testing.TB, d design.Design, pairs ...any) design.Design {
	t.Helper()
	for i := 0; i < len(pairs); i += 2 {
		p, ok := design.Lookup(pairs[i].(string))
		require.True(t, ok, pairs[i])
		d = p.Set(d, pairs[i+1].(float64))
	}
	return d
}

// SomeDesigns are the default and n-1 more, near it and anywhere, with names and
// notes that text formats stumble over; the same for the same seed.
func SomeDesigns(n int, seed uint64) []design.Design {
	r := rand.New(rand.NewPCG(seed, seed))
	out := []design.Design{design.Default()}
	for len(out) < n {
		d := NearDesign(r, design.Default(), 0.3)
		if len(out)%3 == 0 {
			d = AnyDesign(r)
		}
		d.Name, d.Notes = `Rose & "Thorn" <b> é 独木舟 `+string(rune('a'+len(out)%26)), "one\ntwo\t\\ \u2028"
		// A seat of no height would not come back as it was kept.
		out = append(out, design.Seated(d))
	}
	return out
}

// AnyDesign draws every parameter from its whole range, its exact ends and its sliders'
// steps among them, and ties a random half of the dependent ones to what they follow.
// Few such designs can be built.
func AnyDesign(r *rand.Rand) design.Design {
	d := design.Default()
	for _, p := range design.Params() {
		if !aside(p) && (!p.Follows() || r.IntN(2) == 0) {
			d = p.Set(d, draw(r, p, p.Min, p.Max))
		}
	}
	return anyCrew(d)
}

// aside tells what is drawn from a source of its own, so that which boat a seed gives does not
// hang on it.
func aside(p design.Param) bool { return p.Paddler > 0 || p.Tolerance }

// anyCrew moves a random half of what may be different from paddler to paddler, inside the
// boat, and of how close it is built. It draws from a source of its own, so that which boat a seed
// gives does not hang on who is aboard.
func anyCrew(d design.Design) design.Design {
	r := rand.New(rand.NewPCG(math.Float64bits(d.Length), math.Float64bits(d.Depth)))
	for _, p := range design.Params() {
		if !aside(p) || r.IntN(2) == 0 {
			continue
		}
		if p.Kind == units.Offset {
			p.Max = min(p.Max, d.HalfGunwale())
			p.Min = -p.Max
		}
		d = p.Set(d, draw(r, p, p.Min, p.Max))
	}
	return d
}

// AtExtremes puts n parameters of from, drawn at random, at an exact end of their range.
func AtExtremes(r *rand.Rand, from design.Design, n int) design.Design {
	all := design.Params()
	for range n {
		p := all[r.IntN(len(all))]
		from = p.Set(from, []float64{p.Min, p.Max}[r.IntN(2)])
	}
	return from
}

// NearDesign moves about share of the parameters of from by up to a quarter of
// their range either way, or to a step of their slider there, or now and then to an
// exact end of their range. A good part of such designs can be built.
func NearDesign(r *rand.Rand, from design.Design, share float64) design.Design {
	for _, p := range design.Params() {
		if aside(p) || r.Float64() > share {
			continue
		}
		v, reach := p.Get(&from), (p.Max-p.Min)/4
		from = p.Set(from, draw(r, p, max(p.Min, v-reach), min(p.Max, v+reach)))
	}
	return anyCrew(from)
}

// Corrected corrects the curves of a design at its thwarts, as a tape might have read
// there: up to half an inch either way.
func Corrected(r *rand.Rand, d design.Design) design.Design {
	at := []float64{0, d.ThwartAt[0], d.ThwartAt[1], 1}
	for i := range at[:3] {
		c := shape.Correction{At: at[i], From: at[max(0, i-1)], To: at[i+1], By: (r.Float64() - 0.5) * units.Inch}
		if c.At == 0 || c.From < c.At && c.At < c.To {
			d.Corrected.Plan, _ = d.Corrected.Plan.Add(c)
			c.By = (r.Float64() - 0.5) * units.Inch
			d.Corrected.Sheer, _ = d.Corrected.Sheer.Add(c)
		}
	}
	return d
}

// Share draws from 0 to 1, now and then an end itself.
func Share(r *rand.Rand) float64 {
	if end := r.IntN(8); end < 2 {
		return float64(end)
	}
	return r.Float64()
}

func draw(r *rand.Rand, p design.Param, lo, hi float64) float64 {
	v := lo + r.Float64()*(hi-lo)
	switch how := r.IntN(16); {
	case p.NoneAtMin && r.IntN(3) > 0:
		return 0
	case how == 0:
		return p.Min
	case how == 1:
		return p.Max
	case how < 6:
		return p.Stepped(v, 1, units.Imperial16)
	case how == 6:
		return p.Stepped(v, -1, units.Metric)
	case p.Odd:
		return 2*math.Floor(v/2) + 1
	}
	return v
}
