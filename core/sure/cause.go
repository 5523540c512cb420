package sure

import (
	"barkwright/core/design"
	"barkwright/core/units"
)

// Cause is one size that may come out otherwise than it was set.
type Cause struct {
	// Name is the size as it is called in a sentence.
	Name string
	// Key is its parameter, Within how far from it the size lies either way, 19 times in 20,
	// in SI.
	Key    string
	Within float64
}

// What is not known of a section that nobody has read, and what is left once its half girth is
// read by a tape. Unread it is twice the spread of drawn midsections, that is 19 of 20: derived
// from Adney and Chapelle 1964. Read it is an estimate.
const (
	girthRead  = units.Inch / 4
	bilgeRead  = design.BilgeSpread
	bothOfTwo  = 2 // 19 of 20 lie within twice the spread
	halfAsThin = 0.5
)

// Causes are the sizes of a design that may come out otherwise, with how far; those of none are
// left out.
func Causes(d design.Design) []Cause {
	w := d.Within
	girth, bilge := bothOfTwo*design.GirthSpread, bothOfTwo*design.BilgeSpread
	if w.Girth == design.GirthRead {
		girth, bilge = girthRead, bilgeRead
	}
	all := []Cause{
		{"length", "length", w.Length}, {"beam", "beam", w.Beam}, {"depth", "depth", w.Depth},
		{"building frame", "frameWidth", w.Frame},
		{"gunwale's end", "gunwaleEndHeight", w.Ends}, {"stem head", "endHeight", w.Ends}, {"rocker", "rocker", w.Ends},
		{"ends beyond the gunwales", "overhang", w.Ends}, {"headboard", "headboard", w.Ends},
		{"crown of the bed", "bedCrown", w.Bed}, {"blocks", "endBlocking", w.Bed},
		{"bark's thickness", "barkThickness", w.Bark},
		{"ribs' thickness", "ribThickness", w.Wood}, {"inwale's thickness", "inwaleThickness", w.Wood},
		{"sheathing's thickness", "sheathingThickness", halfAsThin * w.Wood},
		{"half girth", "ease", girth}, {"turn of the bilge", "bilge", bilge},
	}
	out := all[:0]
	for _, c := range all {
		if _, _, told := design.ReadOut(d, c.Key); c.Within > 0 && !told {
			out = append(out, c)
		}
	}
	return out
}
