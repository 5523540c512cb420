package main

import (
	_ "embed"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// engine is the module that draws.
const engine = "github.com/hajimehoshi/ebiten/v2"

// penShader is the page's own shader, which is compiled with Ebitengine's.
const penShader = "wasm/paint/pen.kage"

// lighten is the command that changes a copy of Ebitengine, as a text: it belongs to the copy.
//
//go:embed engine/lighten.go.txt
var lighten []byte

// lightened lays a copy of Ebitengine into a folder and returns the file of modules by which it is
// built. Ebitengine makes its own shaders at each start: their sources by templates, of these
// their programs by Go's parser, and of those GLSL. In a browser that takes a third of the time
// to the first picture, most of it spent on compiling its compiler. They are always the same, so
// here they are made once, and the program holds what comes of it. What the page never calls is
// left out.
func lightened(dir string) (modules string, err error) {
	list := exec.Command("go", "list", "-m", "-f", "{{.Dir}}", engine)
	list.Stderr = os.Stderr
	out, err := list.Output()
	if err != nil {
		return "", fmt.Errorf("go list -m %s: %w", engine, err)
	}
	copied := filepath.Join(dir, "engine")
	if err := copySources(copied, strings.TrimSpace(string(out))); err != nil {
		return "", err
	}
	command := filepath.Join(copied, "internal", "lighten")
	if err := os.MkdirAll(command, 0o755); err != nil {
		return "", err
	}
	if err := os.WriteFile(filepath.Join(command, "main.go"), lighten, 0o644); err != nil {
		return "", err
	}
	pen, err := filepath.Abs(penShader)
	if err != nil {
		return "", err
	}
	made := exec.Command("go", "run", "./internal/lighten", pen)
	made.Dir = copied
	made.Stderr = os.Stderr
	if err := made.Run(); err != nil {
		return "", fmt.Errorf("lightening Ebitengine: %w", err)
	}
	modules = filepath.Join(dir, "go.mod")
	for from, to := range map[string]string{"go.mod": modules, "go.sum": filepath.Join(dir, "go.sum")} {
		text, err := os.ReadFile(from)
		if err != nil {
			return "", err
		}
		if from == "go.mod" {
			text = fmt.Appendf(text, "\nreplace %s => %q\n", engine, copied)
		}
		if err := os.WriteFile(to, text, 0o644); err != nil {
			return "", err
		}
	}
	return modules, nil
}

// copySources copies a module but for its examples and tests.
func copySources(to, from string) error {
	return filepath.WalkDir(from, func(file string, entry fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name, err := filepath.Rel(from, file)
		if err != nil {
			return err
		}
		if entry.IsDir() {
			if name == "examples" {
				return filepath.SkipDir
			}
			return os.MkdirAll(filepath.Join(to, name), 0o755)
		}
		if strings.HasSuffix(name, "_test.go") {
			return nil
		}
		text, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		return os.WriteFile(filepath.Join(to, name), text, 0o644)
	})
}
