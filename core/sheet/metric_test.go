package sheet_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/chart"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/sheet"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/units/inches"
)

func noInch(t *testing.T, where, text string) {
	t.Helper()
	if found := inches.In(text); found != "" {
		t.Errorf("%s: %q in %q", where, found, text)
	}
}

// Nothing that a metric reader sees of any boat, on the page or on paper, is in inches.
func TestMetricHasNoInch(t *testing.T) {
	const s = units.Metric
	for _, p := range design.Params() {
		noInch(t, p.Key, p.Label+"; "+p.Help+"; "+strings.Join(p.Options, "; "))
	}
	for _, st := range stage.All() {
		noInch(t, string(st.Key), st.Name+"; "+st.Asked)
		for _, step := range st.Steps {
			noInch(t, step.Key, step.Text(s)+"; "+step.Tool+"; "+step.Hazard)
		}
		for _, h := range st.Cautions {
			noInch(t, string(st.Key), h.Text)
		}
	}
	noInch(t, "permission", stage.Permission.Text)
	for i, d := range check.SomeDesigns(8, 5) {
		d.Name = "boat"
		c := core.Evaluate(d)
		if i == 0 {
			c = evaluated(d)
		}
		w := core.OnWater(c)
		for _, n := range answer.All(c) {
			noInch(t, n.Key, n.Label(s)+": "+n.Text(s)+"; "+n.Cited)
			if n.Working != nil {
				noInch(t, n.Key+" working", n.Working(s))
			}
		}
		for _, check := range answer.Checks(c) {
			noInch(t, check.Key, check.Label+": "+check.Word+": "+check.Text(s))
		}
		tables := answer.CurveTables(w)
		if i == 0 {
			tables = append(tables, recordTables(t)...)
		}
		for _, key := range answer.TableKeys() {
			table, ok := answer.MakeTable(c, key)
			require.True(t, ok)
			tables = append(tables, table)
		}
		for _, table := range tables {
			noInch(t, table.Key, table.Title+": "+table.Note)
			var b strings.Builder
			require.NoError(t, sheet.CSV(&b, "boat", table, s))
			for _, line := range strings.Split(b.String(), "\r\n") {
				noInch(t, table.Key+" as CSV", strings.ReplaceAll(line, `"`, ""))
			}
			for _, column := range table.Columns {
				noInch(t, table.Key, column.Label)
			}
		}
		for _, drawn := range chart.Water(c, w, s) {
			noInch(t, drawn.Key, drawn.Title+": "+drawn.Description)
		}
		if i > 0 {
			continue
		}
		j := everything()
		j.System = s
		for _, line := range strings.Split(words(j, stage.Keys()...), "\n") {
			noInch(t, "build sheets", line)
		}
	}
}

// recordTables are those of a record in inches, read by one who reads millimetres.
func recordTables(t *testing.T) []answer.Table {
	text := "length overall; 15 ft 2 in\nbeam inside; 31 in\ndepth; 13 in\nrail height at thwart 1; 14 in\n" +
		"rail height; 24 from the middle; 14 in\n"
	_, data, refused := record.Read(text, 0, units.Imperial16)
	require.Empty(t, refused)
	rec := record.Record{Data: data}
	fit := refit.Fit(rec)
	predicted, ok := refit.Predict(rec, 1)
	require.True(t, ok)
	built := refit.AsBuilt(design.Default(), data[:2], units.Metric)
	return []answer.Table{answer.MeasuredTable(fit.Rows, units.Metric), answer.HeldTable(fit.Held, units.Metric),
		answer.PredictedTable([]refit.Prediction{predicted}, units.Metric), answer.MovedTable(built, units.Metric)}
}
