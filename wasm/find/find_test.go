package find_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/find"
)

func index() find.Index {
	c := core.Evaluate(design.Default())
	return find.New(c, core.OnWater(c), units.Imperial16)
}

// What a builder would type, and what must be among the lines; the first is the best.
func TestFindsWhatIsAsked(t *testing.T) {
	x := index()
	for question, want := range map[string][]string{
		"rib":               {"set ribs", "table ribs", "place rib", "word Rib", "number ribs.count"},
		"ribs":              {"set ribs", "table ribs"},
		"post":              {"table posts", "number post.middle", "word Post"},
		"how much root":     {"number root.total", "number root.dug"},
		"tippy":             {"check afloat.steady"},
		"How long is a rib": {"number ribs.longest"},
		"wide":              {"set beam"},
		"glue":              {"number materials.pitch"},
		"rocker":            {"set rocker", "word Rocker"},
		"leak":              {"step keep.find"},
		"metric":            {"place #units"},
		"print":             {"place #paper"},
		"how many trees":    {"number tree.girth"},
		"stem bend":         {"number stem.verdict"},
		"crossbar":          {"set thwarts"},
		"inw":               {"set inwaleThickness"},
		"glossary":          {"place #words"},
		"compare":           {"place #compare-title", "place #beside-title"},
		"lessons":           {"place #lessons-title", "lesson gores"},
		"why gores":         {"lesson gores"},
		"leave it long":     {"lesson leave"},
		"season":            {"place #season"},
		"repair":            {"place #mend-fold", "place keep"},
		"trace":             {"place #trace-open"},
		"photograph":        {"place #trace-open"},
		"model":             {"place #paper-model"},
		"calendar":          {"place #season"},
	} {
		var got []string
		for _, e := range x.Find(question) {
			got = append(got, string(e.Kind)+" "+e.Key)
		}
		assert.LessOrEqual(t, len(got), find.MostLines, question)
		for _, w := range want {
			assert.Contains(t, got, w, question)
		}
	}
	for _, nothing := range []string{"", " ", "how many of the", "xyzzy", "-", "?"} {
		assert.Empty(t, x.Find(nothing), nothing)
	}
}

// The best line of everyday questions, as a builder or a learner would type them.
func TestBestLineOfEverydayQuestions(t *testing.T) {
	x := index()
	for question, want := range map[string]string{
		"rib mark":                     "bench gunwales|Gunwale marks",
		"next rib":                     "bench rib|Ribs to fit",
		"next post":                    "bench bed|Posts to cut",
		"post heights":                 "table posts",
		"what to gather":               "place gather",
		"wrong stem":                   "check stem.verdict",
		"will the stem break":          "check stem.verdict",
		"how long is the boat":         "set length",
		"how heavy is the canoe":       "number weight.total",
		"how big a tree":               "number tree.girth",
		"how many ribs":                "number ribs.count",
		"how many people":              "set paddlers",
		"how much weight can it carry": "number afloat.loadAtThreeInches",
		"how many stitches":            "number closing.stitches",
		"how thick is the bark":        "set barkThickness",
		"thwart length":                "table thwarts",
		"root to cut":                  "bench gather|Roots to cut",
		"save my boat":                 "place #designs",
		"sunlight":                     "place #designs",
		"is it stable":                 "number afloat.gm",
	} {
		found := x.Find(question)
		if assert.NotEmpty(t, found, question) {
			assert.Equal(t, want, string(found[0].Kind)+" "+found[0].Key, question)
		}
	}
}

// A place that is named in inches has a name of its own for a metric reader.
func TestPlacesInTheReadersUnits(t *testing.T) {
	c := core.Evaluate(design.Default())
	for s, want := range map[units.System]string{units.Imperial16: "What an inch costs", units.Metric: "What 10 mm costs"} {
		found := find.New(c, core.OnWater(c), s).Find(want)
		require.NotEmpty(t, found)
		assert.Equal(t, want, found[0].Name)
		assert.Equal(t, "#inches-title", found[0].Key)
	}
}

// Whatever stands on the page is found by its own name.
func TestEverythingIsFoundByItsName(t *testing.T) {
	x := index()
	c := core.Evaluate(design.Default())
	finds := func(kind find.Kind, key, name string) {
		for _, e := range x.Find(name) {
			if e.Kind == kind && e.Name == name {
				return
			}
		}
		assert.Fail(t, "not found", "%s %s by %q", kind, key, name)
	}
	for _, p := range design.Params() {
		if p.Paddler <= 1 {
			finds(find.Control, p.Key, p.Label)
		}
	}
	for _, n := range answer.All(c) {
		finds(find.Number, n.Key, n.Label(units.Imperial16))
	}
	for _, key := range answer.TableKeys() {
		table, _ := answer.MakeTable(c, key)
		finds(find.Table, key, table.Title)
	}
	for _, st := range stage.All() {
		for _, b := range st.Bench {
			finds(find.Bench, string(st.Key)+"|"+b.Name, b.Name)
		}
	}
	for _, w := range stage.Words() {
		finds(find.Word, w.Term, w.Term)
	}
	for _, s := range stage.All() {
		finds(find.Place, string(s.Key), s.Name)
		for _, step := range s.Steps {
			finds(find.Step, step.Key, step.Text(units.Imperial16))
		}
	}
}

// Each everyday word leads somewhere.
func TestEverydayWordsLeadSomewhere(t *testing.T) {
	x := index()
	words := find.Everyday()
	require.Greater(t, len(words), 60)
	for _, word := range words {
		assert.NotEmpty(t, x.Find(word), word)
		assert.Equal(t, strings.ToLower(word), word)
	}
}
