package units

import (
	"math"
	"math/rand"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
)

// numberMarks are the marks between thousands and before decimals in use: those of
// the Unicode Common Locale Data Repository for en, de, fr, sv, de-CH, es and pt-CH,
// the thin space of ISO 80000-1, and none between thousands, as calculators write.
var numberMarks = []struct{ group, point string }{
	{",", "."}, {".", ","}, {"\u202f", ","}, {"\u00a0", ","}, {"’", "."}, {"'", "."},
	{"\u2009", "."}, {"\u2009", ","}, {" ", "."}, {" ", ","}, {"", "."}, {"", ","},
}

// inMarks writes a number with the marks of a locale.
func inMarks(v float64, places int, group, point string) string {
	whole, part, _ := strings.Cut(strconv.FormatFloat(v, 'f', places, 64), ".")
	for i := len(whole) - thousand; i > 0; i -= thousand {
		whole = whole[:i] + group + whole[i:]
	}
	if part != "" {
		whole += point + part
	}
	return whole
}

// A length or a mass written in any locale is read as it was meant, or refused with what was
// meant named among two readings: never as another.
func TestEveryLocaleIsReadRightOrRefused(t *testing.T) {
	r := rand.New(rand.NewSource(3))
	units := map[Kind]map[string]float64{
		Length: {"": 0, " mm": Millimetre, " cm": Centimetre, " m": 1, " in": Inch, `"`: Inch, " ft": Foot, "'": Foot},
		Mass:   {"": 0, " kg": 1, "lb": Pound},
	}
	read, refused := 0, 0
	for i := range 4000 {
		marks := numberMarks[r.Intn(len(numberMarks))]
		s := System(r.Intn(3))
		places := r.Intn(4)
		k := Length
		if i%4 == 0 {
			k = Mass
		}
		for name, si := range units[k] {
			if si == 0 {
				si = k.in(s).si
			}
			// Up to the longest there is, evenly over sizes, and with three digits or more
			// before the point as often as not.
			v := math.Exp(r.Float64()*math.Log(kinds[k].most/si)) * 0.999
			v = math.Round(v*math.Pow10(places)) / math.Pow10(places)
			text := inMarks(v, places, marks.group, marks.point) + name
			got, _, err := k.Parse(text, s)
			if err == nil {
				read++
				assert.InDelta(t, v*si, got, 1e-9, "%q", text)
				continue
			}
			refused++
			meant, exact := strconv.FormatFloat(v, 'f', -1, 64), strconv.FormatFloat(v, 'f', places, 64)
			assert.Contains(t, err.Error(), "may mean", "%q", text)
			assert.True(t, strings.Contains(err.Error(), meant) || strings.Contains(err.Error(), exact), "%q: %v", text, err)
			assert.Contains(t, err.Error(), " or ", "%q", text)
		}
		if t.Failed() {
			return
		}
	}
	// Refusals are for the few that are two numbers.
	assert.Less(t, refused, read/4)
}
