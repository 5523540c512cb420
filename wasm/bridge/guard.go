//go:build js

package bridge

import (
	"fmt"
	"runtime/debug"
	"syscall/js"

	"barkwright/core/file"
	"barkwright/core/sheet"
	"barkwright/wasm/work"
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

// meet goes on after a fault: with the boat as it last stood on the whole page, or
// where it never did with another, and it says so and offers what was there.
func (p *page) meet() {
	p.hands.drop()
	p.view.Ghost = nil
	if !p.started {
		p.meetAtStart()
		return
	}
	met := p.work.Boat()
	if !p.inEvent {
		p.faults++
	}
	p.inEvent = false
	switch {
	case p.taking != "":
		p.shelf.SetAside(p.taking)
		p.taking = ""
	case p.good.Of(p.work) && p.faults <= 1:
		p.good.Restore()
	default:
		p.shelf.SetAside(p.shelf.ID())
		p.shelf.Open()
	}
	p.notice("fault", "The program met a fault of its own. The boat stands as it last did without it; nothing else is changed.",
		action{"Save what was entered as a file", func() { p.saveBoats(file.File{Boats: []file.Boat{met}}, sheet.FileName(met.Design.Name, "", "json")) }})
	p.nameUnread()
	if p.faults <= mostFaults {
		p.guard(p.shelved)
	}
}

// mostFaults is how many in a row are gone on from: more are not of one boat.
const mostFaults = 3

// meetAtStart sets what was being opened aside and opens the page again without it.
func (p *page) meetAtStart() {
	if p.keeper.Stopped() && !p.keeper.Refuses() {
		js.Global().Get("location").Call("reload")
		return
	}
	js.Global().Call("stopped", "The program did not start: it met a fault of its own.")
}

// stood notes that the boat in hand went through everything on the page but for what
// takes long.
func (p *page) stood() {
	p.good = p.work.Snapshot()
	if !p.opened {
		p.opened = true
		p.keeper.Done()
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

// takeUp is Take of a place on the shelf; a boat that cannot be read is named.
func (p *page) takeUp(take func(s *work.Shelf) error, id string) {
	p.taking = id
	err := take(p.shelf)
	p.taking = ""
	if err != nil {
		p.nameUnread()
	}
	p.tookUp()
}
