//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// showNotBuilt says beside the picture that the boat shown is not the one entered, or
// which entry could not be read, and unfolds the group of the control at fault.
func (p *page) showNotBuilt() {
	said, at := p.work.NotBuilt()
	if !at {
		p.unfolded = ""
		said, at = p.notRead()
	} else if p.unfolded != said.Key {
		// Only once for each fault: a user may fold the group again.
		p.unfolded = said.Key
		p.unfold(said.Key)
	}
	if at {
		p.fill("not-built", markup.NotBuilt(said))
	}
	p.toggle("not-built", "hidden", !at)
}

// notRead is the first entry that could not be read.
func (p *page) notRead() (work.NotBuilt, bool) {
	for _, c := range p.inOrder {
		if c.unread {
			return work.NotRead(c.param.Key, c.fault.text), true
		}
	}
	return work.NotBuilt{}, false
}

// unfold opens every fold around a control and returns the control.
func (p *page) unfold(key string) js.Value {
	box := p.document.Call("querySelector", `[data-control="`+key+`"]`)
	if box.IsNull() {
		return box
	}
	return opened(box)
}

// goTo brings a control into sight with the focus on it.
func (p *page) goTo(key string) {
	if box := p.unfold(key); !box.IsNull() {
		field := box.Call("querySelector", "[data-typed], [name]")
		p.goInto(field, field)
		p.takeInHand(key)
	}
}
