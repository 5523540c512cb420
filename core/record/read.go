package record

import (
	"fmt"
	"regexp"
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
// name first, its cells parted by tabs, semicolons, commas or wide gaps. After the
// name come the station, where the name does not give it, the value, a tolerance
// marked +- or ±, and notes. A row named stations, or one of stations counted from
// the middle or the end, gives the stations of the rows under it, which then hold a
// value for each. Bare numbers are inches, or mm where the system is Metric. Rows
// that cannot be read are refused one by one and the others kept.
// A row named boat gives the record's name. Where the first
// line is one of names, the line under it holds a boat's values in their order.
func Read(text string, s units.System) (name string, data []Datum, refused []Refusal) {
	t := table{system: s}
	if len(text) > longestPaste {
		text = text[:longestPaste]
		t.tooLong = true
	}
	lines := strings.Split(strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(strings.ToValidUTF8(text, "?")), "\n")
	for i, line := range lines {
		t.row = i + 1
		if i >= mostRows {
			t.refuse(line, fmt.Sprintf("At most %d rows are read.", mostRows))
			break
		}
		if line = strings.TrimSpace(line); line != "" && !strings.HasPrefix(line, "#") {
			t.readLine(line)
		}
	}
	if t.tooLong {
		t.refuse("", fmt.Sprintf("Only the first %d characters are read.", longestPaste))
	}
	data = t.finish()
	return t.name, data, t.refusals
}

// table is a paste as far as it is read.
type table struct {
	system   units.System
	name     string
	row      int
	tooLong  bool
	rows     []tableRow
	refusals []Refusal
	// begun tells that a line has been read; columns and boats are of a table with
	// one boat a line.
	begun   bool
	columns columns
	boats   int
	// stations are those of the rows under a row of stations.
	stations []Place
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

var wideGap = regexp.MustCompile(` {2,}`)

// cells parts a line at its own separator.
func cells(line string) []string {
	var parts []string
	switch {
	case strings.Contains(line, "\t"):
		parts = strings.Split(line, "\t")
	case strings.Contains(line, ";"):
		parts = strings.Split(line, ";")
	case strings.Contains(line, ","):
		parts = strings.Split(line, ",")
	case wideGap.MatchString(line):
		parts = wideGap.Split(line, -1)
	default:
		parts = strings.SplitN(line, ":", 2)
	}
	for i, p := range parts {
		parts[i] = unquoted(strings.TrimSpace(p))
	}
	for len(parts) > 0 && parts[len(parts)-1] == "" {
		parts = parts[:len(parts)-1]
	}
	return parts
}

// unquoted takes off the quotes a spreadsheet puts round a cell that holds inch
// marks, and halves those inside.
func unquoted(cell string) string {
	if len(cell) > 1 && cell[0] == '"' && cell[len(cell)-1] == '"' {
		return strings.ReplaceAll(cell[1:len(cell)-1], `""`, `"`)
	}
	return cell
}

func (t *table) readLine(line string) {
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
	if parts := cells(line); len(parts) > 0 {
		t.readCells(line, parts[0], parts[1:])
	}
}

// readCells reads one measurement, or a row of them or of stations, off a line.
func (t *table) readCells(line, name string, rest []string) {
	set := wordsOf(name)
	if anyOf(set, []string{"station", "stations"}) && !anyOf(set, thwarts) {
		t.readStations(line, readOrigin(name), rest)
		return
	}
	if set["boat"] && len(set) == 1 && len(rest) > 0 {
		t.name = ShortNote(rest[0])
		return
	}
	l := readLabel(name)
	switch {
	case len(rest) == 0:
		t.refuse(line, "There is no value beside the name.")
	case !l.known:
		t.refuse(line, l.unsure)
	case l.kind.Placed() && l.thwart == 0 && !l.middle && !l.headboard && len(t.stations) > 1 && len(rest) >= len(t.stations):
		t.readAcross(line, l, rest)
	default:
		t.readOne(line, l, rest)
	}
}

func (t *table) readStations(line string, from Origin, rest []string) {
	t.stations = nil
	for _, cell := range rest {
		v, _, err := units.Offset.Parse(cell, t.system)
		if err != nil {
			t.stations = nil
			t.refuse(line, fmt.Sprintf("The station %q cannot be read: %v", short(cell), err))
			return
		}
		t.stations = append(t.stations, place(from, v))
	}
}

func place(from Origin, v float64) Place {
	if v < 0 {
		return Place{From: from, Distance: -v, Side: Aft}
	}
	return Place{From: from, Distance: v}
}

func short(cell string) string {
	if r := []rune(cell); len(r) > longestEcho {
		return string(r[:longestEcho]) + "…"
	}
	return cell
}

// readAcross reads a value for each station; an empty cell is a gap.
func (t *table) readAcross(line string, l label, rest []string) {
	for i, at := range t.stations {
		if rest[i] == "" || rest[i] == "-" {
			continue
		}
		d := Datum{Kind: l.kind, At: at}
		d.At.Side = max(d.At.Side, l.side)
		if t.value(line, &d, rest[i]) {
			d.remark(rest[len(t.stations):], t.system)
			t.rows = append(t.rows, tableRow{d, l, t.row, line})
		}
	}
}

func (t *table) readOne(line string, l label, rest []string) {
	d := Datum{Kind: l.kind, At: Place{From: l.from, Side: l.side}}
	if l.kind.Placed() && l.thwart == 0 && !l.middle && !l.headboard {
		if len(rest) < 2 {
			t.refuse(line, "Say where: a thwart in the name, or a station before the value.")
			return
		}
		if at, _, err := units.Offset.Parse(rest[0], t.system); err == nil {
			d.At = place(l.from, at)
		} else if d.Number, d.At, err = ReadWhere(l.kind, rest[0], t.system); err != nil {
			t.refuse(line, fmt.Sprintf("The station %q cannot be read: %v", short(rest[0]), err))
			return
		}
		d.At.Side = max(d.At.Side, l.side)
		rest = rest[1:]
	}
	if t.value(line, &d, rest[0]) {
		d.remark(rest[1:], t.system)
		t.rows = append(t.rows, tableRow{d, l, t.row, line})
	}
}

// value reads the datum's own cell.
func (t *table) value(line string, d *Datum, cell string) bool {
	v, _, err := d.ValueKind().Parse(cell, t.system)
	if err != nil {
		t.refuse(line, fmt.Sprintf("The value %q cannot be read: %v", short(cell), err))
		return false
	}
	d.Value = v
	return true
}
