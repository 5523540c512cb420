package main

import (
	"bytes"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
)

// unsevens reads sevens back as unpack.js does.
func unsevens(text string) []byte {
	count, text, _ := strings.Cut(text, ":")
	size, _ := strconv.Atoi(count)
	out := make([]byte, 0, size)
	held, bits := uint32(0), 0
	take := func(v rune, wide int) {
		held |= uint32(v) << bits
		for bits += wide; bits >= 8; bits -= 8 {
			out = append(out, byte(held))
			held >>= 8
		}
	}
	for _, c := range strings.TrimSuffix(text, ".") {
		if c < 128 {
			take(c, 7)
		} else {
			take(rune(kept[(c-firstPair)>>pairBits]), 7)
			take((c-firstPair)&(1<<pairBits-1), pairBits)
		}
	}
	return out[:size]
}

// Every byte comes back, whatever the length, and nothing in the text can end a script
// or be changed by a page's reader: WHATWG, HTML, 13.2.3.5 and 13.2.5.4. No character needs more
// than a byte once it is read. Two bytes hold twelve bits at least; where all values are as common as one
// another, 3 of 128 do, which is 2 bits lost in every 3/128 characters.
func TestSevens(t *testing.T) {
	for n := range 300 {
		data := make([]byte, n)
		for i := range data {
			data[i] = byte(i*89*(n%3) + n*31)
		}
		text := sevens(data)
		assert.True(t, bytes.Equal(unsevens(text), data), "%d bytes", n)
		assert.False(t, strings.ContainsAny(text, kept))
		assert.True(t, utf8.ValidString(text))
		assert.LessOrEqual(t, len(text), n*8/6+8)
		assert.NotRegexp(t, `[^\x00-\x{ff}]`, text)
	}
	even := make([]byte, 1<<16)
	for i := range even {
		even[i] = byte(uint32(i) * 2654435761 >> 13) // Knuth's multiplicative hash
	}
	// A character holds 7 + 5*3/128 bits and takes 1 + 3/128 bytes.
	assert.InEpsilon(t, 8*float64(len(even))*(1+3.0/128)/(7+5*3.0/128), len(sevens(even)), 0.005)
}
