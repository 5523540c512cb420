package core_test

import (
	"go/build"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// levels are the packages from the ground up: each may import those of levels
// before its own, and no other of ours.
var levels = [][]string{
	{"core/units", "core/geom", "core/known"},
	{"core/units/inches", "core/draw", "core/wood", "core/shape", "core/stage", "core/tally", "core/trace"},
	{"core/design", "core/plan"},
	{"core/hull"},
	{"core/frame", "core/bark", "core/afloat"},
	{"core/record", "core/gather", "core/crew", "core/onhand"},
	{"core/refit", "core/mend"},
	{"core", "core/file"},
	{"core/sure", "core/model"},
	{"core/answer"},
	{"core/pattern", "core/chart", "core/lines", "core/weigh", "core/lesson"},
	{"core/whatif"},
	{"core/sheet"},
	{"wasm/scene", "wasm/pipeline"},
	{"wasm/scene/flat", "wasm/scene/solid"},
	{"wasm/scene/raise"},
	{"wasm/scene/view"},
	{"wasm/keep", "wasm/find", "wasm/scene/onsheet"},
	{"wasm/work", "wasm/paint/mesh"},
	{"wasm/bench", "wasm/tracing"},
	{"wasm/markup", "wasm/hands"},
	{"wasm/desk"},
	{"wasm/paint", "wasm/bridge"},
	{"wasm"},
}

// outsiders are the packages from elsewhere that only some may import.
var outsiders = map[string][]string{
	"syscall/js":                       {"wasm/bridge", "wasm/paint", "web/e2e/bare"},
	"gonum.org/v1/gonum":               {"core/geom"},
	"github.com/hajimehoshi/ebiten/v2": {"wasm/paint", "web/e2e/bare"},
	"github.com/chromedp":              {},
	"text/template":                    {},
	"net/url":                          {}, // links net/netip and unique
	"html/template":                    {},
}

// Arrows point one way, as the map in DEVELOPERS.md draws them.
func TestArrowsPointOneWay(t *testing.T) {
	rank := map[string]int{}
	for i, level := range levels {
		for _, p := range level {
			rank[p] = i
		}
	}
	top := ".."
	js := build.Default
	js.GOOS, js.GOARCH, js.CgoEnabled = "js", "wasm", false
	seen := 0
	require.NoError(t, filepath.WalkDir(top, func(path string, e fs.DirEntry, err error) error {
		if err != nil || !e.IsDir() {
			return err
		}
		name, err := filepath.Rel(top, path)
		if err != nil || strings.HasPrefix(e.Name(), ".") && name != "." || e.Name() == "dist" ||
			e.Name() == "testdata" {
			return fs.SkipDir
		}
		name = filepath.ToSlash(name)
		p, err := js.ImportDir(path, 0)
		if _, none := err.(*build.NoGoError); none {
			return nil
		}
		require.NoError(t, err, name)
		own, placed := rank[name]
		helper := strings.HasPrefix(name, "core/internal/") || strings.HasPrefix(name, "wasm/internal/") ||
			strings.HasPrefix(name, "web/")
		assert.True(t, placed || helper, "%s stands in no level", name)
		seen++
		for _, imported := range p.Imports {
			if ours, ok := strings.CutPrefix(imported, "barkwright"); ok && placed {
				ours = strings.TrimPrefix(ours, "/")
				below, known := rank[ours]
				assert.True(t, known && below < own, "%s imports %s", name, imported)
			}
			for outsider, allowed := range outsiders {
				if imported == outsider || strings.HasPrefix(imported, outsider+"/") {
					assert.Contains(t, allowed, name, "%s imports %s", name, imported)
				}
			}
		}
		return nil
	}))
	assert.Greater(t, seen, 15)
	_, err := os.Stat(filepath.Join(top, "go.mod"))
	require.NoError(t, err)
}
