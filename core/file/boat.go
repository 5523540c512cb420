package file

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strconv"

	"barkwright/core/design"
	"barkwright/core/shape"
)

// boatJSON is one boat as written. Values are in the SI unit of each parameter's kind.
type boatJSON struct {
	Name   string `json:"name"`
	Notes  string `json:"notes"`
	Values values `json:"values"`
	// Set names the dependent parameters that no longer follow.
	Set []string `json:"set"`
	// Sheets are those on hand.
	Sheets []sheetJSON `json:"sheets,omitempty"`
	// Corrections are those of each curve, by its name.
	Corrections map[string][]correctionJSON `json:"corrections,omitempty"`
	// Record and Readings are what was measured.
	Record   *recordJSON `json:"record,omitempty"`
	Readings []datumJSON `json:"readings,omitempty"`
	// Tally is what was done of the work, and noted.
	Tally []entryJSON `json:"tally,omitempty"`
	// Tracing is what was pressed on a picture that the record is read off.
	Tracing *tracingJSON `json:"tracing,omitempty"`
	// Season is the crew, the days and the times that its plan is made with.
	Season *seasonJSON `json:"season,omitempty"`
	// Held is the boat that this one is held against; its name is what it is held by.
	Held *boatJSON `json:"held,omitempty"`
	// Built is the boat as it last could be built.
	Built *boatJSON `json:"built,omitempty"`
}

type sheetJSON struct {
	Width  float64 `json:"width"`
	Length float64 `json:"length"`
}

type correctionJSON struct {
	At   float64 `json:"at"`
	From float64 `json:"from"`
	To   float64 `json:"to"`
	By   float64 `json:"by"`
}

// values holds numbers by parameter key, written in the order of the table.
type values map[string]float64

// MarshalJSON refuses numbers that are not finite.
func (v values) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	for _, p := range design.Params() {
		x := v[p.Key]
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return nil, fmt.Errorf("%s is not a number and cannot be saved", p.Label)
		}
		fmt.Fprintf(&b, ",%q:%s", p.Key, strconv.FormatFloat(x, 'g', -1, 64))
	}
	return append(append([]byte("{"), b.Bytes()[1:]...), '}'), nil
}

// valueError is what is wrong with a value of a file, one sentence for the user.
type valueError string

func (e valueError) Error() string { return string(e) }

// UnmarshalJSON refuses a value that is not a number, by its parameter, and a key that is given twice:
// a file edited by hand may hold either.
func (v *values) UnmarshalJSON(data []byte) error {
	r := json.NewDecoder(bytes.NewReader(data))
	if open, err := r.Token(); err != nil || open != json.Delim('{') {
		return ErrDamaged
	}
	*v = values{}
	for r.More() {
		token, err := r.Token()
		key, isText := token.(string)
		var text json.RawMessage
		if err != nil || !isText || r.Decode(&text) != nil {
			return ErrDamaged
		}
		if _, twice := (*v)[key]; twice {
			return valueError(fmt.Sprintf("The file gives %.40q twice.", key))
		}
		var x *float64
		if json.Unmarshal(text, &x) != nil || x == nil {
			name := key
			if p, known := design.Lookup(key); known {
				name = p.Label
			}
			return valueError(fmt.Sprintf("%.60s: the file holds %.40s, which is not a number.", name, text))
		}
		(*v)[key] = *x
	}
	return nil
}

func write(b Boat) boatJSON {
	j := writeDesign(b.Design)
	j.Record, j.Readings = writeRecord(b.Notebook), writeData(b.Notebook.Readings)
	j.Tally, j.Tracing = writeTally(b.Notebook.Log), writeTracing(b.Notebook.Tracing)
	j.Season = writeSeason(b.Notebook.Season)
	if b.Held != nil {
		held := writeDesign(b.Held.Design)
		held.Name, held.Notes = b.Held.Name, ""
		j.Held = &held
	}
	if b.Built != nil {
		built := writeDesign(*b.Built)
		j.Built = &built
	}
	return j
}

func writeDesign(d design.Design) boatJSON {
	j := boatJSON{Name: d.Name, Notes: d.Notes, Values: values{}, Set: []string{}}
	for _, p := range design.Params() {
		j.Values[p.Key] = p.Get(&d)
		if p.Owned(d) {
			j.Set = append(j.Set, p.Key)
		}
	}
	for _, s := range d.OnHand.List() {
		j.Sheets = append(j.Sheets, sheetJSON(s))
	}
	for _, curve := range d.Corrected.Curves() {
		for _, c := range curve.List.List() {
			if j.Corrections == nil {
				j.Corrections = map[string][]correctionJSON{}
			}
			j.Corrections[curve.Name] = append(j.Corrections[curve.Name], correctionJSON(c))
		}
	}
	return j
}

// read is the boat of a file of a version.
func (j boatJSON) read(version int) (Boat, error) {
	d, moved, err := j.design(version)
	if err != nil {
		return Boat{}, err
	}
	b := Boat{Design: d, Moved: moved}
	if j.Built != nil {
		built, _, err := j.Built.design(version)
		if err != nil {
			return Boat{}, err
		}
		b.Built = &built
	}
	if j.Held != nil {
		held, _, err := j.Held.design(version)
		if err != nil {
			return Boat{}, err
		}
		b.Held = &Held{Name: held.Name, Design: held}
		b.Held.Design.Name = ""
	}
	b.Notebook, err = j.notebook()
	return b, err
}

func (j boatJSON) design(version int) (design.Design, []design.Move, error) {
	for _, key := range unknown(j.Values) {
		return design.Design{}, nil, fmt.Errorf("The file holds a value for %.40q, which no design has.", key)
	}
	d := design.DefaultOf(version)
	d.Name, d.Notes = j.Name, j.Notes
	for _, p := range design.Params() {
		v, ok := j.Values[p.Key]
		if !ok {
			continue
		}
		if p.Whole() && (v != math.Round(v) || math.Abs(v) > math.MaxInt32) {
			return design.Design{}, nil, fmt.Errorf("%s: the file holds %v, which is not a whole number of them.",
				p.Label, v)
		}
		p.Put(&d, v)
	}
	for _, key := range j.Set {
		p, ok := design.Lookup(key)
		if !ok || !p.Follows() {
			return design.Design{}, nil, fmt.Errorf("The file names %.40q as set, which no design has.", key)
		}
		p.Claim(&d)
	}
	if len(j.Sheets) > design.MostSheets {
		return design.Design{}, nil, fmt.Errorf("The file holds %d sheets of bark on hand; %d are kept.", len(j.Sheets),
			design.MostSheets)
	}
	for i, s := range j.Sheets {
		d.OnHand = d.OnHand.Put(i, design.Sheet(s))
	}
	if err := j.corrections(&d); err != nil {
		return design.Design{}, nil, err
	}
	d, moved := design.Since(version, j.keep(version, d))
	return design.Seated(d), moved, nil
}

func (j boatJSON) corrections(d *design.Design) error {
	known := map[string]bool{}
	for _, curve := range d.Corrected.Curves() {
		known[curve.Name] = true
		list := j.Corrections[curve.Name]
		if len(list) > shape.MostCorrections {
			return fmt.Errorf("The file holds %d corrections of the %s; %d are kept.", len(list), curve.Name,
				shape.MostCorrections)
		}
		for i, c := range list {
			curve.List.Each[i] = shape.Correction(c)
			curve.List.Count = i + 1
		}
	}
	for name := range j.Corrections {
		if !known[name] {
			return fmt.Errorf("The file holds corrections of a %.40q, which no design has.", name)
		}
	}
	return nil
}

// keep follows what is tied, as the version did, and marks as set what would not come out
// as written.
func (j boatJSON) keep(version int, d design.Design) design.Design {
	// Rounding may differ in the last bits between machines.
	const same = 1e-9
	for _, p := range design.Params() {
		if !p.Follows() || p.Owned(d) {
			continue
		}
		v, ok := j.Values[p.Key]
		if followed := design.FollowAs(version, d); ok && math.Abs(p.Get(&followed)-v) > same {
			p.Put(&d, v)
			p.Claim(&d)
		}
	}
	return design.FollowAs(version, d)
}

func unknown(v values) []string {
	var out []string
	for key := range v {
		if _, ok := design.Lookup(key); !ok {
			out = append(out, key)
		}
	}
	slices.Sort(out)
	return out
}
