package file

import (
	"bytes"
	"encoding/json"
	"hash/fnv"
	"strconv"
	"strings"

	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/record"
)

// Head is what is known of a kept boat without reading it whole.
type Head struct {
	// Name is the boat's, Line the boat as one line of text, empty where it has none.
	Name, Line string
	// Revision counts the times it was kept; Stamp tells two pages' apart.
	Revision int
	Stamp    string
	// Off marks a boat taken off, kept to be brought back.
	Off bool
	// From is the key of the boat that this one was once the same as, where two pages
	// changed one boat.
	From string
}

// Kept is one boat as a browser keeps it under a key of its own.
type Kept struct {
	Head
	Boat Boat
	// Typed is what stands half typed in the page's fields, by the field.
	Typed map[string]string
}

// headJSON is a head as written, with the mark of the table that its boat was written by.
type headJSON struct {
	Name     string `json:"name"`
	Line     string `json:"line,omitempty"`
	Revision int    `json:"revision"`
	Stamp    string `json:"stamp"`
	Off      bool   `json:"off,omitempty"`
	From     string `json:"from,omitempty"`
	Table    string `json:"table"`
}

// A kept text is a file with one boat, in two lines: the first is whole but for its
// last bracket, so that a shelf of hundreds is listed by first lines alone; a text
// that was torn has no end of the second.
const (
	lineEnd = ",\n"
	textEnd = "]}\n"
)

// Encode writes the boat as it is kept. It fails where a number is not finite.
func (k Kept) Encode() (string, error) {
	line, err := design.Line(k.Boat.Design)
	if err != nil {
		return "", err
	}
	head := headJSON{k.Boat.Design.Name, line, k.Revision, k.Stamp, k.Off, k.From, tableMark}
	text, err := json.Marshal(fileJSON{
		Format: Format, Version: Version, Kept: &head, Typed: k.Typed, Designs: []boatJSON{write(k.Boat)},
	})
	if err != nil {
		return "", err
	}
	first, err := json.Marshal(frameJSON{Format, Version, &head})
	if err != nil {
		return "", err
	}
	n := len(first) - 1
	return string(text[:n]) + lineEnd + string(text[n+1:]) + "\n", nil
}

// frameJSON is the first line of a kept text.
type frameJSON struct {
	Format  string    `json:"format"`
	Version int       `json:"version"`
	Kept    *headJSON `json:"kept"`
}

// ReadHead reads of a kept text what lists it. The error is one line for the user: why
// this page cannot read the text.
func ReadHead(text string) (Head, error) {
	first, _, cut := strings.Cut(text, lineEnd)
	var in frameJSON
	if !cut || json.Unmarshal([]byte(first+"}"), &in) != nil || in.Kept == nil {
		k, err := DecodeKept(text)
		return k.Head, err
	}
	if err := readable(in.Format, in.Version); err != nil {
		return Head{}, err
	}
	if !strings.HasSuffix(text, textEnd) {
		return Head{}, ErrDamaged
	}
	if in.Kept.Table != tableMark {
		// A page with other parameters wrote it: only the whole tells whether it is read.
		k, err := DecodeKept(text)
		return k.Head, err
	}
	return in.Kept.head(), nil
}

func (h headJSON) head() Head {
	return Head{Name: h.Name, Line: h.Line, Revision: h.Revision, Stamp: h.Stamp, Off: h.Off, From: h.From}
}

// DecodeKept reads a text written by Kept.Encode.
func DecodeKept(text string) (Kept, error) {
	in, err := decode([]byte(text))
	if err != nil {
		return Kept{}, err
	}
	if in.Kept == nil || len(in.Designs) != 1 {
		return Kept{}, ErrForeign
	}
	b, err := in.Designs[0].read(in.Version)
	if err != nil {
		return Kept{}, err
	}
	return Kept{in.Kept.head(), b, in.Typed}, nil
}

// Same tells whether two boats are written the same.
func Same(a, b Boat) bool {
	x, err := json.Marshal(write(a))
	if err != nil {
		return false
	}
	y, err := json.Marshal(write(b))
	return err == nil && bytes.Equal(x, y)
}

// tableMark changes with the values and measurements that a boat may have.
var tableMark = markOfTable()

func markOfTable() string {
	h := fnv.New32a()
	for _, p := range design.Params() {
		h.Write([]byte(p.Key + " "))
	}
	for _, r := range plan.Rows() {
		h.Write([]byte(r.Key + " "))
	}
	for _, k := range record.Kinds() {
		h.Write([]byte(k.ID() + " "))
	}
	for _, t := range plan.All() {
		h.Write([]byte(t.Key + " "))
	}
	return strconv.FormatUint(uint64(h.Sum32()), 36)
}
