package work

import (
	"strconv"
	"strings"

	"barkwright/core/record"
	"barkwright/core/units"
)

// Row is one measurement's row: the entry, and what was typed in fields that cannot be
// read.
type Row struct {
	Entry
	typed [Fields]string
	was   record.Datum // as the notebook has it
}

// Shows is what a field shows: what was typed there, as long as it cannot be read, or
// else the datum.
func (r *Row) Shows(f Field, s units.System) string {
	if r.Bad[f] != "" {
		return r.typed[f]
	}
	return r.Text(f, s)
}

// Name and StrikeOut are what row i and its button are called.
func (r *Row) Name(i int) string      { return "Measurement " + strconv.Itoa(i+1) }
func (r *Row) StrikeOut(i int) string { return "Remove measurement " + strconv.Itoa(i+1) }

func (r *Row) enter(f Field, text string, s units.System) {
	r.typed[f] = text
	r.Enter(f, text, s)
}

// Says is why fields of the row cannot be read, and more that is said of it.
func (r *Row) Says(more string) string {
	var texts []string
	for _, bad := range r.Bad {
		if bad != "" {
			texts = append(texts, bad)
		}
	}
	if more != "" {
		texts = append(texts, more)
	}
	return strings.Join(texts, " ")
}

// Rows is one of a notebook's lists as it is shown, a row for each measurement and, while
// one is begun, a row more.
type Rows struct {
	Of      List
	Entries []*Row

	name string // the list's among what is half typed
	// boat, notebook and system are whose rows these are; the first of them, stand,
	// are in the notebook, one more may be begun.
	boat     *Work
	notebook *record.Notebook
	system   units.System
	stand    int
}

// NewRows is an empty list by the name that it goes by among what is half typed.
func NewRows(of List, name string) *Rows { return &Rows{Of: of, name: name} }

// Show brings the list to a boat's notebook and tells whether it changed. A row that is
// being entered stays as it is where the notebook has no other in its place.
func (m *Rows) Show(w *Work) bool {
	if m.boat == w && m.notebook == w.Notebook && m.system == w.System {
		return false
	}
	list := w.Measurements(m.Of)
	another := m.boat != w
	if another {
		m.cut(0)
	}
	if m.stand != len(list) {
		m.cut(min(m.stand, len(list)))
	}
	for i, d := range list {
		if i == len(m.Entries) {
			m.Entries = append(m.Entries, &Row{Entry: OfDatum(d)})
		}
		if r := m.Entries[i]; r.was != d {
			*r = Row{Entry: OfDatum(d), was: d}
		}
	}
	m.stands(w)
	if another {
		m.halfTyped(w)
	}
	return true
}

// cut takes off the rows from place n on.
func (m *Rows) cut(n int) {
	m.Entries = m.Entries[:n]
	m.stand = min(m.stand, n)
}

// stands notes that the rows are those of the notebook as it is.
func (m *Rows) stands(w *Work) {
	m.boat, m.notebook, m.system, m.stand = w, w.Notebook, w.System, len(w.Measurements(m.Of))
}

// Add begins a row more, unless one is begun, and tells whether the list takes one.
func (m *Rows) Add(w *Work) bool {
	list := w.Measurements(m.Of)
	if len(list) == record.MostData {
		return false
	}
	if len(m.Entries) == len(list) {
		m.Entries = append(m.Entries, &Row{Entry: NextEntry(m.Of, list)})
	}
	return true
}

// Enter reads a field of row i, and tells whether the row is whole: it has then gone into
// the notebook.
func (m *Rows) Enter(w *Work, i int, f Field, text string) bool {
	r := m.Entries[i]
	r.enter(f, text, w.System)
	if !r.Whole() {
		return false
	}
	w.PutMeasurement(m.Of, i, r.Datum)
	r.was = r.Datum
	m.stands(w)
	return true
}

// Drop strikes row i out.
func (m *Rows) Drop(w *Work, i int) {
	m.Entries = append(m.Entries[:i:i], m.Entries[i+1:]...)
	w.DropMeasurement(m.Of, i)
	m.stands(w)
	for f := range Fields {
		w.SetTyped(m.key(len(m.Entries), f), "")
	}
}

// key is the name of a row's field among what is half typed.
func (m *Rows) key(i int, f Field) string {
	return m.name + "." + strconv.Itoa(i) + "." + strconv.Itoa(int(f))
}

// Note remembers what stands in the fields of row i, and forgets it once the row says
// nothing else than the notebook.
func (m *Rows) Note(w *Work, i int, texts [Fields]string) {
	r, begun := m.Entries[i], i >= m.stand
	for f, text := range texts {
		f := Field(f)
		if !begun && text == r.Text(f, w.System) {
			text = ""
		}
		w.SetTyped(m.key(i, f), text)
	}
}

// HalfTyped says of what can be read and was never left that it counts for nothing yet.
const HalfTyped = "Typed, and not taken yet: press Enter in the field to take it."

// WhyHalf says of a text left half typed why it does not count.
func WhyHalf(err error) string {
	if err != nil {
		return err.Error()
	}
	return HalfTyped
}

// halfTyped puts back what stood half typed in the rows.
func (m *Rows) halfTyped(w *Work) {
	for i := 0; i <= len(m.Entries); i++ {
		for f := range Fields {
			text, ok := w.Typed[m.key(i, f)]
			if !ok {
				continue
			}
			if i == len(m.Entries) {
				m.Entries = append(m.Entries, &Row{Entry: NextEntry(m.Of, w.Measurements(m.Of))})
			}
			r := m.Entries[i]
			if r.enter(f, text, w.System); f == Value && r.Bad[f] == "" {
				r.Bad[f] = HalfTyped
			}
		}
	}
}
