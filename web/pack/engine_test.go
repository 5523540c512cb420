package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The page is built with a copy of Ebitengine that holds its shaders compiled, and none of the
// parts of Go's library that would compile them or that the page never calls.
func TestLightened(t *testing.T) {
	t.Chdir(filepath.Join("..", ".."))
	dir := t.TempDir()
	modules, err := lightened(dir)
	require.NoError(t, err)
	deps := func(flags ...string) []string {
		list := exec.Command("go", append(append([]string{"list", "-deps"}, flags...), "./wasm")...)
		list.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
		var faults bytes.Buffer
		list.Stderr = &faults
		out, err := list.Output()
		require.NoError(t, err, faults.String())
		return strings.Fields(string(out))
	}
	before, after := deps(), deps("-modfile="+modules)
	assert.Contains(t, after, engine)
	for _, gone := range []string{"text/template", "go/parser", "go/build", "encoding/gob", "archive/zip", "net",
		engine + "/internal/shader", engine + "/internal/shaderir/glsl", engine + "/internal/vmguest"} {
		assert.Contains(t, before, gone)
		assert.NotContains(t, after, gone)
	}
	assert.Subset(t, before, after, "nothing comes in")

	made, err := os.ReadFile(filepath.Join(dir, "engine", "internal", "legacyshader", "legacyshader.go"))
	require.NoError(t, err)
	// Three ways to sample an image by three ways beyond its edge, with a matrix of colours and
	// without, the one that clears, and the page's own.
	const shaders = 2*3*3 + 1 + 1
	pen, err := os.ReadFile(penShader)
	require.NoError(t, err)
	assert.Contains(t, string(made), fmt.Sprintf("%q", pen))
	assert.Len(t, regexp.MustCompile(`"//kage:unit pixels`).FindAll(made, -1), shaders)
	assert.Len(t, regexp.MustCompile(`"#version 300 es`).FindAll(made, -1), 2*shaders, "GLSL ES 3.00, a vertex and a fragment shader each")
	assert.Len(t, regexp.MustCompile(`UniformFactors:\[\]uint32\{0x`).FindAll(made, -1), shaders)

	// Another Ebitengine, in which a place that is changed is not as it was, is refused.
	source := filepath.Join(dir, "engine")
	again := exec.Command("go", "run", "./internal/lighten")
	again.Dir = source
	out, err := again.CombinedOutput()
	require.Error(t, err, string(out))
}
