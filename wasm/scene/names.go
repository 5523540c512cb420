package scene

import (
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/units"
)

// GoreName numbers the gores of a side, from the after one forward, as their
// table does: from the one nearest the middle, mates alike.
func GoreName(i, n int) string {
	off := 2*i - (n - 1)
	if off < 0 {
		off = -off
	}
	return answer.GorePart(off / 2)
}

// SheetWords name the sheet that a piece is cut from.
func SheetWords(s bark.Laid, system units.System) string {
	if s.Wanting() {
		return "wanting"
	}
	return "sheet " + units.Count.Format(float64(s.Sheet+1), system)
}
