package main

import "strings"

// Base64 spends a third of the file on nothing. Two letters out of 91 hold 13
// bits, against its 12, and are still plain text in any encoding; boot.js reads
// them back. The page's budget is in bytes of file.

const pairBits = 13

// lastBits is what one letter left over at the end holds.
const lastBits = 5

// letters are the printable characters of ASCII, in order, but for the space,
// which may be trimmed, and the three that mean something inside a page.
func letters() string {
	var b strings.Builder
	for c := byte('!'); c <= '~'; c++ {
		if c != '&' && c != '<' && c != '>' {
			b.WriteByte(c)
		}
	}
	return b.String()
}

// pairs writes bytes as letters, 13 bits to two, the lowest bits first. What is
// left at the end takes one letter where that is enough, so that fewer than eight
// bits of filling follow it: a byte more and gzip's reader would refuse the lot.
func pairs(data []byte) string {
	alphabet := letters()
	out := make([]byte, 0, (len(data)*8/pairBits+1)*2)
	held, bits := uint32(0), 0
	put := func() {
		v := int(held & (1<<pairBits - 1))
		out = append(out, alphabet[v/len(alphabet)], alphabet[v%len(alphabet)])
		held >>= pairBits
		bits -= pairBits
	}
	for _, b := range data {
		held |= uint32(b) << bits
		bits += 8
		if bits >= pairBits {
			put()
		}
	}
	switch {
	case bits > lastBits:
		put()
	case bits > 0:
		out = append(out, alphabet[held])
	}
	return string(out)
}
