package main

import "bytes"

// Go's compiler writes every jump within a function, forward or back, as one to the
// function's head, where a table sends it on:
//
//	loop  block ... block  local.get 0  br_table ...  end
//	    the first piece ...  i32.const 3  local.set 0  br to the loop
//	end
//	    the second piece ...
//	end ...
//
// The table is needed where a function is resumed after a call, when another goroutine has
// run meanwhile. All other jumps can go straight where they go: a browser then sees loops as
// loops, and keeps what they work on in registers. direct.go writes a function so.

// flow is a function as pieces of code and the jumps between them.
type flow struct {
	start   []instruction // before all else: the stack pointer is read
	unwinds bool          // a block is round it that is left when the stack is unwound
	pieces  []piece
	// entry is the piece that the head's table goes to, by the number in local 0, and number
	// the least number that goes to a piece, or -1.
	entry, number []int
}

// piece is a basic block: it is entered at its first instruction alone.
type piece struct {
	steps []step
	// after are the pieces that may follow it: those it jumps to and last, where it falls
	// through, the one after it.
	after []int
	falls bool
	// resumed tells whether it is entered from outside: the function's first, or what
	// follows a call.
	resumed bool
}

// step is an instruction as it stands, a jump to a piece, or the leaving of the function
// when the stack is unwound.
type step struct {
	kind stepKind
	text []byte
	to   int
}

type stepKind int

const (
	asIs stepKind = iota
	jump
	unwind
)

// reader reads a function's instructions one after another.
type reader struct {
	body []instruction
	at   int
}

// take passes an instruction over if it is the one given.
func (r *reader) take(text ...byte) bool {
	if r.at < len(r.body) && bytes.Equal(r.body[r.at].text, text) {
		r.at++
		return true
	}
	return false
}

// flowOf reads a function. It reports false where the function is not of the compiler's
// form, or has nothing to jump to.
func flowOf(body []instruction) (*flow, bool) {
	r := reader{body: body}
	if !r.take(opGlobal, 0) || !r.take(opLocalSet, 1) {
		return nil, false
	}
	f := &flow{start: body[:r.at]}
	f.unwinds = len(body) > r.at+1 && body[r.at+1].text[0] == opLoop && r.take(opBlock, emptyType)
	if !r.take(opLoop, emptyType) {
		return nil, false
	}
	blocks := 0
	for r.take(opBlock, emptyType) {
		blocks++
	}
	if !r.take(opLocalGet, 0) || !f.readTable(&r, blocks) || !r.take(opEnd) {
		return nil, false
	}
	f.pieces = make([]piece, blocks)
	for i := range f.pieces {
		if !f.readPiece(&r, i) {
			return nil, false
		}
	}
	f.pieces[0].resumed = true
	ok := r.take(opUnreachable)
	if f.unwinds {
		ok = ok && r.take(opEnd) && r.take(opI32Const, 1)
	}
	return f, ok && r.take(opEnd) && r.at == len(body)
}

// readTable reads the head's table, whose labels are those of so many blocks.
func (f *flow) readTable(r *reader, blocks int) bool {
	if r.at >= len(r.body) || r.body[r.at].text[0] != opBrTable {
		return false
	}
	_, b, err := uleb(r.body[r.at].text[1:])
	for err == nil && len(b) > 0 {
		var label uint64
		if label, b, err = uleb(b); label >= uint64(blocks) {
			return false
		}
		f.entry = append(f.entry, int(label))
	}
	r.at++
	f.number = make([]int, blocks)
	for i := range f.number {
		f.number[i] = -1
	}
	for k := len(f.entry) - 1; k >= 0; k-- {
		f.number[f.entry[k]] = k
	}
	return err == nil
}

// readPiece reads piece i and the end of its block. It leaves out what does nothing.
func (f *flow) readPiece(r *reader, i int) bool {
	p := &f.pieces[i]
	depth := 0
	for ; r.at < len(r.body); r.at++ {
		s := step{text: r.body[r.at].text}
		switch s.text[0] {
		case opNop:
			continue
		case opBlock, opLoop, opIf:
			depth++
		case opEnd:
			if depth == 0 {
				r.at++
				f.close(i)
				return true
			}
			depth--
		case opBrTable:
			return false
		case opBr, opBrIf:
			label, _, err := uleb(s.text[1:])
			if err != nil {
				return false
			}
			// Labels count outward: this piece's own blocks, those that later pieces end,
			// the loop, and the block round it.
			switch out := int(label) - depth - (len(f.pieces) - 1 - i); {
			case int(label) < depth:
			case out == 0 && s.text[0] == opBr:
				to, ok := f.destination(p.steps)
				if !ok {
					return false
				}
				p.steps = p.steps[:len(p.steps)-2]
				p.after = append(p.after, to)
				s = step{kind: jump, to: to}
			case out == 1 && s.text[0] == opBrIf && f.unwinds:
				s = step{kind: unwind}
			default:
				return false
			}
		}
		p.steps = append(p.steps, s)
	}
	return false
}

// destination is where a jump to the head goes after steps that end with setting local 0 to
// a number.
func (f *flow) destination(steps []step) (int, bool) {
	n := len(steps)
	if n < 2 || steps[n-2].kind != asIs || steps[n-2].text[0] != opI32Const ||
		!bytes.Equal(steps[n-1].text, []byte{opLocalSet, 0}) {
		return 0, false
	}
	k, _ := sleb(steps[n-2].text[1:])
	if k < 0 || int(k) >= len(f.entry) {
		return 0, false
	}
	return f.entry[k], true
}

// callSteps is how many instructions a call without arguments takes: the return address put
// on the stack (eight), the start of the function called, the call, the stack pointer read
// anew (two) and the leaving.
const callSteps = 13

// close finds how piece i ends and what is entered from outside.
func (f *flow) close(i int) {
	p := &f.pieces[i]
	p.falls = true
	if n := len(p.steps); n > 0 {
		switch last := p.steps[n-1]; {
		case last.kind == unwind:
			// A call: it returns to the piece after it.
			if i+1 < len(f.pieces) {
				f.pieces[i+1].resumed = true
			}
			// What is nothing but a call may be where a recovered function runs what it has
			// deferred.
			p.resumed = p.resumed || n <= callSteps
		case last.kind == jump, last.text[0] == opReturn, last.text[0] == opUnreachable:
			p.falls = false
		}
	}
	if p.falls && i+1 < len(f.pieces) {
		p.after = append(p.after, i+1)
	}
}
