package record

import (
	"math/rand"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/units"
)

// A place is read as people write it, whatever the words' order.
func TestReadWhere(t *testing.T) {
	for _, c := range []struct {
		kind   Kind
		text   string
		number int
		at     Place
	}{
		{RailHeight, "amidships", 0, Place{}},
		{RailHeight, "at thwart 2", 2, Place{}},
		{ClearWidth, "first thwart, aft", 1, Place{Side: Aft}},
		{ClearWidth, "middle thwart", 0, Place{}},
		{SheerHeight, "36", 0, Place{Distance: 36 * inch}},
		{SheerHeight, `3' 0 1/2" from the middle, forward`, 0, Place{Distance: 36.5 * inch, Side: Forward}},
		{SheerHeight, "aft 20 from the end", 0, Place{From: FromEnd, Distance: 20 * inch, Side: Aft}},
		{BottomRise, "10 from the end of the gunwales", 0, Place{From: FromGunwaleEnd, Distance: 10 * inch}},
		{RailHeight, "24 aft of the middle", 0, Place{Distance: 24 * inch, Side: Aft}},
		{RailHeight, "24 in forward of amidships", 0, Place{Distance: 24 * inch, Side: Forward}},
		{SheerHeight, "10 in inboard of the end", 0, Place{From: FromEnd, Distance: 10 * inch}},
		{EndPoint, "-80", 0, Place{Distance: 80 * inch, Side: Aft}},
		{ThwartPosition, "thwart 2, from the end", 2, Place{From: FromEnd}},
		{Bay, "2", 2, Place{}},
		{Bay, "first from the middle", 1, Place{}},
		{HeadboardPosition, "from the end of the gunwales, aft", 0, Place{From: FromGunwaleEnd, Side: Aft}},
		{EndHeight, "bow", 0, Place{Side: Forward}},
		{EndHeight, "", 0, Place{}},
		{LengthOverall, "stem to stern", 0, Place{}},
	} {
		number, at, err := ReadWhere(c.kind, c.text, units.Imperial16)
		assert.NoError(t, err, c.text)
		assert.Equal(t, c.number, number, c.text)
		assert.InDelta(t, c.at.Distance, at.Distance, 1e-12, c.text)
		at.Distance = c.at.Distance
		assert.Equal(t, c.at, at, c.text)
	}
	for kind, texts := range map[Kind][]string{
		RailHeight:     {"", "aft", "here", "at the thwart", "from the end"},
		ThwartPosition: {"", "thwart", "36"},
		Bay:            {"aft"},
	} {
		for _, text := range texts {
			_, _, err := ReadWhere(kind, text, units.Imperial16)
			assert.Error(t, err, "%v %q", kind, text)
		}
	}
}

// What Where writes, ReadWhere reads back, to the rounding of the text.
func TestWhereIsReadBack(t *testing.T) {
	r := rand.New(rand.NewSource(5))
	for range 2000 {
		d := Datum{Kind: Kind(r.Intn(int(kindCount)))}
		if d.Sided() {
			d.At.Side = Side(r.Intn(3))
		}
		switch {
		case d.Numbered():
			d.Number = 1 + r.Intn(4)
		case d.Placed() && r.Intn(2) == 0:
			d.Number = 1 + r.Intn(4)
		case d.Placed():
			d.At.Distance = r.Float64() * 3
		}
		if d.Kind == ThwartPosition || d.Kind == HeadboardPosition || d.At.Distance > 0 {
			d.At.From = Origin(r.Intn(3))
		}
		if d.AtHeight() {
			d.At.Height = 0.02 + 0.6*r.Float64()
		}
		for _, s := range []units.System{units.Imperial8, units.Imperial16, units.Metric} {
			number, at, err := ReadWhere(d.Kind, d.Where(s), s)
			assert.NoError(t, err, d.Where(s))
			assert.Equal(t, d.Number, number, d.Where(s))
			assert.InDelta(t, d.At.Distance, at.Distance, s.Step()/2+1e-9, d.Where(s))
			assert.InDelta(t, d.At.Height, at.Height, s.Step()/2+1e-9, d.Where(s))
			at.Distance, at.Height = d.At.Distance, d.At.Height
			assert.Equal(t, d.At, at, d.Where(s))
		}
	}
}

func FuzzReadWhere(f *testing.F) {
	for _, text := range []string{"amidships", "thwart 1, aft", `2' 3" from the end`, "-4", "from from"} {
		f.Add(text, 10)
	}
	f.Fuzz(func(t *testing.T, text string, kind int) {
		if kind < 0 || kind >= int(kindCount) {
			return
		}
		number, at, err := ReadWhere(Kind(kind), text, units.Metric)
		if err == nil {
			assert.GreaterOrEqual(t, number, 0)
			assert.GreaterOrEqual(t, at.Distance, 0.0)
		}
	})
}
