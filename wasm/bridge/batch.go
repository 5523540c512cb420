//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"
)

// batch gathers what a step writes on the page, and hands it to the page's script in one call: calling
// out of the program takes longer than most of what is written.
type batch struct {
	depth int
	text  []byte
}

// writes is the one batch of the one page.
var writes batch

// parting stands between what is gathered: the separator of units in ASCII, which no text of the page has.
const parting = '\x1f'

// together runs act, and writes what it has set on the page at its end, whatever that is.
func (b *batch) together(act func()) {
	b.depth++
	defer func() {
		if b.depth--; b.depth == 0 && len(b.text) > 0 {
			text := string(b.text)
			b.text = b.text[:0]
			js.Global().Call("writeAll", text)
		}
	}()
	act()
}

// What of an element is written; any other name is that of an attribute.
const (
	itsText  = "text"
	itsValue = "value" // what a field holds
)

// spot is an element that is written to again and again.
type spot struct {
	at js.Value
	// number is one more than the one it has in the page's script, 0 before it is first gathered for.
	number int
}

// write writes what of the element, at once or with the others.
func (s *spot) write(what, text string) {
	if writes.depth == 0 || strings.IndexByte(text, parting) >= 0 {
		js.Global().Call("writeOne", s.at, what, text)
		return
	}
	if s.number == 0 {
		s.number = js.Global().Call("placeOf", s.at).Int() + 1
	}
	b := strconv.AppendInt(writes.text, int64(s.number-1), 10)
	b = append(append(append(b, parting), what...), parting)
	writes.text = append(append(b, text...), parting)
}

// slot is a place on the page that shows a text. It remembers what it shows, so
// that a step of a slider touches only what changes.
type slot struct {
	spot
	text  string
	known bool
	how   string // it is spoken, "" before live
}

func slotAt(at js.Value) slot { return slot{spot: spot{at: at}} }

// emptySlot is a slot at an element that shows nothing yet.
func emptySlot(at js.Value) slot { return slot{spot: spot{at: at}, known: true} }

func (s *slot) set(text string) {
	if s.known && s.text == text {
		return
	}
	s.write(itsText, text)
	s.text, s.known = text, true
}

// live says how a change of the text is spoken: aria-live's word.
func (s *slot) live(how string) {
	if s.how != how {
		s.at.Call("setAttribute", "aria-live", how)
		s.how = how
	}
}

// mark is a slot for an attribute. Before it is put it is taken to be empty.
type mark struct {
	spot
	name string
	text string
}

// markOf is the mark data-name of an element.
func markOf(at js.Value, name string) mark { return mark{spot: spot{at: at}, name: "data-" + name} }

func (d *mark) put(text string) {
	if d.text == text {
		return
	}
	d.write(d.name, text)
	d.text = text
}

// flag is a slot for an attribute that is there or is not.
type flag struct {
	at        js.Value
	name      string
	on, known bool
}

func (f *flag) put(on bool) {
	if f.known && f.on == on {
		return
	}
	f.at.Call("toggleAttribute", f.name, on)
	f.on, f.known = on, true
}

// flagOf names a flag: an element, by its ID, and an attribute.
type flagOf struct{ id, name string }

// toggle puts an attribute of an element on or off. Nothing else may write that attribute.
func (p *page) toggle(id, name string, on bool) {
	f := p.flags[flagOf{id, name}]
	if f == nil {
		f = &flag{at: p.id(id), name: name}
		p.flags[flagOf{id, name}] = f
	}
	f.put(on)
}
