//go:build js

package bridge

import (
	"fmt"
	"runtime/debug"
	"syscall/js"

	"barkwright/wasm/desk"
)

// callback is act for the browser to call. A fault of the program in it is met.
func (p *page) callback(act func(args []js.Value)) js.Func {
	return js.FuncOf(func(_ js.Value, args []js.Value) any {
		p.guard(func() { act(args) })
		return nil
	})
}

// guard runs act; a fault of the program in it is named in the console and met.
func (p *page) guard(act func()) {
	defer func() {
		if fault := recover(); fault != nil {
			js.Global().Get("console").Call("error", fmt.Sprintf("%v\n%s", fault, debug.Stack()))
			p.meet()
		}
	}()
	act()
}

// meet goes on after a fault: with the boat that the desk then has in hand.
func (p *page) meet() {
	p.hands.Drop()
	p.view.Ghost = nil
	if !p.started {
		if p.desk.MeetAtStart() {
			js.Global().Get("location").Call("reload")
		} else {
			js.Global().Call("stopped", desk.NotStarted)
		}
		return
	}
	r, goOn := p.desk.Meet(p.inEvent)
	p.inEvent = false
	p.reply(r)
	if goOn {
		p.guard(p.shelved)
	}
}

// trip is a fault made on purpose, for tests of what is done then. Its variable is read
// once, at the start, and nothing of the page's sets it: a test does from outside, and
// the page's policy runs no other script. So in use it is always empty.
type trip struct{ boat, in string }

func readTrip() trip {
	v := js.Global().Get("faultOnPurpose")
	if v.Type() != js.TypeObject {
		return trip{}
	}
	return trip{v.Get("boat").String(), v.Get("in").String()}
}

// trips panics where a test asks for it.
func (p *page) trips(in string) {
	if t := p.trip; t.in == in && t.boat == p.work.Entered.Name {
		panic("a fault made on purpose by a test")
	}
}
