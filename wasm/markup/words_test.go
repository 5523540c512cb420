package markup_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// What the list says is of use: every word of it is read at a stage, or on the page.
func TestEveryWordIsMet(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	page, err := os.ReadFile(filepath.Join("..", "..", "web", "index.html"))
	require.NoError(t, err)
	said := []string{string(page)}
	for _, st := range stage.All() {
		said = append(said, markup.Said(st, c, w, units.Imperial16)...)
	}
	met := map[string]bool{}
	for _, word := range stage.Met(said...) {
		met[word.Term] = true
	}
	for _, word := range stage.Words() {
		assert.True(t, met[word.Term], "%s is explained and nowhere used", word.Term)
	}
	assert.GreaterOrEqual(t, len(stage.Words()), 25)
}

// Each stage ends in the words met there, and the list holds each once, by the alphabet.
func TestWordsMetAtAStage(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	found, _ := tags(t, markup.Results(c, units.Metric))
	assert.Len(t, slices.DeleteFunc(found, func(f tag) bool { return f.attr["data-words"] == "" }), len(stage.All()))
	text := ""
	for _, st := range stage.All() {
		_, said := tags(t, markup.WordsMet(st, c, w, units.Metric))
		text += said
	}
	for _, want := range []string{"Tailthe end of a root", "Goreshould"} {
		assert.Equal(t, strings.HasPrefix(want, "Tail"), strings.Contains(text, want), want)
	}
	assert.Contains(t, text, "Breast height1372 mm up the trunk", "in the reader's units")
	terms := []string{}
	for _, word := range stage.Words() {
		terms = append(terms, strings.ToLower(word.Term))
		assert.NotContains(t, word.Sense(units.Metric), "#", word.Term)
		assert.NotRegexp(t, `^[A-Z][a-z]`, word.Sense(units.Metric), word.Term)
	}
	assert.True(t, slices.IsSorted(terms))
	assert.Len(t, slices.Compact(slices.Clone(terms)), len(terms))
}

// A word of a label is an everyday one or is in the list: a new word of the trade wants
// its sense in core/stage/words.go, a new everyday one its place here.
func TestLabelsUseWordsThatAreExplained(t *testing.T) {
	everyday := map[string]bool{}
	for _, word := range strings.Fields(everydayWords) {
		everyday[word] = true
	}
	for _, word := range stage.Words() {
		everyday[strings.ReplaceAll(strings.ToLower(word.Term), " ", "-")] = true
		for _, part := range strings.Fields(strings.ToLower(word.Term)) {
			everyday[part], everyday[part+"s"] = true, true
		}
	}
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	var labels []string
	for _, p := range design.Params() {
		labels = append(labels, p.Label)
	}
	for _, n := range append(answer.All(c), answer.Water(c, w)...) {
		labels = append(labels, n.Label(units.Imperial16), n.Short)
	}
	tables := answer.CurveTables(w)
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		tables = append(tables, table)
	}
	for _, table := range tables {
		labels = append(labels, table.Title)
		for _, column := range table.Columns {
			labels = append(labels, column.Label)
		}
	}
	for _, label := range labels {
		for _, word := range regexp.MustCompile(`[a-z][a-z-]+`).FindAllString(strings.ToLower(label), -1) {
			assert.True(t, everyday[word], "%q in %q: is it a word of the trade?", word, label)
		}
	}
}

// everydayWords are those of labels that need no explaining.
const everydayWords = `
about across afloat stretched still joinery predict missing filled total your may open again best breadths heights
after against all allowed alone along an and angle apart are area at back bark be before begins
below bend bending bends bent between beyond boat borrow both bottom breadth bring broadest by calm can canoe
cargo carries centre closing comes costs could crew curve cut diameter dig discard down dry dug each easy edge
edges end end-to-end ends even every expect face faces far farther fewest figure figures fineness finished first
fitted flat for fore foremost form forward fourth free friction from full fullness gear get go goes greatest
grew guide had hand hard hardest hardly held high higher hips hole holes hours how if in included inner
innermost inside into is it its kneel knots known laid largest last layers leaning least leave leaves left let
lies lifted limit load longer longest look low lower made make many mark marks may mean middle more most narrow
narrower narrowest nearest needed no not number of off on one opened opens or order other outer outside outward
over pace paddler paddlers paddling page pair piece pieces plan point proportions published push quickly radius
ratio reaches ready rest rests ride rise rough round rule same saves seam seams seat second set sewn shape shortest
short side-panel sit six size slender small smooth so spares speed split sprung square stand standing state
stiffness stitches stop strain strip strips take taken tape temperature than that the their them theory there
these they thickness thins third this through thumb tightest timber times tip tips too top tree trees trial
trimmed trunk twice two under up upright usual verdict volume walking wanting waste wasted water waves weight were
what when where which whole wide wider width will with within without wood would
`
