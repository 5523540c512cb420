package main

import (
	"encoding/binary"
	"errors"
	"slices"
)

// direct writes a program of Go's so that the jumps within its functions go straight where
// they go. It does what it did before, a quarter sooner, and is smaller.
func direct(wasm []byte) ([]byte, error) {
	list, err := sections(wasm)
	if err != nil {
		return nil, err
	}
	out := append(make([]byte, 0, len(wasm)), wasm[:headerSize]...)
	for _, s := range list {
		if s.id == codeSection {
			if s.body, err = directCode(s.body); err != nil {
				return nil, err
			}
		}
		out = appendSection(out, s)
	}
	return out, nil
}

// directCode is direct for a code section. Functions of another form stay as they are.
func directCode(code []byte) ([]byte, error) {
	count, b, err := uleb(code)
	if err != nil {
		return nil, err
	}
	out := binary.AppendUvarint(make([]byte, 0, len(code)), count)
	written := 0
	var body []instruction
	for range count {
		var locals, after []byte
		if body, locals, after, err = decodeFunction(body[:0], b, 0); err != nil {
			return nil, err
		}
		f, ok := flowOf(body)
		if !ok {
			out = append(out, b[:len(b)-len(after)]...)
		} else {
			text, err := f.direct(slices.Clone(locals))
			if err != nil {
				return nil, err
			}
			out = append(binary.AppendUvarint(out, uint64(len(text))), text...)
			written++
		}
		b = after
	}
	if written == 0 {
		return nil, errors.New("this Go compiles jumps in another way: see jumps.go in web/pack")
	}
	return out, nil
}

// writer writes a function's pieces one inside another: a piece that is jumped forward to
// follows a block that the jump leaves, and one that is jumped back to begins a loop. Method:
// N. Ramsey, "Beyond Relooper: recursive translation of unstructured control flow to
// structured control flow", Proc. ACM Program. Lang. 6, ICFP (2022), 90.
type writer struct {
	*flow
	*order
	out   []byte
	depth int // of blocks and loops here
	// top are the pieces that the head's table goes to, below the others by their dominators,
	// both in order. A piece that is inlined is written where the one before it ends.
	top     []int
	below   [][]int
	inlined []bool
	loops   []bool // the pieces that begin a loop
	// place is a piece's own in top or its outermost dominator's.
	place []int
	// back tells whether a jump goes back to one of top, through the table.
	back bool
	// The depths of the block that is left and of the loop that is gone round to come to a
	// piece, 0 where there is none from here; those of the table's loop and of the block that is
	// left when the stack is unwound.
	block, loop []int
	head, whole int
}

// direct appends the function to the declarations of its locals.
func (f *flow) direct(locals []byte) ([]byte, error) {
	entries := make([]bool, len(f.pieces))
	for i := range f.pieces {
		entries[i] = f.pieces[i].resumed
	}
	w := &writer{flow: f, out: locals}
	for w.order = f.ordered(entries); w.crosses(entries); w.order = f.ordered(entries) {
	}
	w.arrange()
	for _, i := range w.top {
		if w.number[i] < 0 {
			return nil, errors.New("no number of a function's table goes to a piece of it")
		}
	}
	w.function()
	return w.out, nil
}

// crosses makes an entry of every piece that is jumped back to from where it does not
// dominate: such a loop has several ways in. It tells whether there was one.
func (w *writer) crosses(entries []bool) bool {
	found := false
	for _, i := range w.list {
		for _, to := range w.pieces[i].after {
			if w.rank[to] <= w.rank[i] && w.dominator[to] != root && !w.dominates(to, i) {
				entries[to], found = true, true
			}
		}
	}
	return found
}

// arrange finds which pieces are written where.
func (w *writer) arrange() {
	n := len(w.pieces)
	w.below, w.inlined, w.loops = make([][]int, n), make([]bool, n), make([]bool, n)
	w.block, w.loop, w.place = make([]int, n), make([]int, n), make([]int, n)
	for _, i := range w.list {
		if w.dominator[i] == root {
			w.top = append(w.top, i)
		}
	}
	slices.Sort(w.top)
	for k, i := range w.top {
		w.place[i] = k
	}
	for _, i := range w.list {
		up := w.dominator[i]
		if up == root {
			continue
		}
		w.place[i] = w.place[up]
		if w.inlined[i] = w.onlyFallenTo(i); !w.inlined[i] {
			w.below[up] = append(w.below[up], i)
		}
	}
	for _, i := range w.list {
		for _, to := range w.pieces[i].after {
			if w.rank[to] <= w.rank[i] && w.dominates(to, i) {
				w.loops[to] = true
			} else if w.dominator[to] == root && w.place[to] <= w.place[i] {
				w.back = true
			}
		}
	}
}

// onlyFallenTo tells whether the one way forward to a piece is falling through from the one
// before it.
func (w *writer) onlyFallenTo(i int) bool {
	forward := 0
	for _, p := range w.from[i] {
		if w.rank[p] < w.rank[i] {
			forward++
		}
	}
	return forward == 1 && w.dominator[i] == i-1 && w.pieces[i-1].falls
}
