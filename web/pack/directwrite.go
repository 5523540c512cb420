package main

import "encoding/binary"

// open begins a block or a loop and returns its depth.
func (w *writer) open(op byte) int {
	w.out = append(w.out, op, emptyType)
	w.depth++
	return w.depth
}

func (w *writer) end() {
	w.out = append(w.out, opEnd)
	w.depth--
}

// function writes it all.
func (w *writer) function() {
	for _, i := range w.start {
		w.out = append(w.out, i.text...)
	}
	if w.unwinds {
		w.whole = w.open(opBlock)
	}
	if w.back {
		w.head = w.open(opLoop)
	}
	if len(w.top) > 1 || w.back {
		w.table()
	} else {
		w.tree(w.top[0])
	}
	if w.back {
		w.end()
	}
	w.out = append(w.out, opUnreachable)
	if w.unwinds {
		w.end()
		w.out = append(w.out, opI32Const, 1)
	}
	w.out = append(w.out, opEnd)
}

// table writes the head's table and the pieces it goes to. A number by which none of them is
// entered goes past the last, where the program stops.
func (w *writer) table() {
	w.open(opBlock)
	labels := map[int]int{}
	for k := len(w.top) - 1; k >= 0; k-- {
		labels[w.top[k]] = k
		w.block[w.top[k]] = w.open(opBlock)
	}
	w.out = append(w.out, opLocalGet, 0)
	w.operand(opBrTable, len(w.entry)-1)
	for _, i := range w.entry {
		label, found := labels[i]
		if !found {
			label = len(w.top)
		}
		w.out = binary.AppendUvarint(w.out, uint64(label))
	}
	for _, i := range w.top {
		w.end()
		w.block[i] = 0
		w.tree(i)
	}
	w.end()
}

// tree writes a piece and all that it dominates.
func (w *writer) tree(i int) {
	if w.loops[i] {
		w.loop[i] = w.open(opLoop)
	}
	below := w.below[i]
	for k := len(below) - 1; k >= 0; k-- {
		w.block[below[k]] = w.open(opBlock)
	}
	w.piece(i)
	for _, b := range below {
		w.end()
		w.block[b] = 0
		w.tree(b)
	}
	if w.loops[i] {
		w.end()
		w.loop[i] = 0
	}
}

// piece writes what a piece does and where it goes on.
func (w *writer) piece(i int) {
	p := &w.pieces[i]
	for k := 0; k < len(p.steps); k++ {
		s := p.steps[k]
		switch {
		case s.kind == jump && k == len(p.steps)-1 && w.follows(s.to):
		case s.kind == jump:
			w.jump(s.to, opBr)
		case s.kind == unwind:
			w.operand(opBrIf, w.depth-w.whole)
		case s.text[0] == opIf && w.onlyJumps(p.steps[k+1:]):
			w.jump(p.steps[k+1].to, opBrIf)
			k += 2
		default:
			w.out = append(w.out, s.text...)
			switch s.text[0] {
			case opBlock, opLoop, opIf:
				w.depth++
			case opEnd:
				w.depth--
			}
		}
	}
	switch next := i + 1; {
	case !p.falls:
	case next == len(w.pieces):
		w.out = append(w.out, opUnreachable)
	case w.inlined[next]:
		w.tree(next)
	case !w.follows(next):
		w.jump(next, opBr)
	}
}

// onlyJumps tells whether what follows an if is nothing but a jump that does without the
// head's table.
func (w *writer) onlyJumps(steps []step) bool {
	return len(steps) >= 2 && steps[0].kind == jump && (w.block[steps[0].to] > 0 || w.loop[steps[0].to] > 0) &&
		steps[1].kind == asIs && steps[1].text[0] == opEnd
}

// follows tells whether a piece is what stands next, behind the innermost block.
func (w *writer) follows(i int) bool { return w.block[i] == w.depth && w.depth > 0 }

// jump goes to a piece.
func (w *writer) jump(to int, op byte) {
	switch {
	case w.block[to] > 0:
		w.operand(op, w.depth-w.block[to])
	case w.loop[to] > 0:
		w.operand(op, w.depth-w.loop[to])
	default:
		w.out = append(appendSleb(append(w.out, opI32Const), int64(w.number[to])), opLocalSet, 0)
		w.operand(opBr, w.depth-w.head)
	}
}

// operand writes an instruction with an unsigned operand.
func (w *writer) operand(op byte, operand int) {
	w.out = binary.AppendUvarint(append(w.out, op), uint64(operand))
}
