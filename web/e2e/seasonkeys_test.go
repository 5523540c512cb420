package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// laptop is a small one's window.
var laptop = screen{name: "laptop", width: 1366, height: 768, density: 1}

// stepTo presses a key until an element has the focus, looks at each stop on the way, and returns how many
// presses it took.
func (p *tab) stepTo(key, selector string) int {
	p.Helper()
	const most = 60
	for n := 1; n <= most; n++ {
		p.keys(key)
		p.settle()
		if !eval[bool](p, stopShows) {
			assert.Fail(p, "the focus does not show", eval[string](p, `document.activeElement.outerHTML.slice(0, 120)`))
		}
		if eval[bool](p, `document.activeElement.matches(%q)`, selector) {
			return n
		}
	}
	require.Fail(p, "never reached", selector)
	return 0
}

// With Tab, arrows, Enter, Space and what is typed alone: from the opening to two boats in two teams, their days, the
// plan printed and saved as a calendar, its list of days read, what was done entered, and a step of a stage ticked.
// Every stop shows, the focus stays where it was pressed, and what is set first is few presses away.
func TestSeasonByKeyboard(t *testing.T) {
	p := open(t, laptop.at("choose"))
	eval[bool](p, `window.asked = 0, window.print = () => asked++,
		window.saved = [], window.handOver = (name, kind, text) => saved.push({name, text}), true`)
	p.stepTo(kb.Tab, `#notches [aria-current=true]`)
	p.stepTo(kb.ArrowLeft, `#notches [data-at=season]`)
	p.keys(kb.Enter)
	p.wait(planKnown)
	assert.LessOrEqual(t, p.stepTo(kb.Tab, `#season-practised`), 4)
	p.keys("4")
	assert.LessOrEqual(t, p.stepTo(kb.Tab, `#season-boats`), 2)
	p.keys("2")
	p.stepTo(kb.Tab, `#season-teams`)
	p.keys("2")
	assert.LessOrEqual(t, p.stepTo(kb.Tab, `#season-begin`), 2)
	p.keys("06142027")
	p.stepTo(kb.Tab, `#season-end`)
	p.keys("09302028" + kb.Tab)
	p.wait(planKnown + ` && document.getElementById('season-head').textContent.includes('2 boats in 2 teams')`)
	assert.Equal(t, "2028-09-30", eval[string](p, `document.getElementById('season-end').value`))

	// Three folds of the form and four numbers stand between, and the chart.
	assert.LessOrEqual(t, p.stepTo(kb.Tab, `#season-chart .scroll`), 8)
	p.keys(kb.PageDown)
	p.wait(`document.activeElement.scrollTop > 100`)
	for i, what := range []string{"print", "days"} {
		assert.Equal(t, 1, p.stepTo(kb.Tab, `[data-season=`+what+`]`))
		p.keys(" ")
		p.wait(fmt.Sprintf(`asked === %d`, i+1))
		eval[bool](p, `dispatchEvent(new Event('afterprint'))`)
		assert.Equal(t, what, eval[string](p, `document.activeElement.dataset.season`))
	}
	p.stepTo(kb.Tab, `[data-season=calendar]`)
	p.keys(kb.Enter)
	p.wait(`saved.length === 1 && saved[0].text.includes('BEGIN:VEVENT')`)
	assert.Equal(t, "calendar", eval[string](p, `document.activeElement.dataset.season`))
	p.stepTo(kb.Tab, `[data-plan="plan.days"] summary`)
	p.keys(kb.Enter)
	p.stepTo(kb.Tab, `[data-plan="plan.days"] .scroll`)

	p.stepTo(kb.Tab, `#season > details.sheet > summary`)
	p.keys(kb.Enter)
	p.stepTo(kb.Tab, `#work-done`)
	p.keys("1")
	p.stepTo(kb.Tab, `[data-season=work]`)
	p.keys(kb.Enter)
	p.wait(`document.getElementById('work-says').textContent.startsWith('Entered')`)
	p.wait(planKnown)
	assert.Equal(t, "work", eval[string](p, `document.activeElement.dataset.season`))
	assert.True(t, eval[bool](p, `document.querySelector('[data-plan="plan.days"]').open`), "the list stays open")

	require.Positive(t, eval[int](p, stakesLeft))
	p.keys("]]") // to the second stage
	p.stepTo(kb.Tab, `#jumps button`)
	p.stepTo(kb.ArrowRight, `[data-jump="[data-steps]"]`)
	p.keys(kb.Enter)
	p.stepTo(kb.Tab, `[data-tick="gather.gear"]`)
	p.keys(" ")
	p.wait(`document.activeElement.checked && document.activeElement.dataset.tick === 'gather.gear'`)
	p.keys("[") // the box ticked is gone with its stage, and the focus is at the notch
	p.stepTo(kb.ArrowLeft, `#notches [data-at=season]`)
	p.keys(kb.Enter)
	p.wait(planKnown + ` && ` + stakesLeft + ` === 0`)
}

// stakesLeft is how many stakes and posts the plan has still to cut.
const stakesLeft = `parseInt([...document.querySelectorAll('[data-plan="plan.tasks"] tbody tr')]
	.find(tr => tr.cells[0].textContent === 'Cut stakes and posts')?.cells[1].textContent ?? 0)`
