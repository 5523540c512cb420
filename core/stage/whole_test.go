package stage_test

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/pattern"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/core/units"
)

var update = flag.Bool("update", false, "rewrite the golden")

// Whatever is entered, worked out, checked, listed or measured is at home at a stage.
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
	for _, k := range record.Kinds() {
		at(k.Home(), k.ID())
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
			assert.NotEmpty(t, step.Source().Cited, step.Key)
			assert.Equal(t, step.Basis == known.Published, step.Pages+step.Account != "", "%s: published where", step.Key)
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

// The table as text. A step that is gone would lose what users have ticked, so the
// golden is looked at whenever a key changes.
func TestStagesGolden(t *testing.T) {
	var b strings.Builder
	for i, s := range stage.All() {
		fmt.Fprintf(&b, "%d %s: %s. %s\n  large %s; verdict %s; look %s; asked %d\n  in sight %s\n", i+1, s.Key, s.Name, s.Asked,
			strings.Join(s.Large, " "), s.Verdict, s.Look, s.Permission, strings.Join(s.InSight, " "))
		for _, f := range s.Folds {
			fmt.Fprintf(&b, "  fold %s: %s\n", f.Title, strings.Join(f.Keys, " "))
		}
		for _, step := range s.Steps {
			fmt.Fprintf(&b, "  %s: %s [%s; %s; %s; %s] %s, %s\n", step.Key, step.Text(units.Imperial16), step.Tool, step.Reads,
				step.Counts, step.From, step.Basis, step.Source().Cited)
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
