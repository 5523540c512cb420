//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/draw"
)

// showNotBuilt says beside the picture that the boat shown is not the one entered,
// and unfolds the group of the control at fault.
func (p *page) showNotBuilt() {
	line := p.id("not-built")
	if len(p.work.Faults) == 0 {
		p.unfolded = ""
		p.showUnread(line)
		return
	}
	f := p.work.Faults[0]
	label := labelOf(f.Key)
	setHTML(line, `Not built. <b>`+draw.Escape(label)+`:</b> `+draw.Escape(f.Message(p.work.System))+
		more(len(p.work.Faults)-1)+" "+p.shownInstead()+` <button type="button" data-go="`+draw.Escape(f.Key)+`">Go there</button>`)
	line.Set("hidden", false)
	// Only once for each fault: a user may fold the group again.
	if p.unfolded != f.Key {
		p.unfolded = f.Key
		p.unfold(f.Key)
	}
}

// shownInstead says what is seen of a boat that cannot be built as it is entered.
func (p *page) shownInstead() string {
	switch {
	case p.work.None:
		return "No boat is shown: this one could not be built so far."
	case p.work.OnlyTexts():
		return "The boat shown has it cut short."
	}
	return "The boat shown is the last one that could be."
}

func more(n int) string {
	if n == 0 {
		return ""
	}
	return " And " + strconv.Itoa(n) + " more."
}

// showUnread names an entry that could not be read, where there is one.
func (p *page) showUnread(line js.Value) {
	for _, param := range design.Params() {
		if p.controls[param.Key].unread {
			setHTML(line, `Not read. <b>`+draw.Escape(param.Label)+`:</b> `+draw.Escape(p.controls[param.Key].fault.text)+
				` <button type="button" data-go="`+draw.Escape(param.Key)+`">Go there</button>`)
			line.Set("hidden", false)
			return
		}
	}
	line.Set("hidden", true)
}

// unfold opens every fold around a control and returns the control.
func (p *page) unfold(key string) js.Value {
	box := p.document.Call("querySelector", `[data-control="`+key+`"]`)
	if box.IsNull() {
		return box
	}
	for at := box.Call("closest", "details"); !at.IsNull(); at = at.Get("parentElement").Call("closest", "details") {
		at.Set("open", true)
	}
	return box
}

// goTo brings a control into sight with the focus on it.
func (p *page) goTo(key string) {
	if box := p.unfold(key); !box.IsNull() {
		field := box.Call("querySelector", "[data-typed], [name]")
		field.Call("scrollIntoView", map[string]any{"block": "center"})
		field.Call("focus")
	}
}
