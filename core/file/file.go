package file

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"barkwright/core/design"
	"barkwright/core/record"
)

// File is several boats kept side by side, with the one that is being looked at.
type File struct {
	Boats   []Boat
	Current int
}

// Boat is a design with what was measured beside it.
type Boat struct {
	Design   design.Design
	Notebook record.Notebook
	// Built is this boat as it last could be built, where the design as it stands cannot
	// be; nil where it can, or where none could be so far. Its notes are left out.
	Built *design.Design
	// Held is the boat that this one is held against, nil for none.
	Held *Held
	// Moved lists the numbers that stand elsewhere than when an older page wrote the boat.
	// It is not written.
	Moved []design.Move
}

// Held is a boat that another is held against: its design, without notes, and the name that
// it is held by.
type Held struct {
	Name   string
	Design design.Design
}

// Format and Version open every file. A change that an older page would misread
// takes the next version.
const (
	Format  = "barkwright designs"
	Version = design.Version
	// MaxSize bounds what is written and read, in bytes: more than a browser keeps, so
	// that all that is kept can be saved as one file and opened again.
	MaxSize = 16 << 20
)

// fileJSON is a file as written; schema.json describes it.
type fileJSON struct {
	Format  string `json:"format"`
	Version int    `json:"version"`
	// Kept and Typed stand in what a browser keeps, which opens as a file too.
	Kept    *headJSON         `json:"kept,omitempty"`
	Typed   map[string]string `json:"typed,omitempty"`
	Current int               `json:"current"`
	Designs []boatJSON        `json:"designs"`
}

// Encode writes the file as JSON. It fails where a number is not finite, and where
// the file would be too large to be opened again.
func (f File) Encode() ([]byte, error) {
	out := fileJSON{Format: Format, Version: Version, Current: f.Current, Designs: []boatJSON{}}
	for _, b := range f.Boats {
		out.Designs = append(out.Designs, write(b))
	}
	text, err := json.MarshalIndent(out, "", "  ")
	if err != nil {
		return nil, err
	}
	if len(text) >= MaxSize {
		return nil, errTooMany
	}
	return append(text, '\n'), nil
}

var errTooMany = errors.New("These designs make a file larger than 16 MB, which no page opens: take some off.")

// What is wrong with a file that cannot be opened; each is one line for the user.
var (
	ErrTooLarge = errors.New("The file is larger than 16 MB: it holds no designs of this page.")
	ErrForeign  = errors.New("This is not a file of Barkwright designs.")
	ErrDamaged  = errors.New("The file is damaged: part of it is missing or is not readable.")
)

// Decode reads a file written by Encode. Values out of range are kept as they
// are, for design.Validate to name; a parameter that is missing stands at its
// default. A dependent value that is not the one it would follow to counts as set,
// so that a boat is always opened as it was saved.
func Decode(data []byte) (File, error) {
	in, err := decode(data)
	if err != nil {
		return File{}, err
	}
	f := File{Current: in.Current}
	for _, j := range in.Designs {
		b, err := j.read(in.Version)
		if err != nil {
			return File{}, err
		}
		f.Boats = append(f.Boats, b)
	}
	return f, nil
}

// decode reads the frame of a file; its boats are still as written.
func decode(data []byte) (fileJSON, error) {
	if len(data) > MaxSize {
		return fileJSON{}, ErrTooLarge
	}
	data = bytes.TrimPrefix(data, []byte("\ufeff")) // which some editors write before UTF-8
	var head struct {
		Format  string
		Version int
	}
	if err := json.Unmarshal(data, &head); err != nil {
		var syntax *json.SyntaxError
		if errors.As(err, &syntax) && looksOurs(data) || !errors.As(err, &syntax) && head.Format == Format {
			return fileJSON{}, ErrDamaged
		}
		return fileJSON{}, ErrForeign
	}
	if err := readable(head.Format, head.Version); err != nil {
		return fileJSON{}, err
	}
	var in fileJSON
	r := json.NewDecoder(bytes.NewReader(data))
	r.DisallowUnknownFields()
	if err := r.Decode(&in); err != nil {
		var value valueError
		if errors.As(err, &value) {
			return fileJSON{}, value
		}
		if _, field, found := strings.Cut(err.Error(), "unknown field "); found {
			return fileJSON{}, fmt.Errorf("The file holds a value for %.40q, which no design has.", strings.Trim(field, `"`))
		}
		return fileJSON{}, ErrDamaged
	}
	if in.Current < 0 || in.Current >= len(in.Designs) {
		return fileJSON{}, ErrDamaged
	}
	return in, nil
}

// readable tells whether this page reads a format and version, and why not.
func readable(format string, version int) error {
	switch {
	case format != Format:
		return ErrForeign
	case version > Version:
		return fmt.Errorf("The file is of version %d and this page reads up to %d: open it with a newer page.", version,
			Version)
	case version < 1:
		return ErrDamaged
	}
	return nil
}

// looksOurs tells a file of designs that breaks off from any other text.
func looksOurs(data []byte) bool {
	return bytes.Contains(data[:min(len(data), 200)], []byte(Format))
}
