//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/work"
)

// listenToolbars makes each group of buttons one stop of Tab, between which the arrow keys
// move: the toolbar pattern of the W3C's ARIA Authoring Practices.
func (p *page) listenToolbars() {
	each(p.document, "[role=toolbar]", func(bar js.Value) {
		if bar.Call("querySelector", "[aria-current=true]").IsNull() {
			p.stopAt(bar, 0)
		}
		p.onCapture(bar, "focusin", func(e js.Value) {
			buttons := liveButtons(bar)
			for i, b := range buttons {
				if b.Equal(e.Get("target")) {
					p.stopAt(bar, i)
				}
			}
		})
		p.on(bar, "keydown", func(e js.Value) {
			buttons := liveButtons(bar)
			for i, b := range buttons {
				if !b.Equal(e.Get("target")) {
					continue
				}
				if to, ok := work.ButtonByKey(e.Get("key").String(), i, len(buttons)); ok {
					e.Call("preventDefault")
					buttons[to].Call("focus")
				}
				return
			}
		})
	})
}

// liveButtons are those of a toolbar that can be seen and pressed.
func liveButtons(bar js.Value) (out []js.Value) {
	each(bar, "button:not([disabled])", func(b js.Value) {
		if b.Call("checkVisibility").Bool() {
			out = append(out, b)
		}
	})
	return out
}

// stopAt makes a button the toolbar's one stop. One that cannot be pressed now takes
// no part.
func (p *page) stopAt(bar js.Value, at int) {
	each(bar, "button", func(b js.Value) { b.Set("tabIndex", -1) })
	if buttons := liveButtons(bar); at < len(buttons) {
		buttons[at].Set("tabIndex", 0)
	} else if first := bar.Call("querySelector", "button"); !first.IsNull() {
		first.Set("tabIndex", 0) // of a bar that is hidden now
	}
}
