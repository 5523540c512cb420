package record

import (
	"slices"

	"barkwright/core/geom"
)

// Put returns the tracing with a mark more, numbered, or in the place of the one that there
// is one of in a view.
func (t Tracing) Put(m Mark) Tracing {
	t.Last++
	m.ID = t.Last
	t.Marks = slices.Clone(t.Marks)
	if p, _ := LookupPress(m.What); p.Single() {
		if _, i := t.Of(m.View, m.What); i >= 0 {
			t.Marks[i] = m
			return t
		}
	}
	t.Marks = append(t.Marks, m)
	return t
}

// With returns the tracing with another mark in place i.
func (t Tracing) With(i int, m Mark) Tracing {
	t.Marks = slices.Clone(t.Marks)
	t.Marks[i] = m
	return t
}

// Press returns the tracing with a point more at mark i, before its point k.
func (t Tracing) Press(i, k int, at geom.Vec2, held float64) Tracing {
	t.Last++
	m := t.Marks[i]
	m.Points = slices.Insert(slices.Clone(m.Points), k, Pressed{ID: t.Last, At: at, Held: held})
	return t.With(i, m)
}

// Move returns the tracing with point k of mark i elsewhere.
func (t Tracing) Move(i, k int, at geom.Vec2, held float64) Tracing {
	m := t.Marks[i]
	m.Points = slices.Clone(m.Points)
	m.Points[k].At, m.Points[k].Held = at, held
	return t.With(i, m)
}

// Drop returns the tracing without mark i, or, of one of as many points as one likes, without
// its point k.
func (t Tracing) Drop(i, k int) Tracing {
	m := t.Marks[i]
	if p, _ := LookupPress(m.What); p.Curve && len(m.Points) > 1 && k >= 0 {
		m.Points = slices.Delete(slices.Clone(m.Points), k, k+1)
		return t.With(i, m)
	}
	t.Marks = slices.Delete(slices.Clone(t.Marks), i, i+1)
	return t
}
