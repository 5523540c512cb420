package e2e

import (
	"testing"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
)

const planKnown = `document.getElementById('season').dataset.plan === 'known'`

// The plan is worked out at rest, follows the crew, says what a bad one lacks at its field, and
// is kept with the boat; the chart has a row for every task.
func TestSeason(t *testing.T) {
	p := openStored(t, map[string]string{}, "")
	p.ready()
	head := func() string { return eval[string](p, `document.getElementById('season-head').textContent`) }
	enter := func(id, text string) {
		p.write(id, text)
		eval[bool](p, `document.getElementById('%s').dispatchEvent(new Event('change', {bubbles: true}))`, id)
	}
	eval[bool](p, `document.querySelector('#notches [data-at=season]').click(), true`)
	p.wait(planKnown)
	two := head()
	assert.Contains(t, two, "Likely ")
	assert.Contains(t, two, "2 practised")
	assert.Equal(t, 1, eval[int](p, `document.querySelectorAll('#season-chart svg').length`))
	assert.Greater(t, eval[int](p, `document.querySelectorAll('#season-tables [data-plan="plan.tasks"] tbody tr').length`), 40)
	// The chart of several boats goes on in parts, which scroll in a box of their own, lettered as one boat's.
	const letter = `parseFloat(document.querySelector('#season-chart text').getAttribute('font-size'))`
	size := eval[float64](p, letter)
	enter("season-boats", "2")
	p.wait(planKnown + ` && document.querySelectorAll('#season-chart .scroll > svg').length > 1`)
	assert.Equal(t, size, eval[float64](p, letter))
	assert.True(t, eval[bool](p, `(e => e.scrollHeight > e.clientHeight && e.scrollWidth <= e.clientWidth + 1)(`+
		`document.querySelector('#season-chart .scroll'))`))
	enter("season-boats", "1")
	p.wait(planKnown + ` && document.querySelectorAll('#season-chart svg').length === 1`)

	enter("season-practised", "4")
	p.wait(planKnown + ` && document.getElementById('season-head').textContent.includes('4 practised')`)
	assert.NotEqual(t, two, head())
	enter("season-practised", "0")
	p.wait(`document.getElementById('season-practised-fault').textContent.includes('one pair of hands')`)
	enter("season-practised", "many")
	const many = `document.getElementById('season-practised').value === 'many' &&
		document.getElementById('season-practised-fault').textContent.startsWith('A number')`
	p.wait(many)
	// It stays with its boat, also when the page is opened again.
	p.change("#starting", "2")
	p.wait(`document.getElementById('season-practised').value === '0' &&
		document.getElementById('season-practised-fault').textContent.includes('one pair of hands')`)
	p.change("#shelf", "0")
	p.wait(many)
	p.again()
	p.wait(many)
	enter("season-practised", "3")
	p.wait(planKnown + ` && document.getElementById('season-head').textContent.includes('3 practised')`)
	p.again()
	p.wait(planKnown + ` && document.getElementById('season-head').textContent.includes('3 practised')`)
}

// At Choose the plan waits until what the boat asks is opened and in sight; then its days are worked out.
func TestPlanWaitsForSight(t *testing.T) {
	p := open(t, desktop.at("choose"))
	p.wait(`document.documentElement.dataset.skin === ''`)
	const asks = `document.getElementById('asks-table').textContent`
	assert.Empty(t, eval[string](p, asks))
	eval[bool](p, `(document.getElementById('asks-fold').open = true, document.getElementById('asks').scrollIntoView(), true)`)
	p.wait(asks + `.includes('likely ')`)
}

// Where both stand on one page, what the boat asks is written also if it comes into sight after the plan.
func TestAsksComeIntoSightAfterThePlan(t *testing.T) {
	p := open(t, desktop)
	eval[bool](p, `(document.getElementById('asks').scrollIntoView({block: 'center'}), true)`)
	p.wait(planKnown)
	eval[bool](p, `(document.getElementById('asks').scrollIntoView({block: 'center'}), true)`)
	p.settle()
	assert.Greater(t, eval[float64](p, `document.getElementById('season').getBoundingClientRect().bottom`), 100.0)
	eval[bool](p, `document.getElementById('asks-fold').open = true`)
	p.wait(`document.getElementById('asks-table').textContent.includes('likely ')`)
}

// On a phone nothing of the season room is broader than the screen, and every field is large enough
// for a finger.
func TestSeasonOnAPhone(t *testing.T) {
	p := open(t, phone.at("season"))
	p.wait(planKnown)
	// What is next stands in the bar, and one press each goes to its days and to the field in which it is entered.
	assert.Equal(t, "Next: day 1", eval[string](p, `document.getElementById('next-when').textContent`))
	first := eval[string](p, `document.querySelector('[data-plan="plan.days"] tbody td').textContent`)
	assert.Contains(t, eval[string](p, `document.getElementById('next-tasks').textContent`), first)
	p.do(chromedp.Click(chromedp.CSS(`#next`)))
	p.wait(`document.activeElement.matches('[data-plan="plan.days"][open] > summary') && ` + focusInSight)
	p.do(chromedp.Click(chromedp.CSS(`#next-done`)))
	p.wait(`document.activeElement.id === 'work-task' && ` + focusInSight)
	assert.Contains(t, eval[string](p, `document.getElementById('work-task').selectedOptions[0].textContent`), first)
	eval[bool](p, `(document.querySelectorAll('#crew, #crew details').forEach(e => e.open = true), true)`)
	assert.LessOrEqual(t, eval[int](p, `document.documentElement.scrollWidth`), 390)
	assert.Empty(t, eval[[]string](p,
		`[...document.querySelectorAll('#crew :is(input, select), #season .row :is(button, select, input)')]
		.filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 44).map(e => e.id || e.textContent)`))
}

// focusInSight tells whether what has the focus stands in the window, under the bars.
const focusInSight = `(r => r.top > 100 && r.bottom < innerHeight)(document.activeElement.getBoundingClientRect())`

// A chart that is drawn anew while it is read keeps the focus and stays where it was scrolled to.
func TestChartKeepsItsPlace(t *testing.T) {
	p := open(t, laptop.at("season"))
	boats := func(n int) {
		eval[bool](p, `(e => { e.value = '%d'; e.dispatchEvent(new Event('change', {bubbles: true})); return true; })(
			document.getElementById('season-boats'))`, n)
		p.wait(planKnown+` && document.getElementById('season-head').textContent.includes('%d boats')`, n)
	}
	boats(2)
	const scrolls = `document.querySelector('#season-chart .scroll')`
	p.wait(`!!` + scrolls)
	eval[bool](p, `(e => { e.focus(); e.scrollTop = 120; window.chart = e; return true; })(`+scrolls+`)`)
	boats(3)
	p.wait(`!chart.isConnected`)
	assert.Equal(t, 120, eval[int](p, `(e => document.activeElement === e ? e.scrollTop : -1)(`+scrolls+`)`))
}
