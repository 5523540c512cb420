package main

import (
	"bytes"
	"encoding/binary"
	"errors"
)

// A compiled Go program says of every instruction which file and line it came from,
// for the trace of a panic: a sixteenth of the page, and the linker has no flag to
// leave it out. What the collector and panics themselves need stands beside it and
// stays, and so do the functions' names.
//
// The layout is pcHeader and _func of Go's runtime (symtab.go and runtime2.go), the
// same from Go 1.20 to 1.26; the header's first bytes are other ones in any other.

var (
	header        = []byte{0xf1, 0xff, 0xff, 0xff, 0, 0, 1, 8}
	errOtherLines = errors.New("this version of Go lays its line tables out otherwise: they stay in")
)

// Offsets in the header and in what is known of a function, bytes.
const (
	headFunctions, headUnits, headTables, headFuncs = 8, 40, 56, 64

	funcStack, funcFile, funcLine, funcTables, funcUnit, funcStart, funcMore = 16, 20, 24, 28, 32, 36, 44
)

// segment is a piece of the program's memory as it is in the file.
type segment struct{ file, memory, length int }

// unlined is a program of WebAssembly with nothing but noughts where its files and
// lines were, which compress to nothing.
func unlined(program []byte) ([]byte, error) {
	segments := dataSegments(program)
	size := 0
	for _, s := range segments {
		size = max(size, s.memory+s.length)
	}
	memory := make([]byte, size)
	for _, s := range segments {
		copy(memory[s.memory:], program[s.file:s.file+s.length])
	}
	if bytes.Count(memory, header) != 1 {
		return nil, errOtherLines
	}
	blankLines(memory[bytes.Index(memory, header):])
	out := bytes.Clone(program)
	for _, s := range segments {
		copy(out[s.file:s.file+s.length], memory[s.memory:])
	}
	return out, nil
}

// dataSegments reads the data section of a module that Go's linker wrote.
func dataSegments(program []byte) []segment {
	const start, dataSection, constant = 8, 11, 2
	at := start
	number := func() int {
		v, n := binary.Uvarint(program[at:])
		at += n
		return int(v)
	}
	for at < len(program) {
		kind := program[at]
		at++
		if length := number(); kind != dataSection {
			at += length
			continue
		}
		segments := make([]segment, number())
		for i := range segments {
			at += constant // memory 0, at a constant
			// Signed, but no address is negative, and those read as unsigned.
			memory := number()
			at++ // the constant's end
			length := number()
			segments[i] = segment{at, memory, length}
			at += length
		}
		return segments
	}
	return nil
}

// blankLines overwrites files and lines in a table that starts with its header.
func blankLines(table []byte) {
	head := func(at int) int { return int(binary.LittleEndian.Uint64(table[at:])) }
	word := func(at int) int { return int(binary.LittleEndian.Uint32(table[at:])) }
	funcs, tables := head(headFuncs), head(headTables)
	// Equal tables are written once: one that something else uses too must stay.
	used, lines := map[int]bool{0: true}, map[int]bool{}
	for i := range head(headFunctions) {
		f := funcs + word(funcs+8*i+4)
		used[word(f+funcStack)] = true
		for j := range word(f + funcTables) {
			used[word(f+funcMore+4*j)] = true
		}
		lines[word(f+funcFile)], lines[word(f+funcLine)] = true, true
		for _, at := range []int{funcFile, funcLine, funcUnit, funcStart} {
			clear(table[f+at : f+at+4])
		}
	}
	for at := range lines {
		if !used[at] {
			at += tables
			clear(table[at : at+tableLength(table[at:])])
		}
	}
	clear(table[head(headUnits):tables]) // units, then files
}

// tableLength is that of pairs of numbers, value and place, up to a value of nought
// that is not the first.
func tableLength(table []byte) int {
	at := 0
	for at == 0 || table[at] != 0 {
		for range 2 {
			_, n := binary.Uvarint(table[at:])
			at += n
		}
	}
	return at + 1
}
