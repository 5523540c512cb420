package plan

import (
	"strings"

	"barkwright/core/units"
)

// Measure is the measure that a task is counted by, what it is of, and the SI size of one; false for a
// task that is counted in pieces.
func (t *Task) Measure() (k units.Kind, of string, si float64, measured bool) {
	switch first, rest, _ := strings.Cut(t.Unit, " "); first {
	case "ft":
		return units.Run, rest, units.Foot, true
	case "sq":
		return units.Area, "", units.SquareFoot, true
	case "kg":
		return units.Mass, "", 1, true
	}
	return units.Count, t.Unit, 1, false
}

// Counted is what the reader counts a task by, and how many of the task's own unit one is. Plans and
// files keep to the task's own.
func (t *Task) Counted(s units.System) (unit string, own float64) {
	k, of, si, measured := t.Measure()
	if !measured {
		return t.Unit, 1
	}
	return strings.TrimSpace(k.Unit(s) + " " + of), k.One(s) / si
}
