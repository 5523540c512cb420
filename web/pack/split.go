package main

import (
	"bytes"
	"encoding/binary"
	"errors"
)

// What gzip makes of a program depends on what stands beside what. split takes the code
// apart: one stream of instructions, and one stream for each kind of operand. The commonest
// instructions, operands and all, and the commonest in a row have a byte. The addresses
// that calls return to, which count upward through the program, are written as what they
// are more than the one before. unpack.js lays the program together again.
//
// A split program is a head of 32-bit numbers, lowest byte first, and the streams:
//
//	bytes of the module up to the size of the code section's body
//	size of the whole module
//	functions, the code section's count
//	streams, then the size of each
//
// A shape is written as the length of its bytes, the stream its operand goes on in or 0,
// how that is written, and the bytes.

// Streams that are there always; those of operands follow.
const (
	plainStream = iota // all but the code section's body
	shapeStream
	localsStream // the declarations of each function, behind their length
	codeStream
	returnStream
	tableStream
	operandStreams
)

// How an operand is written: so many bytes where not one of these.
const (
	asNumber = 0 // bytes up to one under 128
	asReturn = 253
	asTable  = 254
	asLast   = 255 // the end of a function
)

// A function's size is written in this many bytes, and the code section's in five: they
// are known when all else is.
const (
	functionSize = 4
	sectionSize  = 5
)

// instruction is one of the module's, with its function and the operand in it.
type instruction struct {
	text []byte
	last bool
	// start is the function's address.
	start int64
}

// functionAddress is the address of a module's first function of its own, in the upper
// bits of an address; addressBits are those below, the place in the function. They are
// the toolchain's, Go's cmd/link/internal/wasm. Other programs are only packed less well.
const (
	functionAddress = 0x1000
	addressBits     = 16
)

// returnAddress is the address an i64.const gives, if it looks like one in a function.
func (i instruction) returnAddress() (int64, bool) {
	if i.text[0] != opI64Const {
		return 0, false
	}
	v, n := sleb(i.text[1:])
	minimal := bytes.Equal(appendSleb(nil, v), i.text[1:1+n])
	return v, minimal && v >= functionAddress<<addressBits && v < 1<<31
}

// decode lists a code section's instructions; the declarations of locals go with the
// functions.
func decode(code []byte) (list []instruction, locals [][]byte, err error) {
	count, b, err := uleb(code)
	if err != nil {
		return nil, nil, err
	}
	for f := range int(count) {
		var declared []byte
		if list, declared, b, err = decodeFunction(list, b, int64(functionAddress+f)<<addressBits); err != nil {
			return nil, nil, err
		}
		locals = append(locals, declared)
	}
	return list, locals, nil
}

// decodeFunction appends the instructions of the function that b begins with, and returns
// the declarations of its locals and what follows it.
func decodeFunction(list []instruction, b []byte, start int64) (_ []instruction, locals, after []byte, err error) {
	size, rest, err := uleb(b)
	if err != nil || size > uint64(len(rest)) {
		return nil, nil, nil, errShort
	}
	body, after := rest[:size], rest[size:]
	declared, rest, err := uleb(body)
	for range declared {
		if err == nil {
			_, rest, err = uleb(rest)
		}
		if err != nil || len(rest) == 0 {
			return nil, nil, nil, errShort
		}
		rest = rest[1:]
	}
	locals = body[:len(body)-len(rest)]
	for len(rest) > 0 {
		n, err := immediates(rest[0], rest[1:])
		if err != nil {
			return nil, nil, nil, err
		}
		list = append(list, instruction{rest[:1+n], len(rest) == 1+n, start})
		rest = rest[1+n:]
	}
	return list, locals, after, nil
}

// split takes a module apart.
func split(wasm []byte) ([]byte, error) {
	list, err := sections(wasm)
	if err != nil {
		return nil, err
	}
	var streams [operandStreams + operandKinds][]byte
	plain := append([]byte{}, wasm[:headerSize]...)
	var code []byte
	before := 0
	for _, s := range list {
		switch s.id {
		case codeSection:
			code = s.body
			plain = append(plain, codeSection)
			before = len(plain)
			continue
		case dataSection:
			if s.body, err = oneImage(s.body); err != nil {
				return nil, err
			}
		}
		plain = appendSection(plain, s)
	}
	if before == 0 {
		return nil, errors.New("the module has no code")
	}
	instructions, locals, err := decode(code)
	if err != nil {
		return nil, err
	}
	shapes, at, err := shapesOf(instructions)
	if err != nil {
		return nil, err
	}
	streams[plainStream] = plain
	count := binary.AppendUvarint(nil, uint64(len(locals)))
	size := len(plain) + sectionSize + len(count)
	for _, l := range locals {
		if len(l) > 255 {
			return nil, errors.New("a function declares too many kinds of local")
		}
		streams[localsStream] = append(append(streams[localsStream], byte(len(l))), l...)
		size += functionSize + len(l)
	}
	last, first := int64(0), true
	for _, i := range instructions {
		size += len(i.text)
		if first {
			last = max(last, i.start)
		}
		first = i.last
		if n, found := at[shape{string(i.text), 0, asNumber}]; found && !i.last {
			streams[codeStream] = append(streams[codeStream], n)
			continue
		}
		g := i.general()
		streams[codeStream] = append(streams[codeStream], at[g])
		operand := i.text[len(g.bytes):]
		switch g.how {
		case asLast:
		case asReturn:
			v, _ := i.returnAddress()
			streams[returnStream] = appendSleb(streams[returnStream], v-last)
			last = v
		case asTable:
			if streams[tableStream], err = appendTable(streams[tableStream], operand); err != nil {
				return nil, err
			}
		default:
			streams[g.stream] = append(streams[g.stream], operand...)
		}
	}
	shapes, streams[codeStream] = paired(shapes, streams[codeStream])
	for _, s := range shapes {
		streams[shapeStream] = append(append(streams[shapeStream], byte(len(s.bytes)), s.stream, s.how), s.bytes...)
	}
	out := []byte{}
	for _, n := range []int{before, size, len(locals), len(streams)} {
		out = binary.LittleEndian.AppendUint32(out, uint32(n))
	}
	for _, s := range streams {
		out = binary.LittleEndian.AppendUint32(out, uint32(len(s)))
	}
	return append(out, bytes.Join(streams[:], nil)...), nil
}

// appendTable writes a br_table's labels, each as what it is more than the one before.
func appendTable(b, operand []byte) ([]byte, error) {
	count, rest, err := uleb(operand)
	if err != nil {
		return nil, err
	}
	b = appendSleb(b, int64(count))
	again := binary.AppendUvarint(nil, count)
	last := int64(0)
	for range count + 1 {
		var label uint64
		if label, rest, err = uleb(rest); err != nil {
			return nil, err
		}
		b = appendSleb(b, int64(label)-last)
		last = int64(label)
		again = binary.AppendUvarint(again, label)
	}
	if !bytes.Equal(again, operand) {
		return nil, errors.New("a table of labels is written longer than it need be")
	}
	return b, nil
}
