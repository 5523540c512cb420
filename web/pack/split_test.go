package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// module is a small one, by hand: W3C, WebAssembly Core Specification, 5. It has every
// way an operand is written, an address less than its function's, and two data segments
// out of order.
func module() []byte {
	address := func(f, place int64) []byte {
		return appendSleb([]byte{opI64Const}, (functionAddress+f)<<addressBits+place)
	}
	drop := []byte{0x1a}
	bodies := [][]byte{
		bytes.Join([][]byte{{1, 2, 0x7e}, // two i64 locals
			address(0, 3), drop, address(0, 1), drop, address(2, 9), drop, address(1, 0), drop,
			{opF32Const, 1, 2, 3, 0xff}, drop, {opF64Const, 1, 2, 3, 4, 5, 6, 7, 0xff}, drop,
			{opI32Const, 0x80, 0x80, 0x80, 0x80, 0x78}, drop, {opI64Const, 0x7f}, drop,
			{opBlock, 0x40, opBlock, 0x40, opLocalGet, 0, 0xa7, opBrTable, 3, 1, 0, 1, 0, opEnd, opEnd},
			{opI32Const, 8, opI64Const, 0xff, 1, 0x37, 3, 0x88, 1}, {opI32Const, 8, 0x29, 3, 0x90, 0x80, 1}, drop,
			{opI32Const, 0, opI32Const, 0, opI32Const, 0, opMore, 10, 0, 0}, {opCall, 1, opEnd}}, nil),
		{0, opEnd},
		bytes.Join([][]byte{{0}, address(2, 1), drop, {opI32Const, 1, opIf, 0x40, 0x05, opEnd, opEnd}}, nil),
	}
	code := []byte{byte(len(bodies))}
	for _, b := range bodies {
		code = append(binary.AppendUvarint(code, uint64(len(b))), b...)
	}
	wasm := []byte("\x00asm\x01\x00\x00\x00")
	for _, s := range []section{
		{1, []byte{1, 0x60, 0, 0}}, {3, []byte{3, 0, 0, 0}}, {5, []byte{1, 0, 1}}, {codeSection, code},
		{dataSection, []byte{2, 0, opI32Const, 20, opEnd, 2, 'n', 'd', 0, opI32Const, 16, opEnd, 1, 's'}},
		{0, []byte{1, 'x', 0xff}},
	} {
		wasm = appendSection(wasm, s)
	}
	return wasm
}

// joined is the module that a page lays together: sizes in all their bytes, data in one.
func joined(t *testing.T, wasm []byte) []byte {
	t.Helper()
	long := func(v, bytes int) []byte {
		var b []byte
		for i := range bytes {
			more := byte(128)
			if i == bytes-1 {
				more = 0
			}
			b = append(b, byte(v>>(7*i))&127|more)
		}
		return b
	}
	list, err := sections(wasm)
	require.NoError(t, err)
	out := append([]byte{}, wasm[:headerSize]...)
	for _, s := range list {
		switch s.id {
		case codeSection:
			count, b, err := uleb(s.body)
			require.NoError(t, err)
			code := binary.AppendUvarint(nil, count)
			for range count {
				size, rest, err := uleb(b)
				require.NoError(t, err)
				code = append(append(code, long(int(size), functionSize)...), rest[:size]...)
				b = rest[size:]
			}
			out = append(append(append(out, s.id), long(len(code), sectionSize)...), code...)
			continue
		case dataSection:
			s.body, err = oneImage(s.body)
			require.NoError(t, err)
		}
		out = appendSection(out, s)
	}
	return out
}

// The page's own script, under node, gives back the module byte for byte. With
// BARKWRIGHT_WASM it does so for a whole program.
func TestSplit(t *testing.T) {
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("no node here to run the page's script")
	}
	wasm := module()
	if file := os.Getenv("BARKWRIGHT_WASM"); file != "" {
		wasm, err = os.ReadFile(file)
		require.NoError(t, err)
	}
	apart, err := split(wasm)
	require.NoError(t, err)
	unpack, err := os.ReadFile("../unpack.js")
	require.NoError(t, err)
	script := regexp.MustCompile(`(?s)const piece = .*?(return async text)`).FindString(string(unpack))
	require.NotEmpty(t, script)
	script = strings.TrimSuffix(script, "return async text") + `
		const wasm = Buffer.concat([...joined(bytesOf(require('fs').readFileSync(0, 'utf8')).slice().buffer)]);
		console.log(WebAssembly.validate(wasm), require('crypto').createHash('sha256').update(wasm).digest('hex'));`
	run := exec.Command(node, "-e", script)
	run.Stdin = strings.NewReader(sevens(apart))
	out, err := run.CombinedOutput()
	require.NoError(t, err, string(out))
	assert.Equal(t, fmt.Sprintf("true %x\n", sha256.Sum256(joined(t, wasm))), string(out))
}

// Instructions that stand in a row again and again share a byte, as long as none but the last has its
// operand elsewhere.
func TestPaired(t *testing.T) {
	single := []shape{{"a", 0, asNumber}, {"b", operandStreams, asNumber}, {"c", 0, asLast}}
	shapes, code := paired(slices.Clone(single), []byte{0, 0, 1, 0, 0, 1, 1, 2, 0, 0, 1, 0, 2})
	assert.Equal(t, append(single, shape{"aa", 0, asNumber}, shape{"aab", operandStreams, asNumber}), shapes)
	assert.Equal(t, []byte{4, 4, 1, 2, 4, 0, 2}, code)
}

// Segments come into their places, with zeros between.
func TestOneImage(t *testing.T) {
	list, err := sections(module())
	require.NoError(t, err)
	image, err := oneImage(list[4].body)
	require.NoError(t, err)
	assert.Equal(t, append([]byte{1, 0, opI32Const, 16, opEnd, 6}, "s\x00\x00\x00nd"...), image)
}

// What is no such module is refused, not packed wrong.
func TestSplitRefuses(t *testing.T) {
	for name, wasm := range map[string][]byte{
		"nothing":   nil,
		"no code":   []byte("\x00asm\x01\x00\x00\x00"),
		"cut short": module()[:60],
		"an opcode of SIMD": appendSection([]byte("\x00asm\x01\x00\x00\x00"),
			section{codeSection, []byte{1, 4, 0, 0xfd, 0, opEnd}}),
	} {
		_, err := split(wasm)
		assert.Error(t, err, name)
	}
}
