package record

import (
	"fmt"

	"barkwright/core/units"
)

// columns are the names in the first line of a table that has one boat a line. It is nil
// for a table with one measurement a line.
type columns []string

// headerOf returns the names of a line that is a header: it has three cells or more, no
// cell is a length, and most are known names. For other lines it returns nil.
func headerOf(line string) columns {
	names, _ := cells(line)
	if names = filled(names); len(names) < 3 {
		return nil
	}
	known := 0
	for _, name := range names {
		if _, _, err := units.Offset.Parse(name, units.Metric); err == nil {
			return nil
		}
		if readLabel(name).known {
			known++
		}
	}
	if 2*known < len(names) {
		return nil
	}
	return names
}

// readBoat reads the values of one boat under their names; a record is of one.
func (t *table) readBoat(line string) {
	values, why := cells(line)
	values = filled(values)
	mine := len(t.names) == t.which
	name, known := "", readLabel(t.columns[0]).known
	if !known && len(values) > 0 {
		name = ShortNote(values[0])
	}
	if t.names = append(t.names, name); name == "" {
		t.names[len(t.names)-1] = fmt.Sprintf("the boat of row %d", t.row)
	}
	switch {
	case !mine:
		return
	case why != "":
		t.refuse(line, why)
		return
	case len(values) > len(t.columns):
		t.refuse(line, fmt.Sprintf("There are %d values under %d names: which is of which is not known.", len(values),
			len(t.columns)))
		return
	}
	t.name = name
	for i, value := range values {
		column := t.columns[i]
		if value != "" && value != "-" && (i > 0 || known) {
			t.readCells(column+": "+value, column, []string{value})
		}
	}
}
