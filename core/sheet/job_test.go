package sheet_test

import (
	"errors"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/internal/check"
	"barkwright/core/pattern"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// The words of every sheet, page by page.
func TestSheetsGolden(t *testing.T) {
	j := everything()
	for _, key := range stage.Keys() {
		golden(t, "build-"+string(key)+".txt", words(j, key))
	}
}

// words are what the build sheet of a stage says, its pages each under its title.
func words(j sheet.Job, keys ...stage.Key) string {
	j.Sheets = keys
	var b strings.Builder
	for _, p := range sheet.BuildSheets(j) {
		b.WriteString("== " + p.Title + "\n" + p.Description + "\n")
	}
	return b.String()
}

// lettering is all that stands on pages, a line of it a line.
func lettering(pages []draw.List) string {
	var b strings.Builder
	for _, p := range pages {
		for _, op := range p.Ops {
			if text, ok := op.(draw.Text); ok {
				b.WriteString(text.Text + "\n")
			}
		}
	}
	return b.String()
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
		var labels []string
		for _, c := range table.Paper().Columns {
			labels = append(labels, c.Label)
		}
		if key == "ribs" {
			continue // in another order: TestRibsInFittingOrder
		}
		assert.Contains(t, words(j, table.Home), strings.Join(append(labels, table.Blanks...), " | "), key)
	}
	for _, n := range answer.All(j.Canoe) {
		if n.OnPaper {
			assert.Contains(t, words(j, n.Home), n.Label(j.System), n.Key)
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

// Every page of every sheet says whose it is, which design, when, in what units and how
// rounded, of which stage, and where in its sheet it comes.
func TestEveryPageIsNamed(t *testing.T) {
	for s, units := range map[units.System]string{units.Imperial16: "rounded to 1/16 in",
		units.Imperial8: "rounded to 1/8 in", units.Metric: "millimetres, rounded to 1 mm"} {
		for _, key := range stage.Keys() {
			st, place, _ := stage.Lookup(key)
			j := everything()
			j.System, j.Sheets = s, []stage.Key{key}
			pages := sheet.BuildSheets(j)
			for i, p := range pages {
				text := strings.ReplaceAll(lettering([]draw.List{p}), "\n", " ")
				for _, want := range []string{"Heron Cove, first canoe", "design code " + head.Mark(), "version 3",
					"3 May 2026",
					units, fmt.Sprintf("%d. %s", place, st.Name), fmt.Sprintf("page %d of %d", i+1, len(pages))} {
					assert.Contains(t, text, want, key)
				}
			}
		}
	}
	assert.Regexp(t, `^[0-9A-F]{4}-[0-9A-F]{4}$`, head.Mark())
	assert.NotEqual(t, head.Mark(), pattern.Head{Code: head.Code + "1"}.Mark())
	assert.Empty(t, pattern.Head{}.Mark())
}

// The hazards stand where they are met, each with its word.
func TestCautionsAreWhereTheHazardIs(t *testing.T) {
	for key, told := range map[stage.Key][]string{
		stage.Choose: {"not a rating"}, stage.Gather: {"falling tree", "Ask before you gather"},
		stage.Gunwales: {"cut deep", "Ask before"}, stage.Bed: {"Stones"}, stage.Bark: {"Boiling water"},
		stage.Lace: {"awl"}, stage.Ends: {"steam", "springs"}, stage.Rib: {"steam", "springs"},
		stage.Pitch: {"Hot pitch", "life jacket"}, stage.Keep: {"heat gun", "Hot pitch", "Ask before"},
	} {
		said := words(everything(), key)
		for _, w := range told {
			assert.Contains(t, said, w, key)
		}
	}
}

// What the user typed cannot become markup: every tag is one of the sheets' own.
func TestNamesAndNotesAreEscaped(t *testing.T) {
	j := everything()
	nasty := `<img src=x onerror=alert(1)>"'&</td></table><script>`
	j.Head = pattern.Head{Boat: nasty, Code: nasty, Date: nasty}
	j.Canoe.Design.Name, j.Canoe.Design.Notes = nasty, nasty
	var b strings.Builder
	pages, _ := sheet.Pages(j)
	require.NoError(t, sheet.Print(&b, pages))
	text := b.String()
	assert.NotContains(t, text, "<img")
	assert.NotContains(t, text, "<script")
	assert.Contains(t, text, "&lt;img src=x")
	for _, tag := range []string{"text", "section", "svg"} {
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

// Tallies have a box for each, or one for several where they are many: pages that differ
// in one more seam of a kind differ in the boxes, and steps have theirs.
func TestTallies(t *testing.T) {
	j := everything()
	boxes := func() int {
		n := 0
		j.Sheets = []stage.Key{stage.Lace}
		for _, p := range sheet.BuildSheets(j) {
			for _, op := range p.Ops {
				if s, ok := op.(draw.Stroke); ok && s.Closed {
					if box := draw.BoxOf(s.Points); math.Abs(box.Width()-box.Height()) < 1e-9 && box.Width() < 5 {
						n++
					}
				}
			}
		}
		return n
	}
	st, _, _ := stage.Lookup(stage.Lace)
	l := j.Canoe.Frame.Lacing
	assert.Equal(t, len(st.Steps)+l.Count+l.Pegs, boxes())
	p, _ := design.Lookup("ribs")
	j.Canoe = evaluated(p.Set(design.Default(), 60))
	l = j.Canoe.Frame.Lacing
	require.Greater(t, l.Count, 100)
	require.Less(t, l.Pegs, 100)
	assert.Equal(t, len(st.Steps)+(l.Count+1)/2+l.Pegs, boxes())
	assert.Contains(t, words(j, stage.Lace), "2 to a box")
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
	pages, _ := sheet.Pages(j)
	for _, left := range []int{0, 20_000, 120_000} {
		assert.ErrorIs(t, sheet.Print(&failing{left}, pages), errFull)
	}
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
	said := words(j, stage.Rib)
	assert.Equal(t, 1, strings.Count(said, "14 June 2026"))
	assert.Contains(t, said, "15 June 2026: one <cracked>")
	assert.NotContains(t, words(j, stage.Ends), "June 2026")
	j.Dates.Long = func(t time.Time) string { return t.Format("1/2/2006") }
	assert.Contains(t, words(j, stage.Rib), "6/15/2026: one <cracked>")
}

// One paddler is one.
func TestCrewInWords(t *testing.T) {
	j := everything()
	for n, says := range map[float64]string{1: "Crew as set: 1 paddler, ", 2: "Crew as set: 2 paddlers, "} {
		j.Canoe = evaluated(check.With(t, "paddlers", n))
		assert.Contains(t, words(j, stage.Pitch), says)
	}
}

// The ribs are listed as they go in, the ends first.
func TestRibsInFittingOrder(t *testing.T) {
	said := words(everything(), stage.Rib)
	assert.Less(t, strings.Index(said, "Ribs in the order they go in"), strings.Index(said, "1, 2 | 22 |"))
	assert.Less(t, strings.Index(said, "1, 2 | 22 |"), strings.Index(said, " | 21 |"))
}

// A boat built on its gunwale frame has no building frame among its sizes.
func TestNoFrameOfABoatBuiltOnItsGunwales(t *testing.T) {
	j := everything()
	assert.Contains(t, words(j, stage.Choose), "Building frame, out to out: 2' 3\"")
	d := design.Default()
	d.BuiltOn = design.OnGunwales
	j.Canoe = evaluated(design.Follow(d))
	said := words(j, stage.Choose)
	assert.NotContains(t, said, "Building frame")
	assert.Contains(t, said, "Built on: the gunwale frame")
}
