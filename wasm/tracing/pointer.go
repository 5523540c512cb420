package tracing

import (
	"math"
	"slices"

	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/wasm/work"
)

// Pointer is a pointer on the picture: its number, where it is in CSS pixels from the corner
// of the picture's place, and whether it is a finger. Aside tells of a mouse that another
// button than the first is pressed on it: that moves the picture whatever is in hand.
type Pointer struct {
	ID     int
	At     geom.Vec2
	Finger bool
	Aside  bool
}

// doing is what pointers are doing.
type doing int

const (
	nothing  doing = iota
	setting        // a point is about to be set
	dragging       // the point in hand is being moved
	panning        // the picture is being moved
	pinching       // two fingers move and size it
)

type gesture struct {
	doing
	// down are the pointers that are, the first ones first; begun is where the first came down.
	down  []Pointer
	begun geom.Vec2
	// off is from the pointer to the point dragged.
	off   geom.Vec2
	moved bool
}

const (
	// A point is taken in hand from so near, CSS pixels: by a finger, by one that presses one
	// point after another, and by a mouse. slip is how far a press may move and still be one on
	// the spot.
	fingerReach, tracingReach, mouseReach, slip = 22.0, 12.0, 9.0, 3
	// How nearly a place is held on the screen, as a standard deviation in CSS pixels: choices of
	// this project. The loupe shows a finger what is under it.
	fingerHolds, mouseHolds = 1.5, 1.0
	// leastHeld is the least spread in pixels of the picture: points lie on whole ones by keys.
	leastHeld = 0.5
)

// holds is how nearly a pointer holds a place, pixels of the picture.
func (t *Tracing) holds(p Pointer) float64 {
	on := mouseHolds
	if p.Finger {
		on = fingerHolds
	}
	return max(leastHeld, on/t.sight.zoom)
}

// Down puts a pointer on the picture.
func (t *Tracing) Down(w *work.Work, p Pointer) {
	if !t.shown {
		return
	}
	g := &t.gesture
	t.byKeys = false
	g.down = append(g.down, p)
	if len(g.down) > 1 {
		if g.doing == dragging {
			w.Cancel()
		}
		g.doing = pinching
		return
	}
	g.begun, g.moved = p.At, false
	l := t.look(w)
	number, at, near := t.near(l, p)
	switch {
	case p.Aside:
		g.doing = panning
	case near:
		t.Hold(w, number)
		g.doing, g.off = dragging, l.on(at).Sub(p.At)
	case t.Task != "":
		g.doing, t.held = setting, 0
	default:
		g.doing = panning
	}
}

// near is the point that a pointer takes in hand: with a task only the one that was pressed
// last, so that others may lie where it does.
func (t *Tracing) near(l look, p Pointer) (number int, at geom.Vec2, ok bool) {
	reach := mouseReach
	switch {
	case p.Finger && t.Task != "":
		reach = tracingReach
	case p.Finger:
		reach = fingerReach
	}
	for _, m := range t.inView(l.Tracing) {
		for _, q := range m.Points {
			if t.Task != "" && q.ID != t.held {
				continue
			}
			if d := l.on(q.At).Sub(p.At).Len(); d <= reach {
				reach, number, at, ok = d, q.ID, q.At, true
			}
		}
	}
	return number, at, ok
}

// Move moves a pointer, and tells whether it is down.
func (t *Tracing) Move(w *work.Work, p Pointer) bool {
	g := &t.gesture
	i := g.index(p.ID)
	if i < 0 {
		return false
	}
	was := append([]Pointer(nil), g.down...)
	g.down[i] = p
	g.moved = g.moved || p.At.Sub(g.begun).Len() > slip
	switch g.doing {
	case panning:
		t.sight.pan = t.sight.pan.Add(p.At.Sub(was[i].At))
	case dragging:
		if g.moved {
			l := t.look(w)
			t.moveTo(w, l.under(p.At.Add(g.off)), t.holds(p), true)
		}
	case pinching:
		t.pinch(w, was)
	}
	return true
}

// pinch keeps what is under two fingers under them; the picture is not turned by it.
func (t *Tracing) pinch(w *work.Work, was []Pointer) {
	g := &t.gesture
	if len(g.down) < 2 {
		return
	}
	a, b, c, d := was[0].At, was[1].At, g.down[0].At, g.down[1].At
	l := t.look(w)
	if before := b.Sub(a).Len(); before > 1 {
		l.sight = l.nearer(d.Sub(c).Len()/before, a.Lerp(b, 0.5))
	}
	l.pan = l.pan.Add(c.Lerp(d, 0.5).Sub(a.Lerp(b, 0.5)))
	t.sight = l.sight
}

// Up takes a pointer off, and sets or lets go of what it had.
func (t *Tracing) Up(w *work.Work, p Pointer) {
	g := &t.gesture
	if g.index(p.ID) < 0 {
		return
	}
	did := g.doing
	if did == setting {
		t.press(w, t.look(w).under(p.At), t.holds(p))
	}
	if did == dragging {
		w.Commit()
	}
	t.lift(p.ID)
}

// Cancel takes a pointer off as if it had not been put down.
func (t *Tracing) Cancel(w *work.Work, p Pointer) {
	if t.gesture.index(p.ID) < 0 {
		return
	}
	if t.gesture.doing == dragging {
		w.Cancel()
	}
	t.lift(p.ID)
}

// lift takes a pointer off. What two fingers did ends with the first of them.
func (t *Tracing) lift(id int) {
	g := &t.gesture
	i := g.index(id)
	g.down = append(g.down[:i:i], g.down[i+1:]...)
	if g.doing != pinching || len(g.down) == 0 {
		g.doing = nothing
	}
}

func (g *gesture) index(id int) int {
	return slices.IndexFunc(g.down, func(p Pointer) bool { return p.ID == id })
}

// Wheel brings the picture nearer at a place, or farther, by what a wheel turned.
func (t *Tracing) Wheel(w *work.Work, at geom.Vec2, by float64) {
	if t.shown {
		t.sight = t.look(w).nearer(math.Exp(-max(-200, min(200, by))/300), at)
	}
}

// moveTo moves the point in hand, inside the picture. more tells that it moves on.
func (t *Tracing) moveTo(w *work.Work, at geom.Vec2, held float64, more bool) {
	tr := t.of(w)
	i, k, ok := t.inHand(&tr)
	if !ok {
		return
	}
	at.X, at.Y = max(0, min(tr.Width, at.X)), max(0, min(tr.Height, at.Y))
	w.Trace(tr.Move(i, k, at, held), more)
}

// inView lists the marks of the view.
func (t *Tracing) inView(tr *record.Tracing) []record.Mark {
	var list []record.Mark
	for _, m := range tr.Marks {
		if m.View == t.View {
			list = append(list, m)
		}
	}
	return list
}
