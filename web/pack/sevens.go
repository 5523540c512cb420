package main

import (
	"strconv"
	"unicode/utf8"
)

// Base64 spends a third of the file on nothing. A character of ASCII is one byte of a
// page in UTF-8 and holds seven bits, but for three that a page's reader would change or
// take for markup. Each of those goes together with the seven bits after it into a
// character of two bytes, so that every byte of the text holds seven bits of the
// program. boot.js reads them back.

// kept are the characters that do not stand for themselves.
const kept = "\x00\r<"

// firstPair is the first of the characters of two bytes that are used; those before it
// are controls.
const firstPair = 0x100

// sevens writes bytes as text, seven bits to a byte, the lowest bits first, behind the
// number of bytes in digits and a colon. A full stop ends it: the text may end in spaces.
func sevens(data []byte) string {
	out := strconv.AppendInt(make([]byte, 0, len(data)*8/7+32), int64(len(data)), 10)
	out = append(out, ':')
	pair := -1
	put := func(v byte) {
		if pair >= 0 {
			out = utf8.AppendRune(out, rune(firstPair+pair<<7+int(v)))
			pair = -1
			return
		}
		for i := range len(kept) {
			if v == kept[i] {
				pair = i
				return
			}
		}
		out = append(out, v)
	}
	held, bits := uint32(0), 0
	for _, b := range data {
		held |= uint32(b) << bits
		for bits += 8; bits >= 7; bits -= 7 {
			put(byte(held & 127))
			held >>= 7
		}
	}
	put(byte(held))
	if pair >= 0 {
		put(0)
	}
	return string(append(out, '.'))
}
