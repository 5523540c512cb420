package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// looped is the body of a function that counts local 2 down to zero, in the compiler's form
// and as it is written.
var looped = [2][][]byte{
	{
		{opGlobal, 0}, {opLocalSet, 1}, {opLoop, emptyType},
		{opBlock, emptyType}, {opBlock, emptyType}, {opBlock, emptyType},
		{opLocalGet, 0}, {opBrTable, 2, 0, 1, 2}, {opEnd},
		{opI32Const, 9}, {opLocalSet, 2}, {opEnd},
		{opLocalGet, 2}, {0x45}, {opIf, emptyType}, {opI32Const, 2}, {opLocalSet, 0}, {opBr, 2}, {opEnd},
		{opLocalGet, 2}, {opI32Const, 1}, {0x6b}, {opLocalSet, 2}, {opI32Const, 1}, {opLocalSet, 0}, {opBr, 1}, {opEnd},
		{opI32Const, 0}, {opReturn}, {opEnd},
		{opUnreachable}, {opEnd},
	}, {
		{opGlobal, 0}, {opLocalSet, 1},
		{opI32Const, 9}, {opLocalSet, 2},
		{opLoop, emptyType}, {opBlock, emptyType},
		{opLocalGet, 2}, {0x45}, {opBrIf, 0},
		{opLocalGet, 2}, {opI32Const, 1}, {0x6b}, {opLocalSet, 2}, {opBr, 1}, {opEnd},
		{opI32Const, 0}, {opReturn}, {opEnd},
		{opUnreachable}, {opEnd},
	},
}

func moduleOf(body []byte) []byte {
	code := append([]byte{1, byte(len(body) + 3), 1, 2, 0x7f}, body...)
	return appendSection([]byte("\x00asm\x01\x00\x00\x00"), section{codeSection, code})
}

// A loop without calls needs no table.
func TestDirect(t *testing.T) {
	wasm, err := direct(moduleOf(bytes.Join(looped[0], nil)))
	require.NoError(t, err)
	assert.Equal(t, moduleOf(bytes.Join(looped[1], nil)), wasm)
}

// A function that is not of the compiler's form stays as it is, and a program without one
// that is stops the build: the compiler has changed.
func TestDirectLeaves(t *testing.T) {
	for name, change := range map[string]func(body [][]byte){
		"a number for local 0 that is worked out": func(b [][]byte) { b[15] = []byte{opLocalGet, 2} },
		"a number out of the table":               func(b [][]byte) { b[15] = []byte{opI32Const, 3} },
		"a jump out of the loop":                  func(b [][]byte) { b[17] = []byte{opBr, 3} },
		"a jump on a condition":                   func(b [][]byte) { b[17] = []byte{opBrIf, 2} },
		"a table within":                          func(b [][]byte) { b[17] = []byte{opBrTable, 0, 2} },
		"another end":                             func(b [][]byte) { b[30] = []byte{0x01} },
		"another beginning":                       func(b [][]byte) { b[1] = []byte{opLocalSet, 2} },
		"a label past the blocks":                 func(b [][]byte) { b[7] = []byte{opBrTable, 2, 0, 1, 3} },
	} {
		t.Run(name, func(t *testing.T) {
			body := append([][]byte{}, looped[0]...)
			change(body)
			_, err := direct(moduleOf(bytes.Join(body, nil)))
			assert.ErrorContains(t, err, "compiles jumps in another way")
		})
	}
}

// A program with every kind of jump prints the same, natively and as it is written for the
// browser, and stops at the same line.
func TestDirectRuns(t *testing.T) {
	if _, err := exec.LookPath("node"); err != nil {
		t.Skip("no node here to run the program")
	}
	native, built := filepath.Join(t.TempDir(), "native"), filepath.Join(t.TempDir(), "jumps.wasm")
	for file, target := range map[string][]string{native: nil, built: {"GOOS=js", "GOARCH=wasm"}} {
		build := exec.Command("go", "build", "-o", file, "testdata/jumps.go")
		build.Env = append(os.Environ(), target...)
		out, err := build.CombinedOutput()
		require.NoError(t, err, string(out))
	}
	wasm, err := os.ReadFile(built)
	require.NoError(t, err)
	straight, err := direct(wasm)
	require.NoError(t, err)
	assert.Less(t, len(straight), len(wasm)*98/100)

	line := regexp.MustCompile(`jumps\.go:\d+`)
	run := func(name string, args ...string) (string, []string) {
		var out bytes.Buffer
		c := exec.Command(name, args...)
		c.Stderr = &out
		var exit *exec.ExitError
		require.ErrorAs(t, c.Run(), &exit)
		assert.Equal(t, 2, exit.ExitCode(), out.String())
		text, trace, _ := bytes.Cut(out.Bytes(), []byte("\ngoroutine "))
		return string(text), line.FindAllString(string(trace), 1)
	}
	text, stopped := run(native)
	pack, err := os.Executable()
	require.NoError(t, err)
	t.Setenv("BARKWRIGHT_UNDER_NODE", "1")
	again, there := run(pack, built)
	assert.Equal(t, text, again)
	assert.Equal(t, stopped, there)
	assert.NotEmpty(t, stopped)
}

// The test's own program stands in for pack -node.
func TestMain(m *testing.M) {
	if os.Getenv("BARKWRIGHT_UNDER_NODE") != "" {
		os.Exit(underNode(os.Args[1:]))
	}
	os.Exit(m.Run())
}
