// Package mend says what a repair takes: the patch with its lap and grain, the seam, the
// root, the pitch, which ribs come out and in what order, and the hours. No patch size is
// published but the lap of a panel; sizes and steps are estimates, each with its constant.
package mend

import (
	"math"
	"sort"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/gather"
	"barkwright/core/geom"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/core/wood"
)

const (
	// Lap is how far a patch reaches past the damage all round, 1 to 2 in. Estimate: the only
	// lap in print is PanelLap.
	Lap = 1.5 * units.Inch
	// PanelLap is how far a panel laps in print: a couple of inches.
	PanelLap = 2 * units.Inch
	// RibMore is how much longer a new rib is split out than the one it replaces. Estimate.
	RibMore = 4 * units.Inch
	// outAndIn is how much longer a rib takes out and in again than to drive it. Estimate.
	outAndIn = 1.5
	// slackened is how many ribs next to a broken one, toward the middle, are loosened to free
	// it. Estimate: no source tells the steps.
	slackened = 2
	// StripLow and StripHigh are the depth of bark let in under the gunwale where holes tore
	// out: 2 to 4 in. Adney and Chapelle 1964, p. 148, of the strip that doubles the edge there.
	StripLow, StripHigh = 2 * units.Inch, 4 * units.Inch
)

// Boat is what of a boat a repair goes by.
type Boat struct {
	Design design.Design
	Frame  frame.Frame
	Bark   bark.Layout
	Gather gather.List
	Season plan.Season
}

// Repair is what it takes.
type Repair struct {
	// Damage is what is mended. A broken rib stands where the boat has one: the nearest to the
	// place entered.
	Damage tally.Damage
	// PatchAlong and PatchRound are the patch's size, m; 0 where none is wanted.
	PatchAlong, PatchRound float64
	Seam                   float64 // m
	Stitches               int
	Root                   float64 // split root, waste and tails with it, m
	Pitch                  float64 // both faces, kg
	// Out are the ribs that come out, in that order; they go back in the other one. Those
	// only slackened are the same with Slack.
	Out []Rib
	// Groups and Pegs are laced and driven again.
	Groups, Pegs int
	// Broken is the rib that is broken and New the one to make, with its length as split out; nil
	// where none is.
	Broken *Rib
	New    *NewRib
	// Hours are of one practised hand.
	Hours float64
}

// Rib is a rib of the boat: by its number, forward or aft, and when it was fitted.
type Rib struct {
	Number  int
	Forward bool
	Order   int
	Slack   bool
}

// NewRib is a rib to be made.
type NewRib struct {
	Length, Width, Thickness float64
	// Bend is where its bend falls among those of published ribs.
	Bend wood.RibBand
	// Dry is how many days it stays bound, as the plan has it.
	Dry float64
}

// Make works a repair out. Sizes below zero count as none.
func Make(b Boat, d tally.Damage) Repair {
	d.Along, d.Round, d.Groups = max(0, d.Along), max(0, d.Round), max(0, d.Groups)
	r := Repair{Damage: d}
	switch d.Kind {
	case tally.Crack:
		r.PatchAlong, r.PatchRound = 2*Lap, d.Round+2*Lap
		r.sew(b, d.Round)
	case tally.Hole:
		r.PatchAlong, r.PatchRound = d.Along+2*Lap, d.Round+2*Lap
		r.sew(b, ellipse(d.Along+Lap, d.Round+Lap))
	case tally.TornLacing:
		r.lace(b)
		return r
	case tally.BrokenRib:
		r.rib(b)
		return r
	}
	for _, rib := range ribs(b) {
		if math.Abs(rib.x-d.At) <= r.PatchAlong/2+rib.width/2 {
			r.Out = append(r.Out, rib.Rib)
		}
	}
	r.order()
	r.Hours += float64(len(r.Out)) * outAndIn * minutes(b, plan.DriveRibs) / 60
	return r
}

// sew is a seam of a length, sewn over and over as panels are, and pitched on both faces.
func (r *Repair) sew(b Boat, length float64) {
	s := bark.SewingOf(bark.PanelSeams, b.Design)
	r.Seam = length
	r.Stitches = int(geom.Ceil(length / s.Pitch))
	if r.Stitches > 0 {
		r.Root = float64(r.Stitches)*s.PerStitch()*(1+b.Design.RootWaste) + 2*b.Design.Tail
	}
	seams := 0.0
	for _, seam := range b.Bark.Seams {
		seams += seam.Length
	}
	if seams > 0 {
		r.Pitch = b.Gather.Pitch.Typical / seams * length
	}
	r.Hours += float64(r.Stitches)*minutes(b, plan.SewSeams)/60 +
		length/units.Foot*(minutes(b, plan.PitchInside)+minutes(b, plan.PitchOutside))/60
}

// ellipse is the way round one of two diameters, by Ramanujan's first formula.
func ellipse(a, b float64) float64 {
	return math.Pi / 2 * (3*(a+b) - math.Sqrt((3*a+b)*(a+3*b)))
}

// lace is lacing sewn again, with a strip under the gunwale where its holes tore out: as
// long as the groups and one more on each side.
func (r *Repair) lace(b Boat) {
	l := b.Frame.Lacing
	r.Groups = min(r.Damage.Groups, l.Count)
	r.Root = float64(r.Groups) * l.Group * (1 + b.Design.RootWaste)
	if r.Groups > 0 && l.Count > 0 {
		apart := 2 * 2 * b.Frame.Gunwales.Run / float64(l.Count)
		r.PatchAlong, r.PatchRound = float64(r.Groups+2)*apart, StripHigh
		r.Pegs = int(math.Ceil(float64(r.Groups) * float64(l.Pegs) / float64(l.Count)))
	}
	r.Hours = float64(r.Groups) * minutes(b, plan.Lace) / 60
}

// rib is a rib to be made: the one nearest to the place. It and the next ones toward the
// middle are slackened first.
func (r *Repair) rib(b Boat) {
	all := ribs(b)
	sort.Slice(all, func(i, k int) bool {
		return math.Abs(all[i].x-r.Damage.At) < math.Abs(all[k].x-r.Damage.At)
	})
	broken := all[0]
	r.Broken, r.Damage.At = &broken.Rib, broken.x
	r.Out = []Rib{broken.Rib}
	for _, o := range all[1:] {
		if by := broken.Number - o.Number; o.Number > 0 && o.Forward == broken.Forward && by > 0 && by <= slackened {
			o.Slack = true
			r.Out = append(r.Out, o.Rib)
		}
	}
	r.order()
	f := broken.rib
	r.New = &NewRib{Length: f.Length + RibMore, Width: f.Width, Thickness: f.Thickness,
		Bend: f.Bend.Rib(b.Design.RibStock), Dry: b.Season.Number(plan.RibsDry)}
	once := minutes(b, plan.SplitRibs) + minutes(b, plan.CarveRibs) + minutes(b, plan.BendRibs)
	r.Hours = (once + float64(len(r.Out))*outAndIn*minutes(b, plan.DriveRibs)) / 60
}

// order puts the ribs as they come out: the last that was fitted first.
func (r *Repair) order() {
	sort.Slice(r.Out, func(i, k int) bool { return r.Out[i].Order > r.Out[k].Order })
}

// placed is a rib of the whole boat with where it stands.
type placed struct {
	Rib
	x, width float64
	rib      frame.Rib
}

// ribs are those of both halves.
func ribs(b Boat) []placed {
	var out []placed
	for _, f := range b.Frame.Ribs {
		out = append(out, placed{Rib{f.Number, true, f.Order, false}, f.Run, f.Width, f})
		if !f.Alone() {
			out = append(out, placed{Rib{f.Number, false, f.Order + 1, false}, -f.Run, f.Width, f})
		}
	}
	return out
}

func minutes(b Boat, id plan.ID) float64 { return b.Season.Minutes(id).Mean() }
