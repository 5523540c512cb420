package main

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// unpaired reads pairs back as boot.js does.
func unpaired(text string) []byte {
	alphabet := letters()
	var out []byte
	held, bits := uint32(0), 0
	take := func(v, n int) {
		held |= uint32(v) << bits
		for bits += n; bits >= 8; bits -= 8 {
			out = append(out, byte(held))
			held >>= 8
		}
	}
	for ; len(text) > 1; text = text[2:] {
		take(strings.IndexByte(alphabet, text[0])*len(alphabet)+strings.IndexByte(alphabet, text[1]), pairBits)
	}
	if text != "" {
		take(strings.IndexByte(alphabet, text[0]), lastBits)
	}
	return out
}

// Every byte comes back, whatever the length, and no letter can end a script.
func TestPairs(t *testing.T) {
	for n := range 60 {
		data := make([]byte, n)
		for i := range data {
			data[i] = byte(i*89 + n*31)
		}
		text := pairs(data)
		assert.True(t, bytes.Equal(unpaired(text), data), "%d bytes", n)
		assert.False(t, strings.ContainsAny(text, "<>& \n"))
	}
	assert.Len(t, letters(), 91)
}
