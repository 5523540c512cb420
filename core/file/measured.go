package file

import (
	"fmt"
	"math"

	"barkwright/core/record"
	"barkwright/core/units"
)

// recordJSON is a record as written.
type recordJSON struct {
	Name string `json:"name"`
	// Found tells that the design came from it.
	Found        bool        `json:"found"`
	Measurements []datumJSON `json:"measurements"`
}

// datumJSON is one measurement as written; lengths in metres.
type datumJSON struct {
	What      string  `json:"what"`
	Thwart    int     `json:"thwart,omitempty"`
	Station   float64 `json:"station,omitempty"`
	Height    float64 `json:"height,omitempty"`
	From      string  `json:"from,omitempty"`
	Side      string  `json:"side,omitempty"`
	Value     float64 `json:"value"`
	Tolerance float64 `json:"tolerance,omitempty"`
	Locked    bool    `json:"locked,omitempty"`
	Note      string  `json:"note,omitempty"`
	// Mark is the number of the point of the tracing that it was read at.
	Mark int `json:"mark,omitempty"`
}

// origins and sides are what From and Side say, in the order of the record's own;
// the first of each is left out.
var (
	origins = []string{"", "gunwale end", "end"}
	sides   = []string{"", "forward", "aft"}
)

func writeRecord(n record.Notebook) *recordJSON {
	if n.Record.Name == "" && len(n.Record.Data) == 0 && !n.Found {
		return nil
	}
	j := recordJSON{Name: n.Record.Name, Found: n.Found, Measurements: writeData(n.Record.Data)}
	if j.Measurements == nil {
		j.Measurements = []datumJSON{}
	}
	return &j
}

func writeData(data []record.Datum) []datumJSON {
	var list []datumJSON
	for _, d := range data {
		list = append(list, datumJSON{
			What: d.Kind.ID(), Thwart: d.Number,
			Station: d.At.Distance, Height: d.At.Height, From: origins[d.At.From], Side: sides[d.At.Side],
			Value: d.Value, Tolerance: d.Tolerance, Locked: d.Locked, Note: d.Note, Mark: d.Mark,
		})
	}
	return list
}

func (j boatJSON) notebook() (n record.Notebook, err error) {
	if j.Record != nil {
		n.Record.Name, n.Found = j.Record.Name, j.Record.Found
		if n.Record.Data, err = readData(j.Record.Measurements); err != nil {
			return record.Notebook{}, err
		}
	}
	if n.Readings, err = readData(j.Readings); err != nil {
		return record.Notebook{}, err
	}
	if n.Log, err = readTally(j.Tally); err != nil {
		return record.Notebook{}, err
	}
	if n.Tracing, err = readTracing(j.Tracing); err != nil {
		return record.Notebook{}, err
	}
	if n.Season, err = readSeason(j.Season); err != nil {
		return record.Notebook{}, err
	}
	for _, d := range n.Readings {
		if !d.AsBuilt() {
			return record.Notebook{}, fmt.Errorf("The file holds a reading, %s, which no tape reads off a boat being built.",
				d.Kind)
		}
	}
	return n, nil
}

// mostPlaced bounds where a measurement is and how far it may be off, m.
const mostPlaced = 1000

// readData takes a measurement that no boat has as it stands, for the record to
// name; what it cannot hold is refused.
func readData(list []datumJSON) ([]record.Datum, error) {
	if len(list) > record.MostData {
		return nil, fmt.Errorf("The file holds a record of %d measurements; %d are kept.", len(list), record.MostData)
	}
	var data []record.Datum
	for _, j := range list {
		kind, ok := record.LookupKind(j.What)
		from, side := find(origins, j.From), find(sides, j.Side)
		switch {
		case !ok:
			return nil, fmt.Errorf("The file holds a measurement %.40q, which no record has.", j.What)
		case from < 0:
			return nil, fmt.Errorf("The file holds a measurement from %.40q, where none is taken from.", j.From)
		case side < 0:
			return nil, fmt.Errorf("The file holds a measurement of the side %.40q, which no boat has.", j.Side)
		case j.Thwart > math.MaxInt16:
			return nil, fmt.Errorf("The file holds a measurement, %s, at thwart %d, which no boat has.", kind, j.Thwart)
		case j.Thwart < 0 || j.Mark < 0 || j.Tolerance < 0 || j.Station < 0 || j.Height < 0:
			return nil, fmt.Errorf("The file holds a measurement, %s, with a number less than nothing.", kind)
		case max(j.Tolerance, j.Station, j.Height) > mostPlaced:
			return nil, fmt.Errorf("The file holds a measurement, %s, farther out than any boat reaches.", kind)
		case kind.Counted() && j.Value != math.Round(j.Value):
			return nil, fmt.Errorf("%s: the file holds %s, which is not a whole number of them.", kind,
				units.Ratio.Format(j.Value, units.Metric))
		}
		data = append(data, record.Datum{
			Kind: kind, Number: j.Thwart,
			At:    record.Place{From: record.Origin(from), Distance: j.Station, Height: j.Height, Side: record.Side(side)},
			Value: j.Value, Tolerance: j.Tolerance, Locked: j.Locked, Note: record.ShortNote(j.Note), Mark: j.Mark,
		})
	}
	return data, nil
}

func find(list []string, word string) int {
	for i, w := range list {
		if w == word {
			return i
		}
	}
	return -1
}
