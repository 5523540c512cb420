package answer_test

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/core/wood"
)

func outlook(t *testing.T, s plan.Season) *core.Outlook {
	t.Helper()
	o, ok := core.PlanWork(core.Evaluate(design.Default()), s, tally.Log{}, "", func(string) int { return 0 }, nil)
	require.True(t, ok)
	o, ok = o.WithHelp(core.Evaluate(design.Default()), nil)
	require.True(t, ok)
	return o
}

// The four numbers of the plan have a range, a basis and a source; without a plan they follow.
func TestPlannedNumbers(t *testing.T) {
	o := outlook(t, plan.NewSeason())
	all := answer.Planned(o)
	var keys []string
	for _, n := range all {
		keys = append(keys, n.Key)
		assert.False(t, n.Absent, n.Key)
		assert.LessOrEqual(t, n.Low, n.Value, n.Key)
		assert.GreaterOrEqual(t, n.High, n.Value, n.Key)
		assert.Less(t, n.Low, n.High, n.Key)
		assert.NotEmpty(t, n.Cited)
		assert.NotEmpty(t, n.Working(units.Imperial16))
	}
	assert.Equal(t, []string{"plan.days", "plan.hours", "plan.longest", "plan.gatherShare"}, keys)
	for _, n := range answer.Planned(nil) {
		assert.True(t, n.NotYet(), n.Key)
	}
	s := plan.NewSeason()
	s.Numbers[plan.Practised] = 0
	for _, n := range answer.Planned(outlook(t, s)) {
		assert.True(t, n.Absent)
		assert.False(t, n.NotYet())
	}
}

// The hours by part add up to all of them, a larger boat never takes fewer days, and every
// day's shifts stand in the list of days.
func TestPlanTables(t *testing.T) {
	o := outlook(t, plan.NewSeason())
	tables := map[string]answer.Table{}
	for _, table := range answer.PlanTables(o, units.Metric) {
		require.NotEmpty(t, table.Rows, table.Key)
		tables[table.Key] = table
	}
	shifts := 0
	for _, j := range o.Jobs {
		shifts += len(j.Shifts)
	}
	assert.Len(t, tables["plan.days"].Rows, shifts)
	assert.Len(t, tables["plan.tasks"].Rows, len(o.Jobs))
	require.NotEmpty(t, o.Sizes)
	for i := range o.Sizes[1:] {
		assert.Greater(t, o.Sizes[i].Length, o.Sizes[i+1].Length)
		assert.GreaterOrEqual(t, o.Sizes[i].Days, o.Sizes[i+1].Days)
	}
	assert.Nil(t, answer.PlanTables(nil, units.Metric))
}

// No row of the days tells a part of a tree, a sheet or a boat: things that are counted are told whole or by
// their share, which is less than all. Pounds and feet are measured.
func TestDaysTellWholeThings(t *testing.T) {
	shares := 0
	for _, crew := range [][2]float64{{1, 8}, {3, 7}} {
		s := plan.NewSeason()
		s.Numbers[plan.Practised], s.Numbers[plan.Hours] = crew[0], crew[1]
		for _, table := range answer.PlanTables(outlook(t, s), units.Imperial16) {
			if table.Key != "plan.days" {
				continue
			}
			for _, r := range table.Rows {
				text := r.Cells[2].Text
				if strings.Contains(text, "%") {
					shares++
				}
				assert.NotContains(t, text, "100 %")
				assert.NotRegexp(t, `\d\.\d of \d+ (tree|sheet|end|boat|log)`, text)
			}
		}
	}
	assert.Greater(t, shares, 6)
}

// How much shorter a boat is tried is said in the reader's units alone.
func TestShorterBoatInOneSystem(t *testing.T) {
	o := outlook(t, plan.NewSeason())
	for s, want := range map[units.System]string{units.Imperial16: "a boat 1 ft shorter",
		units.Imperial8: "a boat 1 ft shorter", units.Metric: "a boat 30 cm shorter"} {
		var said []string
		for _, table := range answer.PlanTables(o, s) {
			for _, r := range table.Rows {
				if table.Key == "plan.ways" {
					said = append(said, r.Cells[0].Text)
				}
			}
		}
		assert.Contains(t, said, want)
		assert.NotContains(t, said, "")
	}
}

// A log with ticks plans what is left from today.
func TestPlanFromToday(t *testing.T) {
	c := core.Evaluate(design.Default())
	log := tally.Log{}.Tick("gather.ask", "", "2026-05-01", true)
	o, ok := core.PlanWork(c, plan.NewSeason(), log, "2026-05-03", func(string) int { return 0 }, nil)
	require.True(t, ok)
	assert.True(t, o.Dated)
	assert.Equal(t, "2026-05-03", o.First.Format("2006-01-02"))
	for _, j := range o.Jobs {
		assert.NotEqual(t, plan.AskLeave, j.Task)
	}
}

// What the boat asks says as much with a plan as without, and names what costs most.
func TestAsks(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, s := range []units.System{units.Imperial16, units.Metric} {
		without := answer.AsksTable(c, nil, s)
		with := answer.AsksTable(c, outlook(t, plan.NewSeason()), s)
		assert.Greater(t, len(with.Rows), len(without.Rows))
		costs := ""
		for _, r := range with.Rows {
			assert.NotContains(t, r.Cells[1].Text, "NaN")
			if r.Cells[0].Text == "Costs most" {
				costs = r.Cells[1].Text
			}
		}
		// A hundred trees are tested for one, ten minutes each at the mean: no other task takes as long.
		assert.Contains(t, costs, "find the birch")
	}
}

// The pegs of the plan are those that the boat asks for, the caps' and the thwarts' among them: one to
// each of the ten tenons.
func TestPegsOfThePlan(t *testing.T) {
	c := core.Evaluate(design.Default())
	for _, r := range answer.AsksTable(c, nil, units.Imperial16).Rows {
		if r.Cells[0].Text == "Pegs" {
			assert.Equal(t, r.Cells[1].Text, fmt.Sprint(c.Asks().Units[plan.MakePegs]))
			assert.Equal(t, float64(c.Gather.Pegs.Outwales+c.Gather.Pegs.Caps+10), c.Asks().Units[plan.MakePegs])
			return
		}
	}
	t.Fatal("no row of pegs")
}

// What the boats of a plan ask is of all of them: three take three times the trees, the loads to within the one that
// is not full, and the hours stand beside the published total of where the plan begins.
func TestAsksForAllBoats(t *testing.T) {
	c := core.Evaluate(design.Default())
	said := func(boats, from float64, what string) (asks, known string) {
		s := plan.NewSeason()
		s.Numbers[plan.Boats], s.Numbers[plan.From] = boats, from
		for _, r := range answer.AsksTable(c, &core.Outlook{Plan: plan.Plan{Season: s, State: plan.Made}}, units.Metric).Rows {
			if r.Cells[0].Text == what {
				return r.Cells[1].Text, r.Cells[2].Text
			}
		}
		return "", ""
	}
	number := func(text, pattern string) float64 {
		found := regexp.MustCompile(pattern).FindStringSubmatch(text)
		require.NotNil(t, found, text)
		v, err := strconv.ParseFloat(found[1], 64)
		require.NoError(t, err)
		return v
	}
	one, _ := said(1, 0, "Birch")
	three, _ := said(3, 0, "Birch")
	assert.Equal(t, 3*number(one, `^(\d+) trees`), number(three, `^(\d+) trees`))
	one, _ = said(1, 0, "To carry")
	three, _ = said(3, 0, "To carry")
	loads := 3 * number(one, `(\d+) loads`)
	assert.LessOrEqual(t, number(three, `(\d+) loads`), loads)
	assert.Greater(t, number(three, `(\d+) loads`), loads-3, "each boat's last load is not full")
	for from, want := range []string{"400 to 500", "200 to 280", "no total is published"} {
		_, known := said(1, float64(from), "Hours")
		assert.Contains(t, known, want)
	}
}

// A plan that ends a day too late, or has a day's slack, says one day; what would bring it in time is named, and is
// what the table of ways and the least crews say.
func TestLatePlan(t *testing.T) {
	s := plan.NewSeason()
	s.Numbers[plan.From] = 2
	o := outlook(t, s)
	s.Days[plan.Begin], s.Days[plan.End] = "2027-07-05", day(t, "2027-07-05", o.Days-2)
	late, ok := core.PlanWork(core.Evaluate(design.Default()), s, tally.Log{}, "2027-03-01", func(string) int { return 0 }, nil)
	require.True(t, ok)
	late, ok = late.WithHelp(core.Evaluate(design.Default()), nil)
	require.True(t, ok)
	set, _ := late.DaysSet()
	require.Equal(t, 1, late.Days-set)
	text := ""
	for _, r := range answer.PlanRemarks(late, units.Imperial16) {
		if r.Key == "late" {
			text = r.Text
		}
	}
	assert.Contains(t, text, "It ends 1 day after the day set")
	named := 0
	for _, w := range late.Ways {
		if w.Text != "" {
			assert.Equal(t, w.Days <= set, strings.Contains(text, w.Text), w.Text)
		}
		if w.Days <= set {
			named++
		}
	}
	assert.Positive(t, named)
	for _, c := range late.Crews {
		assert.Contains(t, text, plan.Hands(c.Practised, c.Learners))
	}
	for _, table := range answer.PlanTables(late, units.Imperial16) {
		for _, r := range table.Rows {
			for _, cell := range r.Cells {
				assert.NotRegexp(t, `\b1 (days|trees|sheets)\b|\b0 days`, cell.Text)
			}
		}
	}
}

// day is the day n days after another.
func day(t *testing.T, from string, n int) string {
	t.Helper()
	d, err := time.Parse(time.DateOnly, from)
	require.NoError(t, err)
	return d.AddDate(0, 0, n).Format(time.DateOnly)
}

// A new rib is judged as the boat's ribs are: one that bends as published ribs do asks for no spares, a tighter one does.
// How long it stays bound is what the plan has.
func TestNewRib(t *testing.T) {
	c := core.Evaluate(design.Default())
	at := 0.0
	how := func(s plan.Season) string {
		for _, r := range answer.MendTable(answer.Repaired(c, s, tally.Damage{Kind: tally.BrokenRib, At: at}),
			units.Imperial16).Rows {
			if r.Cells[0].Text == "New rib" {
				return r.Cells[2].Text
			}
		}
		return ""
	}
	bands := map[bool]int{}
	for _, f := range c.Frame.Ribs {
		at = f.Run
		tight := f.Bend.Rib(c.Design.RibStock) > wood.PublishedRib
		bands[tight]++
		assert.Equal(t, tight, strings.Contains(how(plan.NewSeason()), "spares"), f.Number)
	}
	assert.Len(t, bands, 2, "both are there")
	assert.Contains(t, how(plan.NewSeason()), "bound 3 days")
	s := plan.NewSeason()
	s.Numbers[plan.RibsDry] = 1
	assert.Contains(t, how(s), "bound a day")
}

// One of a thing is called by its name for one: a group torn, with its peg.
func TestOneGroupTorn(t *testing.T) {
	table := answer.MendTable(answer.Repaired(core.Evaluate(design.Default()), plan.NewSeason(),
		tally.Damage{Kind: tally.TornLacing, Groups: 1}), units.Imperial16)
	said := ""
	for _, r := range table.Rows {
		said += r.Cells[1].Text + "; "
	}
	assert.Contains(t, said, "torn lacing, 1 group, amidships")
	assert.Contains(t, said, "1 group again, 1 peg;")
}

// Every kind of damage has lines, in both systems of units.
func TestMendTable(t *testing.T) {
	c := core.Evaluate(design.Default())
	for k := tally.Crack; k < tally.DamageKinds; k++ {
		for _, s := range []units.System{units.Imperial16, units.Metric} {
			table := answer.MendTable(answer.Repaired(c, plan.NewSeason(),
				tally.Damage{Kind: k, At: 0.9, Along: 0.15, Round: 0.1, Groups: 2}), s)
			assert.GreaterOrEqual(t, len(table.Rows), 3, k.String())
			for _, r := range table.Rows {
				assert.NotContains(t, r.Cells[1].Text, "NaN")
				if s == units.Metric {
					assert.NotContains(t, r.Cells[1].Text, `"`)
				}
			}
		}
	}
}

// The table of sizes has the boat itself with the days of its plan, also where a plan made faster would end later.
func TestSizesHaveTheBoatItself(t *testing.T) {
	s := plan.NewSeason()
	s.Numbers[plan.Learners], s.Numbers[plan.Boats], s.Numbers[plan.Teams] = 3, 2, 2
	o := outlook(t, s)
	at := slices.IndexFunc(o.Sizes, func(size core.Size) bool { return math.Abs(size.Length-design.Default().Length) < 1e-9 })
	require.GreaterOrEqual(t, at, 0)
	assert.Equal(t, o.Days, o.Sizes[at].Days)
}
