package design

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"barkwright/core/units"
)

// File is several designs kept side by side, with the one that is being looked at.
type File struct {
	Designs []Design
	Current int
}

// FileFormat and FileVersion open every file. A change that an older page would
// misread takes the next version.
const (
	FileFormat  = "barkwright designs"
	FileVersion = 1
	// MaxFile bounds what is read, in bytes: hundreds of designs with full notes.
	MaxFile = 1 << 20
)

// fileJSON is a file as written; schema.json describes it. Values are in the SI
// unit of each parameter's kind.
type fileJSON struct {
	Format  string       `json:"format"`
	Version int          `json:"version"`
	Current int          `json:"current"`
	Designs []designJSON `json:"designs"`
}

type designJSON struct {
	Name   string `json:"name"`
	Notes  string `json:"notes"`
	Values values `json:"values"`
	// Set names the dependent parameters that no longer follow.
	Set []string `json:"set"`
	// Sheets are those on hand.
	Sheets []sheetJSON `json:"sheets,omitempty"`
}

type sheetJSON struct {
	Width  float64 `json:"width"`
	Length float64 `json:"length"`
}

// values holds numbers by parameter key, written in the order of the table.
type values map[string]float64

// MarshalJSON refuses numbers that are not finite.
func (v values) MarshalJSON() ([]byte, error) {
	var b bytes.Buffer
	for _, p := range table {
		x := v[p.Key]
		if math.IsNaN(x) || math.IsInf(x, 0) {
			return nil, fmt.Errorf("%s is not a number and cannot be saved", p.Label)
		}
		fmt.Fprintf(&b, ",%q:%s", p.Key, strconv.FormatFloat(x, 'g', -1, 64))
	}
	return append(append([]byte("{"), b.Bytes()[1:]...), '}'), nil
}

// Encode writes the file as JSON. It fails where a number is not finite.
func (f File) Encode() ([]byte, error) {
	out := fileJSON{Format: FileFormat, Version: FileVersion, Current: f.Current, Designs: []designJSON{}}
	for _, d := range f.Designs {
		j := designJSON{Name: d.Name, Notes: d.Notes, Values: values{}, Set: []string{}}
		for _, p := range table {
			j.Values[p.Key] = p.get(d)
			if p.Owned(d) {
				j.Set = append(j.Set, p.Key)
			}
		}
		for _, s := range d.OnHand.List() {
			j.Sheets = append(j.Sheets, sheetJSON(s))
		}
		out.Designs = append(out.Designs, j)
	}
	b, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	return append(b, '\n'), nil
}

// What is wrong with a file that cannot be opened; each is one line for the user.
var (
	ErrTooLarge = errors.New("The file is larger than 1 MB: it holds no designs of this page.")
	ErrForeign  = errors.New("This is not a file of Barkwright designs.")
	ErrDamaged  = errors.New("The file is damaged: part of it is missing or is not readable.")
)

// DecodeFile reads a file written by Encode. Values out of range are kept as they
// are, for Validate to name; a parameter that is missing stands at its default. A
// dependent value that is not the one it would follow to counts as set, so that a
// boat is always opened as it was saved.
func DecodeFile(data []byte) (File, error) {
	if len(data) > MaxFile {
		return File{}, ErrTooLarge
	}
	var head struct {
		Format  string
		Version int
	}
	if err := json.Unmarshal(data, &head); err != nil {
		var syntax *json.SyntaxError
		if errors.As(err, &syntax) && looksOurs(data) || !errors.As(err, &syntax) && head.Format == FileFormat {
			return File{}, ErrDamaged
		}
		return File{}, ErrForeign
	}
	switch {
	case head.Format != FileFormat:
		return File{}, ErrForeign
	case head.Version > FileVersion:
		return File{}, fmt.Errorf("The file is of version %d and this page reads up to %d: open it with a newer page.", head.Version, FileVersion)
	case head.Version < 1:
		return File{}, ErrDamaged
	}
	var in fileJSON
	r := json.NewDecoder(bytes.NewReader(data))
	r.DisallowUnknownFields()
	if err := r.Decode(&in); err != nil {
		if _, field, found := strings.Cut(err.Error(), "unknown field "); found {
			return File{}, fmt.Errorf("The file holds a value for %.40q, which no design has.", strings.Trim(field, `"`))
		}
		return File{}, ErrDamaged
	}
	if in.Current < 0 || in.Current >= len(in.Designs) {
		return File{}, ErrDamaged
	}
	f := File{Current: in.Current}
	for _, j := range in.Designs {
		d, err := j.design()
		if err != nil {
			return File{}, err
		}
		f.Designs = append(f.Designs, d)
	}
	return f, nil
}

// looksOurs tells a file of designs that breaks off from any other text.
func looksOurs(data []byte) bool {
	return bytes.Contains(data[:min(len(data), 200)], []byte(FileFormat))
}

func (j designJSON) design() (Design, error) {
	for _, key := range unknown(j.Values) {
		return Design{}, fmt.Errorf("The file holds a value for %.40q, which no design has.", key)
	}
	d := Default()
	d.Name, d.Notes = j.Name, j.Notes
	for _, p := range table {
		v, ok := j.Values[p.Key]
		if !ok {
			continue
		}
		if p.whole() && (v != math.Round(v) || math.Abs(v) > math.MaxInt32) {
			return Design{}, fmt.Errorf("%s: the file holds %v, which is not a whole number of them.", p.Label, v)
		}
		p.put(&d, v)
	}
	for _, key := range j.Set {
		p, ok := Lookup(key)
		if !ok || !p.Follows() {
			return Design{}, fmt.Errorf("The file names %.40q as set, which no design has.", key)
		}
		d.Own |= p.own
	}
	if len(j.Sheets) > MostSheets {
		return Design{}, fmt.Errorf("The file holds %d sheets of bark on hand; %d are kept.", len(j.Sheets), MostSheets)
	}
	for i, s := range j.Sheets {
		d.OnHand = d.OnHand.Put(i, Sheet(s))
	}
	return j.keep(d), nil
}

// keep follows what is tied and marks as set what would not come out as written.
func (j designJSON) keep(d Design) Design {
	// Rounding may differ in the last bits between machines.
	const same = 1e-9
	for _, p := range table {
		if !p.Follows() || p.Owned(d) {
			continue
		}
		v, ok := j.Values[p.Key]
		if ok && math.Abs(p.get(Follow(d))-v) > same {
			p.put(&d, v)
			d.Own |= p.own
		}
	}
	return Follow(d)
}

// whole tells whether the parameter is kept as a whole number.
func (p Param) whole() bool { return p.Kind == units.Count }

func unknown(v values) []string {
	var out []string
	for key := range v {
		if _, ok := Lookup(key); !ok {
			out = append(out, key)
		}
	}
	slices.Sort(out)
	return out
}
