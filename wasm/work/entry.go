package work

import (
	"errors"
	"strings"

	"barkwright/core/record"
	"barkwright/core/units"
)

// Field is one field of a measurement's row.
type Field int

// The fields, in their order.
const (
	What Field = iota
	Where
	Value
	Tolerance
	Locked
	Note

	Fields
)

// String returns what stands over the field.
func (f Field) String() string {
	return [...]string{"Measurement", "Where", "Value", "Tolerance", "Keep", "Note"}[f]
}

// Entry is a measurement that is being entered. Text that cannot be read stays in its
// field with the reason. The datum stays as it was last read.
type Entry struct {
	record.Datum
	Bad [Fields]string
	// blank says that there is no value yet, nowhere that there is no place yet.
	blank, nowhere bool
}

// OfDatum returns the entry of a complete measurement.
func OfDatum(d record.Datum) Entry { return Entry{Datum: d} }

// NextEntry returns a blank row under a list. It has the kind of the last row where
// several of that kind are usual, otherwise the next kind.
func NextEntry(l List, list []record.Datum) Entry {
	kinds := KindsOf(l)
	kind := kinds[0]
	if len(list) > 0 {
		last := list[len(list)-1].Kind
		for i, k := range kinds {
			switch {
			case k != last:
			case k.Placed() || k.Numbered():
				kind = k
			default:
				kind = kinds[min(i+1, len(kinds)-1)]
			}
		}
	}
	return Entry{Datum: record.Datum{Kind: kind}, blank: true, nowhere: kind.Placed() || kind.Numbered()}
}

// KindsOf returns the kinds that can be chosen in a list.
func KindsOf(l List) []record.Kind {
	var kinds []record.Kind
	for _, k := range record.Kinds() {
		if l == Recorded || k.AsBuilt() {
			kinds = append(kinds, k)
		}
	}
	return kinds
}

// Whole reports whether the entry has everything that a measurement needs.
func (e Entry) Whole() bool {
	return !e.blank && !e.nowhere && e.Bad[What] == "" && e.Bad[Where] == "" && e.Bad[Value] == ""
}

var (
	errNoValue   = errors.New("There is no value: type one, or strike the row out.")
	errTolerance = errors.New("A tolerance is more than zero: empty the field for the usual one.")
)

// Enter reads a text into a field. The field What takes the ID of a kind. Locked is true
// for any text but an empty one.
//
// A text equal to what the field shows changes nothing, because what is shown may be
// rounded.
func (e *Entry) Enter(f Field, text string, s units.System) {
	text = strings.TrimSpace(text)
	if text != "" && text == e.Text(f, s) {
		e.Bad[f] = ""
		return
	}
	var err error
	switch f {
	case What:
		e.become(text)
	case Where:
		var number int
		var at record.Place
		if number, at, err = record.ReadWhere(e.Kind, text, s); err == nil {
			e.Number, e.At, e.nowhere = number, at, false
		}
	case Value:
		if text == "" {
			err = errNoValue
			break
		}
		var v float64
		if v, _, err = e.ValueKind().Parse(text, s); err == nil {
			e.Datum.Value, e.blank = v, false
		}
	case Tolerance:
		var v float64
		if text != "" {
			if v, _, err = e.ToleranceKind().Parse(text, s); err == nil && v <= 0 {
				err = errTolerance
			}
		}
		if err == nil {
			e.Datum.Tolerance = v
		}
	case Locked:
		e.Datum.Locked = text != ""
	case Note:
		e.Datum.Note = record.ShortNote(text)
	}
	e.Bad[f] = ""
	if err != nil {
		e.Bad[f] = err.Error()
	}
}

// become changes the entry to another kind and drops what that kind does not have.
func (e *Entry) become(id string) {
	kind, ok := record.LookupKind(id)
	if !ok || kind == e.Kind {
		return
	}
	if kind.Counted() != e.Counted() {
		e.blank, e.Datum.Tolerance, e.Bad[Value], e.Bad[Tolerance] = true, 0, "", ""
	}
	placed := kind.Placed() || kind.Numbered()
	if !e.Placed() && !e.Numbered() {
		e.nowhere = e.blank && placed
	}
	e.Kind = kind
	switch {
	case !placed:
		e.Number, e.At.Distance, e.nowhere, e.Bad[Where] = 0, 0, false, ""
	case kind.Numbered():
		e.At.Distance, e.nowhere = 0, e.Number == 0
	}
	if !kind.AtHeight() {
		e.At.Height = 0
	} else if e.At.Height == 0 {
		e.nowhere = true
	}
	if !kind.Sided() {
		e.At = record.Place{}
	}
}

// Text returns what a field shows of the datum.
func (e Entry) Text(f Field, s units.System) string {
	switch f {
	case What:
		return e.Kind.ID()
	case Where:
		if !e.nowhere {
			return e.Datum.Where(s)
		}
	case Value:
		if !e.blank {
			return e.ValueKind().Format(e.Datum.Value, s)
		}
	case Tolerance:
		return e.ToleranceKind().Format(e.Within(), s)
	case Locked:
		if e.Datum.Locked {
			return "yes"
		}
	case Note:
		return e.Datum.Note
	}
	return ""
}
