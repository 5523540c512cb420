package main

import (
	"bytes"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
)

// unsevens reads sevens back as boot.js does.
func unsevens(text string) []byte {
	count, text, _ := strings.Cut(text, ":")
	size, _ := strconv.Atoi(count)
	out := make([]byte, 0, size)
	held, bits := uint32(0), 0
	take := func(v rune) {
		held |= uint32(v) << bits
		for bits += 7; bits >= 8; bits -= 8 {
			out = append(out, byte(held))
			held >>= 8
		}
	}
	for _, c := range strings.TrimSuffix(text, ".") {
		if c < 128 {
			take(c)
		} else {
			take(rune(kept[(c-firstPair)>>7]))
			take((c - firstPair) & 127)
		}
	}
	return out[:size]
}

// Every byte comes back, whatever the length, and nothing in the text can end a script
// or be changed by a page's reader: WHATWG, HTML, 13.2.3.5 and 13.2.5.4.
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
		assert.LessOrEqual(t, len(text), n*8/7+8)
	}
}
