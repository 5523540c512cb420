package check

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Golden compares text line by line with a file of testdata/golden, or rewrites the file.
func Golden(t testing.TB, update bool, name, got string) {
	t.Helper()
	top, err := filepath.Abs(".")
	require.NoError(t, err)
	for filepath.Base(top) != "core" && filepath.Dir(top) != top {
		top = filepath.Dir(top)
	}
	file := filepath.Join(filepath.Dir(top), "testdata", "golden", name)
	if update {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err, "run with -update to write it")
	wanted, gotten := strings.Split(string(want), "\n"), strings.Split(got, "\n")
	for i := range min(len(wanted), len(gotten)) {
		if !assert.Equal(t, wanted[i], gotten[i], "line %d of %s; rewrite with make golden and look at git diff", i+1, name) {
			return
		}
	}
	assert.Len(t, gotten, len(wanted), name)
}
