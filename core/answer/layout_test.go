package answer_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/known"
	"barkwright/core/units"
)

// withSheets is the default boat with sheets on hand, inches, width by length; invented.
func withSheets(sheets ...[2]float64) design.Design {
	d := design.Default()
	for i, s := range sheets {
		d.OnHand = d.OnHand.Put(i, design.Sheet{Width: s[0] * units.Inch, Length: s[1] * units.Inch})
	}
	return d
}

func barkCheckOf(t *testing.T, c core.Canoe, key string) answer.Warning {
	t.Helper()
	for _, w := range answer.Checks(c) {
		if w.Key == key {
			return w
		}
	}
	require.Fail(t, "no check "+key)
	return answer.Warning{}
}

// The verdict of the bark says in words whether the boat can be built, what is wanting and how
// long a boat the sheets make; what is wanting is sewn in the count all the same.
func TestVerdictOfTheBark(t *testing.T) {
	enough := barkCheckOf(t, core.Evaluate(withSheets([2]float64{60, 240})), "bark.verdict")
	assert.Equal(t, answer.Within, enough.State)
	sewn := barkCheckOf(t, core.Evaluate(design.Default()), "bark.verdict")
	assert.Equal(t, "enough, with sewing", sewn.Word)
	assert.Contains(t, sewn.Text(units.Imperial16), "of sewing in joints and panels")

	d := withSheets([2]float64{38, 120}, [2]float64{30, 96}, [2]float64{17, 108})
	short := barkCheckOf(t, core.Evaluate(d), "bark.verdict")
	assert.Equal(t, answer.Beyond, short.State)
	assert.Equal(t, "cannot be built from these sheets", short.Word)
	assert.NotContains(t, short.Text(units.Imperial16), "longest boat", "that is worked out when the control rests")
	c := skinned(d)
	assert.Contains(t, barkCheckOf(t, c, "bark.verdict").Text(units.Imperial16),
		"the longest boat of this shape they make is")

	narrow, _ := design.Lookup("sheetWidth")
	thin := barkCheckOf(t, core.Evaluate(narrow.Set(design.Default(), 20*units.Inch)), "bark.verdict")
	assert.Equal(t, "cannot be built from sheets this narrow", thin.Word)
	for _, w := range []answer.Warning{enough, sewn, short, thin} {
		assert.NotContains(t, w.Text(units.Metric), "#")
	}
}

// Narrow bark costs what a wide sheet saves: the seams of the two differ by as much as is
// said, to what longer gores take.
func TestPriceOfNarrowBark(t *testing.T) {
	narrow := core.Evaluate(design.Default())
	p, _ := design.Lookup("sheetWidth")
	wide := core.Evaluate(p.Set(design.Default(), 60*units.Inch))
	total := func(c core.Canoe) float64 { return find(t, answer.All(c), "seams.total").Value }
	assert.InDelta(t, total(narrow)-total(wide), find(t, answer.All(narrow), "bark.narrowSeam").Value, 1e-9)
	assert.True(t, find(t, answer.All(wide), "bark.narrowSeam").Absent)
}

// The published plan comes to its own total for its own boat: a museum's account, 250 ft
// dug for 15 ft and 40 ribs. It stands beside this page's with the reasons in its working.
func TestPublishedRootBesideThePages(t *testing.T) {
	d := design.Default()
	for key, v := range map[string]float64{"length": 180 * units.Inch, "ribs": 40} {
		p, _ := design.Lookup(key)
		d = p.Set(d, v)
	}
	n := find(t, answer.All(core.Evaluate(d)), "root.published")
	assert.Equal(t, "250 ft", n.Text(units.Imperial16))
	assert.Equal(t, known.Published, n.Basis)
	assert.Contains(t, n.Working(units.Imperial16), "for waste")
}

// Joints nearer a gore than a hand are said, and where.
func TestJointsTooNearAreSaid(t *testing.T) {
	assert.Equal(t, answer.Within, barkCheckOf(t, core.Evaluate(design.Default()), "bark.joinGap").State)
	d := design.Default()
	for key, v := range map[string]float64{"gores": 24, "sheetLength": 102 * units.Inch} {
		p, _ := design.Lookup(key)
		d = p.Set(d, v)
	}
	require.Empty(t, core.Validate(d))
	near := barkCheckOf(t, core.Evaluate(d), "bark.joinGap")
	gap := find(t, answer.All(core.Evaluate(d)), "bark.joinGap").Value
	assert.Equal(t, gap < 4*units.Inch-1e-6, near.State == answer.Near)
}

// Sheets that are wanting are not among those on hand.
func TestWantingSheetsAreNotOnHand(t *testing.T) {
	d := design.Default()
	d.OnHand = d.OnHand.Put(0, design.Sheet{Width: 60 * units.Inch, Length: 100 * units.Inch})
	n := find(t, answer.All(core.Evaluate(d)), "bark.sheets")
	assert.Equal(t, 2.0, n.Value)
	assert.Contains(t, n.Working(units.Imperial16), "1 of the 1 on hand and 1 wanting")
}

// One joint of a boat without gores has nothing to keep clear of, and is not too near.
func TestOneJointAlone(t *testing.T) {
	p, _ := design.Lookup("gores")
	c := core.Evaluate(p.Set(design.Default(), 0))
	require.Len(t, c.Bark.Joints, 1)
	require.Empty(t, c.Bark.Butts)
	assert.Equal(t, answer.Within, barkCheckOf(t, c, "bark.joinGap").State)
	assert.True(t, find(t, answer.All(c), "bark.joinGap").Absent)
}

// A length of root that stands in the working of another number is the length that is shown of it.
func TestRootIsShownAlike(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), check.With(t, "length", 36*units.Foot, "ribs", 90.0)) {
		all := answer.All(core.Evaluate(d))
		for _, s := range systems {
			shown := func(key string) string { return strings.TrimPrefix(find(t, all, key).Text(s), "about ") }
			says := func(key, of string) {
				assert.Contains(t, find(t, all, key).Working(s), shown(of), "%s, %s of %s", d.Name, of, key)
			}
			says("root.dug", "root.total")
			says("root.lengths", "root.dug")
			says("root.published", "root.dug")
			says("root.total", "root.gunwalesWaste")
			says("root.total", "root.seamsWaste")
			says("root.gunwales", "lacing.group")
			says("root.gunwalesWaste", "root.gunwales")
			says("root.seamsWaste", "root.seams")
		}
	}
}

// A root too short for a group is named, and the count of roots with it.
func TestRootsTooShort(t *testing.T) {
	d := design.Default()
	d.RootLength = 48 * units.Inch
	n := find(t, answer.All(core.Evaluate(d)), "root.pieces")
	assert.True(t, n.Absent)
	assert.Contains(t, n.Word, "a group takes more than a strand")
}

// Sheets of unlike width on the bed: what is drawn and said for the narrowest says so.
func TestUnevenSheetsAreSaid(t *testing.T) {
	note := func(c core.Canoe) string {
		table, _ := answer.MakeTable(c, "gores")
		return table.Note
	}
	uneven := core.Evaluate(withSheets([2]float64{60, 70}, [2]float64{38, 70}, [2]float64{36, 70}))
	assert.True(t, uneven.Bark.Uneven())
	assert.Contains(t, note(uneven), "differ in width")
	for _, d := range []design.Design{design.Default(), withSheets([2]float64{40, 120}, [2]float64{40, 120})} {
		c := core.Evaluate(d)
		assert.False(t, c.Bark.Uneven())
		assert.NotContains(t, note(c), "differ in width")
	}
}
