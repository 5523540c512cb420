package scene

import (
	"strconv"

	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/units"
)

// GoreName returns the name of gore i of n on one side, counted from the after one
// forward. As in the table of gores, numbers rise from the middle outward, and mates
// fore and aft have the same one.
func GoreName(i, n int) string { return answer.GorePart(goreOff(i, n)) }

// GoreNumber returns the number in the name of gore i of n, as it is lettered.
func GoreNumber(i, n int) string { return strconv.Itoa(goreOff(i, n)) }

// goreOff counts gore i of n from the middle outward.
func goreOff(i, n int) int {
	off := 2*i - (n - 1)
	return max(off, -off) / 2
}

// SheetWords returns words for the sheet that a piece is cut from.
func SheetWords(s bark.Laid, system units.System) string {
	if s.Wanting() {
		return "wanting"
	}
	return "sheet " + units.Count.Format(float64(s.Sheet+1), system)
}
