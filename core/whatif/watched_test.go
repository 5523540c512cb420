package whatif_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/core/weigh"
	"barkwright/core/whatif"
)

const inch = units.Inch

// steps are the changes of a control that its results are ranked by, where it is not one of
// its slider's steps, or an inch of a length of the hull: what a builder would try.
var steps = map[string]float64{
	"length": 6 * inch, "beamFull": 0.1, "beamFine": 0.1, "sheerSweep": 1, "rockerSpread": 1, "bilge": 0.05, "frameFull": 0.1,
	"frameFine": 0.1, "ease": inch / 2, "barkThickness": 0.02 * inch, "sheetWidth": 2 * inch, "sheetLength": 12 * inch, "gores": 2,
	"goreFoot": inch, "gunwaleTurn": inch, "seamLap": inch / 2, "endFull": 0.1, "stemDepth": inch / 4, "ribs": 2, "tail": inch,
	"paddlerMass": 10 * units.Pound, "cargo": 100 * units.Pound, "seatHeight": 2 * inch, "cargoHeight": 2 * inch,
	"cargoPosition": 12 * inch, "stature": 4 * inch, "thwarts": 2,
}

func stepOf(p design.Param) float64 {
	if step, ok := steps[p.Key]; ok {
		return step
	}
	if p.Kind == units.Length && p.StepInch < inch {
		return inch
	}
	return p.StepInch
}

// seven are the boats that the list of results is held to.
func seven() []design.Design { return append(design.Starting(), design.Default()) }

// changed is by how much a control's step moves each number of a boat, in changes that make a
// builder act; nil where neither way the boat can be built.
func changed(d design.Design, before []answer.Number, p design.Param) map[string]float64 {
	for _, way := range []float64{1, -1} {
		to := p.Get(&d) + way*stepOf(p)
		if to < p.Min || to > p.Max {
			continue
		}
		c, faults := core.Try(p.Set(d, to))
		if len(faults) > 0 {
			continue
		}
		moved := map[string]float64{}
		for i, n := range answer.All(c) {
			if unit := weigh.Unit(n); unit > 0 && !n.Absent && !before[i].Absent {
				moved[n.Key] = math.Abs(n.Value-before[i].Value) / unit
			}
		}
		return moved
	}
	return nil
}

// leftOut are the numbers that move by more than makes a builder act and are neither listed
// nor another reading of one that is; none where four are listed.
func leftOut(listed []string, moved map[string]float64) []string {
	const enough = 4
	var out []string
	for key, by := range moved {
		if by > 1+1e-9 && weigh.Twin(key) == "" && !slices.Contains(listed, key) && len(listed) < enough {
			out = append(out, fmt.Sprintf("%s %.2f", key, by))
		}
	}
	slices.Sort(out)
	return out
}

// Each control's list has what it moves: on the seven boats no result listed stands still, and
// none is left out that moves on all of them.
func TestWatchedMove(t *testing.T) {
	var before [][]answer.Number
	for _, d := range seven() {
		before = append(before, numbers(d))
	}
	for _, p := range design.Params() {
		listed := whatif.Watched(p.Key)
		if len(listed) == 0 {
			continue
		}
		most, least := map[string]float64{}, map[string]float64{}
		for i, d := range seven() {
			before := before[i]
			switch p.Key {
			case "seatHeight":
				d = lookup("posture").Set(d, float64(design.SittingOnSeat))
				before = numbers(d)
			case "greatestBeam":
				d = p.Set(d, d.OutsideBreadth()+2*inch)
				before = numbers(d)
			}
			for key, by := range changed(d, before, p) {
				most[key] = max(most[key], by)
				if i == 0 {
					least[key] = by
				}
				least[key] = min(least[key], by)
			}
		}
		for _, key := range listed {
			if key != "bark.stretch" { // it follows when the bark is laid flat
				assert.Greater(t, most[key], 0.05, "%s moves %s on no boat", p.Key, key)
			}
		}
		assert.Empty(t, leftOut(listed, least), p.Key)
	}
}

// A control without a list moves nothing much of the boat that the page opens with.
func TestUnwatchedMoveLittle(t *testing.T) {
	for _, p := range design.Params() {
		if p.Paddler == 0 && len(whatif.Watched(p.Key)) == 0 {
			assert.Empty(t, leftOut(nil, changed(design.Default(), numbers(design.Default()), p)), p.Key)
		}
	}
}

func numbers(d design.Design) []answer.Number { return answer.All(core.Evaluate(d)) }

func lookup(key string) design.Param {
	p, _ := design.Lookup(key)
	return p
}
