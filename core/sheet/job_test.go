package sheet_test

import (
	"errors"
	"html"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

func TestSheetsGolden(t *testing.T) {
	j := everything()
	j.Figures = []sheet.Figure{{Caption: "A view.", SVG: `<svg viewBox="0 0 1 1"></svg>`}}
	lines := strings.NewReplacer("<tr>", "\n<tr>", "<div>", "\n<div>", "<p", "\n<p", "<ul", "\n<ul")
	for _, key := range stage.Keys() {
		j.Sheets = []stage.Key{key}
		var b strings.Builder
		require.NoError(t, sheet.BuildSheets(&b, j))
		golden(t, "build-"+string(key)+".html", lines.Replace(b.String()))
	}
}

// Whatever has a home goes on a build sheet that there is, and one that says it is on
// paper is there, with its columns.
func TestHomesHaveSheets(t *testing.T) {
	j := everything()
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(j.Canoe, key)
		if !table.OnPaper {
			continue
		}
		j.Sheets = []stage.Key{table.Home}
		var b strings.Builder
		require.NoError(t, sheet.BuildSheets(&b, j))
		for _, c := range table.Paper().Columns {
			assert.True(t, strings.Contains(b.String(), html.EscapeString(c.Label)+"</th>"), "%s: %s", key, c.Key)
		}
	}
	for _, n := range answer.All(j.Canoe) {
		if n.OnPaper {
			j.Sheets = []stage.Key{n.Home}
			var b strings.Builder
			require.NoError(t, sheet.BuildSheets(&b, j))
			assert.True(t, strings.Contains(b.String(), "<dt>"+html.EscapeString(n.Label(j.System))), n.Key)
		}
	}
}

// A curve on the water is drawn beside its table: each has the other's key.
func TestCurvesHaveTheirTables(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	tables, charts := answer.CurveTables(w), chart.Water(c, w, units.Metric)
	require.Len(t, charts, len(tables))
	for i, table := range tables {
		assert.Equal(t, table.Key, charts[i].Key)
		assert.Equal(t, table.Title, charts[i].Title)
		assert.NotEmpty(t, charts[i].Description, table.Key)
	}
}

// Every sheet says whose it is, which design, when, in what units and how rounded.
func TestEverySheetIsNamed(t *testing.T) {
	for s, units := range map[units.System]string{units.Imperial16: "rounded to 1/16 in",
		units.Imperial8: "rounded to 1/8 in", units.Metric: "millimetres, rounded to 1 mm"} {
		for _, key := range stage.Keys() {
			st, _, _ := stage.Lookup(key)
			j := everything()
			j.System, j.Sheets = s, []stage.Key{key}
			var b strings.Builder
			require.NoError(t, sheet.BuildSheets(&b, j))
			for _, want := range []string{"Heron Cove, first canoe", "design code " + head.Mark(), "version 2", "3 May 2026",
				units, st.Name} {
				assert.Contains(t, b.String(), want, key)
			}
		}
	}
	assert.Regexp(t, `^[0-9A-F]{4}-[0-9A-F]{4}$`, head.Mark())
	assert.NotEqual(t, head.Mark(), pattern.Head{Code: head.Code + "1"}.Mark())
	assert.Empty(t, pattern.Head{}.Mark())
}

// The hazards stand where they are met, each with its word.
func TestCautionsAreWhereTheHazardIs(t *testing.T) {
	for key, words := range map[stage.Key][]string{
		stage.Choose: {"not a rating"}, stage.Gather: {"falling tree", "Ask before you gather"},
		stage.Gunwales: {"cut deep", "Ask before"}, stage.Bed: {"Stones"}, stage.Bark: {"Boiling water"},
		stage.Lace: {"awl"}, stage.Ends: {"steam", "springs"}, stage.Rib: {"steam", "springs"},
		stage.Pitch: {"Hot pitch", "life jacket"}, stage.Keep: {"heat gun", "Hot pitch", "Ask before"},
	} {
		j := everything()
		j.Sheets = []stage.Key{key}
		var b strings.Builder
		require.NoError(t, sheet.BuildSheets(&b, j))
		for _, w := range words {
			assert.Contains(t, b.String(), w, key)
		}
		assert.Equal(t, 1, strings.Count(b.String(), `class="cautions"`), "one box of cautions at %s", key)
	}
}

// What the user typed cannot become markup: every tag is one of the sheets' own.
func TestNamesAndNotesAreEscaped(t *testing.T) {
	j := everything()
	nasty := `<img src=x onerror=alert(1)>"'&</td></table><script>`
	j.Head = pattern.Head{Boat: nasty, Code: nasty, Date: nasty}
	j.Canoe.Design.Name, j.Canoe.Design.Notes = nasty, nasty
	var b strings.Builder
	require.NoError(t, sheet.Print(&b, j))
	text := b.String()
	assert.NotContains(t, text, "<img")
	assert.NotContains(t, text, "<script")
	assert.Contains(t, text, "&lt;img src=x")
	for _, tag := range []string{"table", "td", "section", "svg"} {
		opened := len(regexp.MustCompile(`<`+tag+`[ >]`).FindAllString(text, -1))
		assert.Equal(t, opened, strings.Count(text, "</"+tag+">"), tag)
	}
	table := answer.Table{Key: `"><x>`, Title: nasty, Columns: []answer.Column{{Key: nasty, Label: nasty}},
		Rows: []answer.Row{{Part: nasty, Cells: []answer.Cell{{Text: nasty}}}}}
	var h strings.Builder
	require.NoError(t, sheet.HTMLTable(&h, table, units.Metric))
	assert.NotContains(t, h.String(), "<img")
	assert.NotContains(t, h.String(), "<x>")
}

// Tallies have a box for each, in tens, or one for several where they are many.
func TestTallies(t *testing.T) {
	j := everything()
	j.Sheets = []stage.Key{stage.Lace}
	var b strings.Builder
	require.NoError(t, sheet.BuildSheets(&b, j))
	lacing := b.String()[strings.Index(b.String(), "Groups laced"):]
	lacing = lacing[:strings.Index(lacing, "</div>")]
	assert.Equal(t, j.Canoe.Frame.Lacing.Count, strings.Count(lacing, `"tick"`))
	p, _ := design.Lookup("ribs")
	j.Canoe = evaluated(p.Set(design.Default(), 60))
	b.Reset()
	require.NoError(t, sheet.BuildSheets(&b, j))
	lacing = b.String()[strings.Index(b.String(), "Groups laced"):]
	lacing = lacing[:strings.Index(lacing, "</div>")]
	assert.Equal(t, (j.Canoe.Frame.Lacing.Count+1)/2, strings.Count(lacing, `"tick"`))
	assert.Contains(t, lacing, "2 to a box")
}

// failing refuses after so many bytes.
type failing struct{ left int }

var errFull = errors.New("full")

func (f *failing) Write(p []byte) (int, error) {
	if f.left -= len(p); f.left < 0 {
		return 0, errFull
	}
	return len(p), nil
}

// The first error of the writer comes back from every one of them.
func TestWritersErrorsComeBack(t *testing.T) {
	j := everything()
	for _, left := range []int{0, 20_000, 120_000} {
		assert.ErrorIs(t, sheet.Print(&failing{left}, j), errFull)
	}
	assert.ErrorIs(t, sheet.BuildSheets(&failing{}, j), errFull)
	table, _ := answer.MakeTable(j.Canoe, "ribs")
	assert.ErrorIs(t, sheet.CSV(&failing{}, "", table, j.System), errFull)
	p := pattern.Make(j.Canoe, "stem", pattern.Options{System: j.System})[0]
	assert.ErrorIs(t, p.SVG(&failing{}, head), errFull)
	assert.ErrorIs(t, sheet.PrintRoll(&failing{}, p, head), errFull)
}

// What is done of the work stands on its stage's sheet with its day, and the notes.
func TestLogOnPaper(t *testing.T) {
	j := everything()
	j.Log = tally.Log{}.Tick("rib.drive", "", "2026-06-14", true).Note("rib", "2026-06-15", "one <cracked>")
	j.Sheets = []stage.Key{stage.Rib}
	var b strings.Builder
	require.NoError(t, sheet.BuildSheets(&b, j))
	assert.Equal(t, 1, strings.Count(b.String(), "✓</span>"))
	assert.Contains(t, b.String(), "2026-06-14")
	assert.Contains(t, b.String(), "2026-06-15: one &lt;cracked&gt;")
	j.Sheets = []stage.Key{stage.Ends}
	b.Reset()
	require.NoError(t, sheet.BuildSheets(&b, j))
	assert.NotContains(t, b.String(), "2026-06-1")
}
