package units

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
)

// Arithmetic from the inch of exactly 25.4 mm (NIST, since July 1959), ties
// away from zero; the last rows are interface conventions stated by this page.
var inchVectors = []struct {
	mm                float64
	eighth, sixteenth string
	small16, spoken16 string
}{
	{0, `0"`, `0"`, `0"`, "0 inches"},
	{0.79, `0"`, `0"`, `0"`, "0 inches"},
	{0.80, `0"`, `1/16"`, `1/16"`, "a sixteenth of an inch"},
	{1.5875, `1/8"`, `1/16"`, `1/16"`, "a sixteenth of an inch"},
	{12.7, `1/2"`, `1/2"`, `1/2"`, "half an inch"},
	{19.05, `3/4"`, `3/4"`, `3/4"`, "three quarters of an inch"},
	{25.4, `1"`, `1"`, `1"`, "1 inch"},
	{28.575, `1 1/8"`, `1 1/8"`, `1 1/8"`, "1 and an eighth inches"},
	{241.3, `9 1/2"`, `9 1/2"`, `9 1/2"`, "9 and a half inches"},
	{296.8625, `11 3/4"`, `11 11/16"`, `11 11/16"`, "11 and eleven sixteenths inches"},
	{303.2125, `1' 0"`, `11 15/16"`, `11 15/16"`, "11 and fifteen sixteenths inches"},
	{304.00624, `1' 0"`, `11 15/16"`, `11 15/16"`, "11 and fifteen sixteenths inches"},
	{304.00625, `1' 0"`, `1' 0"`, `12"`, "1 foot"},
	{304.00626, `1' 0"`, `1' 0"`, `12"`, "1 foot"},
	{317.5, `1' 0 1/2"`, `1' 0 1/2"`, `12 1/2"`, "1 foot half an inch"},
	{850, `2' 9 1/2"`, `2' 9 7/16"`, `33 7/16"`, "2 feet 9 and seven sixteenths inches"},
	{1000, `3' 3 3/8"`, `3' 3 3/8"`, `39 3/8"`, "3 feet 3 and three eighths inches"},
	{47.984375 * 25.4, `4' 0"`, `4' 0"`, `48"`, "4 feet"}, // 3' 11 63/64"
	{4660.9, `15' 3 1/2"`, `15' 3 1/2"`, `183 1/2"`, "15 feet 3 and a half inches"},
	{4876.8, `16' 0"`, `16' 0"`, `192"`, "16 feet"},
	{1e9, `3280839' 10 3/4"`, `3280839' 10 3/4"`, `39370078 3/4"`, ""}, // 39370078.7402 in
}

func TestFeetInchesAndFractions(t *testing.T) {
	for _, row := range inchVectors {
		metres := row.mm / 1000
		assert.Equal(t, row.eighth, Length.Format(metres, Imperial8), "%v mm at 1/8", row.mm)
		assert.Equal(t, row.sixteenth, Length.Format(metres, Imperial16), "%v mm at 1/16", row.mm)
		assert.Equal(t, row.small16, SmallLength.Format(metres, Imperial16), "%v mm in inches", row.mm)
		if row.spoken16 != "" {
			assert.Equal(t, row.spoken16, Length.Spoken(metres, Imperial16), "%v mm spoken", row.mm)
		}
	}
}

func TestLastBitDoesNotShow(t *testing.T) {
	// Ties of the table, moved by single last bits as fused multiply-adds do.
	for _, mm := range []float64{1.5875, 303.2125, 304.00625, 0.79375, 0.5, 4660.5} {
		v := mm / 1000
		for _, s := range []System{Imperial8, Imperial16, Metric} {
			want := Length.Format(v, s)
			assert.Equal(t, want, Length.Format(math.Nextafter(v, 0), s), "%v mm", mm)
			assert.Equal(t, want, Length.Format(math.Nextafter(v, 9), s), "%v mm", mm)
		}
	}
}

func TestLargestRoundingErrorIsHalfAStep(t *testing.T) {
	for _, s := range []System{Imperial8, Imperial16, Metric} {
		for v := 0.0; v < 7; v += 0.000377 {
			got, _, err := Length.Parse(Length.Format(v, s), s)
			assert.NoError(t, err)
			assert.InDelta(t, v, got, s.Step()/2+1e-9, "half a step and the nanometre of the conversion")
		}
	}
	assert.InDelta(t, 1.5875e-3, Imperial8.Step()/2, 5e-9) // largest error at 1/8
	assert.InDelta(t, 0.79375e-3, Imperial16.Step()/2, 5e-10)
}

// Values by the factors tested in TestConstants; the layout is this page's own.
func TestFormatKinds(t *testing.T) {
	rows := []struct {
		kind             Kind
		v                float64
		imperial, metric string
		ascii, spoken    string
	}{
		{Length, 4.6609, `15' 3 1/2"`, "4661 mm", `15' 3 1/2"`, "15 feet 3 and a half inches"},
		{Length, -0.0381, `−1 1/2"`, "−38 mm", `-1 1/2"`, "minus 1 and a half inches"},
		{Length, -0.0001, `0"`, "0 mm", `0"`, "0 inches"},
		{Offset, -0.4, `−1' 3 3/4"`, "−400 mm", `-1' 3 3/4"`, "minus 1 foot 3 and three quarters inches"},
		{SmallLength, 0.4, `15 3/4"`, "400 mm", `15 3/4"`, "15 and three quarters inches"},
		{Thickness, 0.003556, `9/64"`, "3.6 mm", `9/64"`, "nine sixty-fourths of an inch"},
		{Thickness, 0.0225, `57/64"`, "22.5 mm", `57/64"`, "fifty-seven sixty-fourths of an inch"},
		{Run, 131.67, "432 ft", "131.7 m", "432 ft", "432 feet"},
		{Run, 0.3048, "1 ft", "0.3 m", "1 ft", "1 foot"},
		{Distance, 16093.44, "10 mi", "16 km", "10 mi", "10 miles"},
		{Area, 1.152, "12.4 ft²", "1.15 m²", "12.4 ft2", "12.4 square feet"},
		{Angle, math.Pi / 4, "45°", "45°", "45 deg", "45 degrees"},
		{Mass, 83.914588, "185 lb", "83.9 kg", "185 lb", "185 pounds"},
		{Volume, 0.3, "10.59 ft³", "300 L", "10.59 ft3", "10.59 cubic feet"},
		{Speed, 1.78816, "4 mph", "6.4 km/h", "4 mph", "4 miles an hour"},
		{Force, 4.4482216152605, "1 lbf", "4.4 N", "1 lbf", "1 pound of force"},
		{Moment, 100, "73.8 ft·lbf", "100 N·m", "73.8 ft-lbf", "73.8 foot-pounds"},
		{Power, 75, "75 W", "75 W", "75 W", "75 watts"},
		{Density, 999.1026, "62.4 lb/ft³", "999 kg/m³", "62.4 lb/ft3", "62.4 pounds per cubic foot"},
		{Temperature, 15, "59 °F", "15 °C", "59 F", "59 degrees Fahrenheit"},
		{Temperature, -40, "−40 °F", "−40 °C", "-40 F", "minus 40 degrees Fahrenheit"},
		{Ratio, 0.725, "0.725", "0.725", "0.725", "0.725"},
		{Ratio, 2.1, "2.1", "2.1", "2.1", "2.1"},
		{Ratio, 12.345, "12.3", "12.3", "12.3", "12.3"},
		{Ratio, 1234.5, "1235", "1235", "1235", "1235"},
		{Percent, 0.15, "15 %", "15 %", "15 %", "15 percent"},
		{Percent, 0.0125, "1.3 %", "1.3 %", "1.3 %", "1.3 percent"},
		{Strain, 0.00358, "0.36 %", "0.36 %", "0.36 %", "0.36 percent"},
		{Count, 52, "52", "52", "52", "52"},
	}
	for _, row := range rows {
		assert.Equal(t, row.imperial, row.kind.Format(row.v, Imperial16))
		assert.Equal(t, row.metric, row.kind.Format(row.v, Metric))
		assert.Equal(t, row.ascii, row.kind.FormatASCII(row.v, Imperial16))
		assert.Equal(t, row.spoken, row.kind.Spoken(row.v, Imperial16))
		for _, r := range row.kind.FormatASCII(row.v, Imperial16) + row.kind.FormatASCII(row.v, Metric) {
			assert.Less(t, r, rune(128), "%v not ASCII", row)
		}
	}
}

// Printed by GNU Units 2.22 to 15 digits, a general-purpose converter with its
// own definitions; the tolerance is half the last of those digits.
func TestConstants(t *testing.T) {
	rows := []struct {
		name      string
		got, want float64
	}{
		{"inch", Inch, 0.0254},
		{"foot", Foot, 0.3048},
		{"mile", Mile, 1609.344},
		{"square foot", SquareFoot, 0.09290304},
		{"cubic foot", CubicFoot, 0.028316846592},
		{"litre", Litre, 0.001},
		{"pound", Pound, 0.45359237},
		{"ounce", Ounce, 0.028349523125},
		{"standard gravity", StandardGravity, 9.80665},
		{"pound-force", PoundForce, 4.4482216152605},
		{"foot-pound", FootPound, 1.3558179483314},
		{"pound per cubic foot", PoundPerCubicFoot, 16.0184633739601},
		{"mile an hour", MilePerHour, 0.44704},
		{"knot", Knot, 0.514444444444444},
		{"degree", Degree, 0.0174532925199433},
	}
	for _, row := range rows {
		// 15 figures: half a unit of the fifteenth is at most 5e-15 of the value.
		assert.InDelta(t, row.want, row.got, 5e-15*row.want, row.name)
	}
}

func TestUnitNames(t *testing.T) {
	assert.Equal(t, "in", Length.Unit(Imperial8))
	assert.Equal(t, "mm", SmallLength.Unit(Metric))
	assert.Equal(t, "ft", Run.Unit(Imperial16))
	assert.Equal(t, "", Ratio.Unit(Metric))
	assert.Equal(t, "°F", Temperature.Unit(Imperial16))
	// One of the unit that is named, by the definitions in constants.go.
	assert.Equal(t, []float64{0.3048, 1, 0.0254, 0.45359237}, []float64{Run.One(Imperial8), Run.One(Metric),
		Length.One(Imperial16), Mass.One(Imperial16)})
}

// The base and derived units of the SI Brochure, 9th edition, 2019, tables 2 and 4, and
// the degree Celsius, which the water formulas take.
func TestSINames(t *testing.T) {
	want := map[Kind]string{
		Length: "m", SmallLength: "m", Thickness: "m", Offset: "m", Run: "m", Distance: "m", Area: "m2", Angle: "rad",
		Mass: "kg", Volume: "m3", Speed: "m/s", Force: "N", Moment: "N m", Power: "W", Density: "kg/m3", Temperature: "C",
		Ratio: "", Percent: "", Strain: "", Count: "", Words: "",
	}
	assert.Len(t, want, int(kindCount)+1, "a kind whose SI unit is not looked at")
	for k, name := range want {
		assert.Equal(t, name, k.SI(), "kind %d", k)
	}
}

func TestNoNumberIsNamed(t *testing.T) {
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e10} {
		assert.Equal(t, NotWorkedOut, Length.Format(v, Imperial16))
		assert.Equal(t, NotWorkedOut, Length.Rough(v, Metric))
		assert.Equal(t, NotWorkedOut, Mass.FormatASCII(v, Metric))
		assert.Equal(t, NotWorkedOut, Ratio.Spoken(v, Metric))
	}
}

func TestMisusePanics(t *testing.T) {
	assert.PanicsWithValue(t, noSuchKind, func() { kindCount.Format(1, Metric) })
	assert.PanicsWithValue(t, noSuchKind, func() { kindCount.SI() })
	assert.PanicsWithValue(t, noSuchKind, func() { _, _, _ = Words.Parse("1", Metric) })
}

// Estimates stand in quarter inches, 5 mm and whole pounds or kilograms, large ones in
// tens; small masses and other kinds as they are.
func TestRough(t *testing.T) {
	for _, row := range []struct {
		kind             Kind
		v                float64
		imperial, metric string
	}{
		{Length, 6.5625 * Inch, `6 1/2"`, "165 mm"},
		{Offset, -0.4 * Inch, `−1/2"`, "−10 mm"},
		{Offset, -0.05 * Inch, `0"`, "0 mm"},
		{Mass, 535.6 * Pound, "540 lb", "240 kg"},
		{Mass, 74.4 * Pound, "74 lb", "34 kg"},
		{Mass, 2.7 * Pound, "2.5 lb", "1.2 kg"},
		{SmallLength, 6.3125 * Inch, `6 1/4"`, "160 mm"},
		{Run, 736 * Foot, "740 ft", "225 m"},
		{Run, 44.4 * Foot, "44 ft", "13.5 m"},
		{Angle, 21.7 * Degree, "22°", "22°"},
		{Area, 57.4 * SquareFoot, "57 ft²", "5.3 m²"},
		{Strain, 0.0036, "0.4 %", "0.4 %"},
		{Percent, 0.155, "16 %", "16 %"},
	} {
		assert.Equal(t, row.imperial, row.kind.Rough(row.v, Imperial16))
		assert.Equal(t, row.metric, row.kind.Rough(row.v, Metric))
	}
}

// What spoils the work when it is too little is rounded up, but not past a number that
// is on a step already.
func TestRoughUp(t *testing.T) {
	for _, row := range []struct {
		kind             Kind
		v                float64
		imperial, metric string
	}{
		{SmallLength, 16.4375 * Inch, `16 1/2"`, "420 mm"},
		{Length, 12.5 * Inch, `1' 0 1/2"`, "320 mm"},
		{Length, 54.01 * Inch, `4' 6 1/2"`, "1380 mm"},
		{Run, 731 * Foot, "740 ft", "225 m"},
	} {
		assert.Equal(t, row.imperial, row.kind.RoughUp(row.v, Imperial16))
		assert.Equal(t, row.metric, row.kind.RoughUp(row.v, Metric))
	}
}
