package plan

import "math"

// waitHours are hours by the clock of so many days.
func waitHours(days float64) int { return int(math.Round(days * 24)) }

// links are what must be done before a task, for a boat and as the season has it.
func (s *Season) links(c Counts, id ID) []Link {
	out := append([]Link(nil), table[id].After...)
	replace := func(was, is ID) {
		for i := range out {
			if out[i].Task == was {
				out[i].Task = is
			}
		}
	}
	bound := func(was ID, days float64) {
		for i := range out {
			if out[i].Task == was {
				out[i].Wait = waitHours(days)
			}
		}
	}
	switch id {
	case SetStems:
		bound(BendStems, s.Number(StemsDry))
	case DriveRibs:
		bound(BendRibs, s.Number(RibsDry))
	case DriveAgain:
		bound(DriveRibs, s.Number(Settle))
	}
	if s.Int(SeamsLast) == 1 {
		switch id {
		case SetGunwales:
			replace(SewSeams, StakeBark)
		case SewSeams:
			replace(StakeBark, Lace)
		case SetStems:
			out = append(out, Link{SewSeams, 0})
		}
	}
	if c.OnGunwales {
		switch id {
		case LayBark:
			replace(MakeFrame, FitThwarts)
		case FitThwarts:
			replace(SetStems, MakeGunwales)
		case BendRibs:
			replace(FitThwarts, SetStems)
		}
	}
	return out
}

// Before lists the tasks that must be done before another, in the order of the table.
func (s *Season) Before(c Counts, of ID) []ID {
	need := map[ID]bool{}
	var add func(id ID)
	add = func(id ID) {
		for _, l := range s.links(c, id) {
			if !need[l.Task] {
				need[l.Task] = true
				add(l.Task)
			}
		}
	}
	add(of)
	var out []ID
	for i := range table {
		if need[ID(i)] {
			out = append(out, ID(i))
		}
	}
	return out
}
