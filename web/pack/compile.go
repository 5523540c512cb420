package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
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

// bareProgram is an empty Ebitengine page, what the page is measured against: Ebitengine and what
// Go makes of it, as they come.
const bareProgram = "./web/e2e/bare"

// compile builds a program for the browser and returns its bytes.
func compile(program string) ([]byte, error) { return compiled(program, "-s -w") }

// compiled is compile with flags of the linker.
func compiled(program, flags string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "barkwright")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	out := filepath.Join(dir, "program.wasm")
	args := []string{"build", "-trimpath", "-ldflags=" + flags}
	if program != bareProgram {
		modules, err := lightened(dir)
		if err != nil {
			return nil, err
		}
		args = append(args, "-modfile="+modules)
	}
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
	if err != nil || program == bareProgram {
		return wasm, err
	}
	return direct(wasm)
}

// goroot is where the Go that compiles the page has its own sources.
func goroot() (string, error) {
	root, err := exec.Command("go", "env", "GOROOT").Output()
	if err != nil {
		return "", fmt.Errorf("go env GOROOT: %w", err)
	}
	return strings.TrimSpace(string(root)), nil
}
