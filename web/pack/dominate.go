package main

import "slices"

// order is a function's pieces in reverse postorder from a root that goes to every entry,
// and the immediate dominator of each: the last piece that every way to it leads through, or
// root. Method: K. Cooper, T. Harvey and K. Kennedy, "A simple, fast dominance algorithm",
// Rice University, 2001.
type order struct {
	list      []int   // the pieces that are ever reached
	rank      []int   // a piece's place in list
	dominator []int   // of each piece
	from      [][]int // the pieces before each
}

// root dominates what is entered from outside; unknown is what no way was found to.
const (
	root    = -1
	unknown = -2
)

func (f *flow) ordered(entries []bool) *order {
	n := len(f.pieces)
	o := &order{rank: make([]int, n), dominator: make([]int, n), from: make([][]int, n)}
	o.sort(f, entries)
	for r, i := range o.list {
		o.rank[i] = r
		for _, to := range f.pieces[i].after {
			o.from[to] = append(o.from[to], i)
		}
	}
	for i := range o.dominator {
		o.dominator[i] = unknown
	}
	for o.dominate(entries) {
	}
	return o
}

// sort lists the pieces. Of two that follow a piece, the one that it falls through to is
// listed first.
func (o *order) sort(f *flow, entries []bool) {
	seen := make([]bool, len(f.pieces))
	type visit struct {
		piece int
		after []int
	}
	var stack []visit
	push := func(i int) {
		if !seen[i] {
			seen[i] = true
			stack = append(stack, visit{i, f.pieces[i].after})
		}
	}
	for e := len(entries) - 1; e >= 0; e-- {
		if entries[e] {
			push(e)
		}
		for len(stack) > 0 {
			top := &stack[len(stack)-1]
			if len(top.after) == 0 {
				o.list = append(o.list, top.piece)
				stack = stack[:len(stack)-1]
				continue
			}
			to := top.after[0]
			top.after = top.after[1:]
			push(to)
		}
	}
	slices.Reverse(o.list)
}

// dominate goes over the pieces once and tells whether a dominator has changed.
func (o *order) dominate(entries []bool) bool {
	changed := false
	for _, i := range o.list {
		found := unknown
		if entries[i] {
			found = root
		}
		for _, p := range o.from[i] {
			switch {
			case o.dominator[p] == unknown:
			case found == unknown:
				found = p
			default:
				found = o.common(p, found)
			}
		}
		if o.dominator[i] != found {
			o.dominator[i], changed = found, true
		}
	}
	return changed
}

// common is the nearest piece, or root, that dominates two or is one of them.
func (o *order) common(a, b int) int {
	for a != b && a != root && b != root {
		if o.rank[a] > o.rank[b] {
			a = o.dominator[a]
		} else {
			b = o.dominator[b]
		}
	}
	if a == b {
		return a
	}
	return root
}

// dominates tells whether every way to b leads through a.
func (o *order) dominates(a, b int) bool { return o.common(a, b) == a }
