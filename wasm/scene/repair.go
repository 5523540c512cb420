package scene

import (
	"strconv"

	"barkwright/core/tally"
)

// RepairPart names repair i of the log, counted from 0, in a picture.
func RepairPart(i int) string { return "repair." + strconv.Itoa(i) }

// RepairName letters repair i of the log: its number, counted from 1 as in the list, and what was broken.
func RepairName(i int, e tally.Entry) string {
	return strconv.Itoa(i+1) + ": " + e.Damage.Kind.String()
}
