package markup_test

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
	"barkwright/wasm/markup"
)

// unsaid are words that the page does not use, each with what it says instead.
var unsaid = map[string]string{
	`\b([Ss]he|[Hh]ers?)\b`:   "it, of the boat",
	`\bAC\b`:                  "the book's whole name",
	`[Ss]trike out`:           "remove",
	`\bsplits of the stem`:    "laminations",
	`95 (parts )?in 100`:      "over 95 %",
	`of these proportions`:    "of this shape",
	`[Ee]nd-to-end joint[^s]`: "joint",
	`\bnought\b`:              "zero",
	`\+-[0-9]+ %`:             "either way",
	`[Hh]eel(ed|ing)\b|^Heel (at|she|with)\b|of heel\b`: "lean: the heel is a part of the end",
	`looked at (covers|rates)`:                          "we read",
	`\b[Rr]ail height|to the rail\b`:                    "the cap top",
	`[Hh]eight of the stem head`:                        "stem-head height",
}

// One word for one thing, over all that is said of the boats that the page starts with,
// of the page itself and of the README.
func TestOneWordForOneThing(t *testing.T) {
	looked := map[string]bool{}
	look := func(where, text string) {
		if looked[text] {
			return
		}
		looked[text] = true
		for word, instead := range unsaid {
			if found := regexp.MustCompile(word).FindString(text); found != "" {
				assert.Fail(t, "a word that is not used", "%q in %s: say %s\n%s", found, where, instead, text)
			}
		}
	}
	for _, name := range []string{"web/index.html", "README.md"} {
		text, err := os.ReadFile(filepath.Join("..", "..", filepath.FromSlash(name)))
		require.NoError(t, err)
		for _, line := range regexp.MustCompile(`\n`).Split(string(text), -1) {
			look(name, line)
		}
	}
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		w := core.OnWater(c)
		for _, st := range stage.All() {
			for _, said := range markup.Said(st, c, w, units.Imperial16) {
				look(string(st.Key), said)
			}
		}
		for _, n := range append(answer.All(c), answer.Water(c, w)...) {
			look(n.Key, n.Working(units.Imperial16)+" "+n.Cited+" "+n.Word)
		}
		for _, check := range answer.Checks(c) {
			look(check.Key, check.Word+" "+check.Text(units.Imperial16))
		}
	}
	for _, k := range record.Kinds() {
		look("the kinds of measurement", k.String())
	}
	for _, c := range wood.AllConditions() {
		guide := c.Guide()
		look(c.String(), guide.Uncertainty+" "+guide.SafeBasis+" "+guide.LimitBasis)
	}
}
