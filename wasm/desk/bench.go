package desk

import (
	"strconv"
	"strings"

	"barkwright/wasm/bench"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// BenchOpen tells whether a list is being worked from.
func (d *Desk) BenchOpen() bool { return d.bench.IsOpen() }

// noBench says why there is no bench at a place.
func noBench(at work.Place) string {
	if st, ok := at.Stage(); ok {
		return "Nothing is made one by one at " + st.Short + ": the other stages have a bench."
	}
	return "Each stage of the work has a bench of its own: choose a stage first."
}

// AtBench answers what is pressed at the bench on a day; what follows a colon says which: of what is
// opened the stage, and after a bar the list.
func (d *Desk) AtBench(what, day string) Reply {
	w, b := d.shown, &d.bench
	was := w.Notebook
	what, which, _ := strings.Cut(what, ":")
	n, _ := strconv.Atoi(which)
	switch what {
	case "open":
		at, list, _ := strings.Cut(which, "|")
		opened, ok := bench.Open(w, work.PlaceOf(at))
		if !ok {
			return say("readout", noBench(work.PlaceOf(at)))
		}
		if *b = opened; list != "" {
			b.Choose(w, list)
		}
	case "close":
		*b = bench.Bench{}
	case "list":
		b.Choose(w, which)
	case "step":
		b.Step(w, n)
	case "first":
		b.First(w)
	case "last":
		b.Last(w)
	case "to":
		b.To(w, n)
	case "all":
		b.All = !b.All
	case "done":
		b.Done(w, day)
	case "undo":
		w.Undo()
		return d.benchKept(Reply{Changed: true, Bench: true})
	case "tape":
		if b.Tape != nil {
			b.Tape = nil
		} else {
			b.SetTape(w)
		}
	case "turn":
		if b.Tape != nil {
			b.Tape.Turn(n)
		}
	case "reset":
		if b.Tape != nil {
			b.Tape.Reset()
		}
	case "save":
		b.Save(w, day)
	case "bring":
		r := d.Record("built", "")
		b.Brought()
		r.Bench = true
		return d.benchKept(r)
	}
	return d.benchKept(Reply{Bench: true, Ticked: w.Notebook != was})
}

// benchKept keeps where the bench is, so that it opens there again.
func (d *Desk) benchKept(r Reply) Reply {
	d.keeper.SetBench(d.bench.Place())
	return r
}

// ResumeBench opens the bench where it was when the page was left.
func (d *Desk) ResumeBench() Reply {
	if b, ok := bench.Resume(d.shown, d.keeper.Bench()); ok {
		d.bench = b
	}
	return Reply{Bench: true}
}

// BenchSlots are what the bench shows, as HTML by the ids of its places, and what of it is
// hidden. It reports false where it is closed.
func (d *Desk) BenchSlots() (slots map[string]string, hidden map[string]bool, open bool) {
	v, open := d.bench.View(d.shown)
	if !open {
		if d.bench.IsOpen() {
			d.bench = bench.Bench{}
			d.keeper.SetBench("")
		}
		return nil, nil, false
	}
	hidden = map[string]bool{"bench-all": !d.bench.All, "bench-line": d.bench.All, "bench-tape": d.bench.Tape == nil,
		"bench-tapes": !v.Tapes, "bench-undo": !d.shown.CanUndo()}
	return markup.Bench(v, d.bench.Tape), hidden, true
}

// The settings of sunlight as they are kept; none follows what the device asks for.
const sunOn, sunOff = "on", "off"

// Sun tells whether the page is shown for sunlight, on a device that asks for more contrast
// or does not.
func (d *Desk) Sun(asked bool) bool {
	if kept := d.keeper.Sun(); kept != "" {
		return kept == sunOn
	}
	return asked
}

// SetSun shows the page for sunlight from now on, or no more, whatever the device asks for.
func (d *Desk) SetSun(on bool) {
	if on {
		d.keeper.SetSun(sunOn)
	} else {
		d.keeper.SetSun(sunOff)
	}
}
