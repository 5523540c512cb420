package e2e

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// browsers holds one running browser for each set of flags, started when first
// asked for and ended by TestMain, or by the test whose own it is: many that stand idle
// still take the machine's time.
var browsers = struct {
	sync.Mutex
	running map[string]running
}{running: map[string]running{}}

type running struct {
	ctx context.Context
	end func()
}

func TestMain(m *testing.M) {
	code := m.Run()
	for _, b := range browsers.running {
		b.end()
	}
	os.Exit(code)
}

// browser is a context of a browser with the flags, set apart from others' tabs.
func browser(t testing.TB, flags ...string) context.Context {
	t.Helper()
	browsers.Lock()
	defer browsers.Unlock()
	key := strings.Join(flags, " ")
	if b, ok := browsers.running[key]; ok {
		return b.ctx
	}
	options := append(slices.Clone(chromedp.DefaultExecAllocatorOptions[:]),
		chromedp.ExecPath(program(t)), chromedp.NoSandbox,
		chromedp.Flag("disable-quic", true), chromedp.Flag("disable-component-update", true),
		// Software WebGL, allowed for good. Nothing is said of how the rest of the page is painted: without a GPU the
		// browser does that on the processor by itself. "use-angle" would have all of it painted as by a GPU in software,
		// which no user's browser does, and which took twice as long for a step at the bed.
		chromedp.Flag("enable-unsafe-swiftshader", true))
	for _, flag := range flags {
		options = append(options, chromedp.Flag(flag, true))
	}
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options...)
	ctx, cancel := chromedp.NewContext(allocator, chromedp.WithErrorf(func(string, ...any) {}))
	require.NoError(t, chromedp.Do(ctx), "starting the browser")
	end := func() { cancel(); stop() }
	browsers.running[key] = running{ctx, end}
	if slices.Contains(flags, own(t)) {
		t.Cleanup(func() {
			browsers.Lock()
			defer browsers.Unlock()
			delete(browsers.running, key)
			end()
		})
	}
	return ctx
}

func program(t testing.TB) string {
	t.Helper()
	for _, name := range []string{os.Getenv("BARKWRIGHT_BROWSER"), "chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); name != "" && err == nil {
			return path
		}
	}
	require.FailNow(t, "no browser: install the package chromium or set BARKWRIGHT_BROWSER")
	return ""
}

// pageFile is the file of the page under test; without one the test is skipped.
func pageFile(t testing.TB) string {
	t.Helper()
	file := os.Getenv("BARKWRIGHT_PAGE")
	if file == "" {
		t.Skip("browser tests run by make test, which builds the page and sets BARKWRIGHT_PAGE")
	}
	file, err := filepath.Abs(file)
	require.NoError(t, err)
	require.FileExists(t, file)
	return file
}

// screen is a window's size in CSS pixels, its density and whether it is a touch screen.
type screen struct {
	name          string
	width, height int64
	density       float64
	touch         bool
	// place is where on the page a tab opens; empty for all of it on one page.
	place string
}

// asKept is the place where the page was left.
const asKept = "as kept"

// at is the screen with its tabs opened at a place.
func (s screen) at(place string) screen {
	s.place = place
	return s
}

// placed is an address that opens there, unless it says where itself.
func (s screen) placed(address string) string {
	switch {
	case s.place == asKept || strings.Contains(address, "#"):
		return address
	case s.place == "":
		return address + "#&at=all"
	}
	return address + "#&at=" + s.place
}

var (
	desktop   = screen{name: "desktop", width: 1440, height: 900, density: 1}
	phone     = screen{name: "phone", width: 390, height: 844, density: 3, touch: true}
	projector = screen{name: "projector", width: 1920, height: 1080, density: 1}
)

func (s screen) emulate() chromedp.Action[chromedp.Void] {
	options := []chromedp.EmulateViewportOption{chromedp.EmulateScale(s.density)}
	if s.touch {
		options = append(options, chromedp.EmulateMobile, chromedp.EmulateTouch)
	}
	return chromedp.EmulateViewport(s.width, s.height, options...)
}

// tab is one page open in a browser. Whatever it logs as an error, throws or
// asks the network for fails the test when it ends.
type tab struct {
	testing.TB
	ctx     context.Context
	mu      sync.Mutex
	address string
	// asks is where a page that is served may ask for files, empty for nowhere.
	asks   string
	faults []string
}

// open shows the page from disk as a new user finds it and waits for its results
// and its first picture.
func open(t testing.TB, s screen, flags ...string) *tab {
	t.Helper()
	return openAfter(t, "", s, flags...)
}

// openAfter is open after a script of the test's own.
func openAfter(t testing.TB, prelude string, s screen, flags ...string) *tab {
	t.Helper()
	p := openFile(t, pageFile(t), prelude, s, flags...)
	p.ready()
	return p
}

// openFile shows a file after a script of the test's own, and waits for nothing.
func openFile(t testing.TB, file, prelude string, s screen, flags ...string) *tab {
	t.Helper()
	return openAddress(t, fileAddress(file), prelude, s, flags...)
}

func fileAddress(file string) string {
	return (&url.URL{Scheme: "file", Path: filepath.ToSlash(file)}).String()
}

// patience is how long a tab may be open: a test that works the page for longer sets it.
var patience = 3 * time.Minute

// openAddress is openFile of a page that may be served.
func openAddress(t testing.TB, address, prelude string, s screen, flags ...string) *tab {
	t.Helper()
	within, release := context.WithTimeout(browser(t, flags...), patience)
	// A store of the tab's own, empty at first: a browser shares one among all pages from disk. A test that looks
	// for what is kept in another tab has a browser of its own.
	var options []chromedp.ContextOption
	if !slices.Contains(flags, own(t)) {
		options = append(options, chromedp.WithNewBrowserContext())
	}
	ctx, cancel := chromedp.NewContext(within, options...)
	p := &tab{TB: t, ctx: ctx}
	p.address, _, _ = strings.Cut(address, "#")
	t.Cleanup(func() {
		p.settle()
		cancel()
		release()
		assert.Empty(t, p.take(), "errors, exceptions and requests")
	})
	require.NoError(t, chromedp.Do(ctx), "opening a tab")
	require.NoError(t, chromedp.Listen(ctx, func(event any) { p.heard(event) }))
	_, err := chromedp.Call(ctx, page.AddScriptToEvaluateOnNewDocument, page.AddScriptToEvaluateOnNewDocumentParams{Source: prelude})
	require.NoError(t, err)
	p.do(s.emulate(), chromedp.Navigate(s.placed(address)))
	return p
}

// goTo opens another page in the tab, and waits for nothing.
func (p *tab) goTo(address string) {
	p.Helper()
	p.mu.Lock()
	p.address = address
	p.mu.Unlock()
	// By way of a blank page: an address that differs by its place alone loads nothing.
	p.do(chromedp.Navigate("about:blank"), chromedp.Navigate(screen{}.placed(address)))
}

func (p *tab) heard(event any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	fault := ""
	switch e := event.(type) {
	case *runtime.EventExceptionThrown:
		fault = "exception: " + e.ExceptionDetails.Text
		if e.ExceptionDetails.Exception != nil {
			fault += " " + e.ExceptionDetails.Exception.Description
		}
	case *runtime.EventConsoleAPICalled:
		if e.Type == runtime.ConsoleAPICalledTypeError || e.Type == runtime.ConsoleAPICalledTypeWarning {
			for _, a := range e.Args {
				fault += "console: " + string(a.Value) + a.Description + " "
			}
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError {
			fault = "log: " + e.Entry.Text
		}
	case *network.EventRequestWillBeSent:
		local := strings.HasPrefix(e.Request.URL, "data:") || strings.HasPrefix(e.Request.URL, "blob:") ||
			p.asks != "" && strings.HasPrefix(e.Request.URL, p.asks)
		if !local && e.Request.URL != p.address && e.Request.URL != p.address+"favicon.ico" {
			fault = "request: " + e.Request.URL
		}
	}
	if fault != "" {
		p.faults = append(p.faults, fault)
	}
}

// take empties the list of faults, for a test that causes some on purpose.
func (p *tab) take() []string {
	p.mu.Lock()
	defer p.mu.Unlock()
	faults := p.faults
	p.faults = nil
	return faults
}

func (p *tab) do(actions ...chromedp.Action[chromedp.Void]) {
	p.Helper()
	require.NoError(p, chromedp.Do(p.ctx, actions...))
}

// eval is the value of an expression in the page.
func eval[T any](p *tab, expression string, args ...any) T {
	p.Helper()
	v, err := chromedp.Run(p.ctx, chromedp.Evaluate[T](fmt.Sprintf(expression, args...)))
	require.NoError(p, err, expression)
	return v
}

// wait until an expression is true, ten seconds at most.
func (p *tab) wait(expression string, args ...any) {
	p.Helper()
	expression = fmt.Sprintf(expression, args...)
	_, err := chromedp.Run(p.ctx, chromedp.Poll[bool](expression, chromedp.WithPollingTimeout(10*time.Second),
		chromedp.WithPollingInterval(20*time.Millisecond)))
	require.NoError(p, err, "waiting for %s", expression)
}

// ready waits for the page's results and its first picture, half a minute at most; what
// it looks at may be opened again meanwhile.
func (p *tab) ready() {
	p.Helper()
	require.Eventually(p, func() bool {
		ready, err := chromedp.Run(p.ctx, chromedp.Evaluate[bool](`document.documentElement?.dataset.ready === 'true' &&
			+document.documentElement.dataset.drawn > 0`))
		return err == nil && ready
	}, 30*time.Second, 20*time.Millisecond, "the page is ready")
}

// settle waits two frames and the time that what they started may take.
func (p *tab) settle() {
	_, _ = chromedp.Run(p.ctx, chromedp.Evaluate[bool](
		`new Promise(done => {
			const rested = () => document.documentElement.dataset.rest === 'waiting' ?
				setTimeout(rested, 10) : setTimeout(() => done(true), 50);
			requestAnimationFrame(() => requestAnimationFrame(rested));
		})`, chromedp.EvalAwaitPromise))
}

// drawn is how many pictures were painted so far.
func (p *tab) drawn() int { return eval[int](p, `+document.documentElement.dataset.drawn`) }

// shot keeps a screenshot of what is in the window.
func (p *tab) shot(name string) []byte {
	p.Helper()
	png, err := chromedp.Run(p.ctx, chromedp.CaptureScreenshot())
	require.NoError(p, err)
	folder := os.Getenv("BARKWRIGHT_SHOTS")
	if folder == "" {
		folder = p.TempDir()
	}
	require.NoError(p, os.MkdirAll(folder, 0o755))
	require.NoError(p, os.WriteFile(filepath.Join(folder, name+".png"), png, 0o644))
	return png
}
