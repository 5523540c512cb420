package soak

import (
	"fmt"
	"math"
	"runtime/debug"
	"strings"

	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// finds are what is wrong about one boat, each said once.
type finds struct{ all []string }

func (f *finds) add(format string, args ...any) {
	text := fmt.Sprintf(format, args...)
	for _, known := range f.all {
		if known == text {
			return
		}
	}
	f.all = append(f.all, text)
}

// caught runs part and keeps its panic with the places it came through.
func (f *finds) caught(name string, part func()) {
	defer func() {
		if p := recover(); p != nil {
			f.add("%s: panic: %v%s", name, p, through(string(debug.Stack())))
		}
	}()
	part()
}

// through lists this project's own functions on a stack below a panic.
func through(stack string) string {
	var out strings.Builder
	below := false
	for _, line := range strings.Split(stack, "\n") {
		line = strings.TrimSpace(line)
		below = below || strings.HasPrefix(line, "panic(")
		if at := strings.LastIndex(line, "/barkwright/"); below && at < 0 && strings.Contains(line, ".go:") {
			if i := max(strings.Index(line, "/core/"), strings.Index(line, "/wasm/")); i >= 0 {
				place, _, _ := strings.Cut(line[i+1:], " ")
				out.WriteString(" < " + place)
			}
		}
		if strings.Count(out.String(), " < ") == 4 {
			break
		}
	}
	return out.String()
}

// spoilt are what no text of ours holds.
var spoilt = []string{"NaN", "Inf", "%!", units.NotWorkedOut}

func (f *finds) text(what, text string) {
	for _, s := range spoilt {
		if i := strings.Index(text, s); i >= 0 {
			f.add("%s: %s in %.80q", what, s, text[max(0, i-30):])
		}
	}
}

func (f *finds) number(what string, v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		f.add("%s is %g", what, v)
	}
}

// numbers looks at every number inside v.
func (f *finds) numbers(what string, v any) {
	check.Numbers(v, func(at string, n float64) { f.number(what+at, n) })
}
