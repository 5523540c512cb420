package tracing

import (
	"errors"
	"strconv"

	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/work"
)

// Field is one that says what a picture does not show.
type Field string

// The fields: what a lettered size measures, or a rectangle along; a rectangle up; where a
// reading was taken; how broad the picture's lines are.
const (
	Length Field = "length"
	High   Field = "high"
	Place  Field = "where"
	Line   Field = "line"
)

// Fields lists them.
func Fields() []Field { return []Field{Length, High, Place, Line} }

// Wanted tells whether a field stands for what is in hand.
func (t *Tracing) Wanted(w *work.Work, f Field) bool {
	tr := t.of(w)
	i, what, held := t.pressed(&tr)
	p, _ := record.LookupPress(what)
	switch f {
	case Length:
		return held && (what == record.LetteredSize || what == record.KnownRectangle) && tr.Marks[i].Whole(&tr)
	case High:
		return held && what == record.KnownRectangle && tr.Marks[i].Whole(&tr)
	case Place:
		return p.Where(t.View)
	}
	return t.shown
}

// pressed is the mark in hand and what it stands for, or else, with false, what the next press would.
func (t *Tracing) pressed(tr *record.Tracing) (mark int, what string, held bool) {
	i, _, held := t.inHand(tr)
	if held {
		return i, tr.Marks[i].What, true
	}
	return 0, t.Task, false
}

// Text is what a field shows.
func (t *Tracing) Text(w *work.Work, f Field) string {
	tr := t.of(w)
	var m record.Mark
	if i, _, ok := t.inHand(&tr); ok {
		m = tr.Marks[i]
	}
	switch {
	case f == Length && m.Length > 0:
		return units.Length.Format(m.Length, w.System)
	case f == High && m.High > 0:
		return units.Length.Format(m.High, w.System)
	case f == Place:
		return t.where
	case f == Line:
		return units.Trimmed(tr.Line, 1)
	}
	return ""
}

var (
	errLine = errors.New("How broad the lines are is a number of pixels from 0 to " + strconv.Itoa(mostLine) + ".")
	errMore = errors.New("A size is more than zero.")
)

// mostLine is how broad lines may be, pixels.
const mostLine = 50

// Type reads a field; what cannot be read changes nothing.
func (t *Tracing) Type(w *work.Work, f Field, text string) error {
	tr := t.of(w)
	i, _, held := t.inHand(&tr)
	switch f {
	case Line:
		v, err := strconv.ParseFloat(text, 64)
		if err != nil || !(v >= 0 && v <= mostLine) {
			return errLine
		}
		tr.Line = v
		w.Trace(tr, false)
	case Length, High:
		v, _, err := units.Length.Parse(text, w.System)
		switch {
		case err != nil:
			return err
		case v <= 0:
			return errMore
		case !held:
			return nil
		}
		m := tr.Marks[i]
		if f == High {
			m.High = v
		} else {
			m.Length = v
		}
		w.Trace(tr.With(i, m), false)
		if t.Task == "" && m.Length > 0 && (m.What == record.LetteredSize || m.High > 0) {
			t.advance(w)
		}
	case Place:
		return t.typeWhere(w, text)
	}
	return nil
}

// typeWhere reads where the reading in hand was taken, or the next.
func (t *Tracing) typeWhere(w *work.Work, text string) error {
	tr := t.of(w)
	i, what, held := t.pressed(&tr)
	p, _ := record.LookupPress(what)
	number, at := 0, record.Place{}
	if text != "" {
		var err error
		if number, at, err = record.ReadWhere(placeKind(p), text, w.System); err != nil {
			return err
		}
	}
	t.where, t.number, t.at = text, number, at
	if held {
		m := tr.Marks[i]
		m.Number, m.At = number, at
		w.Trace(tr.With(i, m), false)
	}
	return nil
}

// placeKind is the kind by which the place of a press is read: a height that is pressed is not
// typed as well.
func placeKind(p record.Press) record.Kind {
	if p.AtHeight() {
		return record.HalfGirth
	}
	return p.Kind
}

// whereOf says where a mark was taken, as far as its user said it.
func (t *Tracing) whereOf(w *work.Work, m record.Mark) string {
	p, _ := record.LookupPress(m.What)
	if !p.Where(m.View) || p.Numbered() && m.Number == 0 {
		return ""
	}
	return record.Datum{Kind: placeKind(p), Number: m.Number, At: m.At}.Where(w.System)
}
