//go:build unix

package e2e

import (
	"bufio"
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
	"sync"
	"syscall"
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

// webkitTries is how long a session may take to begin, by the try. Idle it takes a second, and
// six on a machine with four times the work that it has processors for.
var webkitTries = []time.Duration{30 * time.Second, time.Minute}

// started starts a program in a group of its own, which ends with it: a browser outlives the
// driver that is killed, and takes the next one's time.
func started(t *testing.T, run *exec.Cmd) (end func()) {
	t.Helper()
	run.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	require.NoError(t, run.Start())
	end = sync.OnceFunc(func() {
		_ = syscall.Kill(-run.Process.Pid, syscall.SIGKILL)
		_ = run.Wait()
	})
	t.Cleanup(end)
	return end
}

// screenOf starts a screen that nobody sees, of the first number that is free, and returns
// its name.
func screenOf(t *testing.T, program string) (name string, end func()) {
	t.Helper()
	read, write, err := os.Pipe()
	require.NoError(t, err)
	defer read.Close()
	x := exec.Command(program, "-displayfd", "3", "-screen", "0", "1600x1100x24", "-nolisten", "tcp")
	x.ExtraFiles = []*os.File{write}
	end = started(t, x)
	write.Close()
	require.NoError(t, read.SetReadDeadline(time.Now().Add(time.Minute)))
	// To the line's end: it writes that apart, and is ended by a pipe that is closed before.
	number, err := bufio.NewReader(read).ReadString('\n')
	require.NoError(t, err)
	return ":" + strings.TrimSpace(number), end
}

func TestTourWebKit(t *testing.T) {
	driver := installed(t, "WebKit's driver", "BARKWRIGHT_WEBKIT", "WebKitWebDriver")
	screens := installed(t, "Xvfb", "", "Xvfb")
	browsers, _ := filepath.Glob("/usr/lib*/*/webkit2gtk-4.*/MiniBrowser")
	if len(browsers) == 0 {
		t.Skip("WebKit's small browser is not installed")
	}
	tells(t, "WebKit")
	var w *webkit
	var err error
	for n, within := range webkitTries {
		display, endScreen := screenOf(t, screens)
		var endDriver func()
		if w, endDriver, err = webkitIn(t, driver, browsers[0], display, within); err == nil {
			break
		}
		t.Logf("WebKit did not start, try %d of %d: %v", n+1, len(webkitTries), err)
		endDriver()
		endScreen()
	}
	if err != nil {
		notStarted(t, "WebKit", err)
	}
	t.Cleanup(func() { _ = w.ask("DELETE", "", nil, nil) })
	tour(t, w)
}

// webkitIn starts a driver and, by it, the browser on a screen. What the two had to say goes
// with the error of a session that does not begin.
func webkitIn(t *testing.T, driver, browser, display string, within time.Duration) (w *webkit, end func(), err error) {
	t.Helper()
	free, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	at := free.Addr().(*net.TCPAddr)
	require.NoError(t, free.Close())
	home := t.TempDir()
	said, err := os.Create(filepath.Join(home, "said"))
	require.NoError(t, err)
	defer said.Close()
	run := exec.Command(driver, fmt.Sprintf("--port=%d", at.Port))
	run.Stdout, run.Stderr = said, said
	// Nothing in it waits for a desktop.
	run.Env = append(os.Environ(), "DISPLAY="+display, "HOME="+home, "XDG_RUNTIME_DIR="+home, "LIBGL_ALWAYS_SOFTWARE=1",
		"GDK_BACKEND=x11", "NO_AT_BRIDGE=1", "GSETTINGS_BACKEND=memory", "GIO_USE_VFS=local")
	end = started(t, run)
	w = &webkit{T: t, session: "http://" + at.String(), wait: within}
	require.Eventually(t, func() bool {
		answer, err := http.Get(w.session + "/status")
		if err == nil {
			answer.Body.Close()
		}
		return err == nil
	}, time.Minute, 50*time.Millisecond)
	var made struct{ SessionID string }
	err = w.ask("POST", "/session", map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
		"webkitgtk:browserOptions": map[string]any{"binary": browser, "args": []string{"--automation"}},
	}}}, &made)
	if err != nil {
		text, _ := os.ReadFile(said.Name())
		return nil, end, fmt.Errorf("%w; said: %q", err, text)
	}
	w.wait = 2 * time.Minute
	w.session += "/session/" + made.SessionID
	return w, end, nil
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
