package tracing

import (
	"barkwright/core/geom"
	"barkwright/wasm/work"
)

// A key moves a point by a pixel of the picture, and the cross, which looks for a place, by
// crossStep CSS pixels; with the shift key ten times as far, and the cross a tenth.
const crossStep = 10

var arrows = map[string]geom.Vec2{"ArrowLeft": {X: -1}, "ArrowRight": {X: 1}, "ArrowUp": {Y: -1}, "ArrowDown": {Y: 1}}

// Key answers a key pressed on the picture and tells whether it did, and whether what was
// pressed is another now.
func (t *Tracing) Key(w *work.Work, key string, shift bool) (took, changed bool) {
	if !t.shown {
		return false, false
	}
	l := t.look(w)
	mark, point, held := t.inHand(l.Tracing)
	if way, ok := arrows[key]; ok {
		t.moveByKey(w, way, shift)
		return true, held
	}
	switch key {
	case "Enter", " ":
		switch {
		case held && t.byKeys:
			// What is held is let go where it lies, and the cross goes on from there.
			t.cross, t.held = l.on(l.Marks[mark].Points[point].At), 0
			return true, false
		case t.Task == "":
			return true, false
		}
		t.startKeys()
		t.press(w, l.under(t.cross), max(leastHeld, mouseHolds/t.sight.zoom))
		return true, true
	case "Escape":
		if held || t.Task != "" {
			t.held, t.Task, t.filling = 0, "", 0
			return true, false
		}
	case "Delete", "Backspace":
		t.Drop(w)
		return true, held
	case "+", "=":
		t.Nearer(w, 1.5)
		return true, false
	case "-":
		t.Nearer(w, 1/1.5)
		return true, false
	case "0":
		t.Whole(w)
		return true, false
	}
	return false, false
}

// startKeys begins with the cross in the middle.
func (t *Tracing) startKeys() {
	if !t.byKeys {
		t.byKeys, t.cross = true, geom.Vec2{X: t.size.Width / 2, Y: t.size.Height / 2}
	}
}

// moveByKey moves the point in hand, or the cross where something is to be pressed, or the
// picture.
func (t *Tracing) moveByKey(w *work.Work, way geom.Vec2, shift bool) {
	l := t.look(w)
	i, k, held := t.inHand(l.Tracing)
	far, long := 1.0, float64(crossStep)
	if shift {
		far, long = 10, 1
	}
	switch {
	case held:
		t.byKeys = true
		// Along the picture's own rows and columns where it lies nearly straight.
		step := l.under(l.on(geom.Vec2{}).Add(way.Scale(l.zoom)))
		p := l.Marks[i].Points[k]
		t.moveTo(w, p.At.Add(step.Scale(far)), max(leastHeld, min(p.Held, mouseHolds/l.zoom)), true)
		t.follow(t.look(w))
	case t.Task != "":
		t.startKeys()
		t.cross = t.cross.Add(way.Scale(long))
		t.cross.X, t.cross.Y = max(0, min(t.size.Width, t.cross.X)), max(0, min(t.size.Height, t.cross.Y))
	default:
		t.sight.pan = t.sight.pan.Sub(way.Scale(5 * long))
	}
}

// follow moves the picture so that the point in hand is seen.
func (t *Tracing) follow(l look) {
	i, k, ok := t.inHand(l.Tracing)
	if !ok {
		return
	}
	at := l.on(l.Marks[i].Points[k].At)
	t.sight.pan.X += max(0, -at.X) - max(0, at.X-t.size.Width)
	t.sight.pan.Y += max(0, -at.Y) - max(0, at.Y-t.size.Height)
}

// Rest ends what keys began: the point has come to where it stays.
func (t *Tracing) Rest(w *work.Work) {
	if t.gesture.doing != dragging {
		w.Commit()
	}
}
