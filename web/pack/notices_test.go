package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// What stands beside the source is what the page has at its foot.
func TestNoticesBesideTheSource(t *testing.T) {
	all, err := works("../../wasm")
	require.NoError(t, err)
	beside, err := os.ReadFile("../NOTICES.txt")
	require.NoError(t, err)
	assert.Equal(t, noticesText(noticesOf(all)), string(beside), "run go run ./web/pack -notices")
}

// Whose copies the page holds was looked up by hand once, in the module cache; the
// phrases are those that the licences ask to be kept: BSD-3-Clause, and Apache-2.0,
// section 4, with the NOTICE that Ebitengine has beside it.
func TestNoticesHoldWhatLicencesAsk(t *testing.T) {
	all, err := works("../../wasm")
	require.NoError(t, err)
	list := noticesOf(all)
	page := noticesHTML(list)
	for _, phrase := range []string{
		"Go: its runtime, standard library and wasm_exec.js (LICENSE)", "golang.org/x/sync ", "hideconsole ",
		"github.com/hajimehoshi/ebiten/v2 ", "Copyright 2009 The Go Authors", "Redistributions in binary form must reproduce",
		"Apache License", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION", "Camilla Löwy",
	} {
		assert.Contains(t, page, phrase)
	}
	for _, phrase := range []string{"chromedp", "testify", "gonum", "barkwright "} {
		assert.NotContains(t, page, phrase, "not in the page")
	}
	assert.Equal(t, 1, strings.Count(page, "TERMS AND CONDITIONS FOR USE"), "a text that two share stands once")
	seen := map[string]bool{}
	for _, n := range list {
		assert.False(t, seen[n.text])
		seen[n.text] = true
	}
}

// A package's own licence is found beside it, as its module's is above it, and a module
// without any is not handed out.
func TestNoticesAreLookedForAbove(t *testing.T) {
	top := t.TempDir()
	inner := filepath.Join(top, "a", "b")
	require.NoError(t, os.MkdirAll(inner, 0o755))
	w := copied{name: "example"}
	require.NoError(t, w.take(inner, top))
	assert.False(t, w.licensed())
	require.NoError(t, os.WriteFile(filepath.Join(top, "NOTICE"), []byte("a notice"), 0o600))
	require.NoError(t, w.take(inner, top))
	assert.False(t, w.licensed(), "a notice alone gives no leave")
	require.NoError(t, os.WriteFile(filepath.Join(inner, "Licence.txt"), []byte("\r\na licence\r\n"), 0o600))
	require.NoError(t, w.take(inner, top))
	assert.True(t, w.licensed())
	assert.Equal(t, map[string]string{"NOTICE": "a notice\n", "a/b/Licence.txt": "a licence\n"}, w.texts)
}
