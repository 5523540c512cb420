package record

import (
	"fmt"
	"slices"

	"barkwright/core/units"
)

// ownStation tells whether a row under a row of stations says its own station in words.
// Such a row does not hold a value for each station.
func (t *table) ownStation(l label, rest []string) bool {
	_, _, err := ReadWhere(l.kind, l.whereWith(rest[0]), t.system)
	return err == nil && !isNumber(rest[0])
}

func (t *table) readStations(line string, l label, rest []string) {
	t.stations, t.astray = nil, false
	for i, cell := range filled(rest) {
		v, _, err := units.Offset.Parse(l.withUnit(cell), t.system)
		switch n := len(t.stations); {
		case err != nil:
			t.refuse(line, fmt.Sprintf("The station %q cannot be read: %v", short(cell), err))
		case n > 1 && (v-signed(t.stations[n-1]))*(signed(t.stations[1])-signed(t.stations[0])) <= 0:
			t.refuse(line, fmt.Sprintf("The stations do not go in order at %q: it may be one, or part of the number before "+
				"it, %s.", short(cell), rest[i-1]))
		default:
			t.stations = append(t.stations, place(l.from, v))
			continue
		}
		t.stations, t.astray = nil, true
		return
	}
}

func signed(p Place) float64 {
	if p.Side == Aft {
		return -p.Distance
	}
	return p.Distance
}

func place(from Origin, v float64) Place {
	if v < 0 {
		return Place{From: from, Distance: -v, Side: Aft}
	}
	return Place{From: from, Distance: v}
}

// readAcross reads a value for each station; an empty cell is a gap.
func (t *table) readAcross(line string, l label, rest []string) {
	n := len(t.stations)
	if len(rest) < n {
		t.refuse(line, fmt.Sprintf("There are %d stations and %d values: the first value may be of the first station, or "+
			"be a station of its own. Put a - where there is a gap.",
			n, len(rest)))
		return
	}
	if over := slices.IndexFunc(rest[n:], isNumber); over >= 0 {
		t.refuse(line, fmt.Sprintf("There are %d stations and more values than that: %q may be a value, or part of the "+
			"one before it.", n, short(rest[n+over])))
		return
	}
	for i, at := range t.stations {
		if rest[i] == "" || rest[i] == "-" {
			continue
		}
		d := Datum{Kind: l.kind, At: at}
		d.At.Side = max(d.At.Side, l.side)
		if err := l.takeHeight(&d, t.system); err != nil {
			t.refuse(line, err.Error())
			return
		}
		if t.value(line, l, &d, rest[i]) {
			d.remark(l.beside(rest[i]), rest[n:], t.system)
			t.rows = append(t.rows, tableRow{d, l, t.row, line})
		}
	}
}
