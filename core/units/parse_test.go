package units

import (
	"math"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Spellings this page promises to read; the values are arithmetic from the
// exact inch, so the tolerance is a nanometre.
var readable = []struct {
	text   string
	system System
	mm     float64
	echo   string
}{
	{`15' 3-1/2"`, Imperial16, 183.5 * 25.4, "Read as 15 ft 3 1/2 in (4661 mm)"},
	{`15'-3 1/2"`, Imperial16, 183.5 * 25.4, "Read as 15 ft 3 1/2 in (4661 mm)"},
	{`15' 3 1/2"`, Metric, 183.5 * 25.4, "Read as 4661 mm (15 ft 3 1/2 in)"},
	{`15ft 3 1/2`, Imperial16, 183.5 * 25.4, ""},
	{`15 feet 3.5 inches`, Imperial8, 183.5 * 25.4, ""},
	{`15 Ft. 3.5 In.`, Imperial8, 183.5 * 25.4, ""},
	{`15 ft, 3 in`, Imperial8, 183 * 25.4, ""},
	{`15'3.5`, Imperial16, 183.5 * 25.4, ""},
	{`15 3 1/2`, Imperial16, 183.5 * 25.4, ""},
	{`15 3 1/2`, Metric, 183.5 * 25.4, ""},
	{`15 3 1/2"`, Imperial16, 183.5 * 25.4, ""},
	{`15 3`, Imperial16, 183 * 25.4, "Read as 15 ft 3 in (4648 mm)"},
	{`183.5"`, Imperial16, 183.5 * 25.4, ""},
	{`183.5''`, Imperial16, 183.5 * 25.4, ""},
	{`4 3/8"`, Imperial16, 4.375 * 25.4, "Read as 4 3/8 in (111 mm)"},
	{`4-3/8`, Imperial16, 4.375 * 25.4, ""},
	{`3/4`, Imperial16, 19.05, "Read as 3/4 in (19 mm)"},
	{`3/4`, Metric, 19.05, ""},
	{` 3 / 4 `, Imperial16, 19.05, ""},
	{`5/4`, Imperial16, 31.75, ""},
	{`½`, Imperial16, 12.7, ""},
	{`15′ 3½″`, Imperial16, 183.5 * 25.4, ""},
	{`15’ 3 ½”`, Imperial16, 183.5 * 25.4, ""},
	{`15‘ 3⅛’’`, Imperial16, 183.125 * 25.4, ""},
	{`1⁄2 in`, Imperial16, 12.7, ""},
	{`4.6m`, Imperial16, 4600, "Read as 15 ft 1 1/8 in (4600 mm)"},
	{`4,6 m`, Imperial16, 4600, ""},
	{`460cm`, Imperial16, 4600, ""},
	{`4600 mm`, Metric, 4600, "Read as 4600 mm (15 ft 1 1/8 in)"},
	{`4 m 60 cm`, Metric, 4600, ""},
	{`0,125 m`, Metric, 125, ""},
	{`.5"`, Imperial16, 12.7, ""},
	{`15.5`, Imperial16, 15.5 * 25.4, "Read as 1 ft 3 1/2 in (394 mm)"},
	{`15.5`, Metric, 15.5, ""},
	{`5 1/2'`, Imperial16, 66 * 25.4, ""},
	{`16'`, Imperial16, 4876.8, "Read as 16 ft 0 in (4877 mm)"},
	{`0`, Imperial16, 0, "Read as 0 in (0 mm)"},
	{`-0`, Imperial16, 0, ""},
	{`1/3"`, Imperial16, 25.4 / 3, ""},
	{`  15   '  3  "  `, Imperial16, 183 * 25.4, ""},
	{`4 900 mm`, Imperial16, 4900, ""},
	{"4\u00a0900", Metric, 4900, "Read as 4900 mm (16 ft 0 15/16 in)"},
	{"4\u202f900,5", Metric, 4900.5, ""},
	{`4'900 mm`, Imperial16, 4900, ""},
	{`4’900.5`, Metric, 4900.5, ""},
	{`1 500 1/2`, Imperial16, 1500.5 * 25.4, ""},
	{`4.980 m`, Metric, 4980, ""},
	{`33.125`, Imperial16, 33.125 * 25.4, ""},
	{`1,234.5 mm`, Metric, 1234.5, ""},
	{`1.234,5 mm`, Metric, 1234.5, ""},
	{`1,234,600 mm`, Imperial16, 1234600, ""},
	{`5100,125 mm`, Metric, 5100.125, ""},
	{`１５’　３　１／２`, Imperial16, 183.5 * 25.4, "Read as 15 ft 3 1/2 in (4661 mm)"},
	{`１８．５ｃｍ`, Metric, 185, ""},
}

// Entries refused, each with a word of the reason and the text offered.
var refused = []struct {
	text          string
	system        System
	reason, offer string
}{
	{``, Imperial16, "Nothing", `15' 3 1/2"`},
	{`  `, Metric, "Nothing", `4661 mm`},
	{`-`, Metric, "Nothing", `4661 mm`},
	{`-15"`, Imperial16, "less than zero", `1' 3"`},
	{`- -01,000`, Metric, "one minus", ""},
	{`−4.6 m`, Metric, "less than zero", `4600 mm`},
	{`3/0`, Imperial16, "zero under", ""},
	{`3 1/0"`, Imperial16, "zero under", ""},
	{`15' 14"`, Imperial16, "14 inches make a foot or more", `16' 2"`},
	{`15' 14"`, Metric, "14 inches make a foot or more", `16' 2"`},
	{`15' 12"`, Imperial8, "12 inches", `16' 0"`},
	{`1 m 120 cm`, Imperial8, "one or more of the larger", `2200 mm`},
	{`15 ft 3 cm`, Imperial16, "do not mix", ""},
	{`3" 15'`, Imperial16, "larger unit comes first", ""},
	{`3" 4"`, Imperial16, "each unit once", ""},
	{`15.5' 3"`, Imperial16, "Only the last", `15' 9"`},
	{`15' 3" 4`, Imperial16, "needs its unit", ""},
	{`1 2 3`, Imperial16, "needs its unit", ""},
	{`5 m 30`, Metric, "needs its unit", ""},
	{`15 3`, Metric, "need their units", ""},
	{`15-3`, Imperial16, "hyphen", ""},
	{`3--1/2`, Imperial16, "hyphen", ""},
	{`3 5/4"`, Imperial16, "not less than one", ""},
	{`3.5 1/2"`, Imperial16, "both decimals and a fraction", ""},
	{`1.5/2`, Imperial16, "whole numbers", ""},
	{`1/`, Imperial16, "missing", ""},
	{`ft`, Imperial16, "missing", ""},
	{`1.2.3`, Imperial16, "not one number", ""},
	{`4,600 mm`, Imperial16, "may mean 4600 or 4.600", "4600 mm"},
	{`4.600`, Metric, "may mean 4600 or 4.6", "4600"},
	{`1.500 cm`, Imperial16, "may mean 1500 or 1.5", "1500 cm"},
	{`1,23,600 mm`, Imperial16, "not one number", ""},
	{`1.234,600,5 mm`, Imperial16, "not one number", ""},
	{`1 234,600,500 mm`, Imperial16, "needs its unit", ""},
	{`1'000`, Imperial16, "1'000 may mean 1000 or 1 ft 0 in", "1000"},
	{`1’000`, Metric, "1'000 may mean 1000 or 1 ft 0 in", "1000"},
	{`1 011`, Imperial16, "1 011 may mean 1011 or 1 ft 11 in", "1011"},
	{`15-6`, Imperial16, "15-6 may mean feet and inches", `15' 6"`},
	{`15-6 1/2"`, Metric, "hyphen", `15' 6 1/2"`},
	{`15-16`, Imperial16, "hyphen", ""},
	{`3 furlongs`, Imperial16, "not a unit of length", ""},
	{`3 kg`, Imperial16, "not a unit of length", ""},
	{`1e3`, Metric, "not a unit", ""},
	{`3 #`, Imperial16, "not understood", ""},
	{`(3")`, Imperial16, "not understood", ""},
	{`99999999999999999999'`, Imperial16, "too large", ""},
	{`1000001 m`, Metric, "too large", ""},
	{strings.Repeat("9", 64), Imperial16, "too large", ""},
	{strings.Repeat("1", 65), Imperial16, "too long", ""},
	{"3\xff", Imperial16, "cannot be read", ""},
}

func TestReadsEverySpelling(t *testing.T) {
	for _, row := range readable {
		metres, echo, err := Length.Parse(row.text, row.system)
		require.NoError(t, err, row.text)
		assert.InDelta(t, row.mm/1000, metres, 1e-9, row.text)
		assert.True(t, strings.HasPrefix(echo, "Read as "), row.text)
		if row.echo != "" {
			assert.Equal(t, row.echo, echo, row.text)
		}
	}
}

func TestRefusesWithAReason(t *testing.T) {
	for _, row := range refused {
		_, echo, err := Length.Parse(row.text, row.system)
		var refusal *ParseError
		require.ErrorAs(t, err, &refusal, row.text)
		assert.Empty(t, echo)
		assert.Contains(t, refusal.Message, row.reason, row.text)
		checkRefusal(t, Length, refusal, row.system)
		if row.offer != "" {
			assert.Equal(t, row.offer, refusal.Suggest, row.text)
		}
	}
	_, _, err := Length.Parse(`15' 14"`, Imperial16)
	assert.EqualError(t, err, `14 inches make a foot or more. Try 16' 2".`)
}

// checkRefusal holds every refusal to a full sentence and an offer that reads.
func checkRefusal(t *testing.T, k Kind, refusal *ParseError, s System) {
	t.Helper()
	assert.True(t, strings.HasSuffix(refusal.Message, "."), refusal.Message)
	assert.True(t, strings.HasSuffix(refusal.Error(), "."), refusal.Error())
	assert.True(t, utf8.ValidString(refusal.Error()))
	_, _, err := k.Parse(refusal.Suggest, s)
	assert.NoError(t, err, "offer %q for %q", refusal.Suggest, refusal.Message)
}

func TestParseKinds(t *testing.T) {
	// Values by the factors tested in TestConstants, to ten digits; the tolerance
	// is a unit of the tenth.
	rows := []struct {
		kind   Kind
		text   string
		system System
		v      float64
		echo   string
	}{
		{Mass, "185 lb", Metric, 83.91458845, "Read as 83.9 kg (185 lb)"},
		{Mass, "185", Imperial16, 83.91458845, "Read as 185 lb (83.9 kg)"},
		{Mass, "84 kg", Imperial8, 84, "Read as 185.2 lb (84 kg)"},
		{Mass, "8 oz", Imperial8, 0.226796185, ""},
		{Percent, "12 %", Metric, 0.12, "Read as 12 %"},
		{Percent, "12", Metric, 0.12, ""},
		{Strain, "0.55 %", Metric, 0.0055, "Read as 0.55 %"},
		{Temperature, "15 C", Imperial16, 15, "Read as 59 °F (15 °C)"},
		{Temperature, "59 °F", Metric, 15, ""},
		{Temperature, "59", Imperial16, 15, ""},
		{Temperature, "-40 F", Metric, -40, "Read as −40 °C (−40 °F)"},
		{Temperature, "−4 °C", Metric, -4, ""},
		{Angle, "45°", Metric, math.Pi / 4, "Read as 45°"},
		{Angle, "-1/2 deg", Metric, -math.Pi / 360, ""},
		{Ratio, "1/3", Metric, 1.0 / 3, "Read as 0.333"},
		{Ratio, "0,72", Metric, 0.72, ""},
		{Ratio, "2 1/2", Metric, 2.5, ""},
		{Count, "52", Metric, 52, "Read as 52"},
		{Offset, `-6"`, Imperial16, -0.1524, "Read as −6 in (−152 mm)"},
		{Thickness, "0.14", Imperial16, 0.003556, "Read as 9/64 in (3.6 mm)"},
		{Thickness, "3.5", Metric, 0.0035, "Read as 3.5 mm (9/64 in)"},
		{Thickness, "1/8", Imperial16, 0.003175, "Read as 1/8 in (3.2 mm)"},
		{Thickness, "3/16", Imperial8, 0.0047625, "Read as 3/16 in (4.8 mm)"},
		{Thickness, "5/32", Metric, 0.00396875, "Read as 4 mm (5/32 in)"},
		{Mass, "1 500 kg", Imperial16, 1500, ""},
		{Mass, "1’500 kg", Imperial16, 1500, ""},
		{Mass, "80.125 kg", Metric, 80.125, ""},
		{Ratio, "1.125", Metric, 1.125, ""},
		{SmallLength, "14 1/2", Imperial16, 0.3683, "Read as 14 1/2 in (368 mm)"},
		{Run, "432", Imperial16, 131.6736, "Read as 432 ft (131.7 m)"},
		{Run, "131,7", Metric, 131.7, ""},
		{Distance, "1/2", Metric, 500, ""},
		{Distance, "10 miles", Metric, 16093.44, "Read as 16 km (10 mi)"},
		{Area, "2 sq ft", Metric, 0.18580608, ""},
		{Volume, "300 L", Metric, 0.3, ""},
		{Speed, "4 mph", Metric, 1.78816, ""},
		{Speed, "2 knots", Metric, 1.028888889, ""},
		{Force, "1 lbf", Metric, 4.448221615, ""},
		{Moment, "1 ft-lbf", Metric, 1.355817948, ""},
		{Moment, "2 N m", Metric, 2, ""},
		{Power, "75 W", Metric, 75, ""},
		{Density, "350 kg/m³", Imperial16, 350, ""},
	}
	for _, row := range rows {
		v, echo, err := row.kind.Parse(row.text, row.system)
		require.NoError(t, err, row.text)
		assert.InDelta(t, row.v, v, 1e-9*max(1, math.Abs(row.v)), row.text)
		assert.NotEmpty(t, echo)
		if row.echo != "" {
			assert.Equal(t, row.echo, echo, row.text)
		}
	}
}

func TestKindsRefuse(t *testing.T) {
	rows := []struct {
		kind          Kind
		text          string
		reason, offer string
	}{
		{Mass, "185 in", "not a unit of mass: use lb, oz, kg or g", "185 lb"},
		{Mass, "-3 kg", "less than zero", "6.6 lb"},
		{Mass, "12 lb 4 oz", "not a unit", ""},
		{Mass, "12 13", "Only one number", ""},
		{Count, "51.5", "whole number", "52"},
		{Count, "52 ribs", "takes no unit", "52"},
		{Count, "1.000", "may mean 1000 or 1:", "1000"},
		{Count, "many", `missing before "many"`, "5"},
		{Mass, "1.500 kg", "may mean 1500 or 1.5", "1500 kg"},
		{Ratio, "0.5 in", "takes no unit", ""},
		{Ratio, "1/0", "zero under", ""},
		{Percent, "1,500 %", "may mean", "1500 %"},
		{Density, "kg/m3", "missing", ""},
		{Power, "1000001 W", "too large", ""},
		{Offset, `-15' 14"`, "14 inches", `−16' 2"`},
		{Temperature, "- -01,000", "one minus", ""},
		{Offset, "-4,600 mm", "may mean", "−4600 mm"},
	}
	for _, row := range rows {
		_, _, err := row.kind.Parse(row.text, Imperial16)
		var refusal *ParseError
		require.ErrorAs(t, err, &refusal, row.text)
		assert.Contains(t, refusal.Message, row.reason, row.text)
		checkRefusal(t, row.kind, refusal, Imperial16)
		if row.offer != "" {
			assert.Equal(t, row.offer, refusal.Suggest, row.text)
		}
	}
}

// What is shown in a field can be typed back, in every kind and system, and
// shows the same again.
func TestShownTextReadsBack(t *testing.T) {
	for k := Kind(0); k < kindCount; k++ {
		for _, s := range []System{Imperial16, Imperial8, Metric} {
			for _, text := range []string{k.Format(kinds[k].example, s), k.FormatASCII(kinds[k].example, s)} {
				v, _, err := k.Parse(text, s)
				require.NoError(t, err, text)
				assert.Equal(t, k.Format(kinds[k].example, s), k.Format(v, s))
			}
			u := k.Unit(s)
			v, _, err := k.Parse("5", s)
			require.NoError(t, err)
			same, _, err := k.Parse("5 "+u, s)
			require.NoError(t, err, "5 %s", u)
			assert.Equal(t, v, same, "a bare number is in Unit")
		}
	}
}

func FuzzParseLength(f *testing.F) {
	for _, row := range readable {
		f.Add(row.text, int(row.system), int(Length))
	}
	for _, row := range refused {
		f.Add(row.text, int(row.system), int(Offset))
	}
	f.Fuzz(func(t *testing.T, text string, system, kind int) {
		s := System(uint(system) % 3)
		k := Kind(uint(kind) % uint(kindCount))
		v, echo, err := k.Parse(text, s)
		if err != nil {
			var refusal *ParseError
			require.ErrorAs(t, err, &refusal)
			checkRefusal(t, k, refusal, s)
			return
		}
		require.NotEmpty(t, echo)
		require.LessOrEqual(t, math.Abs(v), largestRead)
		require.NotEmpty(t, k.Spoken(v, s))
		// Rounding may carry a value just under the bound over it.
		if (k != Length && k != Offset && k != SmallLength) || math.Abs(v) > largestRead-1 {
			return
		}
		again, _, err := k.Parse(k.Format(v, s), s)
		require.NoError(t, err)
		// Beyond half a step: half a nanometre of the conversion at most, and
		// the last bits of a value of up to a thousand kilometres.
		require.InDelta(t, v, again, s.Step()/2+1e-9)
	})
}
