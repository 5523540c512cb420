package stage_test

import (
	"flag"
	"fmt"
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
	"barkwright/core/internal/check"
	"barkwright/core/known"
	"barkwright/core/lines"
	"barkwright/core/pattern"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the golden")

// Whatever is entered, worked out, checked or listed is at home at a stage.
func TestEverythingIsAtHome(t *testing.T) {
	at := func(k stage.Key, what string) {
		_, _, ok := stage.Lookup(k)
		assert.True(t, ok, "%s is at home at %q, which is no stage", what, k)
	}
	c := core.Evaluate(design.Default())
	for _, p := range design.Params() {
		at(p.Home, p.Key)
		assert.NotEmpty(t, p.Help, "%s has no line of help", p.Key)
	}
	for _, n := range answer.All(c) {
		at(n.Home, n.Key)
	}
	for _, w := range answer.Checks(c) {
		at(w.Home, w.Key)
	}
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		at(table.Home, key)
	}
	for _, table := range answer.CurveTables(core.OnWater(c)) {
		at(table.Home, table.Key)
	}
}

// What a stage names is there, once, and where the stage says.
func TestStagesNameWhatThereIs(t *testing.T) {
	c := core.Evaluate(design.Default())
	numbers, checks := map[string]answer.Number{}, map[string]bool{stage.WorstOfAll: true, "": true}
	for _, n := range answer.All(c) {
		numbers[n.Key] = n
	}
	for _, w := range answer.Checks(c) {
		checks[w.Key] = true
	}
	patterns := map[string]bool{}
	for _, k := range pattern.Kinds() {
		patterns[k.Key] = false
	}
	keys := map[stage.Key]bool{}
	for _, s := range stage.All() {
		require.False(t, keys[s.Key], "two stages %s", s.Key)
		keys[s.Key] = true
		assert.Len(t, s.Large, 3, s.Key)
		for _, key := range s.Large {
			n, ok := numbers[key]
			assert.True(t, ok, "%s: no number %s", s.Key, key)
			assert.NotEmpty(t, n.Short, "%s: %s has no short name: add .short(...) where it is worked out", s.Key, key)
			assert.LessOrEqual(t, len(n.Short), 16, "the short name of %s", key)
		}
		assert.True(t, checks[s.Verdict], "%s: no check %s", s.Key, s.Verdict)
		assert.LessOrEqual(t, len(s.InSight), stage.MostInSight, s.Key)
		shown := map[string]bool{}
		for _, f := range append(s.Folded(nil), stage.Fold{Title: "in sight", Keys: s.InSight}) {
			for _, key := range f.Keys {
				p, ok := design.Lookup(key)
				assert.True(t, ok && p.Home == s.Key, "%s, %s: %s", s.Key, f.Title, key)
				assert.False(t, shown[key], "%s twice at %s", key, s.Key)
				shown[key] = true
			}
		}
		for _, key := range s.Chips {
			p, ok := design.Lookup(key)
			assert.True(t, ok && p.Home != s.Key, "%s: chip %s", s.Key, key)
		}
		for _, key := range s.Patterns {
			used, ok := patterns[key]
			assert.True(t, ok && !used, "%s: pattern %s", s.Key, key)
			patterns[key] = true
		}
		assert.NotEmpty(t, s.Cautions, s.Key)
	}
	for key, used := range patterns {
		assert.True(t, used, "pattern %s is at home nowhere", key)
	}
	for _, s := range stage.All() {
		if s.Key == stage.Gather {
			assert.Equal(t, stage.AskedFirst, s.Permission)
		}
	}
}

// Steps are few enough to read, each with its source; what they count and read is there.
func TestSteps(t *testing.T) {
	c := core.Evaluate(design.Default())
	seen := map[string]bool{}
	for at, s := range stage.All() {
		assert.GreaterOrEqual(t, len(s.Steps), 6, s.Key)
		assert.LessOrEqual(t, len(s.Steps), 15, s.Key)
		for _, step := range s.Steps {
			require.True(t, strings.HasPrefix(step.Key, string(s.Key)+"."), step.Key)
			require.False(t, seen[step.Key], step.Key)
			seen[step.Key] = true
			assert.NotContains(t, step.Text(units.Imperial16), "#", step.Key)
			assert.NotRegexp(t, `\d (in|ft)\b|"`, step.Text(units.Metric), step.Key)
			assert.Equal(t, step.Basis == known.Published, step.Pages+step.Account != "", "%s: published where",
				step.Key)
			if step.Reads != "" {
				_, ok := record.LookupKind(step.Reads)
				assert.True(t, ok, "%s reads %s", step.Key, step.Reads)
			}
			if step.Counts != "" {
				table, ok := answer.MakeTable(c, step.Counts)
				assert.True(t, ok && len(table.Rows) > 0, "%s counts %s", step.Key, step.Counts)
			}
			if step.From != "" {
				_, early, ok := stage.Lookup(step.From)
				assert.True(t, ok && early <= at, "%s may begin beside %s", step.Key, step.From)
			}
		}
	}
}

// What lists at the bench name is in their tables, with a line each, on the default, the
// starting boats and boats as long, broad and deep as the measured ones.
func TestBenchLists(t *testing.T) {
	designs := append(design.Starting(), design.Default())
	for _, row := range check.Published(t, "measured-canoes") {
		v := func(column string) float64 { return row.Float(t, column) * units.Inch }
		d := check.With(t, "length", v("length_overall_in"),
			"overhang", (v("length_overall_in")-v("length_over_gunwales_in"))/2, "beam", v("beam_inside_gunwales_in"),
			"depth", v("depth_amidships_in"))
		require.Empty(t, design.Validate(d), row["id"])
		designs = append(designs, d)
	}
	require.Len(t, designs, len(design.Starting())+1+7)
	braces := regexp.MustCompile(`\{(.*?)\}`)
	for _, d := range designs {
		c := core.Evaluate(d)
		as := map[string]stage.Bench{}
		for _, s := range stage.All() {
			counts := map[string]string{}
			for _, step := range s.Steps {
				counts[step.Key] = step.Counts
			}
			for _, b := range s.Bench {
				assert.Equal(t, b.Table, counts[b.Step], "%s: %s ticks %s", d.Name, b.Name, b.Step)
				table, ok := answer.MakeTable(c, b.Table)
				require.True(t, ok, b.Table)
				has := func(key string) {
					prefix, many := strings.CutSuffix(key, "*")
					assert.True(t, slices.ContainsFunc(table.Columns, func(c answer.Column) bool {
						return c.Key == key || many && strings.HasPrefix(c.Key, prefix)
					}), "%s has no column %s", b.Table, key)
				}
				keys := []string{b.Order, b.Middle}
				for _, f := range b.Figures {
					keys = append(keys, f.Column)
					assert.NotEmpty(t, f.From, b.Name)
				}
				for _, words := range append(b.Also, b.What) {
					for _, key := range braces.FindAllStringSubmatch(words, -1) {
						keys = append(keys, key[1])
					}
				}
				for _, also := range b.Also {
					if !strings.ContainsAny(also, " {") {
						keys = append(keys, also)
					}
				}
				for _, key := range keys {
					if key != "" {
						has(key)
					}
				}
				if b.Reads != "" {
					k, ok := record.LookupKind(b.Reads)
					assert.True(t, ok && k.AsBuilt() && k.Placed(), "%s reads %s", b.Name, b.Reads)
				}
				made := lines.Make(c, b, units.Imperial16)
				if b.Table != "panels" { // there are none where the sheet is wide enough
					assert.NotEmpty(t, made.Lines, "%s of %s", b.Name, d.Name)
				}
				first, listed := as[b.Table]
				if !listed {
					as[b.Table] = b
					continue
				}
				assert.Equal(t, []any{first.Pieces, first.Middle, first.Apart}, []any{b.Pieces, b.Middle, b.Apart},
					b.Name)
				assert.ElementsMatch(t, lines.Keys(c, b.Table), keysOf(made), b.Name)
			}
		}
	}
}

func keysOf(l lines.List) (keys []string) {
	for _, line := range l.Lines {
		keys = append(keys, line.Key)
	}
	return keys
}

// The table as text. A step that is gone would lose what users have ticked, so the
// golden is looked at whenever a key changes.
func TestStagesGolden(t *testing.T) {
	var b strings.Builder
	for i, s := range stage.All() {
		fmt.Fprintf(&b, "%d %s: %s. %s\n  large %s; verdict %s; look %s %s %s; asked %d\n  in sight %s\n",
			i+1, s.Key, s.Name, s.Asked,
			strings.Join(s.Large, " "), s.Verdict, s.Look.State, s.Look.Drawing, s.Look.Near, s.Permission,
			strings.Join(s.InSight, " "))
		for _, f := range s.Folds {
			fmt.Fprintf(&b, "  fold %s: %s\n", f.Title, strings.Join(f.Keys, " "))
		}
		for _, l := range s.Bench {
			fmt.Fprintf(&b, "  bench %s: %s, ticks %s\n", l.Name, l.Table, l.Step)
		}
		for _, step := range s.Steps {
			fmt.Fprintf(&b, "  %s: %s [%s; %s; %s; %s] %s, %s\n", step.Key, step.Text(units.Imperial16), step.Tool,
				step.Reads, step.Counts, step.From, step.Basis, step.Pages+step.Account)
		}
	}
	path := filepath.Join("..", "..", "testdata", "golden", "stages.txt")
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(b.String()), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err, "make golden writes it")
	assert.Equal(t, string(want), b.String())
}
