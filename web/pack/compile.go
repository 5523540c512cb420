package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
)

// unhurried packages are compiled without inlining: they run once, at the user's
// pace, or spend their time where nothing is inlined, and the page is a
// tenth smaller for it. Raising the sides is not among them: it takes twice as long without.
// Nor are design and gather, of which every step asks.
var unhurried = []string{
	"github.com/hajimehoshi/ebiten/v2/internal/shader", "github.com/hajimehoshi/ebiten/v2/internal/ui",
	"go/...", "text/...", "encoding/...", "log/...", "math/big", "regexp/...",
	"fmt", "strconv", "net/...", "os/...", "archive/...", "mime/...", "compress/...",
	"reflect", "time", "io/...", "syscall", "strings", "bytes", "bufio", "unicode/...",
	"internal/poll", "internal/reflectlite", "internal/strconv", "internal/sync",
	"github.com/hajimehoshi/ebiten/v2/internal/gamepad/...", "github.com/hajimehoshi/ebiten/v2/internal/gamepaddb",
	"barkwright/core/answer", "barkwright/core/chart", "barkwright/core/draw",
	"barkwright/core/file", "barkwright/core/known", "barkwright/core/lesson",
	"barkwright/core/lines", "barkwright/core/model", "barkwright/core/pattern", "barkwright/core/plan",
	"barkwright/core/record", "barkwright/core/sheet", "barkwright/core/sure", "barkwright/core/trace",
	"barkwright/core/units", "barkwright/core/weigh", "barkwright/core/whatif", "barkwright/core/wood",
	"barkwright/wasm/bench", "barkwright/wasm/bridge", "barkwright/wasm/desk", "barkwright/wasm/find",
	"barkwright/wasm/hands", "barkwright/wasm/keep",
	"barkwright/wasm/markup", "barkwright/wasm/pipeline", "barkwright/wasm/scene", "barkwright/wasm/scene/flat",
	"barkwright/wasm/scene/onsheet", "barkwright/wasm/scene/view", "barkwright/wasm/tracing", "barkwright/wasm/work",
}

// compile builds a program for the browser and returns its bytes.
func compile(program string) ([]byte, error) { return compiled(program, "-s -w") }

// compiled is compile with flags of the linker.
func compiled(program, flags string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "barkwright")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	overlay, err := methodless(dir)
	if err != nil {
		return nil, err
	}
	out := filepath.Join(dir, "program.wasm")
	args := []string{"build", "-trimpath", "-ldflags=" + flags, "-overlay=" + overlay}
	for _, packages := range unhurried {
		args = append(args, "-gcflags="+packages+"=-l")
	}
	build := exec.Command("go", append(args, "-o", out, program)...)
	build.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	build.Stdout, build.Stderr = os.Stdout, os.Stderr
	if err := build.Run(); err != nil {
		return nil, fmt.Errorf("go build %s: %w", program, err)
	}
	wasm, err := os.ReadFile(out)
	if err != nil {
		return nil, err
	}
	return direct(wasm)
}

// byName is where a template looks a method up by its name.
var byName = regexp.MustCompile(`\w+\.MethodByName\(fieldName\)`)

// methodless writes a copy of text/template that looks no method up by its name, and
// returns the overlay file that has the compiler read it. One such look-up in a program
// makes the linker keep every exported method of every type it has: a seventh of the
// page. Ebitengine's templates, the only ones in the program, name fields alone.
func methodless(dir string) (string, error) {
	root, err := goroot()
	if err != nil {
		return "", err
	}
	original := filepath.Join(root, "src", "text", "template", "exec.go")
	text, err := os.ReadFile(original)
	if err != nil {
		return "", err
	}
	if len(byName.FindAll(text, -1)) != 1 {
		return "", errors.New("text/template of this Go looks methods up by name in another way: see methodless in web/pack")
	}
	copied := filepath.Join(dir, "exec.go")
	if err := os.WriteFile(copied, byName.ReplaceAll(text, []byte("(reflect.Value{})")), 0o644); err != nil {
		return "", err
	}
	list, err := json.Marshal(map[string]map[string]string{"Replace": {original: copied}})
	if err != nil {
		return "", err
	}
	file := filepath.Join(dir, "overlay.json")
	return file, os.WriteFile(file, list, 0o644)
}

// goroot is where the Go that compiles the page has its own sources.
func goroot() (string, error) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return "", fmt.Errorf("go env GOROOT: %w", err)
	}
	return strings.TrimSpace(string(root)), nil
}
