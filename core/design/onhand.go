package design

import (
	"fmt"
	"strconv"

	"barkwright/core/units"
)

// MostSheets is how many sheets a list of bark on hand holds: more than any boat
// here takes on its bed, with some over for panels.
const MostSheets = 12

// Sheet is a sheet of bark on hand, m: Width round the tree, Length up it.
type Sheet struct{ Width, Length float64 }

// OnHand is a list of real sheets; those past Count are zero, so that equal lists
// are ==.
type OnHand struct {
	Count  int
	Sheets [MostSheets]Sheet
}

// The sizes a sheet on hand may have, m: from a strip worth keeping for a panel
// to more than a tree gives.
const (
	LeastSheetWidth, MostSheetWidth   = 4 * units.Inch, 120 * units.Inch
	LeastSheetLength, MostSheetLength = 12 * units.Inch, 480 * units.Inch
)

// List returns the sheets in their order.
func (o OnHand) List() []Sheet {
	return append([]Sheet(nil), o.Sheets[:max(0, min(o.Count, MostSheets))]...)
}

// Put returns the list with sheet i changed, or added where i is the first free
// place. Past the end of the list, and where it is full, nothing changes. A size that
// misses a bound only by rounding becomes that bound.
func (o OnHand) Put(i int, s Sheet) OnHand {
	if i < 0 || i > o.Count || i >= MostSheets {
		return o
	}
	o.Sheets[i] = Sheet{
		Width:  onBound(s.Width, LeastSheetWidth, MostSheetWidth, units.Millimetre),
		Length: onBound(s.Length, LeastSheetLength, MostSheetLength, units.Millimetre),
	}
	o.Count = max(o.Count, i+1)
	return o
}

// Without returns the list with sheet i taken out and the later ones moved up.
func (o OnHand) Without(i int) OnHand {
	if i < 0 || i >= o.Count {
		return o
	}
	copy(o.Sheets[i:], o.Sheets[i+1:])
	o.Count--
	o.Sheets[o.Count] = Sheet{}
	return o
}

// SheetWidthKey and SheetLengthKey are what faults of sheet i are kept by.
func SheetWidthKey(i int) string  { return "sheet" + strconv.Itoa(i+1) + "Width" }
func SheetLengthKey(i int) string { return "sheet" + strconv.Itoa(i+1) + "Length" }

// onHandFaults names the sheets that are out of range.
func onHandFaults(o OnHand) []Fault {
	if o.Count < 0 || o.Count > MostSheets {
		return []Fault{NewFault(SheetWidthKey(0), "The list of sheets holds %s; %s are kept.",
			Shown{units.Count, max(0, float64(o.Count))}, Shown{units.Count, MostSheets})}
	}
	var faults []Fault
	for i, s := range o.List() {
		for _, side := range []struct {
			key, name          string
			value, least, most float64
		}{
			{SheetWidthKey(i), "width", s.Width, LeastSheetWidth, MostSheetWidth},
			{SheetLengthKey(i), "length", s.Length, LeastSheetLength, MostSheetLength},
		} {
			if side.value >= side.least && side.value <= side.most {
				continue
			}
			faults = append(faults, NewFault(side.key, fmt.Sprintf("Sheet %d: a %s from %%s to %%s is taken.", i+1, side.name),
				Shown{units.Length, side.least}, Shown{units.Length, side.most}))
		}
	}
	return faults
}
