package e2e

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/systeminfo"
	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/stage"
)

// barePage is the file of an empty Ebitengine page; what is measured against it
// belongs to make bench, which builds it.
func barePage(t testing.TB) string {
	t.Helper()
	file := os.Getenv("BARKWRIGHT_BARE")
	if file == "" {
		t.Skip("measured by make bench, which builds the bare page and sets BARKWRIGHT_BARE")
	}
	return file
}

// firstPicture is the time from navigation to the end of the program's first drawing.
func firstPicture(t testing.TB, file string) time.Duration {
	p := opened(t, file, `new MutationObserver((_, o) => {
		if (document.documentElement?.dataset.drawn) { window.firstPicture = performance.now(); o.disconnect(); }
	}).observe(document, {subtree: true, attributes: true, attributeFilter: ['data-drawn']})`)
	p.wait(`window.firstPicture > 0`)
	return since(p, `window.firstPicture`)
}

// opened shows a file in a tab that has stood empty for a while: with a new tab comes a
// window, and the browser's own pages in it take a third of a second of processor time.
func opened(t testing.TB, file, prelude string) *tab {
	p := openAddress(t, "about:blank", prelude, desktop.at(asKept))
	time.Sleep(time.Second)
	p.address = fileAddress(file)
	// Asked to tell of the network, the browser reads every byte of a page a second time for it,
	// in the page's own thread and before it is painted.
	_, err := chromedp.Call(p.ctx, network.Disable, cdp.Empty{})
	require.NoError(t, err)
	p.do(chromedp.Navigate(p.address))
	return p
}

// firstPaint is the time from navigation to the first paint with something in it.
func firstPaint(t testing.TB, file string) time.Duration {
	const at = `(performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0)`
	p := opened(t, file, ``)
	p.wait(at + ` > 0`)
	paint := since(p, at)
	p.wait(`'drawn' in document.documentElement.dataset || 'stopped' in document.documentElement.dataset`)
	p.take() // the page without its program says that it is not there
	return paint
}

func since(p *tab, at string) time.Duration {
	return time.Duration(eval[float64](p, "%s", at) * float64(time.Millisecond))
}

// compared are the medians and the fastest of nine rounds of several measurements, taken in turn in one
// browser. Of the same two pages on a quiet machine the ratio of medians came between 1.07 and 1.14 in five runs, that of
// the fastest between 1.10 and 1.22.
func compared(t *testing.T, names []string, each ...func(testing.TB) time.Duration) (medians, fastest []time.Duration) {
	t.Helper()
	const rounds = 9
	times := make([][]time.Duration, len(each))
	for range rounds {
		for i, measure := range each {
			t.Run("open", func(t *testing.T) { times[i] = append(times[i], measure(t)) })
		}
	}
	medians, fastest = make([]time.Duration, len(each)), make([]time.Duration, len(each))
	for i := range times {
		slices.Sort(times[i])
		medians[i], fastest[i] = times[i][rounds/2], times[i][0]
		t.Logf("%s: fastest of %d %v, median %v", names[i], rounds, times[i][0].Round(time.Millisecond),
			medians[i].Round(time.Millisecond))
	}
	return medians, fastest
}

// The boat stands in the first paint: within 1.2 times the time of the same page without
// its program, and under half of the time to a bare Ebitengine page's first drawing.
func TestCostOfFirstPaint(t *testing.T) {
	bare, ours := barePage(t), pageFile(t)
	page, err := os.ReadFile(ours)
	require.NoError(t, err)
	without := regexp.MustCompile(`<script [^>]*data-program>[^<]*</script>`).ReplaceAll(page, nil)
	require.Less(t, 10*len(without), 3*len(page))
	empty := filepath.Join(t.TempDir(), "empty.html")
	require.NoError(t, os.WriteFile(empty, without, 0o644))
	of, _ := compared(t, []string{"first paint", "first paint without the program", "bare page's first drawing"},
		func(t testing.TB) time.Duration { return firstPaint(t, ours) },
		func(t testing.TB) time.Duration { return firstPaint(t, empty) },
		func(t testing.TB) time.Duration { return firstPicture(t, bare) })
	alone, half := float64(of[0])/float64(of[1]), float64(of[0])/float64(of[2])
	t.Logf("first paint: %.2f of the page without its program (budget 1.2), %.2f of a bare page (budget 0.5)", alone, half)
	assert.LessOrEqual(t, alone, 1.2)
	assert.LessOrEqual(t, half, 0.5)
}

// Opening to the program's first picture stays within 1.15 times a bare Ebitengine page's.
func TestCostOfOpening(t *testing.T) {
	bare, ours := barePage(t), pageFile(t)
	medians, fastest := compared(t, []string{"bare page's first drawing", "first picture by the program"},
		func(t testing.TB) time.Duration { return firstPicture(t, bare) },
		func(t testing.TB) time.Duration { return firstPicture(t, ours) })
	usual, best := float64(medians[1])/float64(medians[0]), float64(fastest[1])/float64(fastest[0])
	t.Logf("first picture: ratio %.2f (budget 1.15), of the fastest %.2f (at most 1.3)", usual, best)
	assert.LessOrEqual(t, usual, 1.15)
	assert.LessOrEqual(t, best, 1.3)
}

// A page left alone uses under 0.5 % of a core, all of the browser's processes together, but
// for what a blank page uses.
func TestCostOfStandingIdle(t *testing.T) {
	barePage(t)
	p := open(t, desktop)
	// Compiling and collecting after the start are part of opening.
	time.Sleep(8 * time.Second)
	used := func() float64 {
		res, err := chromedp.CallBrowser(p.ctx, systeminfo.GetProcessInfo, cdp.Empty{})
		require.NoError(t, err)
		sum := 0.0
		for _, process := range res.ProcessInfo {
			sum += process.CPUTime
		}
		return sum
	}
	// The least of three spells: what else the machine is doing only ever adds.
	least := func() float64 {
		share := math.Inf(1)
		for range 3 {
			before, start := used(), time.Now()
			time.Sleep(6 * time.Second)
			share = min(share, 100*(used()-before)/time.Since(start).Seconds())
		}
		return share
	}
	drawn := p.drawn()
	share := least()
	assert.Equal(t, drawn, p.drawn(), "nothing drawn")
	p.do(chromedp.Navigate("about:blank"))
	time.Sleep(3 * time.Second)
	blank := least()
	t.Logf("idle: %.2f %% of a core, a blank page %.2f (budget 0.5 more)", share, blank)
	assert.Less(t, share-blank, 0.5)
}

// A step of a slider to the new numbers and the new picture's data is budgeted at 8.3 ms
// at p95, with the bark laid flat in the picture at 16.7: what the handler takes, from the
// event to its end. At every stage, in every view, on every boat to start from. In a drag the browser hands on a move of
// the mouse a frame, before that frame is drawn: without a GPU the graphics still paint the picture before on the same
// cores. Alone none is painted between the steps.
func TestCostOfAStep(t *testing.T) {
	barePage(t)
	type at struct {
		place, control, prepare string
		budget                  float64
	}
	const whole, flat = 8.3, 16.7
	list := []at{{"", "length", "", whole}}
	for _, k := range stage.Keys() {
		list = append(list, at{string(k), "length", "", whole})
	}
	for state, budget := range map[string]float64{"bed": whole, "finished": whole, "flat": flat, "up": flat} {
		list = append(list, at{"bark", "beam", fmt.Sprintf(`document.querySelector('[data-view=%s]').click()`, state), budget})
	}
	for i := range design.Starting() {
		list = append(list, at{"", "length", fmt.Sprintf(`(s => { s.value = '%d'; s.dispatchEvent(new Event('change',
			{bubbles: true})); })(document.getElementById('starting'))`, i), whole})
	}
	list = append(list, at{"", "length", `document.querySelector('[data-measured=example]').click(),
		(text => { text.value = (text.value + '\n').repeat(3); })(document.getElementById('record-text')), // 45 rows
		document.querySelector('[data-measured=paste]').click(),
		document.getElementById('add-sheet').click(), document.getElementById('add-sheet').click(),
		(said => { if (!said.startsWith('45 read')) throw new Error(said); })(document.getElementById('record-says').textContent)`, whole})
	for _, a := range list {
		t.Run(strings.TrimSpace(a.place+" "+a.control), func(t *testing.T) {
			p := open(t, desktop.at(a.place))
			if a.prepare != "" {
				eval[any](p, "(%s, 0)", a.prepare)
			}
			p.wait(`document.documentElement.dataset.skin === ''`)
			eval[bool](p, `(() => {
				const slider = document.querySelector('input[name="%s"]');
				let made = 0;
				window.times = [];
				window.step = () => {
					slider.value = +slider.value + (made++ %% 40 < 20 ? 1 : -1) * +slider.step;
					const start = performance.now();
					slider.dispatchEvent(new Event('input', {bubbles: true}));
					times.push(performance.now() - start);
				};
				return true;
			})()`, a.control)
			const counted, first = 100, 20 // the first are those of code not yet compiled to the end
			taken := func() []float64 {
				return eval[[]float64](p, `times.splice(0).slice(%d).sort((a, b) => a - b)`, first)
			}
			eval[bool](p, `(() => { for (let i = 0; i < %d; i++) step(); return true; })()`, first+counted)
			alone := taken()
			eval[bool](p, `(addEventListener('mousemove', step), true)`)
			for begun, i := time.Now(), 1; i <= first+counted; i++ {
				p.mouse(input.DispatchMouseEventTypeMouseMoved, 700, float64(800+i%2))
				time.Sleep(time.Until(begun.Add(time.Duration(i) * time.Second / 60)))
			}
			drag := taken()
			require.Greater(t, len(drag), counted*9/10)
			of := func(sorted []float64, share float64) float64 { return sorted[int(share*float64(len(sorted)))] }
			t.Logf("a step at %q by %s: in a drag p50 %.1f ms, p95 %.1f; alone p50 %.1f, p95 %.1f (budget %.1f)", a.place, a.control,
				of(drag, 0.5), of(drag, 0.95), of(alone, 0.5), of(alone, 0.95), a.budget)
			assert.LessOrEqual(t, of(alone, 0.95), a.budget, "alone %s", a.prepare)
			assert.LessOrEqual(t, of(drag, 0.95), a.budget, a.prepare)
		})
	}
}

// How long the plan takes, from the season's opening or a number of boats to its days, and to what would change them,
// and how long each slice of it lets a step wait: 50 ms at p95, which is when a wait begins to be felt. A step at Choose,
// where what the boat asks stands open and is worked out anew at each, is within the budget of any other.
func TestCostOfThePlan(t *testing.T) {
	barePage(t)
	p := openAfter(t, `(() => { const real = window.setTimeout; window.slices = []; window.setTimeout = (act, ms, ...all) => real(() => {
		const start = performance.now(); try { act(...all); } finally { slices.push(performance.now() - start); } }, ms); })()`,
		desktop.at("choose"))
	p.wait(`document.documentElement.dataset.skin === ''`)
	eval[bool](p, `(document.getElementById('asks-fold').open = true, document.getElementById('asks').scrollIntoView(), true)`)
	steps, err := chromedp.Run(p.ctx, chromedp.Evaluate[[]float64](`(async slider => {
		const times = [];
		for (let i = 0; i < 120; i++) {
			slider.value = +slider.value + (i % 20 < 10 ? 1 : -1) * +slider.step;
			const start = performance.now();
			slider.dispatchEvent(new Event('input', {bubbles: true}));
			times.push(performance.now() - start);
			await new Promise(done => setTimeout(done, 150)); // into the search
		}
		return times.slice(20).sort((a, b) => a - b); // the first are those of code not yet compiled to the end
	})(document.querySelector('input[name="length"]'))`, chromedp.EvalAwaitPromise))
	require.NoError(t, err)
	t.Logf("a step while the plan is searched: p50 %.1f ms, p95 %.1f ms (budget 8.3)", steps[50], steps[95])
	assert.LessOrEqual(t, steps[95], 8.3)

	eval[bool](p, `document.querySelector('#notches [data-at=season]').click(), true`)
	// It opens with one, and what stands is not worked out anew.
	for _, boats := range []string{"3", "1", "6"} {
		took, err := chromedp.Run(p.ctx, chromedp.Evaluate[[]float64](fmt.Sprintf(`(async boats => {
			const until = async (test) => {
				while (!test()) await new Promise(requestAnimationFrame);
				return performance.now() - start;
			};
			const season = document.getElementById('season'), start = performance.now();
			const ways = '#season-tables [data-plan="plan.ways"]';
			slices.length = 0;
			document.querySelector(ways)?.remove();
			boats.value = %q;
			boats.dispatchEvent(new Event('change', {bubbles: true}));
			const known = await until(() => season.dataset.plan === 'known');
			const helped = await until(() => document.querySelector(ways));
			slices.sort((a, b) => a - b);
			return [known, helped, slices[Math.floor(0.95 * slices.length)], slices.at(-1)];
		})(document.getElementById('season-boats'))`, boats), chromedp.EvalAwaitPromise))
		require.NoError(t, err)
		t.Logf("the plan of %s boats: %.0f ms to its days, %.0f to what would change them; a slice p95 %.0f ms (budget 50), "+
			"the longest %.0f",
			boats, took[0], took[1], took[2], took[3])
		assert.LessOrEqual(t, took[2], 50.0)
	}
}

// A step calls out of the program some dozens of times, 65 when this was written. Each call takes a microsecond and
// more; 346 were made while every place on the page was written by itself.
func TestStepCallsOutLittle(t *testing.T) {
	p := openAfter(t, `{
		const make = WebAssembly.instantiate;
		window.calls = 0;
		WebAssembly.instantiate = (program, imports) => {
			for (const [name, call] of Object.entries(imports.gojs)) {
				// What the collector lets go of is told whenever it runs.
				if (!name.endsWith('finalizeRef')) imports.gojs[name] = sp => { calls++; return call(sp); };
			}
			return make.call(WebAssembly, program, imports);
		};
	}`, desktop)
	p.wait(`document.documentElement.dataset.skin === ''`)
	step := func(by int) int {
		return eval[int](p, `((slider, before) => {
			slider.value = +slider.value + %d * slider.step;
			slider.dispatchEvent(new Event('input', {bubbles: true}));
			return calls - before;
		})(document.querySelector('input[name="length"]'), calls)`, by)
	}
	before := eval[string](p, gunwale)
	step(1) // the first also tells the page's script of every place
	for range 5 {
		assert.Less(t, step(1), 100)
	}
	assert.NotEqual(t, before, eval[string](p, gunwale))
	for range 5 {
		step(-1)
	}
	assert.Less(t, step(-1), 100)
	assert.Equal(t, before, eval[string](p, gunwale))
}

// What a drag has left in memory is collected once the page stands still, so that the next drag is not held up for it.
func TestMemoryIsCollectedAtRest(t *testing.T) {
	p := openAfter(t, `{
		const make = WebAssembly.instantiate;
		window.freed = 0;
		WebAssembly.instantiate = (program, imports) => {
			const free = imports.gojs['syscall/js.finalizeRef']; // of what the collector has found unused
			imports.gojs['syscall/js.finalizeRef'] = sp => { freed++; free(sp); };
			return make.call(WebAssembly, program, imports);
		};
	}`, desktop.at("rib"))
	p.wait(`document.documentElement.dataset.skin === ''`)
	time.Sleep(2 * time.Second) // what opening has left is collected
	eval[bool](p, `(slider => {
		for (let i = 0; i < 60; i++) {
			slider.value = +slider.value + (i %% 40 < 20 ? 1 : -1) * +slider.step;
			slider.dispatchEvent(new Event('input', {bubbles: true}));
		}
		return true;
	})(document.querySelector('input[name="length"]'))`)
	eval[bool](p, `(window.freed = 0, true)`)
	p.wait(`freed > 100`)
}

// A step is drawn once and straight on the canvas, in two calls, one for all lines and faces and one for the
// lettering: each further layer as large as the picture takes graphics without a GPU a twentieth of what a step costs
// them, and more by way of an image.
func TestStepIsDrawnOnce(t *testing.T) {
	p := openAfter(t, `{
		const gl = WebGL2RenderingContext.prototype, {drawElements, viewport, bindFramebuffer, flush} = gl;
		let size = 0, onCanvas = true;
		window.frames = window.largest = window.calls = 0; // frames, pixels of what is drawn elsewhere, calls that draw on it
		gl.bindFramebuffer = function(target, to) { onCanvas = !to; bindFramebuffer.call(this, target, to); };
		gl.viewport = function(x, y, width, height) { size = width * height; viewport.call(this, x, y, width, height); };
		gl.drawElements = function(...all) { onCanvas ? calls++ : largest = Math.max(largest, size); drawElements.apply(this, all); };
		gl.flush = function() { frames++; flush.call(this); };
	}`, desktop.at("rib"))
	p.wait(`document.documentElement.dataset.skin === ''`)
	p.settle()
	drawn := p.drawn()
	eval[bool](p, `(slider => {
		frames = largest = calls = 0;
		slider.value = +slider.value + +slider.step;
		slider.dispatchEvent(new Event('input', {bubbles: true}));
		return true;
	})(document.querySelector('input[name="length"]'))`)
	p.settle()
	assert.Equal(t, drawn+1, p.drawn())
	assert.Equal(t, 1, eval[int](p, `frames`))
	assert.Equal(t, 2, eval[int](p, `calls`))
	assert.Less(t, eval[int](p, `largest`), 1000)
}

// Every edge is feathered by pen.kage, so the canvas needs no more samples of a pixel than one.
func TestCanvasTakesOneSampleAPixel(t *testing.T) {
	p := open(t, desktop.at("rib"))
	assert.Equal(t, 0, eval[int](p, `(gl => gl.getParameter(gl.SAMPLES))(document.querySelector('#view canvas')
		.getContext('webgl2'))`))
}

// Opening with 400 boats kept takes under twice the time of one, and a step costs the
// same: only the boat in hand is read and written.
func TestCostOfManyBoats(t *testing.T) {
	barePage(t)
	text := kept(t, "Boat", nil)
	fill := func(n int) string {
		return fmt.Sprintf(`localStorage.clear(); for (let i = 0; i < %d; i++)
			localStorage.setItem('barkwright.boat.' + String(i).padStart(4, '0'),
				%q.replaceAll('"Boat"', '"Boat ' + i + '"'));`, n, text)
	}
	const rounds, many = 3, 400
	var ready, step [2]float64
	for k, n := range []int{1, many} {
		for round := range rounds {
			p := openAfter(t, fill(n)+`window.start = performance.now(); new MutationObserver((_, o) => {
				if (document.documentElement?.dataset.ready) { window.opened = performance.now() - start; o.disconnect(); }
			}).observe(document, {subtree: true, attributes: true, attributeFilter: ['data-ready']})`, desktop)
			p.wait(`window.opened > 0`)
			assert.Equal(t, n, eval[int](p, `document.getElementById('shelf').options.length`))
			p.wait(`document.documentElement.dataset.skin === ''`)
			steps := eval[[]float64](p, `(b => { const all = []; for (let i = 0; i < 20; i++) { const t = performance.now();
				b.click(); all.push(performance.now() - t); } return all.sort((a, b) => a - b);
					})(document.querySelector('[data-control="beam"] [data-step="1"]'))`)
			took := eval[float64](p, `window.opened`)
			// The fastest is compared: what else the machine is doing only ever adds.
			if round == 0 || took < ready[k] {
				ready[k] = took
			}
			if round == 0 || steps[10] < step[k] {
				step[k] = steps[10]
			}
		}
	}
	t.Logf("opening with 1 boat kept %.0f ms, with %d %.0f ms, ratio %.2f (budget 2)", ready[0], many, ready[1], ready[1]/ready[0])
	t.Logf("a step with 1 boat kept %.1f ms, with %d %.1f ms (budget the same)", step[0], many, step[1])
	assert.Less(t, ready[1], 2*ready[0])
	assert.Less(t, step[1], 1.25*step[0]+1)
}
