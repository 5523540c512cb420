package e2e

import (
	"bufio"
	"context"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"testing"
	"time"

	"github.com/coder/websocket"
	"github.com/stretchr/testify/require"
)

// firefox is driven over the port of its own: W3C, WebDriver BiDi.
type firefox struct {
	*testing.T
	ctx     context.Context
	socket  *websocket.Conn
	last    int
	context string
	errors  []string
}

// installed is a program that there is, or the test is skipped.
func installed(t *testing.T, what, setting string, names ...string) string {
	t.Helper()
	pageFile(t)
	for _, name := range append([]string{os.Getenv(setting)}, names...) {
		if path, err := exec.LookPath(name); name != "" && err == nil {
			return path
		}
	}
	t.Skip(what + " is not installed")
	return ""
}

// profile is what keeps Firefox from asking or fetching anything of its own.
const profile = `user_pref("app.update.disabledForTesting", true);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.startup.page", 0);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("services.settings.server", "data:,");
user_pref("toolkit.telemetry.enabled", false);
`

func TestTourFirefox(t *testing.T) {
	program := installed(t, "Firefox", "BARKWRIGHT_FIREFOX", "firefox-esr", "firefox")
	tells(t, "Firefox")
	home := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(home, "user.js"), []byte(profile), 0o600))
	ctx, cancel := context.WithTimeout(context.Background(), 4*time.Minute)
	browser := exec.CommandContext(ctx, program, "--headless", "--no-remote", "--remote-debugging-port",
		"0", "--profile", home, "about:blank")
	browser.Env = append(os.Environ(), "HOME="+home, "MOZ_CRASHREPORTER_DISABLE=1")
	says, err := browser.StderrPipe()
	require.NoError(t, err)
	require.NoError(t, browser.Start())
	t.Cleanup(func() {
		cancel()
		_ = browser.Wait()
	})
	address := announced(t, bufio.NewScanner(says), `WebDriver BiDi listening on (ws://\S+)`)
	socket, _, err := websocket.Dial(ctx, address+"/session", nil)
	require.NoError(t, err)
	socket.SetReadLimit(-1)
	f := &firefox{T: t, ctx: ctx, socket: socket}
	f.call("session.new", map[string]any{"capabilities": map[string]any{}}, nil)
	f.call("session.subscribe", map[string]any{"events": []string{"log.entryAdded"}}, nil)
	var tree struct{ Contexts []struct{ Context string } }
	f.call("browsingContext.getTree", map[string]any{}, &tree)
	require.NotEmpty(t, tree.Contexts)
	f.context = tree.Contexts[0].Context
	tour(t, f)
	f.call("browser.close", map[string]any{}, nil)
}

// tells writes at the end of a test what it came to, into the file that others.sh reads.
func tells(t *testing.T, browser string) {
	file := os.Getenv("BARKWRIGHT_LOOKED")
	if file == "" {
		return
	}
	t.Cleanup(func() {
		came := "a look"
		switch {
		case t.Failed():
			came = "failed"
		case t.Skipped():
			came = "not looked at, it did not start"
		case os.Getenv("BARKWRIGHT_TOUR") != "":
			came = "the tour"
		}
		f, err := os.OpenFile(file, os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o600)
		if err != nil {
			t.Log(err)
			return
		}
		defer f.Close()
		fmt.Fprintf(f, "%s: %s\n", browser, came)
	})
}

// notStarted skips the look of make test at a browser that does not come up, which is no
// fault of the page, and fails the tour.
func notStarted(t *testing.T, name string, why error) {
	t.Helper()
	if os.Getenv("BARKWRIGHT_TOUR") == "" {
		t.Skipf("%s does not start here: %v", name, why)
	}
	require.NoError(t, why, name)
}

// announced is what a program says it listens at. What it says afterwards is read too, as
// it would stop otherwise.
func announced(t *testing.T, lines *bufio.Scanner, pattern string) string {
	t.Helper()
	found := make(chan string, 1)
	go func() {
		at := regexp.MustCompile(pattern)
		for lines.Scan() {
			if m := at.FindStringSubmatch(lines.Text()); m != nil {
				found <- m[1]
			}
		}
	}()
	select {
	case address := <-found:
		return address
	case <-time.After(time.Minute):
		notStarted(t, "Firefox", errors.New("it does not say where it listens"))
	}
	return ""
}

// call sends a command and reads until its answer.
func (f *firefox) call(method string, params, out any) {
	f.Helper()
	f.last++
	text, err := json.Marshal(map[string]any{"id": f.last, "method": method, "params": params})
	require.NoError(f, err)
	require.NoError(f, f.socket.Write(f.ctx, websocket.MessageText, text))
	for {
		_, text, err := f.socket.Read(f.ctx)
		require.NoError(f, err, method)
		var answer struct {
			ID             int
			Type, Method   string
			Error, Message string
			Result         json.RawMessage
			Params         struct{ Level, Text string }
		}
		require.NoError(f, json.Unmarshal(text, &answer))
		switch {
		case answer.Method == "log.entryAdded" && answer.Params.Level == "error":
			f.errors = append(f.errors, answer.Params.Text)
		case answer.ID == f.last && answer.Type == "error":
			require.FailNow(f, method+": "+answer.Error+": "+answer.Message)
		case answer.ID == f.last:
			if out != nil {
				require.NoError(f, json.Unmarshal(answer.Result, out))
			}
			return
		}
	}
}

func (f *firefox) goTo(address string) {
	f.call("browsingContext.navigate", map[string]any{"context": f.context, "url": address, "wait": "complete"}, nil)
	f.call("browsingContext.activate", map[string]any{"context": f.context}, nil)
}

func (f *firefox) eval(expression string) string {
	var out struct {
		Type             string
		Result           struct{ Value string }
		ExceptionDetails struct{ Text string }
	}
	f.call("script.evaluate", map[string]any{
		"expression": stringified(expression), "target": map[string]any{"context": f.context}, "awaitPromise": true,
	}, &out)
	require.Equal(f, "success", out.Type, "%s: %s", expression, out.ExceptionDetails.Text)
	return out.Result.Value
}

// keystrokes are keys pressed one after another: W3C, WebDriver, 17.4.
func keystrokes(keys []string) []map[string]any {
	var actions []map[string]any
	for _, k := range keys {
		actions = append(actions, map[string]any{"type": "keyDown", "value": k}, map[string]any{"type": "keyUp", "value": k})
	}
	return []map[string]any{{"type": "key", "id": "keys", "actions": actions}}
}

func (f *firefox) press(keys ...string) {
	f.call("input.performActions", map[string]any{"context": f.context, "actions": keystrokes(keys)}, nil)
}

func (f *firefox) widen(width int, _ string) {
	f.call("browsingContext.setViewport",
		map[string]any{"context": f.context, "viewport": map[string]any{"width": width, "height": 800}}, nil)
	f.eval(`new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(true))))`)
}

func (f *firefox) print() []byte {
	var out struct{ Data string }
	f.call("browsingContext.print", map[string]any{"context": f.context}, &out)
	pdf, err := base64.StdEncoding.DecodeString(out.Data)
	require.NoError(f, err)
	return pdf
}

func (f *firefox) complaints() []string { return f.errors }
