//go:build js

package bridge

import "syscall/js"

// slot is a place on the page that shows a text. It remembers what it shows, so
// that a step of a slider touches only what changes.
type slot struct {
	at    js.Value
	text  string
	known bool
	how   string // it is spoken, "" before live
}

func (s *slot) set(text string) {
	if s.known && s.text == text {
		return
	}
	s.at.Set("textContent", text)
	s.text, s.known = text, true
}

// live says how a change of the text is spoken: aria-live's word.
func (s *slot) live(how string) {
	if s.how != how {
		s.at.Call("setAttribute", "aria-live", how)
		s.how = how
	}
}

// data is a slot for an attribute data-name.
type data struct {
	set  js.Value // the element's dataset
	name string
	text string
}

func dataOf(at js.Value, name string) data { return data{set: at.Get("dataset"), name: name} }

func (d *data) put(text string) {
	if d.text == text {
		return
	}
	d.set.Set(d.name, text)
	d.text = text
}
