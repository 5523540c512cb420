package tracing

import (
	"math"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/record"
	"barkwright/wasm/work"
)

// Show takes a picture of so many pixels. Points pressed on one of this size lie over it.
func (t *Tracing) Show(w *work.Work, width, height float64) {
	t.shown, t.width, t.height = true, width, height
	t.held, t.filling, t.gesture, t.byKeys = 0, 0, gesture{}, false
	t.Said = "Nothing of the picture leaves this page."
	if was := w.Notebook.Tracing; was != nil && len(was.Marks) > 0 {
		t.Said = "The points that were pressed on a picture of this size lie over it again."
		if !t.Lies(w) {
			t.Said = "Points were pressed on a picture of another size. The first one pressed on this takes their place, and " +
				"what was read at them stays in the record."
		}
	}
	t.Whole(w)
	t.advance(w)
}

func same(a, b float64) bool { return math.Abs(a-b) < 0.5 }

// Room is the place on the page that the picture has.
func (t *Tracing) Room(w *work.Work, size draw.Size) {
	if size == t.size {
		return
	}
	first := t.size.Width == 0 || t.sight.zoom == 0
	by := geom.Vec2{X: (size.Width - t.size.Width) / 2, Y: (size.Height - t.size.Height) / 2}
	t.size = size
	if first {
		t.Whole(w)
		return
	}
	t.sight.pan = t.sight.pan.Add(by)
}

// Whole shows all of the picture.
func (t *Tracing) Whole(w *work.Work) {
	if t.size.Width > 0 && t.size.Height > 0 {
		t.sight = t.look(w).fitted(t.size)
	}
}

// Nearer shows it so many times as large, about the point in hand or the middle.
func (t *Tracing) Nearer(w *work.Work, times float64) {
	about := geom.Vec2{X: t.size.Width / 2, Y: t.size.Height / 2}
	l := t.look(w)
	if m, k, ok := t.inHand(l.Tracing); ok {
		about = l.on(l.Marks[m].Points[k].At)
	}
	t.sight = l.nearer(times, about)
}

// keeping changes how the picture is looked at, and keeps what lies in the middle there.
func (t *Tracing) keeping(w *work.Work, more bool, change func(*record.Tracing)) {
	l := t.look(w)
	middle := geom.Vec2{X: t.size.Width / 2, Y: t.size.Height / 2}
	p := l.under(middle)
	tr := t.of(w)
	change(&tr)
	w.Trace(tr, more)
	l = t.look(w)
	t.sight.pan = t.sight.pan.Add(middle.Sub(l.on(p)))
}

// Turn turns the picture by an angle, radians, clockwise.
func (t *Tracing) Turn(w *work.Work, by float64) {
	t.keeping(w, false, func(tr *record.Tracing) { tr.Turn = math.Remainder(tr.Turn+by, 2*math.Pi) })
}

// Level turns the picture until the base line of the view lies level, its first point to the
// left. It reports false where there is none.
func (t *Tracing) Level(w *work.Work) bool {
	l := t.look(w)
	base, i := l.Of(t.View, record.BaseLine)
	if i < 0 {
		t.Said = "Press the base line first."
		return false
	}
	d := l.on(base.Points[1].At).Sub(l.on(base.Points[0].At))
	t.Turn(w, -math.Atan2(d.Y, d.X))
	return true
}

// Mirror turns the picture over, left for right.
func (t *Tracing) Mirror(w *work.Work) {
	t.keeping(w, false, func(tr *record.Tracing) { tr.Mirrored, tr.Turn = !tr.Mirrored, -tr.Turn })
}

// SetSort says what the picture is.
func (t *Tracing) SetSort(w *work.Work, s record.Sort) {
	if s < 0 || s >= record.Sorts {
		return
	}
	tr := t.of(w)
	tr.Sort = s
	w.Trace(tr, false)
	t.Choose("")
	t.advance(w)
}

// SetHalf says whether half of the view is drawn.
func (t *Tracing) SetHalf(w *work.Work, half bool) {
	tr := t.of(w)
	tr.Half[t.View] = half
	w.Trace(tr, false)
	t.filling = 0
}

// Keep keeps the picture with the boat as a data URL, or no more where it is empty.
func (t *Tracing) Keep(w *work.Work, picture string) {
	tr := t.of(w)
	tr.Picture = picture
	w.Trace(tr, false)
}
