package e2e

import (
	"strings"
	"testing"

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
			eval[bool](p, `(n => { n.value = 'Bad'; for (const e of ['input', 'change']) n.dispatchEvent(new Event(e,
				{bubbles: true})); return true; })(document.getElementById('name'))`)
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

// Kept boats that stop the start are set aside by name at the next opening, one after
// another, and offered; the others open. It is the same where one stops the page as it is
// taken in hand.
func TestKeptBoatThatStopsTheStart(t *testing.T) {
	bad := kept(t, "Bad", func(d *design.Design) { d.Beam += 0.01 })
	other := kept(t, "Bad", func(d *design.Design) { d.Beam += 0.02 })
	texts := map[string]string{
		"barkwright.boat.a": kept(t, "Good", nil), "barkwright.boat.b": bad, "barkwright.boat.c": other,
		"barkwright.in-hand": "b",
	}
	for _, in := range []string{"start", "step", "rest"} {
		t.Run(in, func(t *testing.T) {
			p := openStored(t, texts, faultAt(in))
			p.ready()
			p.wait(`document.getElementById('name').value === 'Good'`)
			p.noticed("“Bad” is kept and was not opened. It stopped this page")
			p.takeFaults()
			assert.Equal(t, 1, eval[int](p, `document.getElementById('shelf').options.length`))
			eval[bool](p, `window.saved = [], window.handOver = (name, kind, text) => saved.push(text), true`)
			for _, key := range []string{"barkwright.boat.b", "barkwright.boat.c"} {
				eval[bool](p, `[...document.querySelectorAll('[data-notice="%s"] button')]
					.find(b => b.textContent.startsWith('Save')).click(), true`, key)
				assert.Equal(t, texts[key], eval[string](p, `localStorage.getItem(%q)`, key))
			}
			assert.Equal(t, []string{bad, other}, eval[[]string](p, `saved`))
			p.again()
			assert.Contains(t, strings.Join(p.notices(), "\n"), "“Bad”")
			assert.Empty(t, p.take(), "the next opening meets no fault")
			p.enter("beam", "35 in")
			if in != "start" {
				return
			}
			// Without what made it stop it can be tried again.
			eval[bool](p, `[...document.querySelectorAll('[data-notice="barkwright.boat.b"] button')]
				.find(b => b.textContent.startsWith('Try')).click(), true`)
			p.wait(`document.getElementById('shelf').options.length === 2`)
		})
	}
}
