package answer_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/units"
)

// What root a boat takes is an estimate: in numbers and their workings it is about so many
// feet, a hundred and more in tens, and no check promises a foot of it.
func TestFeetOfRootAreAbout(t *testing.T) {
	feet := regexp.MustCompile(`\b([0-9]+) ft\b`)
	inTens := func(where, text string) {
		for _, found := range feet.FindAllStringSubmatch(text, -1) {
			n, err := strconv.Atoi(found[1])
			assert.NoError(t, err)
			assert.True(t, n < 100 || n%10 == 0, "%s: %s in %q", where, found[0], text)
		}
	}
	for _, d := range append(design.Starting(), design.Default()) {
		c := core.Evaluate(d)
		for _, n := range answer.All(c) {
			// One printed plan's figure is its own.
			if n.Key == "root.published" || !strings.HasPrefix(n.Key, "root.") && n.Key != "bark.narrowRoot" {
				continue
			}
			inTens(n.Key, n.Text(units.Imperial16)+"; "+n.Working(units.Imperial16))
			if n.Kind == units.Run && !n.Absent && n.Word == "" {
				assert.Equal(t, known.Estimate, n.Basis, n.Key)
				assert.True(t, strings.HasPrefix(n.Text(units.Imperial16), "about "), n.Key)
			}
		}
		for _, w := range answer.Checks(c) {
			for _, said := range regexp.MustCompile(`[^;,]*split root`).FindAllString(w.Text(units.Imperial16), -1) {
				inTens(w.Key, said[strings.LastIndex(said, "seam")+1:])
			}
		}
	}
}
