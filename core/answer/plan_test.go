package answer_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/tally"
	"barkwright/core/units"
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

// One of a thing is called by its name for one: a group torn, with its peg.
func TestOneGroupTorn(t *testing.T) {
	table := answer.MendTable(core.Evaluate(design.Default()), plan.NewSeason(), tally.Damage{Kind: tally.TornLacing, Groups: 1},
		units.Imperial16)
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
			table := answer.MendTable(c, plan.NewSeason(), tally.Damage{Kind: k, At: 0.9, Along: 0.15, Round: 0.1, Groups: 2}, s)
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
