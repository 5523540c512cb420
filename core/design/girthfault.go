package design

import "barkwright/core/shape"

// girthDeciders are the parameters that decide whether a section goes round with the
// half girth on the bed, in the order in which one that is set is held to be the
// cause.
var girthDeciders = []string{"frameWidth", "ease", "bilge", "beam", "depth"}

// girthFault: no finished section of a boat built on a frame has the half girth of the
// bark on the bed.
func (d *Design) girthFault() (Fault, bool) {
	short, long := d.girthRoom()
	if short <= 0 && long <= 0 {
		return Fault{}, false
	}
	sentence := "Folded up round this frame the bark is %s longer, round half the boat amidships, than a finished " +
		"section can be with this turn of the bilge."
	shown := Small(long)
	if short > 0 {
		sentence = "Folded up round this frame the bark is %s too short, round half the boat amidships, for any turn of " +
			"the bilge."
		shown = Small(short)
	}
	first := 0
	for i := len(girthDeciders) - 1; i >= 0; i-- {
		p, _ := Lookup(girthDeciders[i])
		if i < 3 && (p.Owned(*d) || !p.Follows() && p.get(d) != p.Default) {
			first = i
		}
	}
	f := NewFault(girthDeciders[first], sentence, shown)
	at := *d
	f.at = &at
	return d.girthFit(f), true
}

// girthRoom returns by how much the half girth asked for is under the least and over
// the most of a section built on a frame. Both are negative where it lies between.
func (d *Design) girthRoom() (short, long float64) {
	if d.BuiltOn != OnFrame || d.Bulges() || d.TurnSet() {
		return -1, -1
	}
	turn, _ := Lookup("turnWidth")
	o, asked := d.amidships(), d.girthAsked()
	least := shape.New(o.At(min(turn.Min/2, MostTurn*o.Half))).HalfGirth()
	return least - asked, asked - shape.New(o.At(MostTurn*o.Half)).HalfGirth()
}

// girthFit adds the nearest value of the fault's parameter with which a section goes
// round.
func (d *Design) girthFit(f Fault) Fault {
	p, _ := Lookup(f.Key)
	now := p.get(d)
	frame, _ := Lookup("frameWidth")
	fits := func(v float64) bool {
		trial := *d
		p.put(&trial, v)
		// Of what follows only the frame's breadth has a part in it.
		if p.Key != frame.Key && !frame.Owned(trial) {
			frame.bring(&trial)
		}
		short, long := trial.girthRoom()
		return short <= 0 && long <= 0
	}
	const parts, halvings = 40, 16
	for i := 1; i <= parts; i++ {
		for _, limit := range []float64{p.Min, p.Max} {
			good := now + (limit-now)*float64(i)/parts
			if good == now || !fits(good) {
				continue
			}
			bad := now + (limit-now)*float64(i-1)/parts
			for range halvings {
				if mid := (good + bad) / 2; fits(mid) {
					good = mid
				} else {
					bad = mid
				}
			}
			if good < now {
				return f.AtMost(good)
			}
			return f.AtLeast(good)
		}
	}
	return f
}
