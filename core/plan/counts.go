package plan

// Counts is how many units of each task a boat asks for, and what of it decides which
// task comes first.
type Counts struct {
	Units [Tasks]float64
	// OnGunwales tells that it is built on its gunwales: the thwarts are in before the
	// bark is laid, and no frame is made.
	OnGunwales bool
}

// once tells the tasks that are done once, however many boats are built: asking leave, and
// the site.
func once(id ID) bool { return id == AskLeave || id == MakeSite }

// together tells those that are done for all boats at a time.
func together(id ID) bool { return once(id) || table[id].Part == Gathering }

// BoatByBoat tells that a task is done for each of several boats by itself.
func (s *Season) BoatByBoat(id ID) bool { return s.Int(Boats) > 1 && !together(id) }

// Asked is how many units of a task the boats of a season ask for.
func (s *Season) Asked(c Counts, id ID) float64 {
	if once(id) {
		return c.Units[id]
	}
	return c.Units[id] * float64(s.Int(Boats))
}

// Left is how many units are still to do, what is at hand and what the log says is done
// taken off.
func (s *Season) Left(c Counts, done Progress, id ID) float64 {
	if int(table[id].Part) < s.Int(From) {
		return 0
	}
	return max(0, s.Asked(c, id)-s.Have[id]-done.Units[id])
}

// Sums are the hours of a plan in one part of the work, of practised hands.
type Sums struct{ Work, Travel [Parts]float64 }

// Total is all of it.
func (s Sums) Total() float64 {
	t := 0.0
	for p := range Parts {
		t += s.Of(p)
	}
	return t
}

// Of is the hours of one part, travel included.
func (s Sums) Of(p Part) float64 { return s.Work[p] + s.Travel[p] }

// GatherShare is the share of gathering in the whole, 0 where there is no work.
func (s Sums) GatherShare() float64 {
	if t := s.Total(); t > 0 {
		return s.Of(Gathering) / t
	}
	return 0
}

// Sum adds up what is left to do, at the mean of each time.
func (s *Season) Sum(c Counts, done Progress) Sums {
	rates := s.Rates(c, done)
	var out Sums
	for i := range table {
		t := &table[i]
		h := s.Left(c, done, t.ID) * rates[i].Mean() / 60
		out.Work[t.Part] += h
		if t.Woods {
			out.Travel[t.Part] += h * (s.woods() - 1)
		}
	}
	return out
}

// woods is how much longer an hour's work in the woods takes for the way there. It is 1
// where travel takes the whole day: Faults refuses that.
func (s *Season) woods() float64 {
	h, travel := s.Number(Hours), s.Number(Travel)
	if travel >= h {
		return 1
	}
	return h / (h - travel)
}

// Whole is by task the hours of practised hands that one boat takes from the first day, nothing
// done and nothing at hand, the way there with them. The times are those that progress has shown.
func (s *Season) Whole(c Counts, progress Progress) (out [Tasks]float64) {
	rates := s.Rates(c, progress)
	for i := range table {
		out[i] = c.Units[i] * rates[i].Mean() / 60
		if table[i].Woods {
			out[i] *= s.woods()
		}
	}
	return out
}
