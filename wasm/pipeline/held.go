package pipeline

import "barkwright/core"

// Hold sets the boat that numbers are compared with while it is held, instead of the one before
// the control in hand was taken up.
func (b *Boat) Hold(c core.Canoe) {
	b.LetGo()
	b.held, b.holds = c, true
	b.dress()
}

// LetGo ends the comparison with a boat that is held.
func (b *Boat) LetGo() {
	if b.task != nil && b.task.piece == Held {
		b.cut()
	}
	b.held, b.holds, b.heldWater = core.Canoe{}, false, nil
	b.failed[Held] = false
}

// HeldBoat returns the boat that is held, with what is known of its bark, and whether there is
// one.
func (b *Boat) HeldBoat() (core.Canoe, bool) { return b.held, b.holds }

// Against returns the boat that numbers are compared with.
func (b *Boat) Against() core.Canoe {
	if b.holds {
		return b.held
	}
	return b.before
}

// WaterAgainst returns the boat that numbers are compared with, on the water.
func (b *Boat) WaterAgainst() core.Water {
	if !b.holds {
		return b.waterBefore()
	}
	if b.heldWater == nil {
		w, ok := b.waters.of(b.held.Design)
		if !ok {
			w = core.OnWater(b.held)
		}
		b.heldWater = &w
	}
	return *b.heldWater
}
