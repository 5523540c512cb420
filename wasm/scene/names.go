package scene

import (
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/units"
)

// GoreName returns the name of gore i of n on one side, counted from the after one
// forward. As in the table of gores, numbers rise from the middle outward, and mates
// fore and aft have the same one.
func GoreName(i, n int) string {
	off := 2*i - (n - 1)
	if off < 0 {
		off = -off
	}
	return answer.GorePart(off / 2)
}

// SheetWords returns words for the sheet that a piece is cut from.
func SheetWords(s bark.Laid, system units.System) string {
	if s.Wanting() {
		return "wanting"
	}
	return "sheet " + units.Count.Format(float64(s.Sheet+1), system)
}
