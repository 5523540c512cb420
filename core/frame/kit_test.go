package frame_test

import (
	"math"
	"math/rand/v2"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

const (
	inch = units.Inch
	foot = units.Foot

	// rounding is what two ways to one length of a few metres, or to one ratio, may differ by: some ten steps of
	// doubles, each off by 2^-53 of at most ten.
	rounding = 1e-14
	// byKnots is what a length along the gunwale and back to where it was taken may differ by, m: both ways go
	// between the knots of a table whose cubes agree to less than half a nanometre, measured.
	byKnots = 1e-9
)

func build(d design.Design) (*hull.Hull, frame.Frame) {
	h := hull.New(d)
	return h, frame.Build(h)
}

// random draws a design: each number moved from its default with even odds, by up
// to a share of its range that is itself drawn; some to a step of their slider or to an
// exact end.
func random(source *rand.Rand) design.Design {
	d := design.Default()
	share := math.Pow(10, -2*source.Float64())
	for _, p := range design.Params() {
		if source.IntN(2) == 0 {
			continue
		}
		v := p.Get(&d) + share*(2*source.Float64()-1)*(p.Max-p.Min)
		if p.Options != nil {
			v = float64(source.IntN(len(p.Options)))
		}
		if p.Odd {
			v = 2*math.Floor(v/2) + 1
		}
		if p.Key == "greatestBeam" {
			v = 0
			if source.IntN(4) == 0 {
				v = d.OutsideBreadth() * (1 + 0.2*source.Float64())
			}
		}
		switch source.IntN(24) {
		case 0:
			v = p.Min
		case 1:
			v = p.Max
		case 2, 3, 4:
			v = p.Stepped(v, 1, units.Imperial16)
		}
		d = p.Set(d, max(p.Min, min(p.Max, v)))
	}
	return d
}

// sound draws random designs until one has no fault that the frame does not know
// of, and returns its hull.
func sound(source *rand.Rand) *hull.Hull {
	for {
		d := random(source)
		if design.Validate(d) != nil {
			continue
		}
		if h := hull.New(d); h.Faults() == nil {
			return h
		}
	}
}

func length(points []geom.Vec2) float64 { return geom.NewPolyline(points).Length() }
