package markup_test

import (
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// Every field that is written here has a name and a line of help, and is described by it and by its fault; so has
// each of the season's form, and each of the table of times.
func TestEveryFieldHasHelp(t *testing.T) {
	forms := []string{markup.SeasonForm(), markup.SeasonTasks(units.Imperial16)}
	for _, all := range [][]markup.Field{markup.WorkFields, markup.MendFields, markup.HoldFields, markup.RankFields} {
		forms = append(forms, markup.Fields(all))
	}
	fields := 0
	for _, form := range forms {
		found, _ := tags(t, form)
		words := map[string]string{}
		for _, m := range regexp.MustCompile(`class="help" id="([^"]+)">([^<]+)<`).FindAllStringSubmatch(form, -1) {
			words[m[1]] = m[2]
		}
		for _, f := range found {
			if f.name != "input" && f.name != "select" {
				continue
			}
			fields++
			id, by := f.attr["id"], strings.Fields(f.attr["aria-describedby"])
			assert.Contains(t, by, id+"-fault")
			assert.NotEmpty(t, words[by[0]], "%s is described by %s", id, by[0])
		}
	}
	assert.Greater(t, fields, 120)
}
