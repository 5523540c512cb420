package main

import (
	"cmp"
	"fmt"
	"slices"
)

const (
	mostShapes   = 256
	longestShape = 8 // bytes, which unpack.js writes at once
	// singleShapes are those of one instruction; the others are of several. By trial: with 120
	// to 180 the page is within a hundredth of its smallest.
	singleShapes = 160
)

// A shape is what one byte of the code stream stands for: instructions as they stand, of which
// the last may have an operand elsewhere.
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

// shapesOf gives every instruction a general shape, and shapes of their own to the commonest
// instructions with their operands.
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
	for _, text := range texts[:min(len(texts), max(singleShapes-len(shapes), 0))] {
		shapes = append(shapes, shape{text, 0, asNumber})
	}
	at := map[shape]byte{}
	for n, s := range shapes {
		at[s] = byte(n)
	}
	return shapes, at, nil
}

// paired gives what is left of 256 shapes to pairs of neighbours in the code stream, the
// commonest each time, and writes the stream with them. A pair is a shape like any other, so
// pairs grow: P. Gage, A New Algorithm for Data Compression, The C Users Journal 12 (2), 1994.
func paired(shapes []shape, code []byte) ([]shape, []byte) {
	for len(shapes) < mostShapes {
		var often [mostShapes * mostShapes]int
		for k := range len(code) - 1 {
			often[int(code[k])*mostShapes+int(code[k+1])]++
		}
		best, most, pair := 0, 1, shape{}
		for p, n := range often {
			if n <= most {
				continue
			}
			a, b := shapes[p/mostShapes], shapes[p%mostShapes]
			if a.stream == 0 && a.how == asNumber && len(a.bytes)+len(b.bytes) <= longestShape {
				best, most, pair = p, n, shape{a.bytes + b.bytes, b.stream, b.how}
			}
		}
		if most == 1 {
			break
		}
		n := 0
		for k := 0; k < len(code); k++ {
			code[n] = code[k]
			if k+1 < len(code) && int(code[k])*mostShapes+int(code[k+1]) == best {
				code[n] = byte(len(shapes))
				k++
			}
			n++
		}
		shapes, code = append(shapes, pair), code[:n]
	}
	return shapes, code
}
