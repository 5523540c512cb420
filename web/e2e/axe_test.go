package e2e

import (
	"fmt"
	"os"
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/stage"
)

// Every stage, the shed and all of it are clean by axe-core, a checker of web pages against
// WCAG 2.2 A and AA and its own best practice, at four widths: make axe gets it and runs this.
func TestAxe(t *testing.T) {
	path := os.Getenv("BARKWRIGHT_AXE")
	if path == "" {
		t.Skip("make axe fetches axe-core and runs this")
	}
	axe, err := os.ReadFile(path)
	require.NoError(t, err)
	for _, size := range [][2]int64{{320, 640}, {390, 844}, {768, 1024}, {1440, 900}} {
		t.Run(fmt.Sprint(size[0]), func(t *testing.T) { axeAt(t, string(axe), size) })
	}
}

// axeAt looks at every stage and state in a window of a size.
func axeAt(t *testing.T, axe string, size [2]int64) {
	p := open(t, screen{name: "axe", width: size[0], height: size[1], density: 1})
	p.skinLaid()
	p.do(chromedp.Evaluate[chromedp.Void](axe + "; undefined"))
	clean := func(at string) {
		found, err := chromedp.Run(p.ctx, chromedp.Evaluate[[]string](`axe.run(document, {runOnly: ['wcag2a', 'wcag2aa',
			'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']})
				.then(async r => {
					// A target that is scrolled half under what stays is no smaller for it: each that is called
					// small is looked at again in the middle of the window.
					for (const v of r.violations.filter(v => v.id === 'target-size')) {
						const small = [];
						for (const n of v.nodes) {
							document.querySelector(n.target[0]).scrollIntoView({block: 'center', behavior: 'instant'});
							const again = await axe.run({include: [n.target]}, {runOnly: {type: 'rule', values: ['target-size']}});
							small.push(...again.violations.flatMap(v => v.nodes));
						}
						v.nodes = small;
					}
					return r.violations.filter(v => v.nodes.length > 0)
						.map(v => v.id + ': ' + v.nodes.length + ', ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 120)).join(' | '));
				})`, chromedp.EvalAwaitPromise))
		require.NoError(t, err)
		assert.Empty(t, found, "%v at %s", size, at)
	}
	for _, k := range append(stage.Keys(), "season", "compare", "lessons", "shed") {
		p.notch(k)
		clean(string(k))
	}
	p.notch("lessons")
	p.press(`[data-lesson="open:depth"]`)
	p.settle()
	clean("a lesson")
	p.press(`[data-lesson="close"]`)
	p.notch(stage.Choose)
	drawing := newSheet()
	p.openSheet(drawing)
	clean("reading off a drawing")
	for _, end := range []float64{-1, 1} {
		p.clickPicture(drawing.at(end*drawing.Design.Length/2, 0))
	}
	clean("reading off a drawing, a line pressed")
	p.press(`[data-trace="close"]`)
	p.wait(`!document.getElementById('tracing').open`)
	p.notch(stage.Rib)
	eval[bool](p, `document.querySelectorAll('details').forEach(d => d.open = true), true`)
	p.settle()
	clean("rib, all unfolded")
	p.keys("w")
	p.settle()
	clean("the bench")
	for _, part := range []string{"tape", "all"} {
		eval[bool](p, `document.querySelector('#bench [data-bench=%s]').click(), true`, part)
		p.settle()
		clean("the bench, " + part)
	}
	eval[bool](p, `document.querySelector('#bench [data-turns-sun]').click(), true`)
	p.settle()
	p.wait(`document.getAnimations().length === 0`)
	clean("the bench in sunlight")
	eval[bool](p, `document.querySelector('#bench [data-turns-sun]').click(),
		document.querySelector('[data-bench=close]').click(), true`)
	p.settle()
	p.enter("ribThickness", "9 ft")
	p.enter("bilge", "much")
	p.settle()
	clean("rib, with faults")
}
