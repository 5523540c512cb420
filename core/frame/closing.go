package frame

import (
	"math"

	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
)

// Closing is how one end is closed: bark trimmed, sewn through the stem-piece, outwales
// lashed. Runs along the end are from the heel, where the bark leaves the bottom.
type Closing struct {
	// Trim is the line both barks are trimmed to, in (x, z): the end's profile from the
	// heel to the stem head, the bark's thickness outside the stem-piece. Leave is the
	// bark left past it until the stem-piece is tried in.
	Trim  geom.Polyline
	Leave float64
	// Spacing is that of the stitches, evenly, and HoleIn how far their holes stand in
	// from the trim line.
	Spacing, HoleIn float64
	// Groups are the stitches from the heel up, by what they go through.
	Groups []StitchGroup
	// Lashings of the two outwales to one another, from the stem head inward.
	Lashings [lashings]Lashing
}

// StitchGroup is a run of stitches of one end's seam.
type StitchGroup struct {
	Through  Sewn
	From, To float64
	Stitches int
}

// Sewn is what stitches of the end go through.
type Sewn int

// The things, from the heel up.
const (
	// BarkAlone is below the stem-piece's inboard end, or where the holes stand inboard
	// of the piece, which the root then goes round.
	BarkAlone Sewn = iota
	SolidHeel
	Laminated
)

// Lashing is the place of a lashing: along the outwale from the stem head, and the
// station.
type Lashing struct{ Along, X float64 }

// Three lashings, just inboard of the stem, at the middle of the bark flap that lies
// over the gunwales' ends and about 6 in farther in: Adney and Chapelle 1964, pp. 49-50.
// No figure is printed for the first two. The flap is taken to reach from the stem head
// to the gunwales' end, the first to stand lashingClear inboard of the stem-piece and the
// second lashingApart from it at least: choices of this project.
const (
	lashings     = 3
	lashingClear = 0.5 * units.Inch
	lashingApart = 1 * units.Inch
	// LastLashing is how far the last stands inboard of the one before.
	LastLashing = 6 * units.Inch
)

// newClosing closes the end over a stem-piece.
func newClosing(h *hull.Hull, s Stem) Closing {
	d := &h.Design
	c := Closing{Trim: h.End.Path, Leave: d.GunwaleTurn, HoleIn: d.EndBite / 2}
	length := c.Trim.Length()
	n := max(1, int(math.Ceil(length/d.EndStitch-1e-9)))
	c.Spacing = length / float64(n)
	starts := length - s.Curve
	bounds := []float64{0, starts, starts + s.Solid, length}
	inStem := c.HoleIn < d.BarkThickness+d.StemDepth
	for i, through := range []Sewn{BarkAlone, SolidHeel, Laminated} {
		g := StitchGroup{Through: through, From: max(0, bounds[i]), To: min(length, max(0, bounds[i+1]))}
		if !inStem {
			g.Through = BarkAlone
		}
		// Stitch k stands half a spacing past k of them.
		g.Stitches = c.before(g.To, n) - c.before(g.From, n)
		if g.Stitches > 0 {
			c.Groups = append(c.Groups, g)
		}
	}
	c.Lashings = placeLashings(h)
	return c
}

// before is how many of n stitches stand short of a run.
func (c *Closing) before(run float64, n int) int {
	return max(0, min(n, int(math.Ceil(run/c.Spacing-0.5))))
}

// Stitches is how many there are along one end.
func (c *Closing) Stitches() int {
	n := 0
	for _, g := range c.Groups {
		n += g.Stitches
	}
	return n
}

// ThroughStem is how many of them go through the stem-piece.
func (c *Closing) ThroughStem() int {
	n := 0
	for _, g := range c.Groups {
		if g.Through != BarkAlone {
			n += g.Stitches
		}
	}
	return n
}

// Hole is where stitch k stands on the trim line, from 0 at the heel.
func (c *Closing) Hole(k int) float64 { return (float64(k) + 0.5) * c.Spacing }

// HoleAt is where the hole of stitch k stands, in (x, z), and the direction of the trim
// line there.
func (c *Closing) HoleAt(k int) (at, along geom.Vec2) {
	const step = 0.001
	run := c.Hole(k)
	along = c.Trim.At(min(run+step, c.Trim.Length())).Sub(c.Trim.At(max(0, run-step))).Unit()
	return c.Trim.At(run).Add(along.Left().Scale(c.HoleIn)), along
}

func placeLashings(h *hull.Hull) [lashings]Lashing {
	d := &h.Design
	first := d.BarkThickness + d.StemDepth + lashingClear
	flap := h.Edge.Length() - h.Edge.RunTo(h.GunwaleX)
	middle := max(flap/2, first+lashingApart)
	var out [lashings]Lashing
	for i, along := range []float64{first, middle, middle + LastLashing} {
		out[i] = Lashing{along, inFromHead(h, along)}
	}
	return out
}

// inFromHead is the station a length inboard of the stem head along the bark's top edge,
// which runs on inboard of the heel as the gunwale does.
func inFromHead(h *hull.Hull, along float64) float64 {
	if left := h.Edge.Length() - along; left >= 0 {
		return h.Edge.ParameterAt(left)
	}
	return h.StationAt(max(0, h.RunTo(h.HeelX)+h.Edge.Length()-along))
}
