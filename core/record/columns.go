package record

import "barkwright/core/units"

// columns are the names over a table that has one boat a line, nil where the table
// has one measurement a line.
type columns []string

// headerOf tells a line of names from a measurement: three cells or more, none of
// them a length, and most of them understood.
func headerOf(line string) columns {
	names := cells(line)
	if len(names) < 3 {
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

// readBoat reads the values of one boat under their names. A second boat's line is
// refused: a record is of one.
func (t *table) readBoat(line string) {
	if t.boats++; t.boats > 1 {
		t.refuse(line, "This line is of another boat: a record is of one, the first.")
		return
	}
	values := cells(line)
	for i, name := range t.columns {
		switch {
		case i >= len(values) || values[i] == "" || values[i] == "-":
		case i == 0 && !readLabel(name).known:
			t.name = ShortNote(values[i])
		default:
			t.readCells(name+": "+values[i], name, []string{values[i] + unitIn(name)})
		}
	}
	if len(values) > len(t.columns) {
		t.refuse(line, "There are more values than names over them.")
	}
}

// unitIn is the unit that a column's name gives, to stand after its values.
func unitIn(name string) string {
	set := wordsOf(name)
	for _, unit := range []string{"mm", "cm", "in", "ft"} {
		if set[unit] {
			return " " + unit
		}
	}
	return ""
}
