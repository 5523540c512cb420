package record

import (
	"fmt"
	"slices"
	"strings"

	"barkwright/core/units"
)

// Refusal is a row of a pasted table that could not be read, and why.
type Refusal struct {
	// Row counts the pasted lines from 1; Text is how the row begins.
	Row       int
	Text, Why string
}

const (
	// longestPaste is in bytes and mostRows in lines: a record has under a hundred.
	longestPaste = 1 << 16
	mostRows     = 2 * MostData
	longestEcho  = 40
)

// Read reads a table pasted from a spreadsheet: a row for each measurement, its
// name first, its cells parted by tabs, semicolons, commas, a colon or wide gaps; by nothing where a
// name and its value have one reading. After the
// name come the station, where the name does not give it, the value, a tolerance
// marked +- or ±, in the value's unit where it has none, and notes. A row named stations, or one of stations counted from
// the middle or the end, gives the stations of the rows under it, which then hold a
// value for each. Bare numbers are in the unit that the name ends in, or else inches,
// or mm where the system is Metric. Rows that cannot be read, or can be read in two
// ways, are refused one by one and the others kept.
// A row named boat gives the record's name. Where the first line is one of names, each
// line under it holds a boat's values in their order, and which, counted from 0, is the
// one that is read.
func Read(text string, which int, s units.System) (name string, data []Datum, refused []Refusal) {
	t := table{system: s, which: which}
	lines, short := linesOf(text)
	for i, line := range lines {
		t.row = i + 1
		if i >= mostRows {
			t.refuse(line, fmt.Sprintf("At most %d rows are read.", mostRows))
			break
		}
		t.readLine(line)
	}
	if short {
		t.refuse("", fmt.Sprintf("Only the first %d characters are read, up to the end of a line.", longestPaste))
	}
	data = t.finish()
	return t.name, data, t.refusals
}

// Boats returns the names of the boats of a table that has one a line, or nil.
func Boats(text string) []string {
	t := table{}
	lines, _ := linesOf(text)
	for i, line := range lines[:min(len(lines), mostRows)] {
		t.row = i + 1
		t.which = -1
		t.readLine(line)
		if t.begun && t.columns == nil {
			return nil
		}
	}
	return t.names
}

// linesOf returns the whole lines of a text as far as it is read, and whether the text
// is longer.
func linesOf(text string) (lines []string, short bool) {
	if len(text) > longestPaste {
		text, short = text[:longestPaste], true
		// A torn line is not read.
		text = text[:strings.LastIndexAny(text, "\r\n")+1]
	}
	return strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.ToValidUTF8(text, "?")),
		"\n"), short
}

// table is a paste as far as it is read.
type table struct {
	system   units.System
	name     string
	row      int
	rows     []tableRow
	refusals []Refusal
	// begun tells that a line has been read; columns and names are of a table with
	// one boat a line, of which the one to read is which.
	begun   bool
	columns columns
	names   []string
	which   int
	// stations are those of the last row of stations. astray tells that it could not be
	// read.
	stations []Place
	astray   bool
}

// tableRow is a datum with the label it came from, until the whole table is known.
type tableRow struct {
	Datum
	label
	row  int
	text string
}

func (t *table) refuse(text, why string) { t.refuseRow(t.row, text, why) }

func (t *table) refuseRow(row int, text, why string) {
	if r := []rune(text); len(r) > longestEcho {
		text = string(r[:longestEcho]) + "…"
	}
	t.refusals = append(t.refusals, Refusal{row, text, why})
}

func (t *table) readLine(line string) {
	line = strings.TrimRight(strings.TrimLeft(line, " \t"), " ")
	if strings.TrimSpace(line) == "" || strings.HasPrefix(line, "#") {
		return
	}
	if !t.begun {
		t.begun = true
		if t.columns = headerOf(line); t.columns != nil {
			return
		}
	}
	if t.columns != nil {
		t.readBoat(line)
		return
	}
	// A name may hold what parts other lines into cells.
	if label, name, found := strings.Cut(line, ":"); found && strings.EqualFold(strings.TrimSpace(label), "boat") {
		t.name = ShortNote(strings.TrimSpace(name))
		return
	}
	parts, why := cells(line)
	switch full := filled(parts); {
	case len(full) == 1 && full[0] != "":
		parts, why = t.unparted(full[0])
	case len(full) == 2 && strings.Contains(line, ", ") && !isNumber(full[1]):
		// The comma may stand in the name: Building frame, length 190.
		if whole, _ := t.unparted(line); len(whole) > 1 {
			parts = whole
		}
	}
	switch {
	case why != "":
		t.refuse(line, why)
	case len(filled(parts)) > 0:
		t.readCells(line, parts[0], parts[1:])
	}
}

// readCells reads one measurement, or a row of them or of stations, off a line.
func (t *table) readCells(line, name string, rest []string) {
	set := wordsOf(name)
	if stationsRow.explains(set) {
		t.readStations(line, label{from: readOrigin(name), unit: unitIn(name)}, rest)
		return
	}
	if set["boat"] && len(set) == 1 && len(rest) > 0 {
		t.name = ShortNote(rest[0])
		return
	}
	l := readLabel(name)
	free := l.kind.Placed() && !l.placed()
	switch filledCells := filled(rest); {
	case len(filledCells) == 0:
		t.refuse(line, "There is no value beside the name: write the name, then the value, such as Beam inside: 33.")
	case !l.known:
		t.refuse(line, l.unsure)
	case free && t.astray && !t.ownStation(l, rest):
		t.refuse(line, "The row of stations over this one could not be read.")
	case free && len(t.stations) > 0 && !t.ownStation(l, rest):
		t.readAcross(line, l, rest)
	default:
		t.readOne(line, l, filledCells)
	}
}

// withUnit is a cell with the unit its name gives after a bare number.
func (l label) withUnit(cell string) string {
	if l.unit != "" && cell != "" && strings.ContainsAny(lastOf(cell), "0123456789") {
		return cell + l.unit
	}
	return cell
}

func short(cell string) string {
	if r := []rune(cell); len(r) > longestEcho {
		return string(r[:longestEcho]) + "…"
	}
	return cell
}

func (t *table) readOne(line string, l label, rest []string) {
	d := Datum{Kind: l.kind, At: Place{From: l.from, Side: l.side}}
	if l.end {
		d.At.From = FromGunwaleEnd
	}
	if l.kind.Placed() && !l.placed() {
		if len(rest) < 2 {
			t.refuse(line, "Say where: a thwart in the name, or a station before the value.")
			return
		}
		if both, ok := feetAndInches(rest[0], rest[1]); ok && len(rest) == 2 {
			t.refuse(line, fmt.Sprintf("This may be %s at the station %s, or %s at no station: put the station before the "+
				"value.", rest[1], rest[0], both))
			return
		}
		if at, _, err := units.Offset.Parse(l.withUnit(rest[0]), t.system); err == nil {
			d.At = place(l.from, at)
		} else if d.Number, d.At, err = ReadWhere(l.kind, l.whereWith(rest[0]), t.system); err != nil {
			t.refuse(line, fmt.Sprintf("The station %q cannot be read: %v", short(rest[0]), err))
			return
		}
		d.At.Side = max(d.At.Side, l.side)
		rest = rest[1:]
	}
	if err := l.takeHeight(&d, t.system); err != nil {
		t.refuse(line, err.Error())
		return
	}
	rest = partTolerance(rest)
	if len(rest) > 1 {
		if both, ok := feetAndInches(rest[0], rest[1]); ok && !d.Counted() {
			rest = append([]string{both}, rest[2:]...)
		}
	}
	if over := slices.IndexFunc(rest[1:], isNumber); over >= 0 {
		t.refuse(line, t.twoCells(d, rest, over+1))
		return
	}
	if t.value(line, l, &d, rest[0]) {
		d.remark(l.beside(rest[0]), rest[1:], t.system)
		t.rows = append(t.rows, tableRow{d, l, t.row, line})
	}
}

// twoCells names what a value with a number in a cell after it may be.
func (t *table) twoCells(d Datum, rest []string, over int) string {
	together := readings(d.ValueKind(), rest[0], rest[over], t.system)
	if over > 1 || len(together) == 0 {
		return fmt.Sprintf("%q stands in a cell of its own after the value %q: it may be part of a number, or a remark. "+
			"Write the value in one cell, and words to a remark.", short(rest[over]), short(rest[0]))
	}
	return fmt.Sprintf("This may be %q with %q as a remark, or %s: write the value in one cell.", short(rest[0]),
		short(rest[over]), strings.Join(together, " or "))
}

// value reads the datum's own cell.
// A breadth that its name does not call half is halved.
func (t *table) value(line string, l label, d *Datum, cell string) bool {
	v, _, err := d.ValueKind().Parse(l.withUnit(cell), t.system)
	if err != nil {
		t.refuse(line, fmt.Sprintf("The value %q cannot be read: %v", short(cell), err))
		return false
	}
	if d.Kind == HalfBreadth && !l.half {
		v /= 2
	}
	d.Value = v
	return true
}
