package main

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A module with an import and two functions, put together by hand after the W3C's
// WebAssembly Core Specification, 5.5 and 7.4.1.
func TestSizesByPackage(t *testing.T) {
	vector := func(parts ...string) string {
		out := string(rune(len(parts)))
		for _, p := range parts {
			out += p
		}
		return out
	}
	sized := func(s string) string { return string(rune(len(s))) + s }
	names := vector("\x00"+sized("env.host"), "\x01"+sized("example.org_a_b.run"), "\x02"+sized("example.org_a.stop"))
	wasm := []byte("\x00asm\x01\x00\x00\x00")
	for _, s := range []section{
		{importSection, []byte(vector(sized("e") + sized("f") + "\x00\x00"))},
		{codeSection, []byte(vector(sized("\x00\x41\x01\x0b"), sized("\x00\x0b")))},
		{customSection, []byte(sized("name") + "\x01" + sized(names))},
	} {
		wasm = appendSection(wasm, s)
	}
	sizes, err := sizesOf(wasm, []string{"example.org/a", "example.org/a/b"})
	require.NoError(t, err)
	assert.Equal(t, map[string]int{"example.org/a/b": 4, "example.org/a": 2}, sizes)
	for n := headerSize + 1; n < len(wasm); n += 7 {
		_, _ = sizesOf(wasm[:n], nil) // stops at the end of what there is
	}
}
