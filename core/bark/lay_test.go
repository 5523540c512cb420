package bark_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// sheets are in inches, width by length; invented.
func sheets(inches ...[2]float64) []bark.Sheet {
	var out []bark.Sheet
	for _, s := range inches {
		out = append(out, bark.Sheet{Width: s[0] * inch, Length: s[1] * inch})
	}
	return out
}

func laid(list []bark.Sheet) bark.Layout { return bark.PlanWith(hull.New(design.Default()), list) }

func TestOneGreatSheetCovers(t *testing.T) {
	l := laid(sheets([2]float64{57, 210}))
	require.Len(t, l.Bed, 1)
	assert.Equal(t, bark.Enough, l.Verdict())
	assert.Empty(t, l.Port)
	assert.Empty(t, l.Joints)
	assert.InDelta(t, l.FlatLength, l.Bed[0].Length(), 1e-9)
}

func TestNothingOnHand(t *testing.T) {
	l := bark.Plan(hull.New(design.Default()))
	assert.Equal(t, bark.EnoughSewn, l.Verdict(), "as many sheets of the size set as it takes")
}

// A sheet too narrow for the bed does not count as lying on it. Seams of missing pieces
// count as if the pieces were there, so that less bark never makes less sewing.
func TestWhatIsWantingIsCounted(t *testing.T) {
	full, short := laid(nil), laid(sheets([2]float64{17, 108}))
	assert.Equal(t, bark.CannotBeBuilt, short.Verdict())
	assert.Positive(t, short.Short)
	none := laid(sheets([2]float64{4, 12}))
	assert.Less(t, short.Short, none.Short-0.5*17*108*inch*inch, "half of the sheet at the least serves for strips")
	assert.GreaterOrEqual(t, seamOf(short), seamOf(full)-0.01)
	assert.GreaterOrEqual(t, short.Root.Split, full.Root.Split-0.1)
	for _, p := range short.Bed {
		assert.True(t, p.Wanting(), "17 in is narrower than the building frame")
	}
}

func seamOf(l bark.Layout) float64 {
	sum := 0.0
	for _, s := range l.Seams {
		sum += s.Length
	}
	return sum
}

// The published joint of two lengths in the bottom, lapped to the stern (Adney and
// Chapelle 1964, p. 147), on a gore; where the bark reaches no gore, a hand off.
func TestJointsKeepOffTheGores(t *testing.T) {
	for _, length := range []float64{101, 102, 104, 106, 110, 115, 120, 130, 150} {
		l := plan(boat(t, map[string]float64{"sheetLength": length * inch}))
		require.Len(t, l.Joints, 1, "%v", length)
		assert.GreaterOrEqual(t, l.Gap, bark.Hand-1e-9, "%v", length)
	}
	far := plan(boat(t, map[string]float64{"sheetLength": 150 * inch}))
	assert.Greater(t, math.Abs(far.Joints[0].Along), 35*inch,
		"out of the bays beside the middle thwart where the sheets allow")
	dense := plan(boat(t, map[string]float64{"gores": 24, "sheetLength": 101 * inch}))
	assert.Positive(t, dense.Gap, "it is said what could be had")
}

// One to three pieces a side, the middle one to just past the first thwarts and inside,
// the next ones outside: Adney and Chapelle 1964, pp. 43 and 45.
func TestPanelsAsPublished(t *testing.T) {
	l := plan(boat(t, map[string]float64{"panels": 3, "sheetWidth": 40 * inch, "gores": 0}))
	require.Len(t, l.Port, len(l.Star))
	var middle bark.Laid
	for _, p := range l.Port {
		if p.Aft < 0 && p.Bow > 0 {
			middle = p
		} else {
			assert.False(t, p.Inside, p.Name)
		}
	}
	require.True(t, middle.Inside)
	h := hull.New(design.Default())
	thwart := h.StationAt(0.41 * h.Gunwale.Length())
	// Half of the lap, 1 in, lies past the butt, and the butt 2 in past the thwart's end.
	assert.InDelta(t, thwart+2*inch+1*inch, middle.Bow, 0.5*inch)
	assert.InDelta(t, -middle.Aft, middle.Bow, 1e-9)
	for i := 1; i < len(l.Port); i++ {
		if gap := l.Port[i].Bow - l.Port[i-1].Aft; gap > 0 {
			assert.InDelta(t, 2*inch, gap, 1e-9, "a couple of inches of lap")
		}
	}
}

// Panels follow the sheet that lies there: a wide sheet amidships and narrow ones toward
// the ends take panels beside the narrow ones only, each by what its own sheet lacks.
func TestPanelsFollowTheSheetThatLiesThere(t *testing.T) {
	l := laid(sheets([2]float64{60, 70}, [2]float64{38, 70}, [2]float64{36, 70}))
	require.Len(t, l.Bed, 3)
	assert.Equal(t, 0, l.Bed[1].Sheet, "the widest amidships")
	for _, b := range l.Beside {
		assert.NotEqual(t, 1, b.Piece)
	}
	assert.Zero(t, laid(sheets([2]float64{60, 400})).Seams[bark.PanelSeams].Length,
		"one wide sheet needs none, whatever width is set")
}

// Of lay-outs that want nothing the one with least to sew is taken: a long sheet that
// does alone is not left for two narrower ones, which take longer seams beside them.
func TestLeastToSew(t *testing.T) {
	for _, width := range []float64{42, 46} {
		short, long, other := [2]float64{34, 110}, [2]float64{width, 210}, [2]float64{40, 110}
		two, three := laid(sheets(short, long)), laid(sheets(short, long, other))
		require.Zero(t, two.Short)
		require.Zero(t, three.Short)
		assert.LessOrEqual(t, seamOf(three), seamOf(two)+1e-9, "a sheet more is no more to sew")
		require.Len(t, three.Bed, 1)
		assert.Equal(t, 1, three.Bed[0].Sheet)
	}
}

// randomList draws sheets, now and then at the ends of their ranges.
func randomList(r *rand.Rand) []bark.Sheet {
	var out []bark.Sheet
	for range r.IntN(6) + 1 {
		s := bark.Sheet{Width: (12 + 50*r.Float64()) * inch, Length: (30 + 200*r.Float64()) * inch}
		switch r.IntN(12) {
		case 0:
			s.Width = design.LeastSheetWidth
		case 1:
			s.Length = design.LeastSheetLength
		case 2:
			s = bark.Sheet{Width: 40 * inch, Length: 120 * inch}
		}
		out = append(out, s)
	}
	return out
}

// For every boat and list of bark: pieces lie end to end over the whole boat. None is
// longer or wider than its sheet, or shorter than a foot, and no sheet gives more than
// it has. Where seams are nearer to each other than a hand, the gap says so.
func TestPiecesOfAnyBoat(t *testing.T) {
	verdicts := map[bark.Verdict]int{}
	for seed := range uint64(6) {
		piecesOfAnyBoat(t, rand.New(rand.NewPCG(11, seed)), verdicts)
	}
	assert.Len(t, verdicts, 3, "each verdict is met")
}

func piecesOfAnyBoat(t *testing.T, r *rand.Rand, verdicts map[bark.Verdict]int) {
	t.Helper()
	for n := 0; n < 40; {
		d := check.NearDesign(r, design.Default(), 0.3)
		if r.IntN(3) > 0 {
			for i, s := range randomList(r) {
				d.OnHand = d.OnHand.Put(i, s)
			}
		}
		if design.Validate(d) != nil || len(hullFaults(d)) > 0 {
			continue
		}
		n++
		h := hull.New(d)
		l := bark.Plan(h)
		verdicts[l.Verdict()]++
		checkPieces(t, h, l)
	}
}

// Strips for high ends that are wider than any sheet are reported missing. The one
// between them, for which a sheet is wide enough, is cut.
func TestWhatCanBeCutIsNotWanting(t *testing.T) {
	l := plan(boat(t, map[string]float64{
		"sheetWidth": 25 * inch, "panelLap": 6 * inch, "endHeight": 34 * inch, "gunwaleEndHeight": 27 * inch,
	}))
	for _, side := range [][]bark.Laid{l.Port, l.Star} {
		require.Len(t, side, 3)
		for i, p := range side {
			assert.Equal(t, i != 1, p.Wanting(), "%+v", p)
			assert.Equal(t, i != 1, p.Width > 25*inch, "%+v", p)
		}
	}
}

func hullFaults(d design.Design) []design.Fault {
	h := hull.New(d)
	return h.Faults()
}

func checkPieces(t *testing.T, h *hull.Hull, l bark.Layout) {
	t.Helper()
	const close = 1e-9
	d := h.Design
	require.InDelta(t, l.FlatLength/2, l.Bed[0].Bow, close)
	require.InDelta(t, -l.FlatLength/2, l.Bed[len(l.Bed)-1].Aft, close)
	taken := make([]float64, len(l.Sheets))
	for i, p := range l.Pieces() {
		if i > 0 && i < len(l.Bed) {
			require.InDelta(t, d.SeamLap, p.Bow-l.Bed[i-1].Aft, close, "lapped")
		}
		require.GreaterOrEqual(t, p.Length(), 1*units.Foot-close, "%+v", p)
		require.Positive(t, p.Width)
		if p.Wanting() {
			require.True(t, l.Listed || l.Asked > 0 || p.Width > d.SheetWidth, "%+v", p)
			continue
		}
		s := l.Sheets[p.Sheet]
		require.LessOrEqual(t, p.Length(), s.Length+close, "%+v of %+v", p, s)
		require.LessOrEqual(t, p.Width, s.Width+close, "%+v of %+v", p, s)
		used := p.Width
		if i < len(l.Bed) {
			// The rest of a wide sheet is cut off its sides.
			used = min(used, l.Across(h, p.Aft, p.Bow))
		}
		taken[p.Sheet] += used * p.Length()
	}
	for i, s := range l.Sheets {
		require.LessOrEqual(t, taken[i], s.Width*s.Length+close, "sheet %d", i)
	}
	for _, side := range [][]bark.Laid{l.Port, l.Star} {
		for _, b := range l.Beside {
			for i := range 9 {
				x := b.Aft + (b.Bow-b.Aft)*float64(i)/8
				require.True(t, covered(side, x), "%v in bare beside %v", x/inch, b.Piece)
			}
		}
	}
	if l.Gap >= bark.Hand-close {
		for _, b := range l.Butts {
			for _, g := range l.Gores {
				if g.State == bark.GoreCut {
					require.GreaterOrEqual(t, math.Abs(b.Along-g.Along), bark.Hand-close)
				}
			}
			for _, j := range l.Joints {
				require.GreaterOrEqual(t, math.Abs(b.Along-j.Along), bark.Hand-close)
			}
		}
	}
}

func covered(side []bark.Laid, x float64) bool {
	for _, p := range side {
		if x >= p.Aft-1e-9 && x <= p.Bow+1e-9 {
			return true
		}
	}
	return false
}

// More sheets or larger ones never make the verdict worse.
func TestMoreBarkIsNeverWorse(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 8))
	h := hull.New(design.Default())
	worse := 0
	for range 150 {
		list := randomList(r)
		before := bark.PlanWith(h, list)
		more := append([]bark.Sheet{}, list...)
		if len(more) < design.MostSheets && r.IntN(2) == 0 {
			more = append(more, randomList(r)[0])
		} else {
			i := r.IntN(len(more))
			more[i].Width += r.Float64() * 10 * inch
			more[i].Length += r.Float64() * 40 * inch
		}
		after := bark.PlanWith(h, more)
		if after.Verdict() > before.Verdict() {
			worse++
			t.Logf("%v then %v: %v, %v", list, more, before.Verdict(), after.Verdict())
		}
	}
	assert.Zero(t, worse)
}

// A tree for a sheet of 40 in by 10 ft whose middle is to be full width, 2 in allowed:
// 42 in round it at 8 ft, where the trunk is 0.92 of what it is at breast height (Li and
// others 2012): 45.65 in, rounded up 46. The whole length: 0.855 at 13 ft, 49.1, 49 1/2.
func TestStandingTree(t *testing.T) {
	d := design.Default()
	s := bark.Sheet{Width: 40 * inch, Length: 120 * inch}
	middle := bark.NewStanding(s, d)
	assert.InDelta(t, 46, middle.Girth/inch, 1e-9)
	assert.InDelta(t, 15, middle.Diameter/inch, 1e-9, "14.53 rounded up")
	assert.InDelta(t, 8, middle.At/units.Foot, 1e-9)
	d.TreeRule = design.WideAllAlong
	assert.InDelta(t, 49.5, bark.NewStanding(s, d).Girth/inch, 1e-9)
	assert.Less(t, middle.Low, middle.Girth)
	assert.Less(t, middle.Girth, middle.High)
}

// A side panel of a boat built on its gunwales lies in a bow when it is flat, since its edges differ
// in length. The strip cut for it is straight, and as broad as the bow is high, the same fore and aft:
// from the lowest point of the panel to its highest across the line of its ends.
func TestStripsHoldBowedPanels(t *testing.T) {
	d := check.With(t, "length", 200*inch, "overhang", 13*inch, "beam", 27.5*inch, "depth", 10.625*inch,
		"gunwaleEndHeight", 16.5*inch, "endHeight", 18.4*inch, "headSetback", 0.0)
	d.BuiltOn = design.OnGunwales
	d = design.Follow(d)
	require.Empty(t, design.Validate(d))
	h := hull.New(d)
	l := bark.Plan(h)
	f := bark.Flatten(h, l, bark.ForPicture, nil, nil)
	require.Equal(t, geom.Converged, f.State)
	laid := l.OnFlat(h, f)
	require.Len(t, laid.Port, 1)
	low, high := math.Inf(1), math.Inf(-1)
	for _, q := range f.Panels[0].Points {
		low, high = min(low, q.Y), max(high, q.Y)
	}
	whole := high - low + d.GunwaleTurn + d.SeamLap
	assert.GreaterOrEqual(t, laid.Port[0].Width, whole-1e-6)
	assert.Greater(t, whole, l.Port[0].Width, "or the bow needs no allowance here")
	assert.Equal(t, laid.Port[0].Width, laid.Star[0].Width)
}
