package main

import (
	"cmp"
	"fmt"
	"slices"
)

const (
	mostShapes   = 256
	longestShape = 4 // bytes, which unpack.js writes at once
)

// A shape is what one byte of the code stream stands for.
type shape struct {
	bytes  string // written first
	stream byte
	how    byte
}

// whole instructions have no stream for their operands: there are few of each.
func whole(op byte) bool {
	return op >= opBlock && op <= opIf || op == opMore || op == opCallIndirect || op == opMemorySize || op == opMemoryGrow
}

// general is the shape of an instruction whose operands have no byte of their own.
func (i instruction) general() shape {
	op := i.text[0]
	head := i.text[:1]
	stream := func(n byte) byte { return operandStreams + n }
	switch _, returns := i.returnAddress(); {
	case i.last:
		return shape{string(head), 0, asLast}
	case returns:
		return shape{string(head), returnStream, asReturn}
	case op == opBrTable:
		return shape{string(head), tableStream, asTable}
	case len(i.text) == 1 || whole(op):
		return shape{string(i.text), 0, asNumber}
	case op == opF32Const:
		return shape{string(head), stream(0), 4}
	case op == opF64Const:
		return shape{string(head), stream(0), 8}
	case op >= opStore && op <= opLastStore:
		return shape{string(i.text[:2]), stream(1), asNumber}
	case op >= opLoad && op < opStore:
		return shape{string(i.text[:2]), stream(2), asNumber}
	case op >= opLocalGet && op <= opTableSet:
		return shape{string(head), stream(3), asNumber}
	case op == opI64Const && len(i.text) > 3:
		return shape{string(head), stream(4), asNumber}
	}
	return shape{string(head), stream(5 + op%8), asNumber}
}

// operandKinds is how many streams general shares operands out to.
const operandKinds = 5 + 8

// shapesOf gives every instruction a general shape, and what is left of 256 to the
// commonest instructions as they stand.
func shapesOf(list []instruction) ([]shape, map[shape]byte, error) {
	general, often := map[shape]int{}, map[string]int{}
	for _, i := range list {
		g := i.general()
		general[g]++
		if len(g.bytes) > longestShape || len(g.bytes) == 0 {
			return nil, nil, fmt.Errorf("% x is longer than unpack.js writes at once", i.text)
		}
		if g.stream >= operandStreams && len(i.text) <= longestShape {
			often[string(i.text)]++
		}
	}
	shapes := make([]shape, 0, mostShapes)
	for s := range general {
		shapes = append(shapes, s)
	}
	slices.SortFunc(shapes, func(a, b shape) int {
		return cmp.Or(cmp.Compare(a.bytes, b.bytes), cmp.Compare(a.how, b.how), cmp.Compare(a.stream, b.stream))
	})
	if len(shapes) > mostShapes {
		return nil, nil, fmt.Errorf("%d kinds of instruction, more than a byte tells apart", len(shapes))
	}
	var texts []string
	for text := range often {
		texts = append(texts, text)
	}
	slices.SortFunc(texts, func(a, b string) int { return cmp.Or(often[b]-often[a], cmp.Compare(a, b)) })
	for _, text := range texts[:min(len(texts), mostShapes-len(shapes))] {
		shapes = append(shapes, shape{text, 0, asNumber})
	}
	at := map[shape]byte{}
	for n, s := range shapes {
		at[s] = byte(n)
	}
	return shapes, at, nil
}
