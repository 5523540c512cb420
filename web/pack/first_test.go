package main

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/pipeline"
)

// The page is laid with the numbers of the boat it opens with, worked out to the end: as
// the core has them.
func TestOpeningBoatStandsInThePage(t *testing.T) {
	boat := pipeline.New(core.Evaluate(design.Default()), units.Imperial16)
	boat.Need(pipeline.Figures)
	c := boat.Canoe()
	numbers := map[string]answer.Number{}
	for _, n := range answer.All(c) {
		numbers[n.Key] = n
	}
	cells, head := cells(), headline()
	for _, s := range stage.All() {
		for _, key := range s.Large {
			require.False(t, numbers[key].NotYet(), key)
			assert.Contains(t, cells, `data-result="`+key+`">`+draw.Escape(numbers[key].Text(units.Imperial16))+"<", key)
		}
	}
	for _, key := range answer.Headline() {
		assert.Contains(t, head, `data-result="`+key+`">`+draw.Escape(numbers[key].Text(units.Imperial16))+"<", key)
	}
	for _, w := range answer.Checks(c) {
		assert.Equal(t, w.State != answer.NotChecked, strings.Contains(head, draw.Escape(w.Label+": "+w.Word)), w.Key)
	}
	assert.Contains(t, held(), `<b id="held-value">16&#39; 0&#34;</b>`)
	assert.Contains(t, form(), `data-typed="length" value="16&#39; 0&#34;"`)
	lacks := c.Design.OuterThwarts()
	for i, key := range design.ThwartKeys() {
		assert.Equal(t, i >= lacks, strings.Contains(form(), `data-control="`+key+`" hidden>`), key)
	}
	drawn, keys := pictures()
	assert.Equal(t, len(views), strings.Count(drawn, "<svg"))
	for _, at := range views {
		id := "first-" + at.name
		assert.Contains(t, drawn, `aria-labelledby="`+id+`-title `)
		assert.Contains(t, drawn, `<style>[aria-labelledby^="`+id+`-title"] path:not(`, "smooth edges take longer")
	}
	assert.Contains(t, keys, `<span class="slim">Key: `, "on a phone some labels stand in the key")
}
