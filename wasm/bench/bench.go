// Package bench is the list that is worked from at the bench, one line at a time: which
// line is in hand, what comes before and after it, what is ticked, and what a tape read.
package bench

import (
	"math"
	"strings"

	"barkwright/core/lines"
	"barkwright/core/stage"
	"barkwright/wasm/work"
)

// Bench is where the user is: a list of a stage and a line of it. The zero Bench is closed.
type Bench struct {
	stage *stage.Stage
	list  string // its name
	line  string // its line's key
	// Tape is the reading being set, nil while none is.
	Tape *Tape
	// All tells that the lines are listed.
	All bool
	// said is what came of the last reading, of this line only.
	said Said
}

// Open is the bench at a stage: its first list that is not done, at the first line that is
// not. It reports false where the stage has no lists.
func Open(w *work.Work, at work.Place) (Bench, bool) {
	st, ok := at.Stage()
	if !ok || w.None {
		return Bench{}, false
	}
	lists := lines.Lists(w.Canoe(), st, w.System)
	if len(lists) == 0 {
		return Bench{}, false
	}
	b := Bench{stage: st}
	for _, l := range lists {
		if i := firstLeft(w, l, 0); i >= 0 {
			b.list, b.line = l.Name, l.Lines[i].Key
			return b, true
		}
	}
	b.list, b.line = lists[0].Name, lists[0].Lines[0].Key
	return b, true
}

// Resume is the bench at a place as Place wrote it; it reports false for what is none.
func Resume(w *work.Work, place string) (Bench, bool) {
	part := strings.SplitN(place, "|", 3)
	if len(part) < 3 || w.None {
		return Bench{}, false
	}
	st, _, ok := stage.Lookup(stage.Key(part[0]))
	if !ok {
		return Bench{}, false
	}
	b := Bench{stage: st, list: part[1], line: part[2]}
	_, ok = b.current(w)
	return b, ok
}

// Place is where the bench is, to be kept; empty where it is closed.
func (b *Bench) Place() string {
	if b.stage == nil {
		return ""
	}
	return string(b.stage.Key) + "|" + b.list + "|" + b.line
}

// IsOpen tells whether there is a list in hand.
func (b *Bench) IsOpen() bool { return b.stage != nil }

// position is a list and a place in it.
type position struct {
	lines.List
	at int
}

func (p position) line() lines.Line { return p.Lines[p.at] }

// current is the list in hand and the line's place: the first, where the boat has changed
// and has no such line. It reports false where there is no such list.
func (b *Bench) current(w *work.Work) (position, bool) {
	if b.stage == nil || w.None {
		return position{}, false
	}
	for _, l := range b.stage.Bench {
		if l.Name == b.list {
			p := position{List: lines.Make(w.Canoe(), l, w.System)}
			for i, line := range p.Lines {
				if line.Key == b.line {
					p.at = i
				}
			}
			return p, len(p.Lines) > 0
		}
	}
	return position{}, false
}

// firstLeft is the first line of a list from a place on that is not done, -1 for none.
func firstLeft(w *work.Work, l lines.List, from int) int {
	for i := from; i < len(l.Lines); i++ {
		if _, done := w.Notebook.Log.Done(l.Step, l.Lines[i].Key); !done {
			return i
		}
	}
	return -1
}

// Choose takes another list of the stage in hand, by its name, at the first line not done.
func (b *Bench) Choose(w *work.Work, name string) {
	was := *b
	*b = Bench{stage: b.stage, list: name}
	p, ok := b.current(w)
	if !ok {
		*b = was
		return
	}
	b.line = p.Lines[max(0, firstLeft(w, p.List, 0))].Key
}

// Step goes n lines on, and no farther than either end. It ticks nothing.
func (b *Bench) Step(w *work.Work, n int) {
	if p, ok := b.current(w); ok {
		b.take(p, p.at+n)
	}
}

// First and Last go to either end of the list, To to a line by its place.
func (b *Bench) First(w *work.Work) { b.To(w, 0) }
func (b *Bench) Last(w *work.Work)  { b.To(w, math.MaxInt) }
func (b *Bench) To(w *work.Work, i int) {
	if p, ok := b.current(w); ok {
		b.take(p, i)
		b.All = false
	}
}

func (b *Bench) take(p position, i int) {
	b.line = p.Lines[max(0, min(len(p.Lines)-1, i))].Key
	b.Tape, b.said = nil, Said{}
}

// Done ticks the line in hand on a day and goes to the next that is not done, from this one
// on or else from the first; the last one ticked stays in hand. Of a line that is ticked it
// takes the tick back and stays.
func (b *Bench) Done(w *work.Work, day string) {
	p, ok := b.current(w)
	if !ok {
		return
	}
	_, done := w.Notebook.Log.Done(p.Step, p.line().Key)
	w.Tick(p.Step, p.line().Key, day, !done)
	if done {
		return
	}
	next := firstLeft(w, p.List, p.at)
	if next < 0 {
		next = firstLeft(w, p.List, 0)
	}
	if next < 0 {
		next = p.at
	}
	b.take(p, next)
}
