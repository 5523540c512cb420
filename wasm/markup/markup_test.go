package markup_test

import (
	"encoding/xml"
	"io"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// tag is an element's start as read back.
type tag struct {
	name string
	attr map[string]string
}

// tags reads HTML back and fails where an element is not closed or a value not quoted.
func tags(t *testing.T, html string) (found []tag, text string) {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader("<div>" + html + "</div>"))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	for {
		next, err := d.Token()
		if err == io.EOF {
			return found[1:], text
		}
		require.NoError(t, err)
		switch e := next.(type) {
		case xml.StartElement:
			attr := map[string]string{}
			for _, a := range e.Attr {
				attr[a.Name.Local] = a.Value
			}
			found = append(found, tag{e.Name.Local, attr})
		case xml.CharData:
			text += string(e)
		}
	}
}

// A step that gives pages stands in a list that names their book, whole.
func TestStepsNameTheBookOfTheirPages(t *testing.T) {
	_, text := tags(t, markup.Results(core.Evaluate(design.Default()), units.Imperial16))
	for _, st := range stage.All() {
		_, own, found := strings.Cut(text, st.Asked)
		require.True(t, found, st.Key)
		own, _, _ = strings.Cut(own, "Print this stage")
		cited := 0
		for _, step := range st.Steps {
			if step.Pages != "" {
				cited++
				assert.Contains(t, own, "from a published rule, "+step.Pages, step.Key)
			}
		}
		assert.Equal(t, cited > 0, strings.Contains(own, known.BarkCanoes), st.Key)
	}
}

// values lists an attribute's values, in their order.
func values(found []tag, attr string) (out []string) {
	for _, f := range found {
		if v, ok := f.attr[attr]; ok {
			out = append(out, v)
		}
	}
	return out
}

func TestHeadlineHasItsNumbers(t *testing.T) {
	w := work.New(design.Default(), units.Imperial16)
	found, text := tags(t, markup.Headline(new(work.Numbers).Update(w), w.Checks(), w.System))
	assert.Equal(t, answer.Headline(), values(found, "data-result"))
	assert.Equal(t, answer.Headline(), values(found, "data-change"))
	for _, n := range answer.Headlined(answer.All(w.Canoe())) {
		assert.Contains(t, text, n.Short)
		assert.Contains(t, text, n.Text(w.System))
	}
	var judged []string
	for _, c := range w.Checks() {
		if c.State != answer.NotChecked {
			judged = append(judged, c.Key)
		}
	}
	assert.ElementsMatch(t, judged, values(found, "data-check"))
	assert.Contains(t, values(found, "id"), "head-checks")
}

// Every number, table and curve has one place in the results.
func TestResultsHaveOnePlaceForEach(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	body := markup.Results(c, units.Imperial16)
	found, _ := tags(t, body)
	var keys []string
	for _, n := range append(answer.All(c), answer.Water(c, w)...) {
		keys = append(keys, n.Key)
	}
	assert.ElementsMatch(t, keys, values(found, "data-number"))
	assert.ElementsMatch(t, answer.TableKeys(), values(found, "data-fold"))
	curves := []string{markup.HeeledKey}
	for _, t := range answer.CurveTables(w) {
		curves = append(curves, t.Key)
	}
	assert.ElementsMatch(t, curves, values(found, "data-curve"))
	var steps []string
	for _, k := range stage.Keys() {
		steps = append(steps, string(k))
	}
	assert.Equal(t, steps, values(found, "data-steps"), "every stage's steps, in the order of the work")
}

// The worst check comes first beside the headline, and text is text.
func TestChecks(t *testing.T) {
	check := func(key string, s answer.State) answer.Warning {
		return answer.Warning{Key: key, Label: "<" + key + ">", Home: stage.Rib, State: s, Word: s.String(),
			Text: func(units.System) string { return "cut & try" }}
	}
	head, at := markup.Checks([]answer.Warning{check("a", answer.Within), check("b", answer.Near), check("c",
		answer.Beyond),
		check("d", answer.NotChecked)}, units.Metric)
	found, text := tags(t, head)
	assert.Equal(t, []string{"c", "b", "a"}, values(found, "data-warning"))
	assert.Equal(t, []string{"tight", "near", "within"}, values(found, "data-state"))
	assert.Equal(t, []string{"verdict", "verdict", "verdict calm"}, values(found, "class"))
	assert.Equal(t, []string{"c", "b", "a"}, values(found, "data-check"), "each goes to what was found")
	assert.Contains(t, text, "<c>: too tight")
	require.Len(t, at, 1)
	found, text = tags(t, at[stage.Rib])
	assert.Equal(t, []string{"a", "b", "c", "d"}, values(found, "data-warning"))
	assert.Contains(t, text, "<d>: not checked cut & try.")
}

func TestWorkingOpens(t *testing.T) {
	for _, n := range answer.All(core.Evaluate(design.Default())) {
		found, text := tags(t, markup.Working(n, units.Imperial16))
		said := n.Working(units.Imperial16) + string(n.Basis) + "Source: " + n.Cited + "."
		assert.Equal(t, said, text[:min(len(text), len(said))])
		assert.Equal(t, answer.MovedBy(n.Key), values(found, "data-hold"), "%s: what moves it", n.Key)
		assert.Equal(t, answer.TableOf(n.Key), strings.Join(values(found, "data-table"), " "), n.Key)
	}
}

// A table's cells stand in the order of its HTML, with their values.
func TestCellsAreTheTables(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		found, text := tags(t, markup.Table(table, units.Metric))
		var cells []tag
		for _, f := range found {
			if _, ok := f.attr["data-column"]; ok {
				cells = append(cells, f)
			}
		}
		got := markup.Cells(table, units.Metric)
		require.Len(t, got, len(cells), key)
		for i, cell := range got {
			value, number := cells[i].attr["data-value"]
			assert.Equal(t, cell.Number, number)
			assert.Equal(t, cell.Value, value)
			assert.Contains(t, text, cell.Text)
		}
	}
}

// What a step changes in the cells leaves the shape; another number of rows does not.
func TestShape(t *testing.T) {
	ribs := func(set func(*design.Design)) answer.Table {
		d := design.Default()
		set(&d)
		table, ok := answer.MakeTable(core.Evaluate(d), "ribs")
		require.True(t, ok)
		return table
	}
	was := ribs(func(*design.Design) {})
	deeper := ribs(func(d *design.Design) { d.Depth += units.Inch / 4 })
	assert.NotEqual(t, markup.Cells(was, units.Metric), markup.Cells(deeper, units.Metric))
	assert.Equal(t, markup.Shape(was), markup.Shape(deeper))
	assert.NotEqual(t, markup.Shape(was), markup.Shape(ribs(func(d *design.Design) { d.Ribs += 2 })))
}

func TestTitledTable(t *testing.T) {
	assert.Empty(t, markup.Titled(answer.Table{Key: "none", Title: "None"}, units.Metric))
	table := answer.Table{Key: "k", Title: "A & B", Note: "of <c>", Columns: []answer.Column{{Key: "x", Label: "X"}},
		Rows: []answer.Row{{Cells: []answer.Cell{{Text: "one"}}}}}
	found, text := tags(t, markup.Titled(table, units.Metric))
	assert.Equal(t, []string{"A & B"}, values(found, "aria-label"))
	assert.Equal(t, "A & Bof <c>A & BXone", text)
}

// Each curve has a figure, titled by its key, and a table; a width is held to what a
// chart can be drawn in.
func TestCurves(t *testing.T) {
	c := core.Evaluate(design.Default())
	w := core.OnWater(c)
	curves := markup.CurvesOf(c, w, units.Metric)
	for _, table := range answer.CurveTables(w) {
		figure := curves.Figure(table.Key, 500, draw.Screen())
		tags(t, figure)
		assert.Contains(t, figure, `id="chart-`+table.Key+`-title"`)
		assert.NotEqual(t, figure, curves.Figure(table.Key, 400, draw.Screen()))
		assert.Equal(t, curves.Figure(table.Key, 280, draw.Screen()), curves.Figure(table.Key, 0, draw.Screen()))
		assert.Equal(t, curves.Figure(table.Key, 640, draw.Screen()), curves.Figure(table.Key, 2000, draw.Screen()))
		assert.Equal(t, markup.Table(table, units.Metric), curves.Table(table.Key))
	}
	assert.Empty(t, curves.Figure("none", 500, draw.Screen()))
	assert.Empty(t, curves.Table("none"))
	upright := markup.Heeled(c, nil, 0, 500, units.Metric, draw.Screen())
	over := markup.Heeled(c, nil, 20*units.Degree, 500, units.Metric, draw.Screen())
	tags(t, over)
	assert.NotEqual(t, upright, over)
}

func TestNamesToChooseFrom(t *testing.T) {
	found, text := tags(t, markup.Named([]string{"Otter", "", "Otter", "<i>", "Otter", ""}))
	assert.Equal(t, "Otterwithout a nameOtter · 2<i>Otter · 3without a name · 2", text)
	assert.Equal(t, []string{"0", "1", "2", "3", "4", "5"}, values(found, "value"))
}

func TestSmallParts(t *testing.T) {
	found, text := tags(t, markup.Choice("sheet", "a", "A & B", true)+markup.Choice("sheet", "b", "C", false))
	assert.Equal(t, []string{"checked"}, values(found, "checked"))
	assert.Equal(t, []string{"a", "b"}, values(found, "value"))
	assert.Equal(t, "A & BC", text)
	found, text = tags(t, markup.Notes([]string{"one", "<two>"}))
	assert.Len(t, found, 2)
	assert.Equal(t, "one<two>", text)
	found, text = tags(t, markup.Notice(`"x"`, "It <broke>.", []string{"Save", "Try & see"}))
	assert.Equal(t, []string{`"x"`}, values(found, "data-notice"))
	assert.Equal(t, []string{"0", "1", "close"}, values(found, "data-action"))
	assert.Equal(t, "It <broke>.SaveTry & seeClose", text)
	found, text = tags(t, markup.NotBuilt(work.NotRead("beam", `No <number> in "x".`)))
	assert.Equal(t, []string{"beam"}, values(found, "data-go"))
	beam, _ := design.Lookup("beam")
	assert.Equal(t, `Not read. `+beam.Label+`: No <number> in "x". Go there`, text)
}

// A row has a field for each of work.Field in order, and the kinds of its own list.
func TestMeasureRow(t *testing.T) {
	for _, l := range []work.List{work.Recorded, work.AsBuilt} {
		found, text := tags(t, markup.MeasureRow(l))
		assert.Equal(t, []string{"0", "1", "2", "3", "4", "5"}, values(found, "data-field"))
		var ids []string
		for _, k := range work.KindsOf(l) {
			ids = append(ids, k.ID())
			assert.Contains(t, text, k.String())
		}
		assert.Equal(t, append(ids, "yes"), values(found, "value"))
	}
}

func TestSheetRows(t *testing.T) {
	found, _ := tags(t, markup.SheetRows())
	var ids []string
	for i := range design.MostSheets {
		ids = append(ids, design.SheetWidthKey(i), design.SheetLengthKey(i))
	}
	var fields []string
	for _, f := range found {
		if f.name == "input" {
			fields = append(fields, f.attr["id"])
			assert.Contains(t, values(found, "id"), strings.Fields(f.attr["aria-describedby"])[0])
		}
	}
	assert.Equal(t, ids, fields)
}

func TestPaddlers(t *testing.T) {
	html := markup.Paddlers(`<details data-paddler="1"><summary>Paddler 1</summary><i id="paddler1.mass"></i></details>`)
	found, text := tags(t, html)
	var numbers, ids, words []string
	for n := 2; n <= design.MostPaddlers; n++ {
		numbers = append(numbers, strconv.Itoa(n))
		ids = append(ids, "paddler"+strconv.Itoa(n)+".mass")
		words = append(words, "Paddler "+strconv.Itoa(n))
	}
	assert.Equal(t, numbers, values(found, "data-paddler"))
	assert.Equal(t, ids, values(found, "id"))
	assert.Equal(t, strings.Join(words, ""), text)
}

// What is left of the bark is said in sheets; what is short says when to take it.
func TestBarkLeft(t *testing.T) {
	assert.Empty(t, markup.BarkLeft(0, 3, false))
	assert.Equal(t, "Bark taken and not laid: 3 sheets; still to lay: 2 sheets. It will do.",
		markup.BarkLeft(3, 2, true))
	assert.Contains(t, markup.BarkLeft(1, 2.5, true), "short by 1.5 sheets: take more while bark peels")
	assert.Contains(t, markup.BarkLeft(1, 2, true), "not laid: 1 sheet;")
	assert.Equal(t, "your log: 19.3", markup.Learned(plan.Lace, 19.26, units.Metric))
	assert.Equal(t, "your log: 3.3", markup.Learned(plan.DigRoots, 1, units.Metric), "a foot's minute, of a metre")
	assert.Empty(t, markup.Learned(plan.Lace, 0, units.Metric))
}
