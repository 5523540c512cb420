package raise

import (
	"math"

	"barkwright/core"
	"barkwright/wasm/scene/solid"
)

// Moment is a part of the raising: from where on it is shown, as a share of the whole, and what
// is then done, in words.
type Moment struct {
	From  float64
	Words string
}

// Where each part of the raising begins, and where sides and ribs are all in place. Choices of
// this project, for the eye.
const (
	slitsFrom    = 0.05
	sidesFrom    = 0.1
	sidesTo      = 0.45
	panelsFrom   = 0.5
	gunwalesFrom = 0.55
	lashedFrom   = 0.65
	endsFrom     = 0.72
	liningFrom   = 0.8
	ribsFrom     = 0.82
	ribsTo       = 0.97
)

// Moments lists the parts of a boat's raising in the order of the work.
func Moments(c core.Canoe) []Moment {
	all := []Moment{
		{0, "Bark flat on the bed, frame and stones on it"},
		{slitsFrom, "Slits cut from the edge to near the frame"},
		{sidesFrom, "Sides turned up round the frame; the slits close and ride over"},
	}
	if len(c.Bark.Beside) > 0 {
		all = append(all, Moment{panelsFrom, "Panels sewn on where the sheet was narrow"})
	}
	return append(all,
		Moment{gunwalesFrom, "Gunwales on their posts: the sheer"},
		Moment{lashedFrom, "Lashed, group by group"},
		Moment{endsFrom, "Frame out, stems in, ends sewn; the bottom eases into its round"},
		Moment{liningFrom, "Sheathing, then ribs from each end to the middle"},
		Moment{1, "The canoe"})
}

// momentAt is the number of the moment at a share of the raising.
func momentAt(all []Moment, up float64) int {
	at := 0
	for i, m := range all {
		if up >= m.From-1e-9 {
			at = i
		}
	}
	return at
}

// Words say what is done at a share of the raising.
func Words(c core.Canoe, up float64) string {
	all := Moments(c)
	return all[momentAt(all, up)].Words
}

// Next is the share of the raising at which the next still picture stands, by steps forward or
// back. Forward from the end it begins anew.
func Next(c core.Canoe, up float64, steps int) float64 {
	all := Moments(c)
	at := momentAt(all, up)
	// Each picture stands where its part is done, so that what it speaks of is seen.
	still := func(i int) float64 {
		if i == len(all)-1 || i == 0 {
			return all[i].From
		}
		return all[i+1].From - 0.01
	}
	switch {
	case steps > 0 && up >= 1:
		return 0
	case steps > 0 && at > 0 && up < still(at)-1e-9:
		return still(at)
	case steps > 0:
		return still(at + 1)
	case up > still(max(0, at-1))+1e-9:
		return still(max(0, at-1))
	}
	return 0
}

// between is how far a share of the raising is on its way from one place to another, 0 to 1.
func between(up, from, to float64) float64 { return max(0, min(1, (up-from)/(to-from))) }

// sidesAt is how far the sides are turned up.
func sidesAt(up float64) float64 { return between(up, sidesFrom, sidesTo) }

// madeAt is how far the boat is made at a share of the raising.
func madeAt(c core.Canoe, up float64) solid.Made {
	if up >= 1 {
		return solid.Done(c)
	}
	return solid.Made{
		Gunwales:   up >= gunwalesFrom,
		Lashed:     between(up, lashedFrom, endsFrom),
		Ends:       up >= endsFrom,
		Sheathed:   up >= liningFrom,
		Headboards: up >= liningFrom,
		Ribs:       int(math.Round(between(up, ribsFrom, ribsTo) * float64(c.Design.Ribs))),
	}
}
