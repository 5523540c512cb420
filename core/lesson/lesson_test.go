package lesson_test

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/lesson"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// boats are the seven that every claim is worked out on; only the first with -short.
func boats() []design.Design {
	all := append([]design.Design{design.Default()}, design.Starting()...)
	if testing.Short() {
		return all[:1]
	}
	return all
}

// runs are what was worked out, for more than one test.
var runs = map[string]*lesson.Run{}

func worked(t *testing.T, l lesson.Lesson, d design.Design) *lesson.Run {
	t.Helper()
	if r := runs[l.Key+d.Name]; r != nil {
		return r
	}
	r := lesson.NewRun(l, core.Evaluate(d), nil)
	for r.Next() {
	}
	require.Len(t, r.Canoes, len(l.Steps)+1)
	runs[l.Key+d.Name] = r
	return r
}

// slow are the lessons for which the bark is laid flat, or spreads are worked out: on the first boat,
// and on all with BARKWRIGHT_LESSONS.
var slow = map[string]bool{"gores": true, "leave": true}

// Every claim holds on the boats that it is made for, so that a lesson cannot become false; and no
// claim is made on none.
func TestClaimsHold(t *testing.T) {
	for _, l := range lesson.All() {
		made := make([]int, len(l.Claims))
		for i, d := range boats() {
			if slow[l.Key] && i != 0 && os.Getenv("BARKWRIGHT_LESSONS") == "" {
				continue
			}
			r := worked(t, l, d)
			for i, c := range l.Claims {
				switch r.Judge(c) {
				case lesson.Fails:
					var at []string
					for _, term := range c.Terms {
						at = append(at, term.Result+" "+r.Shown(term.Result, term.Step, units.Imperial16))
					}
					assert.Fail(t, "a claim that is not so", "%s on %s: %s: %s", l.Key, d.Name, c.Says,
						strings.Join(at, ", "))
				case lesson.Holds:
					made[i]++
				case lesson.NotMade:
					assert.NotEmpty(t, c.Limit, "%s on %s: %s could not be worked out", l.Key, d.Name, c.Says)
				}
			}
		}
		for i, n := range made {
			assert.Positive(t, n, "%s: %s is made on no boat", l.Key, l.Claims[i].Says)
		}
	}
}

// On the lesson's own boat every claim is made and holds, so that who takes it sees what is said.
func TestOwnBoatShowsEveryClaim(t *testing.T) {
	for _, l := range lesson.All() {
		r := worked(t, l, l.Boat())
		for _, c := range l.Claims {
			assert.Equal(t, lesson.Holds, r.Judge(c), "%s: %s", l.Key, c.Says)
		}
	}
}

// The boat that the lesson of the sheet sends its readers to has the widest place of its sheet at the ends,
// and the lesson's own has it amidships.
func TestSheetIsWidestAtHighEnds(t *testing.T) {
	l, _, _ := lesson.Lookup("sheet")
	high := lesson.Named(l.Also)
	assert.Equal(t, "High ends", high.Name)
	c := core.Evaluate(high)
	assert.Greater(t, c.Bark.Needs.WidestAt, 0.9*c.Design.HalfGunwale())
	own := core.Evaluate(l.Boat())
	assert.Less(t, own.Bark.Needs.WidestAt, own.Design.HalfGunwale()/4)
	assert.Equal(t, design.Default(), lesson.Named("no such"))
}

// Lessons that move one control from step to step say so, and others do not.
func TestControl(t *testing.T) {
	want := map[string]string{"gores": "gores", "rocker": "rocker", "sheet": "sheetWidth", "stem": "stemLaminations",
		"end-ribs": "ribThicknessEnd"}
	for _, l := range lesson.All() {
		p, ok := l.Control()
		assert.Equal(t, want[l.Key] != "", ok, l.Key)
		assert.Equal(t, want[l.Key], p.Key, l.Key)
	}
}

// Turned about, a claim of each lesson fails: the test above can.
func TestClaimsCanFail(t *testing.T) {
	for _, l := range lesson.All() {
		r := worked(t, l, design.Default())
		failed := 0
		for _, c := range l.Claims {
			turned := c
			turned.Terms = nil
			for _, term := range c.Terms {
				term.A = -term.A
				turned.Terms = append(turned.Terms, term)
			}
			if turned.Least == 0 {
				turned.Least = 1e-6
			}
			if r.Judge(turned) == lesson.Fails {
				failed++
			}
		}
		assert.Positive(t, failed, l.Key)
	}
}

// Each lesson has its parts, watches what there is, and its words are filled from the boat in
// hand in the reader's units.
func TestLessonsAreWhole(t *testing.T) {
	require.Len(t, lesson.All(), 10)
	keys := map[string]bool{}
	for _, l := range lesson.All() {
		assert.False(t, keys[l.Key], l.Key)
		keys[l.Key] = true
		_, _, ok := stage.Lookup(l.Home)
		assert.True(t, ok, l.Key)
		assert.True(t, l.Minutes >= 5 && l.Minutes <= 30, l.Key)
		assert.NotEmpty(t, l.Source.Cited, l.Key)
		r := worked(t, l, design.Default())
		for i, fault := range r.Faults {
			assert.Nil(t, fault, "%s, step %d", l.Key, i)
		}
		for _, key := range l.Watch {
			for step := range r.Canoes {
				assert.NotEqual(t, units.NotWorkedOut, r.Shown(key, step, units.Metric), "%s: %s at %d", l.Key, key,
					step)
			}
		}
		for _, step := range l.Steps {
			for _, set := range step.Sets {
				_, ok := design.Lookup(set.Key)
				assert.True(t, ok, "%s sets %s", l.Key, set.Key)
			}
		}
		texts := []string{l.Question, l.Found, l.Why, l.Next, l.Mistake, l.Title}
		for _, step := range l.Steps {
			texts = append(texts, step.Does)
		}
		for _, text := range texts {
			require.NotEmpty(t, text, l.Key)
			imperial, metric := r.Fill(text, units.Imperial16), r.Fill(text, units.Metric)
			assert.NotContains(t, imperial+metric, units.NotWorkedOut, l.Key)
			assert.NotContains(t, imperial+metric, "{", l.Key)
			assert.NotContains(t, metric, `"`, "%s: %s", l.Key, metric)
		}
	}
	for _, key := range lesson.Afternoon() {
		assert.True(t, keys[key], key)
	}
	_, _, ok := lesson.Lookup("no such")
	assert.False(t, ok)
}

// On a boat that it is not made for, or that cannot be built on the way, a claim is not made.
func TestNotMade(t *testing.T) {
	l, place, ok := lesson.Lookup("sheet")
	require.True(t, ok)
	assert.Equal(t, 5, place)
	long := design.Starting()[2]
	r := worked(t, l, long)
	for _, c := range l.Claims {
		assert.Equal(t, lesson.NotMade, r.Judge(c))
	}
	claim := lesson.Claim{Says: "none", Terms: []lesson.Term{{A: 1, Result: "no such", Step: 0}}}
	assert.Equal(t, lesson.NotMade, r.Judge(claim))
}
