package main

import (
	"encoding/json"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What the compiler reads in place of text/template's file is that file but for the
// one look-up.
func TestMethodless(t *testing.T) {
	file, err := methodless(t.TempDir())
	require.NoError(t, err)
	text, err := os.ReadFile(file)
	require.NoError(t, err)
	var overlay struct{ Replace map[string]string }
	require.NoError(t, json.Unmarshal(text, &overlay))
	require.Len(t, overlay.Replace, 1)
	for original, copied := range overlay.Replace {
		before, err := os.ReadFile(original)
		require.NoError(t, err)
		after, err := os.ReadFile(copied)
		require.NoError(t, err)
		assert.Len(t, byName.FindAll(before, -1), 1)
		assert.NotRegexp(t, byName, string(after))
		assert.Equal(t, string(byName.ReplaceAll(before, []byte("(reflect.Value{})"))), string(after))
	}
}
