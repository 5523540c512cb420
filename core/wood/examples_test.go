package wood_test

import (
	"math"
	"testing"

	"barkwright/core/internal/check"
	"barkwright/core/units"
	"barkwright/core/wood"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

var conditionNamed = map[string]wood.Condition{
	"": wood.Boiled, "boiled": wood.Boiled, "strapped": wood.Strapped,
	"soaked": wood.Soaked, "green": wood.Soaked, "dry": wood.Dry,
}

// TestBendExamples runs every row of the fifteen examples.
func TestBendExamples(t *testing.T) {
	seen := map[string]bool{}
	for _, row := range check.Computed(t, "bend-examples") {
		name := row["row"] + " " + row["quantity"] + " " + row["condition"] + " " + row["n"]
		seen[row["row"]] = true
		t.Run(name, func(t *testing.T) {
			if row["quantity"] == "verdict" {
				assert.Equal(t, row["expect"], bendOf(t, row).Verdict.String())
				return
			}
			assert.InDelta(t, row.Float(t, "expect"), exampleValue(t, row), row.Float(t, "tolerance"))
		})
	}
	assert.Len(t, seen, 15)
}

func bendOf(t *testing.T, row check.Row) wood.Bend {
	return wood.Check(row.Float(t, "radius")*units.Inch, row.Float(t, "thickness")*units.Inch, stockOf(t, row))
}

func stockOf(t *testing.T, row check.Row) wood.Stock {
	condition, ok := conditionNamed[row["condition"]]
	require.True(t, ok, row["condition"])
	s := wood.Stock{Condition: condition}
	if row["species"] != "" {
		s.Species = speciesNamed(t, row["species"])
	}
	return s
}

func exampleValue(t *testing.T, row check.Row) float64 {
	inches := func(column string) float64 { return row.Float(t, column) * units.Inch }
	strength := func() wood.Strength {
		s := stockOf(t, row)
		if s.Condition == wood.Dry {
			return s.Species.Row().Dry
		}
		return s.Species.Row().Green
	}
	moments := func() wood.Moments {
		return wood.MomentToBend(wood.Effort{
			Width: inches("input"), Depth: inches("thickness"), Radius: inches("radius"),
			Laminations: int(row.Float(t, "n")), Stock: stockOf(t, row),
		})
	}
	const inchPound = units.FootPound / 12
	switch row["quantity"] {
	case "ratioAtRupture":
		return strength().RatioAtRupture()
	case "strainAtRupture":
		return 100 / (2 * strength().RatioAtRupture())
	case "speciesFactor":
		s := stockOf(t, row)
		return s.Species.BendFactor(s.Condition)
	case "ratio":
		return bendOf(t, row).Ratio
	case "strain":
		return 100 * bendOf(t, row).Strain
	case "curvatureFactor":
		return 1 - 2000/math.Pow(bendOf(t, row).Ratio, 2)
	case "gluedSpringback":
		return gluedSpringback(row.Float(t, "n"))
	case "momentEach":
		return moments().PerLamination / inchPound
	case "momentBundle":
		return moments().Bundle / inchPound
	case "momentSolid":
		return moments().Solid / inchPound
	case "momentRatio":
		return moments().Solid / moments().Bundle
	case "winklerShift":
		return winkler(bendOf(t, row).Ratio).shift
	case "winklerInner":
		return winkler(bendOf(t, row).Ratio).inner
	case "winklerOuter":
		return winkler(bendOf(t, row).Ratio).outer
	case "density":
		return wood.DensityAt(row.Float(t, "input"), 12)
	case "densityPounds":
		return wood.DensityAt(row.Float(t, "input"), 12) / units.PoundPerCubicFoot
	case "barkWidth":
		// The width that asks for a tree so thick: the diameter is in proportion to it.
		return inches("input") / wood.TreeDiameter(1) / units.Inch
	case "stripKept":
		return wood.StripSpringback(row.Float(t, "input"), bendOf(t, row).Ratio).Kept
	case "stripOpens":
		return wood.StripSpringback(row.Float(t, "input"), bendOf(t, row).Ratio).High
	}
	require.Fail(t, "no such quantity", row["quantity"])
	return 0
}

// gluedSpringback is the ratio of final to form radius of n equal layers glued
// while bent, elastic: n^2/(n^2 - 1). The page leaves it out, see
// TestALashedStemIsNotAGluedOne.
func gluedSpringback(n float64) float64 { return n * n / (n*n - 1) }

type thickBeam struct{ shift, inner, outer float64 }

// winkler is the thick curved beam of rectangular section (Timoshenko, Strength
// of Materials, from memory): neutral radius t/ln(Ro/Ri), its shift inward over
// t, and the strains at the faces over t/(2R) at the same moment.
func winkler(ratio float64) thickBeam {
	inner, outer := ratio-0.5, ratio+0.5
	neutral := 1 / math.Log(outer/inner)
	shift := ratio - neutral
	return thickBeam{
		shift: shift,
		inner: (neutral - inner) / (6 * shift * inner),
		outer: (outer - neutral) / (6 * shift * outer),
	}
}

// The nominal strain is what the guide's bands are written in. At the tightest
// the guide lets anything be bent, R/t 10, leaving the thick-beam correction out
// changes it by under 4 %, far less than the bands are sure to.
func TestThickBeamCorrectionMayBeLeftOut(t *testing.T) {
	tightest := math.Inf(1)
	for _, c := range wood.AllConditions() {
		tightest = min(tightest, c.Guide().Limit)
	}
	assert.Equal(t, 10.0, tightest)
	assert.InDelta(t, 1, winkler(tightest).inner, 0.04)
	assert.InDelta(t, 1, winkler(tightest).outer, 0.04)
}

// Glued layers hold one another and open by a few per cent; lashed ones each open
// as a single strip. For the published six-layer stem the glued figure lies far
// inside the strip's range, so to use it would promise a curve that is not kept.
func TestALashedStemIsNotAGluedOne(t *testing.T) {
	stem := wood.Check(12.1*units.Inch, 1.25/6*units.Inch, wood.Stock{})
	spring := stem.Springback(wood.Stock{})
	assert.Less(t, gluedSpringback(6), 1.03)
	assert.Greater(t, spring.High, 1.5)
	assert.Equal(t, 1.0, spring.Low)
}

// The cold soaked limit: strain at greatest load of a centre-loaded beam is at
// least ((W/Wel)+1)/2 times MOR/MOE, Wel = MOR^2/(18 MOE); published as 1.55 %
// for green northern white-cedar, and less one coefficient of variation (34 %,
// from memory) an R/t of 49.
func TestSoakedLimitRestsOnTheWorkToGreatestLoad(t *testing.T) {
	m := wood.NorthernWhiteCedar.Row().Green
	elastic := m.MOR * m.MOR / (18 * m.MOE)
	strain := (m.WorkToMaxLoad/elastic + 1) / 2 * m.MOR / m.MOE
	assert.InDelta(t, 1.55, 100*strain, 0.005)
	ratio := 1 / (2 * strain * (1 - 0.34))
	assert.InDelta(t, 49, ratio, 0.5)
	assert.InDelta(t, wood.Soaked.Guide().Limit, ratio, 2)
}
