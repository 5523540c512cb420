package tracing

import (
	"errors"
	"slices"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/wasm/work"
)

// Tracing is a picture as it is looked at and what is in hand of it.
type Tracing struct {
	// View is the view being read, Task what is being pressed, empty where a press moves the
	// picture.
	View record.View
	Task string
	// Fade is how much of the picture shows, 0 to 1. Over tells that the fitted boat is drawn
	// over it.
	Fade float64
	Over bool
	// Said is what was last said, for the user.
	Said string

	open, shown   bool    // the window, a picture in it
	width, height float64 // of the picture, pixels
	sight         sight
	size          draw.Size
	held          int  // the number of the point in hand, 0 for none
	filling       int  // the number of the mark that takes the next point, 0 for none
	untyped       bool // what was just pressed measures something that is to be typed
	where         string
	number        int
	at            record.Place
	gesture       gesture
	// cross is where the keys stand in for a pointer, on the page; byKeys tells that they do.
	cross  geom.Vec2
	byKeys bool
	fit    fit
}

// New is a tracing that is closed.
func New() Tracing { return Tracing{Fade: 1, Over: true} }

// IsOpen tells whether the window is open, Shows whether a picture is in it.
func (t *Tracing) IsOpen() bool { return t.open }
func (t *Tracing) Shows() bool  { return t.shown }

// Open opens the window on a work.
func (t *Tracing) Open(w *work.Work) {
	t.open, t.held, t.filling = true, 0, 0
	if t.shown && !t.Lies(w) {
		t.Said = "What was read of this boat was pressed on another picture: open that one to see its points."
	}
	t.advance(w)
}

// Close closes the window; the picture stays in the page.
func (t *Tracing) Close() { t.open, t.gesture, t.byKeys = false, gesture{}, false }

// Lies tells whether the picture shown is of the size that the work's points were pressed on.
func (t *Tracing) Lies(w *work.Work) bool {
	was := w.Notebook.Tracing
	return t.shown && (was == nil || same(was.Width, t.width) && same(was.Height, t.height))
}

// of is what was pressed in a work on the picture that is shown, or one of its size without
// any points.
func (t *Tracing) of(w *work.Work) record.Tracing {
	was := w.Notebook.Tracing
	switch {
	case was != nil && (!t.shown || t.Lies(w)):
		return *was
	case t.shown:
		return record.NewTracing(t.width, t.height, w.Notebook.LastMark())
	}
	return record.NewTracing(1, 1, w.Notebook.LastMark())
}

func (t *Tracing) look(w *work.Work) look {
	tr := t.of(w)
	return look{t.sight, &tr}
}

// Choose takes a task in hand, none for an empty one.
func (t *Tracing) Choose(task string) {
	if p, ok := record.LookupPress(task); !ok || !slices.Contains(p.Views, t.View) {
		task = ""
	}
	t.Task, t.held, t.filling, t.Said = task, 0, 0, ""
	t.where, t.number, t.at = "", 0, record.Place{}
}

// ChooseView takes a view in hand.
func (t *Tracing) ChooseView(w *work.Work, v record.View) {
	if v < 0 || v >= record.Views {
		return
	}
	t.View = v
	t.Choose("")
	t.advance(w)
}

// advance takes in hand what the view still needs to be read, if anything.
func (t *Tracing) advance(w *work.Work) {
	tr := t.of(w)
	needs := []string{record.BaseLine, record.MiddlePoint}
	if tr.Sort == record.SetSquare {
		needs = append(needs, record.KnownRectangle)
	}
	for _, task := range needs {
		if _, i := tr.Of(t.View, task); i < 0 {
			t.Task, t.filling = task, 0
			return
		}
	}
	t.Task, t.filling = "", 0
	if !tr.Scaled(t.View) {
		t.Task = record.LetteredSize
	}
}

// inHand is the place of the point in hand: its mark's and its own.
func (t *Tracing) inHand(tr *record.Tracing) (mark, point int, ok bool) {
	if t.held == 0 {
		return 0, 0, false
	}
	for i, m := range tr.Marks {
		for k, p := range m.Points {
			if p.ID == t.held {
				return i, k, true
			}
		}
	}
	return 0, 0, false
}

// Hold takes a point in hand by its number, none for 0.
func (t *Tracing) Hold(w *work.Work, number int) {
	t.held = number
	tr := t.of(w)
	i, _, ok := t.inHand(&tr)
	if !ok {
		t.held = 0
		return
	}
	m := tr.Marks[i]
	t.View = m.View
	if t.filling != m.ID {
		t.filling = 0
	}
	if t.Task != m.What {
		t.Task = ""
	}
	t.where = t.whereOf(w, m)
}

// Held is the number of the point in hand, 0 for none.
func (t *Tracing) Held() int { return t.held }

var errFull = errors.New("No more fits on one picture: take something off it first.")

// press sets a point of the task in hand, held to so many pixels.
func (t *Tracing) press(w *work.Work, at geom.Vec2, held float64) {
	p, ok := record.LookupPress(t.Task)
	if !ok {
		return
	}
	tr := t.of(w)
	if tr.Pressed() >= record.MostPressed || len(tr.Marks) >= record.MostMarks {
		t.Said = errFull.Error()
		return
	}
	at.X, at.Y = max(0, min(tr.Width, at.X)), max(0, min(tr.Height, at.Y))
	i := slices.IndexFunc(tr.Marks, func(m record.Mark) bool { return m.ID == t.filling })
	if t.filling == 0 || i < 0 {
		tr = tr.Put(record.Mark{View: t.View, What: t.Task, Number: t.number, At: t.at})
		i = slices.IndexFunc(tr.Marks, func(m record.Mark) bool { return m.ID == tr.Last })
	}
	tr = tr.Press(i, len(tr.Marks[i].Points), at, held)
	m := tr.Marks[i]
	t.held, t.filling, t.Said = tr.Last, m.ID, ""
	w.Trace(tr, false)
	if p.Curve || !m.Whole(&tr) {
		return
	}
	t.filling = 0
	switch {
	case p.ID == record.LetteredSize, p.ID == record.KnownRectangle:
		t.Task, t.untyped = "", true
	case p.Single():
		t.advance(w)
	}
}

// Drop takes off the point in hand of a curve, or the whole mark that it is of.
func (t *Tracing) Drop(w *work.Work) {
	tr := t.of(w)
	if i, k, ok := t.inHand(&tr); ok {
		w.Trace(tr.Drop(i, k), false)
	}
	t.held, t.filling = 0, 0
}

// DropMark takes off a whole mark by its number.
func (t *Tracing) DropMark(w *work.Work, number int) {
	tr := t.of(w)
	if i := slices.IndexFunc(tr.Marks, func(m record.Mark) bool { return m.ID == number }); i >= 0 {
		w.Trace(tr.Drop(i, -1), false)
	}
	t.held, t.filling = 0, 0
	if t.Task == "" {
		t.advance(w)
	}
}

// Untyped tells, once, that what was just pressed measures something that is to be typed.
func (t *Tracing) Untyped() bool {
	was := t.untyped
	t.untyped = false
	return was
}

// Undo takes back the last change of the boat or of its record.
func (t *Tracing) Undo(w *work.Work) {
	w.Undo()
	tr := t.of(w)
	if _, _, ok := t.inHand(&tr); !ok {
		t.held = 0
	}
	t.filling = 0
	if t.Task == "" {
		t.advance(w)
	}
}

// Kept is the picture that a boat keeps, and its size in pixels before it was made smaller.
// The picture is empty for none.
func Kept(w *work.Work) (picture string, width, height float64) {
	if tr := w.Notebook.Tracing; tr != nil {
		return tr.Picture, tr.Width, tr.Height
	}
	return "", 0, 0
}

// ask is what the user is asked to do.
func (t *Tracing) ask(w *work.Work) string {
	tr := t.of(w)
	p, ok := record.LookupPress(t.Task)
	switch {
	case !t.shown:
		return "Open a picture of the boat, drop one here, paste it, or take a photograph."
	case !ok && t.held > 0:
		return "Drag the point, or move it by a pixel with the arrow keys."
	case !ok:
		return "Choose what to press. Drag the picture to move it, pinch or turn the wheel to come nearer."
	}
	return strings.TrimSpace(p.Name + ": " + p.Ask(t.View, tr.Half[t.View]))
}
