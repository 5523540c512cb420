package work

import (
	"math/bits"
	"slices"

	"barkwright/core"
	"barkwright/core/design"
)

// Holding is a boat that the one in hand is held against. It is never changed in place.
type Holding struct {
	// Name tells which boat it is: as it stood at a time, as opened, or a boat's own name.
	Name   string
	Design design.Design
}

// holding is what a work keeps of the boat it is held against.
type holding struct {
	held *Holding
	// opened is the design as it was opened.
	opened design.Design
	// order lists the controls in the order in which they were last taken up.
	order []string
	// stilled marks the followers that Still has marked as set.
	stilled design.Owned
}

// HeldBoat returns the boat that the work is held against, nil for none.
func (w *Work) HeldBoat() *Holding { return w.held }

// HeldCanoe returns that boat worked out, with what is known of its bark, and whether there is
// one.
func (w *Work) HeldCanoe() (core.Canoe, bool) { return w.boat.HeldBoat() }

// Against returns the boat that numbers are compared with: the one held, or else the one before
// the control in hand was taken up.
func (w *Work) Against() core.Canoe { return w.boat.Against() }

// Opened returns the design as it was opened.
func (w *Work) Opened() design.Design { return w.opened }

// Hold holds the work against a design, under a name, until it is let go. It reports the name of
// the boat that was held before, which one step of undo brings back, and false where the
// design cannot be built.
func (w *Work) Hold(d design.Design, name string) (instead string, ok bool) {
	if len(core.Validate(d)) > 0 {
		return "", false
	}
	if w.held != nil {
		instead = w.held.Name
	}
	w.Commit()
	d.Name, d.Notes = "", ""
	w.changeHeld(&Holding{Name: name, Design: d})
	return instead, true
}

// LetGo ends the comparison. One step of undo holds the boat again.
func (w *Work) LetGo() {
	if w.held != nil {
		w.Commit()
		w.changeHeld(nil)
	}
}

// changeHeld holds another boat or none. What was held before comes back by undo.
func (w *Work) changeHeld(h *Holding) {
	if w.held != nil {
		w.rememberChange(change{w.state(), w.held, true})
	}
	w.order = nil
	w.setHeld(h)
}

func (w *Work) setHeld(h *Holding) {
	w.held = h
	if h == nil {
		w.boat.LetGo()
		return
	}
	c, faults := core.Try(h.Design)
	if len(faults) > 0 {
		w.held = nil
		w.boat.LetGo()
		return
	}
	now := w.Canoe()
	if d := now.Design; core.SameSkin(d, h.Design) && now.Skin != nil {
		c = c.WithFlat(now.Skin.Flat)
	}
	w.boat.Hold(c)
}

func (w *Work) takenUp(key string) {
	others := slices.DeleteFunc(slices.Clone(w.order), func(k string) bool { return k == key })
	w.order = append(others, key)
}

// followersOf marks the dependent parameters that move with a control and are decisions of
// their own.
func (w *Work) followersOf(key string) design.Owned {
	var marks design.Owned
	p, ok := design.Lookup(key)
	if !ok {
		return marks
	}
	at := w.Entered
	for _, n := range []int{1, -1} {
		// By many steps: what follows is rounded to steps of its own.
		const many = 12
		moved := p.Set(at, p.Stepped(p.Get(&at), n*many, w.System))
		for _, f := range design.Params() {
			if f.Key != key && f.Follows() && !f.Solved() && f.Paddler == 0 && !f.Owned(at) && f.Get(&at) != f.Get(&moved) {
				var mark design.Design
				f.Claim(&mark)
				marks |= mark.Own
			}
		}
	}
	return marks
}

// Stilled tells whether followers are held still.
func (w *Work) Stilled() bool { return w.stilled&w.Entered.Own != 0 }

// Still marks the followers of a control as set, in one step of undo, so that they stay where
// they are, and returns how many. Freed, those that it has marked follow again.
func (w *Work) Still(key string, on bool) int {
	d := w.Entered
	if !on {
		d.Own &^= w.stilled
		w.Replace(design.Follow(d))
		w.stilled = 0
		return 0
	}
	marks := w.followersOf(key)
	d.Own |= marks
	w.Replace(d)
	w.stilled |= marks
	return bits.OnesCount64(uint64(marks))
}
