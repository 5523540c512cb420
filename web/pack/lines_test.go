package main

import (
	"bytes"
	"compress/gzip"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// A program without its lines collects, grows its stack and panics as before, and
// still knows its functions by name.
func TestUnlined(t *testing.T) {
	program, err := compile("./testdata/traced")
	require.NoError(t, err)
	blank, err := unlined(program)
	require.NoError(t, err)
	assert.Len(t, blank, len(program), "nothing moved")
	assert.Less(t, gzipped(t, blank), gzipped(t, program)*97/100)
	node, err := exec.LookPath("node")
	if err != nil {
		t.Skip("no node here to run it in")
	}
	for _, c := range []struct {
		name    string
		program []byte
		says    string
	}{
		{"as compiled", program, "main.main.func1 barkwright/web/pack/testdata/traced/main.go 28\n"},
		{"unlined", blank, "main.main.func1 ? 0\n"},
	} {
		file := filepath.Join(t.TempDir(), "program.wasm")
		require.NoError(t, os.WriteFile(file, c.program, 0o644))
		run := exec.Command(node, filepath.Join(runtime.GOROOT(), "lib", "wasm", "wasm_exec_node.js"), file)
		run.Env = []string{"PATH=" + os.Getenv("PATH")}
		said, err := run.CombinedOutput()
		assert.NoError(t, err, c.name)
		assert.Equal(t, "runtime error: index out of range [1] with length 0 "+c.says, string(said), c.name)
	}
}

func gzipped(t *testing.T, data []byte) int {
	var b bytes.Buffer
	z := gzip.NewWriter(&b)
	_, err := z.Write(data)
	require.NoError(t, err)
	require.NoError(t, z.Close())
	return b.Len()
}

// Where there is no such table nothing is touched.
func TestUnlinedOtherwise(t *testing.T) {
	program, err := unlined([]byte("\x00asm\x01\x00\x00\x00\x0b\x07\x01\x00\x41\x08\x0b\x01\xf1"))
	assert.ErrorIs(t, err, errOtherLines)
	assert.Nil(t, program)
}
