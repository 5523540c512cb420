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
}

// Format and Version open every file. A change that an older page would misread
// takes the next version.
const (
	Format  = "barkwright designs"
	Version = 1
	// MaxSize bounds what is written and read, in bytes: hundreds of designs with full
	// notes and a record each.
	MaxSize = 4 << 20
)

// fileJSON is a file as written; schema.json describes it.
type fileJSON struct {
	Format  string     `json:"format"`
	Version int        `json:"version"`
	Current int        `json:"current"`
	Designs []boatJSON `json:"designs"`
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

var errTooMany = errors.New("These designs make a file larger than 4 MB, which no page opens: take some off.")

// What is wrong with a file that cannot be opened; each is one line for the user.
var (
	ErrTooLarge = errors.New("The file is larger than 4 MB: it holds no designs of this page.")
	ErrForeign  = errors.New("This is not a file of Barkwright designs.")
	ErrDamaged  = errors.New("The file is damaged: part of it is missing or is not readable.")
)

// Decode reads a file written by Encode. Values out of range are kept as they
// are, for design.Validate to name; a parameter that is missing stands at its
// default. A dependent value that is not the one it would follow to counts as set,
// so that a boat is always opened as it was saved.
func Decode(data []byte) (File, error) {
	if len(data) > MaxSize {
		return File{}, ErrTooLarge
	}
	var head struct {
		Format  string
		Version int
	}
	if err := json.Unmarshal(data, &head); err != nil {
		var syntax *json.SyntaxError
		if errors.As(err, &syntax) && looksOurs(data) || !errors.As(err, &syntax) && head.Format == Format {
			return File{}, ErrDamaged
		}
		return File{}, ErrForeign
	}
	switch {
	case head.Format != Format:
		return File{}, ErrForeign
	case head.Version > Version:
		return File{}, fmt.Errorf("The file is of version %d and this page reads up to %d: open it with a newer page.", head.Version, Version)
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
		b, err := j.read()
		if err != nil {
			return File{}, err
		}
		f.Boats = append(f.Boats, b)
	}
	return f, nil
}

// looksOurs tells a file of designs that breaks off from any other text.
func looksOurs(data []byte) bool {
	return bytes.Contains(data[:min(len(data), 200)], []byte(Format))
}
