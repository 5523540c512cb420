package core_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// skinned is a boat with its bark laid flat for the picture.
func skinned(d design.Design) core.Canoe {
	c := core.Evaluate(d)
	return c.WithFlat(core.LayFlat(c, bark.ForPicture, nil, nil))
}

// aboardOrSewn are the parameters of crew and root, which change no shape.
var aboardOrSewn = func() map[string]bool {
	keys := map[string]bool{}
	for _, k := range strings.Fields("paddlers paddlerMass posture stature seatHeight cargo cargoHeight cargoPosition " +
		"waterTemperature groupHoles holeSpacing passes pegEvery rootWidth rootLength tail rootWaste goreStitch goreBite " +
		"panelStitch panelBite jointStitch jointBite endStitch endBite") {
		keys[k] = true
	}
	return keys
}()

// What the crew and the root change leaves the bark as it lies.
func TestWhatLeavesTheSkinAlone(t *testing.T) {
	d := design.Default()
	alone := map[string]bool{"stretchLimit": true, "panels": true, "panelLap": true, "treeAllowance": true,
		"treeRule": true}
	for _, p := range design.Params() {
		if aboardOrSewn[p.Key] || p.Paddler > 0 || p.Tolerance {
			alone[p.Key] = true
		}
	}
	for _, p := range design.Params() {
		v := p.Min
		if p.Get(&d) == v {
			v = p.Max
		}
		changed := p.Set(d, v)
		assert.Equal(t, alone[p.Key], core.SameSkin(d, changed), p.Key)
		if !alone[p.Key] || core.Validate(changed) != nil {
			continue
		}
		a, b := core.LayFlat(core.Evaluate(d), bark.ForPicture, nil, nil), core.LayFlat(core.Evaluate(changed),
			bark.ForPicture, nil, nil)
		assert.Equal(t, a.Sheet.Points, b.Sheet.Points, p.Key)
	}
	listed := d
	listed.OnHand = listed.OnHand.Put(0, design.Sheet{Width: 1, Length: 3})
	assert.False(t, core.SameSkin(d, listed), "the bark is laid out for the sheets there are")
}

// With sheets on hand the bark is laid flat for the narrowest of those on the bed: a
// wide one has no side panel whatever width is set, a narrow one larger ones.
func TestSkinIsOfTheSheetsOnHand(t *testing.T) {
	d := design.Default()
	set := skinned(d)
	require.NotEmpty(t, set.Skin.Flat.Panels)
	listed := func(inches ...float64) core.Canoe {
		d := d
		for i, width := range inches {
			d.OnHand = d.OnHand.Put(i, design.Sheet{Width: width * units.Inch, Length: 120 * units.Inch})
		}
		return skinned(d)
	}
	wide := listed(60, 62)
	assert.Empty(t, wide.Bark.Panels)
	assert.Empty(t, wide.Skin.Flat.Panels)
	assert.Equal(t, d.SheetWidth, wide.Hull.Design.SheetWidth, "what is set stays")
	assert.InDelta(t, 60, wide.Bark.SheetWidth/units.Inch, 1e-9, "what is laid has its own")

	narrow := listed(44, 32)
	assert.NotEmpty(t, narrow.Skin.Flat.Panels)
	most := 0.0
	for _, q := range narrow.Skin.Flat.Sheet.Points {
		most = max(most, q.Y)
	}
	assert.InDelta(t, 16, most/units.Inch, 0.25, "half of the narrower, as far as the bark laid flat stretches")
}

// Joints and the breadth of bark follow the flat sheet once it is known; what that
// would change in the boat's weight is less than an ounce.
func TestSeamsFollowTheFlatSheet(t *testing.T) {
	p, _ := design.Lookup("sheetWidth")
	d := p.Set(design.Default(), 70*units.Inch)
	plain, c := core.Evaluate(d), skinned(d)
	assert.Equal(t, c.Skin.Flat.Length, c.Bark.FlatLength)
	assert.Less(t, c.Skin.Flat.Breadth, 2*c.Hull.HalfGirthOnBed(0))
	assert.InDelta(t, 2*c.Hull.HalfGirthOnBed(0)+2*d.GunwaleTurn, c.Bark.Needs.Width, 1e-12, "on the bed it takes more")
	set := set(t, set(t, d, "turnWidth", 38*units.Inch), "frameWidth", 20*units.Inch)
	wide := skinned(set)
	assert.InDelta(t, wide.Skin.Flat.Breadth+2*d.GunwaleTurn, wide.Bark.Needs.Width, 1e-12, "finished it takes more")
	assert.NotEqual(t, plain.Bark.Bed[0].Bow, c.Bark.Bed[0].Bow)
	assert.InDelta(t, c.Skin.Flat.Length/2, c.Bark.Bed[0].Bow, 1e-12)
	assert.Equal(t, plain.Gather.Weight, c.Gather.Weight)
	assert.InDelta(t, c.Gather.Weight.Typical, gather.Gather(c.Hull, c.Frame, c.Bark).Weight.Typical, units.Pound/16)
}

// Without a list the design's own sheets cover the boat; a list that is too short
// says what is wanting, and a longer one never makes a smaller boat.
func TestSheetsOnHand(t *testing.T) {
	d := design.Default()
	c := skinned(d)
	assert.Zero(t, c.Bark.Short)
	assert.Nil(t, c.WithMakes(nil).Skin.Makes, "no list")
	last := 0.0
	for i := range 5 {
		d.OnHand = d.OnHand.Put(i, design.Sheet{Width: d.SheetWidth, Length: d.SheetLength})
		c = skinned(d).WithMakes(nil)
		require.NotNil(t, c.Skin.Makes)
		assert.GreaterOrEqual(t, c.Skin.Makes.Length, last)
		assert.LessOrEqual(t, c.Skin.Narrower.Length, c.Skin.Makes.Length)
		if i == 0 {
			assert.Positive(t, c.Bark.Short)
			assert.NotEmpty(t, c.Bark.Wanting())
		}
		last = c.Skin.Makes.Length
	}
	assert.Zero(t, c.Bark.Short)
	assert.Greater(t, last, d.Length)
}

// What the sheets make agrees with whether they make this boat: a sheet of 200 in is shorter by a hair than
// this boat's bark laid flat, and longer than the length that sizes are tried with.
func TestLargestAgreesWithTheVerdict(t *testing.T) {
	for _, inches := range []float64{190, 199.5, 200, 200.5, 201, 210} {
		d := design.Starting()[4]
		d.OnHand = d.OnHand.Put(0, design.Sheet{Width: 80 * units.Inch, Length: inches * units.Inch})
		c := skinned(d).WithMakes(nil)
		made := c.Bark.Verdict() != bark.CannotBeBuilt
		assert.Equal(t, made, c.Skin.Makes.Length >= d.Length, "%v in: %v, %v", inches, made,
			c.Skin.Makes.Length/units.Inch)
		assert.LessOrEqual(t, c.Skin.Narrower.Length, c.Skin.Makes.Length)
	}
}

// Joints are sewn where the listed sheets meet, before the bark is laid flat and
// after; one sheet from end to end needs none.
func TestJointsFollowTheListedSheets(t *testing.T) {
	d := design.Default()
	count := func() (plain, flat int) {
		return core.Evaluate(d).Bark.Seams[bark.JointSeams].Count, skinned(d).Bark.Seams[bark.JointSeams].Count
	}
	d.OnHand = d.OnHand.Put(0, design.Sheet{Width: 60 * units.Inch, Length: 240 * units.Inch})
	plain, flat := count()
	assert.Zero(t, plain)
	assert.Zero(t, flat)
	d.OnHand = design.OnHand{}
	for i := range 3 {
		d.OnHand = d.OnHand.Put(i, design.Sheet{Width: 60 * units.Inch, Length: 80 * units.Inch})
	}
	plain, flat = count()
	assert.Equal(t, 2, plain)
	assert.Equal(t, 2, flat)
}

// Whatever boat is drawn, the skin is laid flat or in a named state and every
// number is a number.
func TestSkinNeverNaN(t *testing.T) {
	r := rand.New(rand.NewPCG(9, 9))
	states := map[string]int{}
	for n := 0; n < 60; {
		d := check.NearDesign(r, design.Default(), 0.3)
		for i := range r.IntN(4) {
			d.OnHand = d.OnHand.Put(i, design.Sheet{Width: 0.3 + r.Float64(), Length: 1 + 3*r.Float64()})
		}
		if core.Validate(d) != nil {
			continue
		}
		n++
		c := skinned(d).WithMakes(nil)
		states[c.Skin.Flat.State.String()]++
		for _, g := range c.Skin.Flat.Gores {
			states[g.State.String()]++
			if g.State == bark.GoreCut {
				assert.GreaterOrEqual(t, g.Width, 0.0)
			}
		}
		check.RequireFinite(t, *c.Skin)
		assert.Less(t, c.Skin.Flat.P95, math.Inf(1))
	}
	t.Log(states)
	assert.Positive(t, states["converged"])
	assert.Positive(t, states[bark.GoreLetIn.String()], "the state is met too")
}
