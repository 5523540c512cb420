package main

import (
	"bytes"
	"strconv"
	"unicode/utf8"
)

// Base64 spends a third of the file on nothing. A character of ASCII is one byte of a
// page in UTF-8 and holds seven bits, but for three that a page's reader would change or
// take for markup. Each of those goes together with the five bits after it into a
// character of two bytes. It is one of those up to U+00FF, with which a browser keeps the
// whole text in a byte a character; a single one beyond them would double the time that it
// takes to read. unpack.js reads them back.

// kept are the characters that do not stand for themselves.
const kept = "\x00\r<"

// firstPair is the first of the characters of two bytes that are used, the last 96 up to
// U+00FF: pairBits of the bits after each of kept.
const (
	firstPair = 0xa0
	pairBits  = 5
)

// sevens writes bytes as text, seven bits to a character, the lowest bits first, behind the
// number of bytes in digits and a colon. A full stop ends it: the text may end in spaces.
func sevens(data []byte) string {
	out := strconv.AppendInt(make([]byte, 0, len(data)*29/25+32), int64(len(data)), 10)
	out = append(out, ':')
	held, bits := uint32(0), 0
	put := func() {
		v := byte(held & 127)
		if i := bytes.IndexByte([]byte(kept), v); i >= 0 {
			out = utf8.AppendRune(out, rune(firstPair+i<<pairBits+int(held>>7&(1<<pairBits-1))))
			held >>= 7 + pairBits
			bits -= 7 + pairBits
			return
		}
		out = append(out, v)
		held >>= 7
		bits -= 7
	}
	for _, b := range data {
		held |= uint32(b) << bits
		for bits += 8; bits >= 7+pairBits; {
			put()
		}
	}
	for bits > 0 {
		put()
	}
	return string(append(out, '.'))
}
