package design_test

import (
	"fmt"
	"math"
	"net/url"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// mostLine is the length that a line of text may have to pass through mail and chat
// unbroken, in characters: common practice, no published source.
const mostLine = 500

func line(t testing.TB, d design.Design) string {
	t.Helper()
	text, err := design.Line(d)
	require.NoError(t, err)
	return text
}

func TestLineReads(t *testing.T) {
	const in = units.Inch
	d := check.With(t, "length", 180*in, "beam", 31.5*in, "depth", 0.305, "frameWidth", 24*in, "paddlerMass", 80.0,
		"cargoPosition", -12*in)
	d.Name = "Short & low_1"
	assert.Equal(t, "barkwright3_L180_B31.5_D305m_Fw24_Pm80m_Cp-12_nShort%20%26%20low%5F1", line(t, d))
	assert.Equal(t, "barkwright3", line(t, design.Default()))
}

// A line gives back the same boat to a nanometre, and one whose numbers stand on
// steps the same line. What is solved from such numbers comes back a few times as far
// off.
func TestLineRoundTrip(t *testing.T) {
	const random = 80
	for i, d := range append(check.SomeDesigns(random, 2), design.Starting()...) {
		text := line(t, d)
		back, _, err := design.ReadLine(text)
		require.NoError(t, err)
		require.Equal(t, d.Name, back.Name)
		require.Equal(t, d.Own, back.Own)
		for _, p := range design.Params() {
			within := 1e-9
			if p.Key == "turnWidth" && !p.Owned(d) {
				within = 1e-8
			}
			require.InDelta(t, p.Get(&d), p.Get(&back), within*max(1, math.Abs(p.Get(&d))), p.Key)
		}
		if i >= random {
			require.Equal(t, text, line(t, back))
		}

		// As an address carries it.
		browser, _, err := design.ReadLine(" " + inAddress(text) + "\n")
		require.NoError(t, err)
		require.Equal(t, back, browser)
	}
}

// inAddress writes what is beyond ASCII as a browser does in an address.
func inAddress(text string) string {
	var b strings.Builder
	for _, c := range text {
		if c < utf8.RuneSelf {
			b.WriteRune(c)
		} else {
			b.WriteString(url.PathEscape(string(c)))
		}
	}
	return b.String()
}

// Sixty numbers changed, each on a step of its slider, stay under what mail and chat
// let through.
func TestLineLength(t *testing.T) {
	for _, d := range design.Starting() {
		assert.Less(t, utf8.RuneCountInString(line(t, d)), mostLine/2, d.Name)
	}
	for _, system := range systems {
		d := design.Default()
		for i, p := range design.Params() {
			if i%2 == 0 && i < 120 {
				d = p.Set(d, p.Stepped(p.Default, 3, system))
			}
		}
		assert.Less(t, utf8.RuneCountInString(line(t, d)), mostLine)
	}
}

func TestLineCodes(t *testing.T) {
	seen := map[string]bool{}
	for _, p := range design.Params() {
		v := p.Stepped(p.Default, 1, units.Metric)
		if v == p.Default {
			v = p.Stepped(p.Default, -1, units.Metric)
		}
		text := line(t, p.Set(design.Default(), v))
		found := regexp.MustCompile("^barkwright3_([A-Z][A-Za-z]{0,2})[-.0-9]+m?$").FindStringSubmatch(text)
		require.NotNil(t, found, "%s has no code of its own in linecodes.go: the line reads %s", p.Key, text)
		code := found[1]
		require.False(t, seen[code], "%s of %s is used twice", code, p.Key)
		seen[code] = true
		back, _, err := design.ReadLine(text)
		require.NoError(t, err)
		require.InDelta(t, v, p.Get(&back), 1e-9*max(1, math.Abs(v)), p.Key)
	}
}

func TestLineRefusals(t *testing.T) {
	rows := []struct{ text, says string }{
		{"", "starts with barkwright3"},
		{"hello", "starts with barkwright3"},
		{"barkwright", "starts with barkwright3"},
		{"barkwright4_L180", "of version 4"},
		{"barkwright3_Q180", `"Q", which no design has`},
		{"barkwright3_L180_L181", `"L" twice`},
		{"barkwright3_L", "Length overall: the line gives"},
		{"barkwright3_Lx", `"Lx", which no design has`},
		{"barkwright3_L1e999", "Length overall: the line gives"},
		{"barkwright3_L1.2.3", "Length overall: the line gives"},
		{"barkwright3_I43.5", "Ribs: the line gives"},
		{"barkwright3_I99999999999", "Ribs: the line gives"},
		{"barkwright3_n%zz", "name in the line is damaged"},
		{"barkwright3_n%ff", "name in the line is damaged"},
		{"barkwright3_nA_nB", `"n" twice`},
		{"barkwright3__L180", `"", which no design has`},
		{"barkwright3_n" + strings.Repeat("a", design.MaxLine), "longer than any boat's"},
	}
	for _, row := range rows {
		d, _, err := design.ReadLine(row.text)
		require.ErrorContains(t, err, row.says, row.text)
		assert.Zero(t, d)
		assert.Less(t, len(err.Error()), 200)
	}
	far, _, err := design.ReadLine("barkwright3_L900")
	require.NoError(t, err)
	assert.Contains(t, keys(design.Validate(far)), "length")
}

// Lines of version 1 are read with its own defaults: what they leave out stood at those,
// what followed then follows today's rules, what was set stays set; what moved is listed.
func TestLinesOfVersion1(t *testing.T) {
	const in = units.Inch
	d, moved, err := design.ReadLine("barkwright1_L180_Fw24")
	require.NoError(t, err)
	assert.InDelta(t, 24, d.FrameWidth/in, 1e-9)
	assert.InDelta(t, 0.72, d.Bilge, 1e-12)
	assert.InDelta(t, 20, d.HeelLength/in, 1e-9)
	assert.InDelta(t, 6, d.StemSolid/in, 1e-9)
	assert.Equal(t, []string{"turnWidth"}, movedKeys(moved))
	assert.InDelta(t, 24, moved[0].Was/in, 1e-9, "the turn line stood at the frame")
	assert.InDelta(t, d.TurnWidth, moved[0].Now, 1e-12)
	assert.Empty(t, design.Validate(d))

	d, moved, err = design.ReadLine("barkwright1_Tb0.5_T25.5")
	require.NoError(t, err)
	assert.InDelta(t, 25.5, d.TurnWidth/in, 1e-9, "set, and stays set")
	assert.InDelta(t, 27, d.FrameWidth/in, 1e-9)
	assert.InDelta(t, 0.56, d.Bilge, 1e-12, "the nearest that is taken")
	assert.Equal(t, []string{"frameWidth", "bilge"}, movedKeys(moved))
	assert.InDelta(t, 25, moved[0].Was/in, 1e-9)

	// Read once it is a boat of today, and nothing moves again.
	again, moved, err := design.ReadLine(line(t, d))
	require.NoError(t, err)
	assert.Empty(t, moved)
	assert.Equal(t, d.Own, again.Own)
	assert.InDelta(t, d.Bilge, again.Bilge, 1e-12)
	assert.InDelta(t, d.HeelLength, again.HeelLength, 1e-9)
}

// What a line of version 2 leaves out stood at that version's defaults, and nothing moves.
func TestLinesOfVersion2(t *testing.T) {
	d, moved, err := design.ReadLine("barkwright2_L180")
	require.NoError(t, err)
	assert.Empty(t, moved)
	assert.Equal(t, 3.0/8*units.Inch, d.CapThickness)
	assert.Equal(t, 1.5*units.Inch, d.SheathingLap)
	assert.Equal(t, 0.70, d.Bilge, "as today")
	again, moved, err := design.ReadLine(line(t, d))
	require.NoError(t, err)
	assert.Empty(t, moved)
	assert.InDelta(t, d.CapThickness, again.CapThickness, 1e-17, "two steps of a double")
	assert.InDelta(t, d.SheathingLap, again.SheathingLap, 1e-17, "two steps of a double")

	old, _, err := design.ReadLine("barkwright1")
	require.NoError(t, err)
	assert.Equal(t, 3.0/8*units.Inch, old.CapThickness)
	set, _, err := design.ReadLine("barkwright2_Ct0.25")
	require.NoError(t, err)
	assert.Equal(t, 0.25*units.Inch, set.CapThickness)
}

func movedKeys(moves []design.Move) []string {
	var out []string
	for _, m := range moves {
		out = append(out, m.Key)
	}
	return out
}

// Against net/url: every octet in capitals and small letters, and what is cut short or no number.
func TestNameIsUnescapedAsInAnAddress(t *testing.T) {
	texts := []string{"", "%", "%4", "a%", "%4g", "%g4", "%+1", "%_1", "%-1", "% 1", "%%41", "x%41%42y%", "é%C3%A9"}
	for c := range 256 {
		texts = append(texts, fmt.Sprintf("a%%%02Xb", c), fmt.Sprintf("%%%02x", c))
	}
	for _, text := range texts {
		want, err := url.PathUnescape(text)
		read, _, refused := design.ReadLine("barkwright2_n" + text)
		if err != nil || !utf8.ValidString(want) {
			require.ErrorContains(t, refused, "name in the line is damaged", text)
			continue
		}
		require.NoError(t, refused, text)
		require.Equal(t, want, read.Name, text)
	}
}

func FuzzReadLine(f *testing.F) {
	for _, d := range append(check.SomeDesigns(6, 3), design.Starting()...) {
		f.Add(line(f, d))
	}
	f.Add("barkwright3_L1e5_B-0_nx%41")
	f.Fuzz(func(t *testing.T, text string) {
		d, _, err := design.ReadLine(text)
		if err != nil {
			require.NotContains(t, err.Error(), "\n")
			return
		}
		design.Validate(d)
		back, _, err := design.ReadLine(line(t, d))
		require.NoError(t, err)
		require.Equal(t, d.Name, back.Name)
		require.Equal(t, d.Own, back.Own)
	})
}
