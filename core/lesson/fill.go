package lesson

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core/design"
	"barkwright/core/units"
)

// Words is a text of a lesson whose slots are lengths alone.
func Words(text string, s units.System) string { return (&Run{}).Fill(text, s) }

// Name is what a result is called, in the reader's units.
func (r *Run) Name(key string, s units.System) string {
	if n, ok := r.Number(key, 0); ok {
		return n.Label(s)
	}
	if p, ok := design.Lookup(key); ok {
		return p.Label
	}
	return asideNames[key]
}

// asideNames are the names of results that only lessons speak of and that are watched.
var asideNames = map[string]string{
	"rib.middleRadius": "Middle rib, tightest radius", "rib.lastRadius": "Last rib, tightest radius",
	"rib.tight": "Ribs too tight to bend whole, each end", ribSpread: "A middle rib may be off by",
}

// Fill is a text of the lesson with its slots filled.
func (r *Run) Fill(text string, s units.System) string {
	var b strings.Builder
	for {
		before, rest, found := strings.Cut(text, "{")
		b.WriteString(before)
		if !found {
			return b.String()
		}
		slot, after, _ := strings.Cut(rest, "}")
		b.WriteString(r.slot(slot, s))
		text = after
	}
}

// slot is what stands in place of a slot.
func (r *Run) slot(slot string, s units.System) string {
	if inches, ok := strings.CutSuffix(slot, "in"); ok {
		if v, err := strconv.ParseFloat(inches, 64); err == nil {
			return units.SmallLength.Format(v*units.Inch, s)
		}
	}
	key, at, _ := strings.Cut(slot, "@")
	to, from, two := strings.Cut(at, "-")
	n, _ := strconv.Atoi(to)
	if !two {
		return r.Shown(key, n, s)
	}
	m, _ := strconv.Atoi(from)
	return r.Between(key, n, m, s)
}

// Shown is a result at a step as it is shown.
func (r *Run) Shown(key string, step int, s units.System) string {
	if n, ok := r.Number(key, step); ok {
		return n.Text(s)
	}
	v := r.Value(key, step)
	if math.IsNaN(v) {
		return units.NotWorkedOut
	}
	if p, ok := design.Lookup(key); ok {
		return p.Format(v, s)
	}
	return kindOf(key).Format(v, s)
}

// Between is the size of the difference of a result at two steps, of what is shown.
func (r *Run) Between(key string, to, from int, s units.System) string {
	a, okA := r.Number(key, from)
	b, okB := r.Number(key, to)
	if okA && okB && !a.Absent && !b.Absent {
		return b.Kind.Amount(b.Shown(b.Value, s)-a.Shown(a.Value, s), s)
	}
	k := kindOf(key)
	if p, ok := design.Lookup(key); ok {
		k = p.Kind
	}
	return k.Amount(k.Shown(r.Value(key, to), s)-k.Shown(r.Value(key, from), s), s)
}

// Kind is the kind of a result whose values are numbers, and whether it is one.
func (r *Run) Kind(key string) (units.Kind, bool) {
	for step := range r.Canoes {
		if n, ok := r.Number(key, step); ok {
			return n.Kind, n.Word == ""
		}
	}
	if p, ok := design.Lookup(key); ok {
		return p.Kind, p.Options == nil
	}
	_, ok := aside[key]
	return kindOf(key), ok
}

// kindOf is the kind of a result that only lessons speak of.
func kindOf(key string) units.Kind {
	switch key {
	case "rib.tight":
		return units.Count
	case "root.byGroups", "root.added":
		return units.Run
	}
	return units.SmallLength
}
