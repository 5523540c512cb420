package tracing

import (
	"barkwright/core/geom"
	"barkwright/wasm/work"
)

// Loupe is what is under the finger, larger.
type Loupe struct {
	On, Left bool
	Matrix   string
}

// loupeSize is the loupe's breadth, CSS pixels, and loupeTimes how much larger it shows.
const loupeSize, loupeTimes = 132.0, 3.0

// loupe shows what is under the finger, or where a key puts a point.
func (t *Tracing) loupe(w *work.Work) Loupe {
	l := t.look(w)
	var at geom.Vec2
	i, k, held := t.inHand(l.Tracing)
	switch g := t.gesture; {
	case !t.shown:
		return Loupe{}
	case g.doing == setting && len(g.down) > 0:
		at = g.down[0].At
	case held && (g.doing == dragging || t.byKeys):
		at = l.on(l.Marks[i].Points[k].At)
	case t.byKeys && t.Task != "":
		at = t.cross
	default:
		return Loupe{}
	}
	p := l.under(at)
	l.zoom *= loupeTimes
	l.pan = l.pan.Add(geom.Vec2{X: loupeSize / 2, Y: loupeSize / 2}.Sub(l.on(p)))
	return Loupe{On: true, Left: at.X > t.size.Width/2, Matrix: l.matrix()}
}
