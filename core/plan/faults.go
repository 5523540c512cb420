package plan

import (
	"fmt"
	"math"
)

// Fault is what keeps a season from being planned, by the key of the field it stands at.
type Fault struct{ Key, Text string }

// Faults are everything that keeps a season from being planned.
func (s *Season) Faults() []Fault {
	out := s.ranges()
	if len(out) > 0 {
		return out
	}
	if s.Int(Practised)+s.Int(Learners) == 0 {
		out = append(out, Fault{"practised", "Nobody is there to work: one pair of hands at the least."})
	}
	if n := s.Int(Teams); n > s.Int(Boats) {
		out = append(out, Fault{"teams", fmt.Sprintf("More teams than boats: each builds one, so %d at the most.",
			s.Int(Boats))})
	} else if crew := s.crew(s.Int(Practised), s.Int(Learners)); crew.all() > 0 && !crew.enough() {
		out = append(out, Fault{"teams", "More teams than there are hands for: each needs one of its own, besides those " +
			"who go from team to team."})
	}
	if s.Number(Travel) >= s.Number(Hours) {
		out = append(out, Fault{"travel", "The way takes the whole day: camp in the woods, or work longer days."})
	}
	if s.Days[Begin] != "" && s.Days[End] != "" && s.Days[End] < s.Days[Begin] {
		out = append(out, Fault{"end", "The last day is before the first."})
	}
	return out
}

// Outside tells that a number lies out of its range or a date is none: what a file may not hold.
func (s *Season) Outside() bool { return len(s.ranges()) > 0 }

// ranges are the faults of each number and date by itself.
func (s *Season) ranges() []Fault {
	var out []Fault
	fault := func(key, text string, args ...any) { out = append(out, Fault{key, fmt.Sprintf(text, args...)}) }
	for i, r := range rows {
		v := s.Numbers[i]
		switch {
		case math.IsNaN(v) || v < r.Low || v > r.High:
			fault(r.Key, "%s: %v to %v.", r.Label, r.Low, r.High)
		case r.Shape != Decimal && v != math.Round(v):
			fault(r.Key, "%s: a whole number.", r.Label)
		}
	}
	for i, r := range dateRows {
		text := s.Days[i]
		if Date(i) == Begin || Date(i) == End {
			if _, ok := day(text); text != "" && !ok {
				fault(r.Key, "%s: a day as 2027-06-14, or nothing.", r.Label)
			}
		} else if _, _, ok := yearDay(text); !ok {
			fault(r.Key, "%s: a day of the year as 06-14.", r.Label)
		}
	}
	for i := range table {
		if v := s.Likely[i]; math.IsNaN(v) || v < 0 || v > MostMinutes {
			fault(RateKey(ID(i)), "%s: more than 0 minutes, and no more than %d.", table[i].Name, MostMinutes)
		}
		if v := s.Have[i]; math.IsNaN(v) || v < 0 || v > MostUnits {
			fault(HaveKey(ID(i)), "%s: from 0 to %d.", table[i].Name, MostUnits)
		}
	}
	return out
}

// MostMinutes and MostUnits bound what a user may set of a task.
const (
	MostMinutes = 6000
	MostUnits   = 100000
)

// RateKey and HaveKey are the keys of a task's time and of what is at hand of it.
func RateKey(id ID) string { return "rate." + table[id].Key }
func HaveKey(id ID) string { return "have." + table[id].Key }
