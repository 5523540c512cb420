package e2e

import (
	"os"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
)

// faultAt makes the program panic at a boat of that name: in a step, in what waits for
// the control to rest, or at the start. The variable is this test's; the page never
// sets it.
func faultAt(in string) string { return `window.faultOnPurpose = {boat: "Bad", in: "` + in + `"};` }

// takeFaults are the console's lines since, all of them of a fault made on purpose: that
// there are any shows that a fault fails a test.
func (p *tab) takeFaults() {
	p.Helper()
	faults := p.take()
	require.NotEmpty(p, faults, "the console names it")
	for _, f := range faults {
		assert.Contains(p, f, "made on purpose by a test")
	}
}

// A fault in a step, or in what follows it, takes the boat back to how it last stood; the
// page says so, offers what was entered, and goes on.
func TestFaultIsGoneOnFrom(t *testing.T) {
	for _, in := range []string{"step", "rest"} {
		t.Run(in, func(t *testing.T) {
			p := openAfter(t, faultAt(in), desktop, own(t))
			eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push(text), true`)
			p.enter("beam", "35 in")
			p.wait(`document.documentElement.dataset.skin === ''`)
			longest := p.shown("ribs.longest")
			eval[bool](p, `(n => { n.value = 'Bad'; for (const e of ['input', 'change']) n.dispatchEvent(new Event(e, {bubbles: true})); return true; })(document.getElementById('name'))`)
			p.noticed("a fault of its own")
			p.takeFaults()
			assert.NotEqual(t, "Bad", p.fieldOf("name"))
			assert.Equal(t, longest, p.shown("ribs.longest"))
			eval[bool](p, `document.querySelector('[data-notice="fault"] button').click(), true`)
			f, err := file.Decode([]byte(eval[string](p, `saved[0]`)))
			require.NoError(t, err)
			assert.Equal(t, "Bad", f.Boats[0].Design.Name)
			p.enter("beam", "36 in")
			p.wait(keeps(`{beam: 36}`))
			assert.NotEqual(t, longest, p.shown("ribs.longest"))
			assert.Empty(t, p.take())
			assert.False(t, eval[bool](p, `'stopped' in document.documentElement.dataset`))
		})
	}
}

// A kept boat that stops the start is set aside by name at the next opening and offered;
// the others open. It is the same where it stops the page as it is taken in hand.
func TestKeptBoatThatStopsTheStart(t *testing.T) {
	if os.Getenv("BARKWRIGHT_UNSTEADY") == "" {
		t.Skip("unsteady: each of its three ways failed in some runs and passed in others; BARKWRIGHT_UNSTEADY=1 runs it")
	}
	bad := kept(t, "Bad", func(d *design.Design) { d.Beam += 0.01 })
	texts := map[string]string{"barkwright.boat.a": kept(t, "Good", nil), "barkwright.boat.b": bad, "barkwright.in-hand": "b"}
	for _, in := range []string{"start", "step", "rest"} {
		t.Run(in, func(t *testing.T) {
			p := openFile(t, pageFile(t), stores(texts)+faultAt(in), desktop, own(t))
			// The page may open itself once more, which ends a wait.
			for range 200 {
				ready, err := chromedp.Run(p.ctx, chromedp.Evaluate[bool](`document.documentElement?.dataset.ready === "true"`))
				if err == nil && ready {
					break
				}
				time.Sleep(100 * time.Millisecond)
			}
			p.noticed("“Bad” is kept and was not opened. It stopped this page")
			p.wait(`document.getElementById('name').value === 'Good'`)
			p.takeFaults()
			assert.Equal(t, 1, eval[int](p, `document.getElementById('shelf').options.length`))
			eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push(text), true`)
			eval[bool](p, `[...document.querySelectorAll('[data-notice="barkwright.boat.b"] button')].find(b => b.textContent.startsWith('Save')).click(), true`)
			assert.Equal(t, []string{bad}, eval[[]string](p, `saved`))
			assert.Equal(t, bad, eval[string](p, `localStorage.getItem('barkwright.boat.b')`))
			p.again()
			assert.Contains(t, strings.Join(p.notices(), "\n"), "“Bad”")
			assert.Empty(t, p.take(), "the next opening meets no fault")
			p.enter("beam", "35 in")
			if in != "start" {
				return
			}
			// Without what made it stop it can be tried again.
			eval[bool](p, `[...document.querySelectorAll('[data-notice="barkwright.boat.b"] button')].find(b => b.textContent.startsWith('Try')).click(), true`)
			p.wait(`document.getElementById('shelf').options.length === 2`)
		})
	}
}
