package markup_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/plan"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// Tasks are counted in the reader's units, and the time of one goes with them: a foot's 1.6 minutes are
// 5.25 of a metre, a square foot's 5 are 53.8 of a square metre, a kilogram's 68 are 30.8 of a pound.
func TestTasksInTheReadersUnits(t *testing.T) {
	for id, want := range map[plan.ID][4]string{
		plan.DigRoots:    {"ft", "1.6", "m", "5.25"},
		plan.PitchInside: {"ft of seam", "5", "m of seam", "16.4"},
		plan.LayBark:     {"ft²", "5", "m²", "53.8"},
		plan.GatherGum:   {"lb", "30.8", "kg", "68"},
		plan.CarveRibs:   {"ribs with spares", "15", "ribs with spares", "15"},
	} {
		for i, s := range []units.System{units.Imperial16, units.Metric} {
			assert.Equal(t, want[2*i], markup.CountedBy(id, s))
			assert.Equal(t, want[2*i+1], markup.UsualMinutes(id, s))
			table := markup.SeasonTasks(s)
			key, name := plan.Of(id).Key, plan.Of(id).Name
			assert.Contains(t, table, `<td id="season-unit-`+key+`">`+want[2*i]+"</td>")
			assert.Contains(t, table, `id="season-rate.`+key+`" data-set="rate.`+key+`" aria-label="`+name+`, minutes for one" `+
				`aria-describedby="season-rate-help season-unit-`+key+` season-rate.`+key+`-fault" placeholder="`+want[2*i+1]+`"`)
			assert.Contains(t, markup.TaskOptions(s), name+" ("+want[2*i]+")")
		}
	}
}

// Every field of the plan stands in the form once; those that are set first stand first.
func TestFormOfThePlan(t *testing.T) {
	form := markup.SeasonForm()
	last := -1
	for _, key := range []string{"practised", "learners", "boats", "teams", "beds", "begin", "end"} {
		at := strings.Index(form, `data-set="`+key+`"`)
		assert.Greater(t, at, last, key)
		last = at
	}
	assert.Less(t, last, strings.Index(form, "<details"), "what is set first is not folded away")
	for _, key := range []string{"daysAWeek", "hours", "from", "thaw", "freeze"} {
		before := form[:strings.Index(form, `data-set="`+key+`"`)]
		assert.Equal(t, 1, strings.Count(before, "<details")-strings.Count(before, "</details>"), key)
	}
	for _, r := range plan.Rows() {
		assert.Equal(t, 1, strings.Count(form, `data-set="`+r.Key+`"`), r.Key)
	}
	for _, r := range plan.DateRows() {
		assert.Equal(t, 1, strings.Count(form, `data-set="`+r.Key+`"`), r.Key)
	}
}
