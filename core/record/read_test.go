package record

import (
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/internal/check"
	"barkwright/core/units"
)

// pasted is an invented record as people keep them: three separators, fractions,
// names of their own, stations from the end.
const inch = units.Inch

const pasted = `Boat: Heron Cove, the first
Length overall	16'	+-1/2"	lettered on the drawing
LOA over gunwales,"14' 6"""
beam inside the gunwales; 33 in
Beam	34
Depth to gunwale	12 1/2"	locked
First thwart, from middle	36
end thwart from gunwale end	1' 8"
middle thwart clear	33
first thwart clear length	22-1/2"
End thwart clear	11 3/4	scaled
Rail height at headboard	19
Headboard from middle	83
stations from end	3 ft	4 ft	5 ft
sheer	17	15 1/2	14 3/8
bottom rise	1		x
Sheer, aft	80"	17 1/2
ribs	44
rib spacing	4
stem laminations	eight

weather	fine
`

// A tolerance may stand in the cell of its value, and is in the unit of the name or of the value where it has none.
func TestReadTolerance(t *testing.T) {
	const mm = units.Inch / 25.4
	for text, want := range map[string][2]float64{
		"Beam inside\t33 ± 1/4":             {33 * inch, inch / 4},
		"Beam inside\t33±1/4":               {33 * inch, inch / 4},
		"Beam inside (mm)\t838\t±3":         {838 * mm, 3 * mm},
		"Beam inside\t838 mm\t+-3":          {838 * mm, 3 * mm},
		"Beam inside;83,8 cm;±0,5":          {838 * mm, 5 * mm},
		"Beam inside: 838 mm +/-3":          {838 * mm, 3 * mm},
		"Beam inside\t838 mm\t±1/8 in":      {838 * mm, inch / 8},
		"Length overall\t16'\t±1/2":         {192 * inch, inch / 2},
		"stations\t24\nRail height\t13\t±1": {13 * inch, inch},
	} {
		_, data, refused := Read(text, 0, units.Imperial16)
		require.Empty(t, refused, text)
		require.Len(t, data, 1, text)
		assert.InDelta(t, want[0], data[0].Value, 1e-9, text)
		assert.InDelta(t, want[1], data[0].Tolerance, 1e-9, text)
	}
	_, data, _ := Read("Beam inside\t33 in\t±1/4", 0, units.Metric)
	assert.InDelta(t, inch/4, data[0].Tolerance, 1e-9)
	_, data, _ = Read("Ribs\t44 ± 2", 0, units.Metric)
	assert.InDelta(t, 2, data[0].Tolerance, 1e-9)
}

func TestReadAPaste(t *testing.T) {
	name, data, refused := Read(pasted, 0, units.Imperial16)
	assert.Equal(t, "Heron Cove, the first", name)
	in := func(d Datum) Datum {
		d.Value, d.At.Distance, d.Tolerance = d.Value*inch, d.At.Distance*inch, d.Tolerance*inch
		return d
	}
	fromEnd := func(x float64) Place { return Place{From: FromEnd, Distance: x} }
	want := []Datum{
		in(Datum{Kind: LengthOverall, Value: 192, Tolerance: 0.25, Note: "lettered on the drawing"}),
		in(Datum{Kind: LengthOverGunwales, Value: 174}),
		in(Datum{Kind: BeamInside, Value: 33}),
		in(Datum{Kind: DepthInwale, Value: 12.5, Locked: true}),
		in(Datum{Kind: ThwartPosition, Number: 1, Value: 36}),
		in(Datum{Kind: ThwartPosition, Number: 2, At: Place{From: FromGunwaleEnd}, Value: 20}),
		in(Datum{Kind: ClearWidth, Value: 33}),
		in(Datum{Kind: ClearWidth, Number: 1, Value: 22.5}),
		in(Datum{Kind: ClearWidth, Number: 2, Value: 11.75, Tolerance: 0.5, Note: "scaled"}),
		in(Datum{Kind: RailHeight, At: Place{Distance: 83}, Value: 19}),
		in(Datum{Kind: HeadboardPosition, Value: 83}),
		in(Datum{Kind: SheerHeight, At: fromEnd(36), Value: 17}),
		in(Datum{Kind: SheerHeight, At: fromEnd(48), Value: 15.5}),
		in(Datum{Kind: SheerHeight, At: fromEnd(60), Value: 14.375}),
		in(Datum{Kind: BottomRise, At: fromEnd(36), Value: 1}),
		{Kind: RibCount, Value: 44},
		in(Datum{Kind: RibSpacing, Value: 4}),
	}
	want[0].Tolerance = inch / 2
	require.Len(t, data, len(want), "%v", data)
	for i, w := range want {
		assert.InDelta(t, w.Value, data[i].Value, 1e-9, "%v", w)
		assert.InDelta(t, w.Tolerance, data[i].Tolerance, 1e-9, "%v", w)
		assert.InDelta(t, w.At.Distance, data[i].At.Distance, 1e-9, "%v", w)
		w.Value, w.Tolerance, w.At.Distance = data[i].Value, data[i].Tolerance, data[i].At.Distance
		assert.Equal(t, w, data[i])
	}
	rows := map[int]string{}
	for _, r := range refused {
		rows[r.Row] = r.Why
		assert.NotEmpty(t, r.Text)
	}
	require.Len(t, rows, 5, "%v", refused)
	assert.Contains(t, rows[5], "inside or outside")
	assert.Contains(t, rows[16], `"x"`)
	assert.Contains(t, rows[17], "3 stations and 2 values")
	assert.Contains(t, rows[20], "eight")
	assert.Contains(t, rows[22], "not understood")
}

// The survey's table as it is published with this project has its names in the first
// line and a boat a line: each can be asked for, and the column whose name does not say
// enough is named.
func TestReadABoatALine(t *testing.T) {
	file, err := os.ReadFile("../../testdata/published/measured-canoes.csv")
	require.NoError(t, err)
	rows := check.Published(t, "measured-canoes")
	names := Boats(string(file))
	require.Len(t, names, len(rows))
	for i, row := range rows {
		assert.Equal(t, row["id"], names[i])
		testBoatOfSurvey(t, string(file), i, row)
	}
	assert.Empty(t, Boats("boat;length overall;beam inside;depth"))
	assert.Empty(t, Boats(pasted))
	assert.Equal(t, []string{"the boat of row 2", "the boat of row 3"},
		Boats("length overall;beam inside;depth\n16';33;12\n17';34;13"))
}

func testBoatOfSurvey(t *testing.T, text string, which int, row check.Row) {
	name, data, refused := Read(text, which, units.Metric)
	assert.Equal(t, row["id"], name)
	find := func(k Kind, number int) float64 {
		for _, d := range data {
			if d.Kind == k && d.Number == number {
				return d.Value / inch
			}
		}
		return 0
	}
	for column, got := range map[string]float64{
		"length_overall_in":        find(LengthOverall, 0),
		"length_over_gunwales_in":  find(LengthOverGunwales, 0),
		"beam_inside_gunwales_in":  find(BeamInside, 0),
		"depth_amidships_in":       find(DepthInwale, 0),
		"end_height_in":            find(EndHeight, 0),
		"end_thwart_from_mid_in":   find(ThwartPosition, 2),
		"thwart_first_clear_in":    find(ClearWidth, 1),
		"rail_end_thwart_in":       find(RailHeight, 2),
		"headboard_from_mid_in":    find(HeadboardPosition, 0),
		"bottom_rise_headboard_in": find(BottomRise, 0),
	} {
		assert.InDelta(t, row.Float(t, column), got, 1e-9, column)
	}
	why := ""
	for _, r := range refused {
		why += r.Why + "\n"
	}
	assert.Contains(t, why, "inside or outside")
}

// Names with numbers in them are names; tolerances of counts are counts; what a record
// cannot hold is left out and named.
func TestReadNamesAndBounds(t *testing.T) {
	name, data, refused := Read("Boat;Length overall;Rail height at thwart 1\nHeron;16';13 1/2", 0, units.Imperial16)
	assert.Equal(t, "Heron", name)
	assert.Empty(t, refused)
	require.Len(t, data, 2)
	assert.Equal(t, 1, data[1].Number)

	_, data, _ = Read("Ribs;44;±2\nRibs;44;lettered", 0, units.Imperial16)
	assert.Equal(t, 2.0, data[0].Tolerance)
	assert.Equal(t, 0.5, data[1].Within())

	_, data, refused = Read(strings.Repeat("depth;12\n", MostData+5), 0, units.Imperial16)
	assert.Len(t, data, MostData)
	require.Len(t, refused, 1)
	assert.Equal(t, MostData+1, refused[0].Row)
}

// A station said in words is read as it is, never as amidships.
func TestStationsInWords(t *testing.T) {
	_, data, refused := Read("Rail height;24 aft of amidships;13\nRail height, amidships\t12\n"+
		"Rail height\tfirst thwart\t13 1/4", 0, units.Imperial16)
	assert.Empty(t, refused)
	require.Len(t, data, 3)
	assert.Equal(t, Aft, data[0].At.Side)
	assert.InDelta(t, 24*inch, data[0].At.Distance, 1e-9)
	assert.Equal(t, Place{}, data[1].At)
	assert.Equal(t, 1, data[2].Number)
	_, data, refused = Read("Rail height, 24 aft of amidships\t13", 0, units.Imperial16)
	assert.Empty(t, data)
	require.Len(t, refused, 1)
	assert.Contains(t, refused[0].Why, "cell of its own")
}

func TestReadRefusesByRow(t *testing.T) {
	for line, why := range map[string]string{
		"sheer\t17":                  "Say where",
		"sheer\tfar\t17":             "station",
		"first thwart\t30":           "position or its clear length",
		"thwart position\t30":        "Say which thwart",
		"depth":                      "no value",
		"rail at headboard\t15":      "headboard stands",
		"stations\t1\tq":             "station",
		"depth\t12 x":                "cannot be read",
		"depth\t-12":                 "less than zero",
		"ribs\t44.5":                 "whole number",
		strings.Repeat("wide ", 999): "no value",
	} {
		_, data, refused := Read(line, 0, units.Imperial16)
		assert.Empty(t, data, line)
		require.Len(t, refused, 1, line)
		assert.Equal(t, 1, refused[0].Row)
		assert.Contains(t, refused[0].Why, why, line)
		assert.LessOrEqual(t, len([]rune(refused[0].Text)), longestEcho+1)
	}
	_, _, refused := Read(strings.Repeat("x\t1\n", 2*longestPaste/4), 0, units.Metric)
	assert.LessOrEqual(t, len(refused), mostRows+2)
}

// Nothing pasted brings the reader down, and what comes back is bounded.
func FuzzRead(f *testing.F) {
	f.Add(pasted, true)
	f.Add("stations\t-1\t2\nsheer\t1\t2\t±1\nend thwart aft from end\t9e9\nbay 3\t1/0", false)
	f.Add("profile;1;2\nprofile;3;4\nclear, amidships, 40\nspacing first;1\nspacing 2;500 ft", true)
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		s := units.Imperial16
		if metric {
			s = units.Metric
		}
		_ = Boats(text)
		_, data, refused := Read(text, 0, s)
		if len(refused) > longestPaste || len(data) > longestPaste {
			t.Fatal("more comes back than was pasted")
		}
		for _, d := range data {
			_ = d.String()
			if len(d.Note) > 4*longestNote {
				t.Fatal("a note without end")
			}
		}
	})
}
