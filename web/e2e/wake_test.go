package e2e

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// compiledHere notes whether the page's own thread compiled the program.
const compiledHere = `window.here = false;
window.compileHere = WebAssembly.compileStreaming;
WebAssembly.compileStreaming = (...all) => { window.here = true; return compileHere.apply(WebAssembly, all); };`

// The program is unpacked and compiled in a thread of its own, and in the page's where the
// browser refuses one, stops it, or hands no program over from it.
func TestUnpackedInAThread(t *testing.T) {
	pageFile(t)
	for _, c := range []struct {
		what, prelude string
		here          bool
	}{
		{"a thread", ``, false},
		{"no threads in this browser", `delete window.Worker;`, true},
		{"a thread refused", `window.Worker = class { constructor() { throw new DOMException('no', 'SecurityError'); } };`, true},
		{"a thread that is stopped", `window.Worker = class extends EventTarget { postMessage() {} terminate() {}
			constructor() { super(); setTimeout(() => this.onerror(new Event('error'))); } };`, true},
		{"a thread that fails", `window.Worker = class extends Worker { constructor() {
			super(URL.createObjectURL(new Blob(['onmessage = () => postMessage("no memory")']))); } };`, true},
		{"a program that may not be sent", `window.Blob = class extends Blob { constructor(parts, kind) { super([
			'const send = postMessage; postMessage = data => { ' +
			'if (typeof data !== "string") throw new DOMException("no", "DataCloneError"); send(data); };', ...parts], kind); } };`, true},
		{"a program that cannot be received", `window.Worker = class extends EventTarget { postMessage() {} terminate() {}
			constructor() { super(); setTimeout(() => this.onmessageerror(new Event('messageerror'))); } };`, true},
	} {
		t.Run(c.what, func(t *testing.T) {
			p := openAfter(t, compiledHere+c.prelude, phone)
			assert.Equal(t, c.here, eval[bool](p, `window.here`))
		})
	}
}

// A browser that cannot run the program says so, and nothing can be moved that no number follows.
func TestBrowserTooOld(t *testing.T) {
	p := openFile(t, pageFile(t), `delete window.DecompressionStream;`, desktop.at("choose"))
	p.wait(`'stopped' in document.documentElement.dataset`)
	assert.Contains(t, eval[string](p, `document.getElementById('picture-note').textContent`), "too old")
	assert.Zero(t, eval[int](p, `document.querySelectorAll('#form :is(input[type=range], select, button):enabled').length`))
}
