package e2e

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// A repair of the log is marked on the finished boat as soon as it is entered, and when the page is opened again;
// what Undo takes off the log goes from the picture too, and another boat has none of it.
func TestRepairIsMarkedOnThePicture(t *testing.T) {
	p := openAfter(t, "", desktop.at("keep"), "disable-3d-apis", own(t))
	const marked = `[...document.querySelectorAll('#twin text')].some(e => e.textContent.includes('hole'))`
	p.press(`[data-view="finished"]`)
	p.unfold("mend-kind")
	p.chooseOne("mend-kind", "hole")
	p.write("mend-at", "24")
	p.write("mend-along", "2")
	p.write("mend-round", "2")
	assert.False(t, eval[bool](p, marked))
	p.press(`[data-mend="keep"]`)
	p.wait(marked)
	p.press("#undo")
	p.wait(`!(%s)`, marked)
	p.press("#redo")
	p.wait(marked)
	p.again()
	p.ready()
	p.wait(marked)
	p.chooseOne("starting", "1")
	p.wait(`!(%s)`, marked)
	p.chooseOne("shelf", "0")
	p.wait(marked)
	p.take() // the browser itself logs that WebGL is off
}
