package answer

import (
	"math"
	"strconv"

	"barkwright/core"
	"barkwright/core/hull"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// mostLevels is the largest number of water lines whose half breadths the table of offsets gives.
const mostLevels = 6

// levelSteps are how far apart the water lines stand, m.
var levelSteps = []float64{units.Inch, 2 * units.Inch, 3 * units.Inch, 4 * units.Inch, 6 * units.Inch}

// levels are the water lines of the table of offsets: heights over the bottom amidships under the
// sheer there, in round inches, m.
func levels(h *hull.Hull) []float64 {
	sheer := h.Sheer(0)
	for _, step := range levelSteps {
		if n := int(math.Ceil(sheer/step)) - 1; n <= mostLevels {
			out := make([]float64, n)
			for i := range out {
				out[i] = step * float64(i+1)
			}
			return out
		}
	}
	return nil
}

func offsetsTable(c core.Canoe) Table {
	h := c.Hull
	t := Table{
		Key: "offsets", Title: "Offsets: heights and half breadths along the boat", Home: stage.Choose, OnPaper: true,
		Note: "To the outside of the bark. Heights are over the bottom amidships, half breadths from the centre line; the " +
			"same aft and to starboard. 1-6-3 is 1 ft 6 3/8 in (467 mm), in eighths. Water lines are level " +
			"with the bottom amidships and " + units.SmallLength.Both(levels(h)[0]) + " apart; a dash stands where the " +
			"bark does not reach one. The number of stations, or how far they are apart, is yours to set.",
	}
	offset := func(key, label string, of func(float64) float64) column[float64] {
		return col(key, label, units.Length, func(x float64) Cell { return num(of(x)) }).lofted()
	}
	columns := []column[float64]{
		ordinal[float64]("number", "Station", 0),
		offset("station", "From amidships", func(x float64) float64 { return x }),
		offset("sheer", "Height, top of inwale", h.Sheer),
		offset("bottom", "Height, bottom", h.Bottom),
		offset("bark", "Half breadth at the edge", h.SkinHalfBreadth),
	}
	for i, z := range levels(h) {
		n := strconv.Itoa(i + 1)
		breadth := func(x float64) Cell {
			if z <= h.Bottom(x) || z >= h.Sheer(x) {
				return dash
			}
			return num(h.Section(x).HalfBreadthAt(z))
		}
		columns = append(columns, col("level"+n, "Half breadth, water line "+n, units.Length, breadth).lofted())
	}
	for _, more := range []column[float64]{
		offset("gunwale", "Half breadth inside the gunwale", h.HalfBeam),
		offset("turn", "Half breadth, turn line", h.Turn),
		offset("frame", "Half breadth, building frame", h.FrameHalfBreadth),
		offset("girth", "Half girth", func(x float64) float64 { return h.Section(x).HalfGirth() }),
	} {
		columns = append(columns, more.screenOnly())
	}
	return fill(t, stations(c), columns...)
}

// stations are the places of the table of offsets, from amidships to the gunwale's end or the heel,
// whichever comes first.
func stations(c core.Canoe) []float64 {
	end, apart := min(c.Hull.GunwaleX, c.Hull.HeelX), c.Design.StationsApart
	if apart == 0 {
		return spread(end, c.Design.Stations)
	}
	var out []float64
	for i := 0; float64(i)*apart < end-lastApart; i++ {
		out = append(out, float64(i)*apart)
	}
	return append(out, end)
}

// lastApart is how far the last station stands from the one before it at least, m.
const lastApart = units.Inch
