package pattern_test

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// nearest is how far a point lies from a line, mm.
func nearest(q geom.Vec2, l pattern.Line) float64 {
	best := math.Inf(1)
	for i := 1; i < len(l.Points); i++ {
		a, b := l.Points[i-1], l.Points[i]
		u := b.Sub(a)
		s := max(0, min(1, q.Sub(a).Dot(u)/u.Dot(u)))
		best = min(best, q.Sub(a.Lerp(b, s)).Len())
	}
	return best
}

// The stem's outer face is as long as its profile less the bark times what it turns
// (parallel curves); inner and outer stand the stem's depth apart; so do its
// laminations, in equal parts.
func TestStemPattern(t *testing.T) {
	c := evaluated(design.Default())
	d, s := c.Design, c.Frame.Stem
	p := pattern.Make(c, "stem", pattern.Options{System: units.Imperial16})[0]
	outer, inner := p.Lines[0], p.Lines[1]
	want := s.Curve - d.BarkThickness*s.Profile.Turning()
	assert.InDelta(t, want*1000, runOf([]pattern.Line{outer}), 0.1, "drawn in straight pieces")
	for _, q := range inner.Points[2 : len(inner.Points)-2] {
		assert.InDelta(t, d.StemDepth*1000, nearest(q, outer), 0.02, "chords of 4 mm in arcs of 100 mm and more")
	}
	marks := 0
	for _, l := range p.Lines {
		if l.Style == pattern.Mark && len(l.Points) > 100 {
			marks++
			middle := l.Points[len(l.Points)/2]
			layers := nearest(middle, outer) / (c.Frame.Stem.Lamination * 1000)
			assert.InDelta(t, math.Round(layers), layers, 0.01)
		}
	}
	assert.Equal(t, d.StemLaminations-1, marks)

	// The form's face is the inner face of the laminations, a straight for the solid and
	// 50 mm past the head.
	form := pattern.Make(c, "form", pattern.Options{System: units.Imperial16})[0]
	laminated := pattern.Line{Points: inner.Points[s.Point:]}
	assert.InDelta(t, runOf([]pattern.Line{laminated})+s.Solid*1000+50, runOf(form.Lines[:1]), 0.1)
	assert.Contains(t, form.Note, "test first")
}

// The form of a trial piece whose radius grew by a fifth turns through 1.2 times the
// angle in the same length; let go, it opens onto the stem's face again.
func TestFormIsOverbent(t *testing.T) {
	face := func(opening float64) pattern.Line {
		d := design.Default()
		d.StemOpening = opening
		p := pattern.Make(evaluated(d), "form", pattern.Options{System: units.Imperial16})[0]
		if opening > 0 {
			assert.Contains(t, p.Note, "20")
			assert.NotContains(t, p.Note, "test first")
		}
		return p.Lines[0]
	}
	plain, tight := face(0), face(0.2)
	assert.InDelta(t, runOf([]pattern.Line{plain}), runOf([]pattern.Line{tight}), 1e-9)
	turned := func(l pattern.Line) float64 { return geom.NewPolyline(l.Points).Turning() }
	assert.InEpsilon(t, 1.2*turned(plain), turned(tight), 1e-9)
}

// A stem that cannot bend has an outer face, a word for it and no form.
func TestStemPatternThatWillNotFit(t *testing.T) {
	d := design.Default()
	d.StemDepth = 1
	c := evaluated(d)
	p := pattern.Make(c, "stem", pattern.Options{System: units.Imperial16})[0]
	assert.Len(t, p.Lines, 1)
	assert.Contains(t, p.Note, "will not fit")
	assert.Empty(t, pattern.Make(c, "form", pattern.Options{System: units.Imperial16}))
}

func TestHeadboardPattern(t *testing.T) {
	c := evaluated(design.Default())
	p := pattern.Make(c, "headboard", pattern.Options{System: units.Imperial16})[0]
	b := c.Frame.Headboard
	low, high := math.Inf(1), math.Inf(-1)
	for _, l := range p.Lines {
		for _, q := range l.Points {
			low, high = min(low, q.X), max(high, q.X)
		}
	}
	assert.InDelta(t, b.Width*1000, high-low, 1e-9)
	assert.InDelta(t, b.Sprung*1000, p.Size.Y, 1e-9, "as long as it is when sprung")
}

// The frame's strips are as long as its plan together, leave no part of it out and
// keep to one row of sheets each.
func TestFrameStrips(t *testing.T) {
	for _, broad := range []float64{25, 52} {
		d := design.Default()
		for key, inches := range map[string]float64{"beam": broad / 0.76, "frameWidth": broad} {
			p, _ := design.Lookup(key)
			d = p.Set(d, inches*units.Inch)
		}
		c := evaluated(d)
		end := c.Design.FrameLength / 2
		sum, last := 0.0, geom.Vec2{Y: c.Hull.FrameHalfBreadth(0)}
		for i := 1; i <= 20000; i++ {
			x := end * float64(i) / 20000
			q := geom.Vec2{X: x, Y: c.Hull.FrameHalfBreadth(x)}
			sum += q.Sub(last).Len()
			last = q
		}
		got := 0.0
		strips := pattern.Make(c, "frame", pattern.Options{System: units.Imperial16})
		assert.Equal(t, broad > 40, len(strips) > 1)
		for _, s := range strips {
			got += runOf(s.Lines[:1])
			assert.Equal(t, 1, s.Tiles(pattern.Paper)[0].Cols)
		}
		assert.InDelta(t, sum*1000, got, 0.01, "chords of 8 mm on a curve of a metre and more fall short by 0.005")
	}
}

// A gore's two edges are as far apart at the edge as it opens, and as long as on
// the flat bark.
func TestGorePatterns(t *testing.T) {
	c := evaluated(design.Default())
	all := pattern.Make(c, "gores", pattern.Options{System: units.Imperial16})
	var cut []bark.FlatGore
	for _, g := range c.Skin.Flat.Gores {
		if g.X >= 0 && g.State == bark.GoreCut {
			cut = append(cut, g)
		}
	}
	require.Len(t, all, len(cut))
	require.NotEmpty(t, cut)
	for i, p := range all {
		after, fore := p.Lines[0], p.Lines[1]
		assert.InDelta(t, cut[i].AfterLength*1000, runOf(p.Lines[:1]), 1e-9)
		assert.InDelta(t, cut[i].ForeLength*1000, runOf(p.Lines[1:2]), 1e-9)
		a, f := after.Points[len(after.Points)-1], fore.Points[len(fore.Points)-1]
		assert.Greater(t, f.X, a.X, "fore edge to the right")
		assert.InDelta(t, cut[i].Width*1000, f.X-a.X, 1e-9)
	}
	c.Skin = nil
	assert.Empty(t, pattern.Make(c, "gores", pattern.Options{System: units.Imperial16}), "no widths, no gores")
}

// Half a rib's outer face is half its cut length.
func TestSectionAndTipPatterns(t *testing.T) {
	c := evaluated(design.Default())
	sections := pattern.Make(c, "sections", pattern.Options{System: units.Imperial16})
	require.Len(t, sections, 4, "the middle, two thwarts and the end")
	for _, p := range sections {
		number := strings.TrimPrefix(p.Key, "section-")
		for _, r := range c.Frame.Ribs {
			if units.Count.Format(float64(r.Number), units.Metric) == number {
				// Offset points and chords: a tenth of a millimetre in 120 pieces.
				assert.InDelta(t, r.Length/2*1000, runOf(p.Lines[:1]), 0.5, p.Name)
			}
		}
	}
	tip := pattern.Make(c, "tip", pattern.Options{System: units.Imperial16})[0]
	outline := tip.Lines[0].Points
	assert.InDelta(t, c.Design.RibTipWidth*1000, outline[3].X-outline[2].X, 1e-9)
	assert.InDelta(t, c.Frame.Ribs[0].Width*1000, outline[5].X-outline[0].X, 1e-9)
	assert.InDelta(t, c.Frame.Ribs[0].Length*500, outline[0].Y-outline[2].Y, 1e-9)
	// Seven eighths as wide where the taper begins (Adney and Chapelle 1964, p. 90: 2 in
	// and 1 3/4 in), 3 in short of the tip.
	assert.InDelta(t, c.Frame.Ribs[0].Width*875, outline[4].X-outline[1].X, 1e-9)
	assert.InDelta(t, 76.2, outline[1].Y-outline[2].Y, 1e-9)
}

// Every rib's and every hole's mark stands at its own length from the middle:
// nothing is added up.
func TestStoryStick(t *testing.T) {
	d := design.Default()
	for _, ribs := range []float64{44, 45} {
		p, _ := design.Lookup("ribs")
		c := evaluated(p.Set(d, ribs))
		stick := pattern.Make(c, "stick", pattern.Options{System: units.Imperial16})[0]
		top := stick.Lines[0].Points[1].Y
		at := map[int]bool{} // thousandths of a millimetre
		for _, l := range stick.Lines[1:] {
			at[int(math.Round((l.Points[0].Y-top)*1000))] = true
		}
		for _, r := range c.Frame.Ribs {
			if !r.Alone() {
				assert.True(t, at[int(math.Round(r.Run*1e6))], "rib %d", r.Number)
			}
		}
		for _, g := range c.Frame.Lacing.Groups {
			for _, hole := range g.Holes {
				if hole >= 0 {
					assert.True(t, at[int(math.Round(hole*1e6))], "hole at %v", hole)
				}
			}
		}
		assert.True(t, at[int(math.Round(c.Frame.Gunwales.Run*1e6))])
	}
}
