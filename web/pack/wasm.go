package main

import (
	"encoding/binary"
	"errors"
	"fmt"
	"math"
)

// The sections of a module that are not taken as they are: W3C, WebAssembly Core
// Specification, 5.5.2.
const (
	customSection = 0
	importSection = 2
	codeSection   = 10
	dataSection   = 11
)

// functionNames is the part of the custom section of names that names functions: the
// same, 7.4.1.
const functionNames = 1

// Opcodes that are told apart: the same, 5.4.
const (
	opUnreachable, opNop   = 0x00, 0x01
	opBlock, opLoop, opIf  = 0x02, 0x03, 0x04
	opEnd                  = 0x0b
	opBr, opBrIf           = 0x0c, 0x0d
	opBrTable, opReturn    = 0x0e, 0x0f
	opCall, opCallIndirect = 0x10, 0x11
	opLocalGet, opTableSet = 0x20, 0x26
	opLocalSet, opGlobal   = 0x21, 0x23
	opLoad, opStore        = 0x28, 0x36
	opLastStore            = 0x3e
	opMemorySize           = 0x3f
	opMemoryGrow           = 0x40
	opI32Const, opI64Const = 0x41, 0x42
	opF32Const, opF64Const = 0x43, 0x44
	opLastPlain            = 0xc4
	opMore                 = 0xfc
	lastTruncation         = 7
)

// emptyType is the type of a block that takes and leaves nothing: the same, 5.4.1.
const emptyType = 0x40

var errShort = errors.New("the module ends too early")

// uleb reads an unsigned number and returns what follows it.
func uleb(b []byte) (uint64, []byte, error) {
	v, n := binary.Uvarint(b)
	if n <= 0 {
		return 0, nil, errShort
	}
	return v, b[n:], nil
}

// sleb reads a signed number of at most 64 bits and how many bytes it takes.
func sleb(b []byte) (int64, int) {
	var v int64
	for i := range min(len(b), 10) {
		v |= int64(b[i]&127) << (7 * i)
		if b[i] < 128 {
			if b[i]&64 != 0 && i < 9 {
				v |= -1 << (7 * (i + 1))
			}
			return v, i + 1
		}
	}
	return 0, 0
}

func appendSleb(b []byte, v int64) []byte {
	for v < -64 || v > 63 {
		b = append(b, byte(v&127)|128)
		v >>= 7
	}
	return append(b, byte(v&127))
}

type section struct {
	id   byte
	body []byte
}

const headerSize = 8

// sections of a module, in order.
func sections(wasm []byte) ([]section, error) {
	if len(wasm) < headerSize {
		return nil, errShort
	}
	var list []section
	for b := wasm[headerSize:]; len(b) > 0; {
		size, rest, err := uleb(b[1:])
		if err != nil || size > uint64(len(rest)) {
			return nil, errShort
		}
		list = append(list, section{b[0], rest[:size]})
		b = rest[size:]
	}
	return list, nil
}

// appendSection is what sections reads.
func appendSection(b []byte, s section) []byte {
	b = binary.AppendUvarint(append(b, s.id), uint64(len(s.body)))
	return append(b, s.body...)
}

// oneImage lays a data section's segments into one, from the first byte to the last.
// The linker leaves zeros out by beginning a segment anew after each run of them, which
// makes a hundred thousand; their heads weigh more than the zeros do once compressed.
func oneImage(data []byte) ([]byte, error) {
	count, b, err := uleb(data)
	if err != nil {
		return nil, err
	}
	type segment struct {
		at   int64
		text []byte
	}
	var segments []segment
	first, end := int64(math.MaxInt32), int64(0)
	for range count {
		if len(b) < 2 || b[0] != 0 || b[1] != opI32Const {
			return nil, errors.New("a data segment is not of the one memory")
		}
		at, n := sleb(b[2:])
		if n == 0 || len(b) < 3+n || b[2+n] != opEnd {
			return nil, errors.New("a data segment's address is no constant")
		}
		size, rest, err := uleb(b[3+n:])
		if err != nil || size > uint64(len(rest)) {
			return nil, errShort
		}
		segments = append(segments, segment{at, rest[:size]})
		first, end = min(first, at), max(end, at+int64(size))
		b = rest[size:]
	}
	if count == 0 {
		return data, nil
	}
	image := make([]byte, end-first)
	for _, s := range segments {
		copy(image[s.at-first:], s.text)
	}
	out := append(appendSleb([]byte{1, 0, opI32Const}, first), opEnd)
	return append(binary.AppendUvarint(out, uint64(len(image))), image...), nil
}

// immediates is how many bytes follow an opcode as its operands.
func immediates(op byte, b []byte) (int, error) {
	numbers := 0
	switch {
	case op >= opBlock && op <= opIf, op == opBr, op == opBrIf, op == opCall, op >= opLocalGet && op <= opTableSet,
		op == opMemorySize, op == opMemoryGrow, op == opI32Const, op == opI64Const:
		numbers = 1
	case op >= opLoad && op <= opLastStore, op == opCallIndirect:
		numbers = 2
	case op == opBrTable:
		count, _, err := uleb(b)
		if err != nil {
			return 0, err
		}
		numbers = int(count) + 2
	case op == opF32Const:
		return 4, nil
	case op == opF64Const:
		return 8, nil
	case op == opMore:
		if len(b) == 0 {
			return 0, errShort
		}
		switch {
		case b[0] <= lastTruncation:
			numbers = 1
		case b[0] == 10: // memory.copy
			numbers = 3
		case b[0] == 11: // memory.fill
			numbers = 2
		default:
			return 0, fmt.Errorf("opcode fc %d is not known here", b[0])
		}
	case op <= 0x01, op == 0x05, op == opEnd, op == 0x0f, op == 0x1a, op == 0x1b, op > opF64Const && op <= opLastPlain:
	default:
		return 0, fmt.Errorf("opcode %x is not known here", op)
	}
	n := 0
	for range numbers {
		for {
			if n >= len(b) {
				return 0, errShort
			}
			n++
			if b[n-1] < 128 {
				break
			}
		}
	}
	return n, nil
}
