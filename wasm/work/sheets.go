package work

import (
	"strconv"

	"barkwright/core/design"
	"barkwright/core/units"
)

// Side is one of a sheet's two sizes.
type Side int

// The sides, in the order of the form.
const (
	SheetWidth Side = iota
	SheetLength

	Sides
)

func (s Side) String() string { return [...]string{"width", "length"}[s] }

// SheetKey is the key of a side of sheet i on hand, SheetLabel what its field is called.
func SheetKey(i int, s Side) string {
	if s == SheetLength {
		return design.SheetLengthKey(i)
	}
	return design.SheetWidthKey(i)
}

func SheetLabel(i int, s Side) string { return "Sheet " + strconv.Itoa(i+1) + ", " + s.String() }

// sideOf is a side's size.
func sideOf(sheet *design.Sheet, s Side) *float64 {
	if s == SheetLength {
		return &sheet.Length
	}
	return &sheet.Width
}

// SheetText is a side of sheet i as entered.
func (w *Work) SheetText(i int, s Side) string {
	sheet := w.Entered.OnHand.Sheets[i]
	return units.Length.Format(*sideOf(&sheet, s), w.System)
}

// ReadSheet reads what is typed for a side, with the echo of how it was read.
func (w *Work) ReadSheet(i int, s Side, text string) (v float64, echo string, err error) {
	if v, echo, err = units.Length.Parse(text, w.System); err != nil {
		return 0, "", err
	}
	return v, SheetLabel(i, s) + ": " + echo, nil
}

// SetSheet sets a side in one step of undo.
func (w *Work) SetSheet(i int, s Side, v float64) {
	w.SetTyped(SheetKey(i, s), "")
	sheet := w.Entered.OnHand.Sheets[i]
	*sideOf(&sheet, s) = v
	w.SetOnHand(w.Entered.OnHand.Put(i, sheet))
}

// AddSheet adds a sheet of the size set for all, to be changed to the real one, and
// returns its place.
func (w *Work) AddSheet() int {
	d := w.Entered
	w.SetOnHand(d.OnHand.Put(d.OnHand.Count, design.Sheet{Width: d.SheetWidth, Length: d.SheetLength}))
	return d.OnHand.Count
}
