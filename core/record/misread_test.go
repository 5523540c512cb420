package record

import (
	"fmt"
	"math/rand"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/units"
)

// Lines that can be read in two ways are refused with both, and what looks like another
// measurement's name is none.
func TestTwoReadingsAreRefused(t *testing.T) {
	for _, c := range []struct {
		text string
		both []string
	}{
		{"stations from the end\t0\t24\t48\nrail height\t13\t14", []string{"first station", "station of its own"}},
		{"stations from the end\t0\t24\t48\nrail height\t13\t14\t15\t16", []string{"a value", "part of the one before"}},
		{"stations;0;24;5;48", []string{"may be one", "part of the number before it, 24"}},
		{"stations\t0\t24\tx\nrail height\t13\t14", []string{`"x"`, "stations over this one"}},
		{"Length overall: 4,980 mm", []string{"4980", "4.980"}},
		{`Length overall,"4,980"`, []string{"4980", "4.980"}},
		{"Length overall, 4,980 mm", []string{"4,980", "4 and 980"}},
		{"Depth to inwale, 12,5", []string{"12,5", "12 and 5"}},
		{"Rail height, 13,5", []string{"13,5", "13 and 5"}},
		{"Beam inside the gunwales, 83,5 cm", []string{"83,5", "83 and 5"}},
		{"Depth to inwale,12,5", []string{`"12"`, `1' 0 1/2"`}},
		{"Length overall,4,980 mm", []string{`"4"`, `16' 4 1/16"`}},
		{"Length overall;16;4", []string{`"16"`, `16' 4"`}},
		{"Length overall\t16 ft\t4", []string{`"16 ft"`, `16' 4"`}},
		{"Depth to inwale\t12\t±1\t5", []string{`"5"`, "part of a number"}},
		{"Rail height\t1 ft\t2 in", []string{"2 in", "1 ft 2 in"}},
		{"Half beam inside the gunwales\t16", []string{"Beam inside the gunwales", "half"}},
		{"Beam inside the gunwales (max)\t33", []string{"inside", "greatest breadth"}},
		{"Maximum beam\t33", []string{"inside", "greatest breadth"}},
		{"Not the length overall\t180", []string{"Length overall", "not"}},
		{"Length of paddle overall\t60", []string{"Length overall", "paddle"}},
		{"Headboard height\t18", []string{"Headboard position", "height"}},
		{"Rail height at 3\t14\t15", []string{"station in a cell of its own"}},
		{"beam 35", []string{"inside or outside"}},
		{"first thwart 35", []string{"position or its clear length"}},
		{"rail height 24 13", []string{"Say where"}},
		{"clear length at end thwart 1 2 1/2", []string{`"clear length at end thwart: 1 2 1/2"`,
			`"clear length at end thwart 1: 2 1/2"`, "colon or comma"}},
		{"Boat;Length overall;Depth\nHeron;4,980;mm;12", []string{"4 values under 3 names"}},
	} {
		_, data, refused := Read(c.text, 0, units.Imperial16)
		assert.Empty(t, data, "%q", c.text)
		why := ""
		for _, r := range refused {
			why += r.Why + "\n"
		}
		for _, reading := range c.both {
			assert.Contains(t, why, reading, "%q", c.text)
		}
	}
}

// What has one reading is read, however it is spelled.
func TestOneReadingIsRead(t *testing.T) {
	for text, want := range map[string]float64{
		"Beam inside the gunwales: 32,5":              32.5 * inch,
		"Beam inside the gunwales  32,5":              32.5 * inch,
		"Length overall: 16 ft, 4 in":                 196 * inch,
		"Length overall, 16 ft, 4 in":                 196 * inch,
		"Length overall\t16 ft\t4 in":                 196 * inch,
		"Length overall  16'  4\"":                    196 * inch,
		`LOA over gunwales,"14' 6"""`:                 174 * inch,
		"Length overall: 4 980 mm":                    4.980,
		"Length overall\t4\u202f980,5 mm":             4.9805,
		"Depth to inwale (mm)\t317,5\tlocked":         0.3175,
		"depth_amidships_mm;318":                      0.318,
		"First thwart, from middle: 36, lettered":     36 * inch,
		"Depth to inwale: 12 1/2, locked, off a card": 12.5 * inch,
		"Depth in the middle\t12":                     12 * inch,
	} {
		_, data, refused := Read(text, 0, units.Imperial16)
		assert.Empty(t, refused, text)
		if assert.Len(t, data, 1, text) {
			assert.InDelta(t, want, data[0].Value, 1e-9, text)
		}
	}
	_, data, _ := Read("stations from the end\t0\t24\t48\nrail height\t13\t14\t", 0, units.Imperial16)
	require.Len(t, data, 2, "an empty cell is a gap")
	assert.Equal(t, Place{From: FromEnd}, data[0].At)
	for _, words := range []string{"at gunwale end", "at the ends", "at the end of the gunwales"} {
		_, data, refused := Read("sheer height "+words+"\t19", 0, units.Imperial16)
		require.Empty(t, refused)
		assert.Equal(t, Place{From: FromGunwaleEnd}, data[0].At, words)
	}
}

// A text past the most that is read ends at the end of a line.
func TestNoTornLineIsRead(t *testing.T) {
	// The beam's line ends where reading does, and then farther and farther past it.
	beam := "Beam inside the gunwales\t33\u00a01/2\n"
	text := "#" + strings.Repeat("x", longestPaste-len(beam)-2) + "\n" + beam
	require.Len(t, text, longestPaste)
	for n := range len(beam) {
		_, data, refused := Read(strings.Repeat(" ", n)+text, 0, units.Imperial16)
		if n > 0 {
			assert.Empty(t, data)
			require.NotEmpty(t, refused)
			continue
		}
		require.Len(t, data, 1, "%v", refused)
		assert.InDelta(t, 33.5*inch, data[0].Value, 1e-9)
	}
}

// Each kind's own name is read as that kind.
func TestKindsReadTheirOwnNames(t *testing.T) {
	for _, k := range Kinds() {
		l := readLabel(k.String())
		assert.True(t, l.known, "%v: %s", k, l.unsure)
		assert.Equal(t, k, l.kind)
	}
}

// spellings write a length, given in inches to the eighth, in ways people do; the last
// ones in millimetres. Marks between thousands and before decimals are those of the
// Unicode Common Locale Data Repository for en, de, fr, sv and de-CH.
var spellings = []func(inches float64) string{
	func(v float64) string { return units.Length.Format(v*inch, units.Imperial8) },
	func(v float64) string {
		return strings.ReplaceAll(units.Length.Format(v*inch, units.Imperial8), "' ", "'-")
	},
	func(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) },
	func(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) + " in" },
	func(v float64) string { return strings.Replace(strconv.FormatFloat(v, 'f', -1, 64), ".", ",", 1) },
	func(v float64) string { return fmt.Sprintf("%d ft, %v in", int(v)/12, v-float64(int(v)/12*12)) },
	func(v float64) string { return fmt.Sprintf("%d ft %v", int(v)/12, v-float64(int(v)/12*12)) },
	inMillimetres("", "."), inMillimetres(",", "."), inMillimetres(".", ","), inMillimetres(" ", ","),
	inMillimetres("\u202f", ","), inMillimetres("\u00a0", ","), inMillimetres("’", "."), inMillimetres("'", "."),
}

func inMillimetres(group, point string) func(float64) string {
	return func(v float64) string {
		text := strings.TrimRight(strings.TrimRight(strconv.FormatFloat(v*25.4, 'f', 4, 64), "0"), ".")
		whole, part, found := strings.Cut(text, ".")
		if len(whole) > 3 {
			whole = whole[:len(whole)-3] + group + whole[len(whole)-3:]
		}
		if found {
			whole += point + part
		}
		return whole + " mm"
	}
}

// layouts put a name, stations where there are any, a value and a remark on a line.
var layouts = []struct {
	part func(cells ...string) string
	// quote tells that cells are quoted where they hold a separator or a quote, as RFC
	// 4180 has it; other layouts are typed by hand.
	quote bool
}{
	{part: func(c ...string) string { return strings.Join(c, "\t") }, quote: true},
	{part: func(c ...string) string { return strings.Join(c, ";") }, quote: true},
	{part: func(c ...string) string { return strings.Join(c, ",") }, quote: true},
	{part: func(c ...string) string { return strings.Join(c, "\t") }},
	{part: func(c ...string) string { return strings.Join(c, "; ") }},
	{part: func(c ...string) string { return strings.Join(c, ", ") }},
	{part: func(c ...string) string { return strings.Join(c, ",") }},
	{part: func(c ...string) string { return strings.Join(c, "   ") }},
	{part: func(c ...string) string { return c[0] + ": " + strings.Join(c[1:], ", ") }},
}

// A measurement written in any locale, spelling and layout is read as it was meant, or
// refused: never as another.
func TestEverySpellingIsReadRightOrRefused(t *testing.T) {
	r := rand.New(rand.NewSource(9))
	counts := map[bool]int{}
	names := []struct {
		name string
		kind Kind
		at   bool
	}{
		{"Length overall", LengthOverall, false}, {"beam inside the gunwales", BeamInside, false},
		{"Depth to inwale", DepthInwale, false}, {"first thwart clear", ClearWidth, false},
		{"First thwart from middle", ThwartPosition, false}, {"Rail height from the middle", RailHeight, true},
	}
	for range 4000 {
		n, l := names[r.Intn(len(names))], layouts[r.Intn(len(layouts))]
		spell := spellings[r.Intn(len(spellings))]
		v, x := float64(1+r.Intn(8*240))/8, float64(r.Intn(8*90))/8
		cells := []string{n.name}
		if n.at {
			cells = append(cells, spell(x))
		}
		cells = append(cells, spell(v))
		if r.Intn(3) == 0 {
			cells = append(cells, []string{"±1/4", "locked", "off a drawing", "scaled"}[r.Intn(4)])
		}
		if l.quote {
			for i, c := range cells {
				if strings.ContainsAny(c, ",;\t\"") {
					cells[i] = `"` + strings.ReplaceAll(c, `"`, `""`) + `"`
				}
			}
		}
		line := l.part(cells...)
		_, data, refused := Read(line, 0, units.Imperial16)
		counts[len(data) == 1]++
		require.Equal(t, 1, len(data)+len(refused), line)
		if len(data) == 0 {
			assert.Contains(t, refused[0].Why, "may", line)
			continue
		}
		d := data[0]
		assert.Equal(t, n.kind, d.Kind, line)
		assert.InDelta(t, v*inch, d.Value, 1e-9, line)
		if n.at {
			assert.InDelta(t, x*inch, d.At.Distance, 1e-9, line)
		}
		if t.Failed() {
			return
		}
	}
	assert.Less(t, counts[false], counts[true]/2)
}
