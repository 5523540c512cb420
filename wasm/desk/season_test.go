package desk_test

import (
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/mend"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
)

// A calendar needs dates; it is handed over under the boat's name, and paper carries the plan.
func TestSeasonButtons(t *testing.T) {
	d, w := open(&memory.Store{})
	now := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC)
	assert.Nil(t, d.Season("calendar", desk.PaperForm{}, now).Save)
	require.Empty(t, w.SetSeason("begin", "2027-06-14"))
	r := d.Season("calendar", desk.PaperForm{}, now)
	require.NotNil(t, r.Save)
	assert.Contains(t, r.Save.Name, ".ics")
	assert.Contains(t, r.Save.Text, "BEGIN:VEVENT")
	assert.Contains(t, r.Save.Text, "DTSTAMP:20270501T120000Z")
	for _, what := range []string{"print", "days", "asks"} {
		assert.Contains(t, d.Season(what, desk.PaperForm{}, now).Print, "<svg", what)
	}
	require.Empty(t, w.SetSeason("practised", "0"))
	assert.Empty(t, d.Season("print", desk.PaperForm{}, now).Print)
	assert.NotEmpty(t, d.Season("asks", desk.PaperForm{}, now).Print, "what the boat asks needs no crew")
}

// A repair is worked out from what is typed; what cannot be read, or lies past the boat, is named.
func TestMend(t *testing.T) {
	d, _ := open(&memory.Store{})
	r := d.Mend(desk.MendForm{Kind: int(mend.Hole), At: `3'`, Along: `6"`, Round: `4"`})
	assert.Contains(t, r.Markup["mend-table"], "42 stitches")
	for _, bad := range []desk.MendForm{{At: "here"}, {At: `30'`, Round: `4"`}, {Kind: int(mend.Crack)},
		{Along: `6"`, Groups: "some"}} {
		r := d.Mend(bad)
		assert.Empty(t, r.Markup)
		assert.NotEmpty(t, r.Says[0].Text)
	}
}
