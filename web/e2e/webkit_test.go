package e2e

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// webkit is driven through its own driver: W3C, WebDriver.
type webkit struct {
	*testing.T
	session string // its address
	wait    time.Duration
}

// screenOf starts a screen that nobody sees and returns its name.
func screenOf(t *testing.T, program string) string {
	t.Helper()
	read, write, err := os.Pipe()
	require.NoError(t, err)
	defer read.Close()
	x := exec.Command(program, "-displayfd", "3", "-screen", "0", "1600x1100x24", "-nolisten", "tcp")
	x.ExtraFiles = []*os.File{write}
	require.NoError(t, x.Start())
	write.Close()
	t.Cleanup(func() {
		_ = x.Process.Kill()
		_ = x.Wait()
	})
	number := make([]byte, 16)
	require.NoError(t, read.SetReadDeadline(time.Now().Add(time.Minute)))
	n, err := read.Read(number)
	require.NoError(t, err)
	return ":" + strings.TrimSpace(string(number[:n]))
}

func TestTourWebKit(t *testing.T) {
	driver := installed(t, "WebKit's driver", "BARKWRIGHT_WEBKIT", "WebKitWebDriver")
	display := screenOf(t, installed(t, "Xvfb", "", "Xvfb"))
	browsers, _ := filepath.Glob("/usr/lib*/*/webkit2gtk-4.*/MiniBrowser")
	if len(browsers) == 0 {
		t.Skip("WebKit's small browser is not installed")
	}
	tells(t, "WebKit")
	w, err := webkitIn(t, driver, browsers[0], display)
	if err != nil {
		// On a busy machine the driver and its browser sometimes miss one another; a driver
		// of its own does better than a second try of the same one.
		t.Logf("WebKit did not start (%v): tried once more", err)
		if w, err = webkitIn(t, driver, browsers[0], display); err != nil {
			notStarted(t, "WebKit", err)
		}
	}
	t.Cleanup(func() { w.call("DELETE", "", nil, nil) })
	tour(t, w)
}

// webkitIn starts a driver and, by it, the browser on a screen.
func webkitIn(t *testing.T, driver, browser, display string) (*webkit, error) {
	t.Helper()
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	at := free.Addr().(*net.TCPAddr)
	require.NoError(t, free.Close())
	home := t.TempDir()
	run := exec.Command(driver, fmt.Sprintf("--port=%d", at.Port))
	run.Env = append(os.Environ(), "DISPLAY="+display, "HOME="+home, "XDG_RUNTIME_DIR="+home, "LIBGL_ALWAYS_SOFTWARE=1", "GDK_BACKEND=x11")
	require.NoError(t, run.Start())
	t.Cleanup(func() {
		_ = run.Process.Kill()
		_ = run.Wait()
	})
	w := &webkit{T: t, session: "http://" + at.String()}
	require.Eventually(t, func() bool {
		answer, err := http.Get(w.session + "/status")
		if err == nil {
			answer.Body.Close()
		}
		return err == nil
	}, time.Minute, 50*time.Millisecond)
	w.wait = 45 * time.Second
	var made struct{ SessionID string }
	err = w.ask("POST", "/session", map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
		"webkitgtk:browserOptions": map[string]any{"binary": browser, "args": []string{"--automation"}},
	}}}, &made)
	w.wait = 2 * time.Minute
	w.session += "/session/" + made.SessionID
	return w, err
}

func (w *webkit) call(method, path string, params, out any) {
	w.Helper()
	require.NoError(w, w.ask(method, path, params, out), path)
}

// ask sends a command and reads its answer.
func (w *webkit) ask(method, path string, params, out any) error {
	var body io.Reader
	if params != nil {
		text, err := json.Marshal(params)
		if err != nil {
			return err
		}
		body = bytes.NewReader(text)
	}
	request, err := http.NewRequest(method, w.session+path, body)
	if err != nil {
		return err
	}
	answer, err := (&http.Client{Timeout: w.wait}).Do(request)
	if err != nil {
		return err
	}
	defer answer.Body.Close()
	text, err := io.ReadAll(answer.Body)
	if err != nil {
		return err
	}
	if answer.StatusCode != http.StatusOK {
		return fmt.Errorf("%s: %s", answer.Status, text)
	}
	if out == nil {
		return nil
	}
	return json.Unmarshal(text, &struct{ Value any }{out})
}

func (w *webkit) goTo(address string) { w.call("POST", "/url", map[string]any{"url": address}, nil) }

func (w *webkit) eval(expression string) (out string) {
	w.Helper()
	w.call("POST", "/execute/sync", map[string]any{"script": "return " + stringified(expression), "args": []any{}}, &out)
	return out
}

func (w *webkit) press(keys ...string) {
	w.call("POST", "/actions", map[string]any{"actions": keystrokes(keys)}, nil)
}

// widen opens the page in a frame: the small browser's window is never as narrow as a phone.
func (w *webkit) widen(width int, address string) {
	file := filepath.Join(w.TempDir(), "frame.html")
	frame := fmt.Sprintf(`<!doctype html><body style="margin:0">`+
		`<iframe src="%s" style="width:%dpx;height:800px;border:0"></iframe>`, address, width)
	require.NoError(w, os.WriteFile(file, []byte(frame), 0o600))
	w.call("POST", "/frame", map[string]any{"id": nil}, nil)
	w.goTo(fileAddress(file))
	w.call("POST", "/frame", map[string]any{"id": 0}, nil)
}

func (w *webkit) print() []byte        { return nil }
func (w *webkit) complaints() []string { return nil }
