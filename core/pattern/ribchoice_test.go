package pattern_test

import (
	"encoding/xml"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/pattern"
	"barkwright/core/units"
)

// ribbed is a boat with so many ribs.
func ribbed(count float64) core.Canoe {
	p, _ := design.Lookup("ribs")
	return core.Evaluate(p.Set(design.Default(), count))
}

func TestReadRibs(t *testing.T) {
	even, odd := ribbed(44).Frame.Ribs, ribbed(45).Frame.Ribs
	for _, row := range []struct {
		text string
		ribs []frame.Rib
		want []int
	}{
		{"", even, nil},
		{" \t, ", even, nil},
		{"1, 5-8, 12", even, []int{1, 5, 6, 7, 8, 12}},
		{"12;5 – 8;1", even, []int{1, 5, 6, 7, 8, 12}},
		{"8-5 6 6", even, []int{5, 6, 7, 8}},
		{"22", even, []int{22}},
		{"007", even, []int{7}},
		{"Middle, 2", odd, []int{0, 2}},
		{"middle-3", odd, []int{0, 1, 2, 3}},
	} {
		got, err := pattern.ReadRibs(row.text, row.ribs)
		require.NoError(t, err, row.text)
		assert.Equal(t, row.want, got, row.text)
	}
	for _, row := range []struct {
		text string
		ribs []frame.Rib
		says string
	}{
		{"5-", even, `"5-" is not read as ribs: write numbers and spans, such as 1, 5-8. This boat's ribs are 1 to 22.`},
		{"five", even, `"five" is not read`},
		{"-5", even, `"-5" is not read`},
		{"1.5", even, `"1.5" is not read`},
		{"5-6-7", even, `"5-6-7" is not read`},
		{"1, 30", even, "There is no rib 30. This boat's ribs are 1 to 22."},
		{"20-30, 0, 99999999999999999999", even, "There are no ribs 20-30, 0, 99999999999999999999. This boat's " +
			"ribs are 1 to 22."},
		{"middle", even, "There is no rib middle. This boat's ribs are 1 to 22."},
		{"23", odd, "There is no rib 23. This boat's ribs are the middle one and 1 to 22."},
		{strings.Repeat("1,", 1000), even, "longer than all the ribs written out. This boat's ribs are 1 to 22."},
	} {
		got, err := pattern.ReadRibs(row.text, row.ribs)
		assert.ErrorContains(t, err, row.says, row.text)
		assert.Nil(t, got)
	}
}

// Whatever is written, the answer is ribs that there are, each once and in order,
// or one short line.
func FuzzReadRibs(f *testing.F) {
	for _, text := range []string{"", "1, 5-8, 12", "middle - 4", "5-", "0", "1-999999999", "–", "1;2\n3",
		"9999999999999999999999", "\xff-\xfe", "٣"} {
		f.Add(text, false)
		f.Add(text, true)
	}
	boats := map[bool]frame.Frame{false: ribbed(44).Frame, true: ribbed(45).Frame}
	f.Fuzz(func(t *testing.T, text string, odd bool) {
		ribs := boats[odd].Ribs
		got, err := pattern.ReadRibs(text, ribs)
		if err != nil {
			require.Empty(t, got)
			require.Less(t, len(err.Error()), 400)
			require.NotContains(t, err.Error(), "\n")
			return
		}
		require.LessOrEqual(t, len(got), len(ribs))
		last := -1
		for _, n := range got {
			require.Greater(t, n, last)
			require.GreaterOrEqual(t, n, ribs[0].Number)
			require.LessOrEqual(t, n, ribs[len(ribs)-1].Number)
			last = n
		}
		back, err := pattern.ReadRibs(pattern.SectionRibs(boats[odd], got), ribs)
		require.NoError(t, err, "what is said to be drawn can be typed")
		if len(got) > 0 {
			require.Equal(t, got, back)
		}
	})
}

// The usual ribs, and a choice of which the boat has some or none.
func TestSectionRibs(t *testing.T) {
	f := ribbed(44).Frame
	usual := pattern.SectionRibs(f, nil)
	assert.Regexp(t, `^1, \d+, \d+, 22$`, usual, "the middle, two thwarts and the end")
	assert.Equal(t, "3, 22", pattern.SectionRibs(f, []int{3, 22, 23}))
	assert.Equal(t, usual, pattern.SectionRibs(f, []int{40}))
	assert.Equal(t, "middle, 4", pattern.SectionRibs(ribbed(45).Frame, []int{0, 4}))
	assert.Equal(t, "4", pattern.SectionRibs(f, []int{0, 4}))
}

// The section of any rib, as the file draws it, is half as long as the ribs' table
// says to cut it, to half of the sixteenth of an inch it is read to.
func TestSectionsAreAsLongAsTheTableSays(t *testing.T) {
	for _, d := range append(design.Starting(), design.Default(), ribbed(45).Design) {
		c := core.Evaluate(d)
		table, ok := answer.MakeTable(c, "ribs")
		require.True(t, ok)
		for i, row := range table.Rows {
			number := c.Frame.Ribs[i].Number
			name := fmt.Sprintf("%s, rib %s", d.Name, row.Cells[0].Text)
			chosen, err := pattern.ReadRibs(row.Cells[0].Text, c.Frame.Ribs)
			require.NoError(t, err, name)
			require.Equal(t, []int{number}, chosen, name)
			drawn := pattern.Make(c, "sections", pattern.Options{System: units.Imperial16, Ribs: chosen})
			require.Len(t, drawn, 1, name)
			assert.Equal(t, "Rib "+row.Cells[0].Text+", section", drawn[0].Name)
			var b strings.Builder
			require.NoError(t, drawn[0].SVG(&b, head))
			assert.Contains(t, b.String(), "rib "+row.Cells[0].Text+", centre line")
			assert.InDelta(t, row.Cells[1].Value*1000, 2*longestCut(t, b.String()), 25.4/32, name)
		}
	}
}

// longestCut is the length of the longest line of a drawing that is to be cut, by
// its breadth of half a millimetre, in the units of its viewBox.
func longestCut(t *testing.T, text string) float64 {
	t.Helper()
	var root struct {
		Paths []struct {
			D     string `xml:"d,attr"`
			Width string `xml:"stroke-width,attr"`
		} `xml:"path"`
	}
	require.NoError(t, xml.Unmarshal([]byte(text), &root))
	longest := 0.0
	for _, p := range root.Paths {
		if p.Width != "0.5" {
			continue
		}
		run, last := 0.0, [2]float64{}
		for i, at := range strings.FieldsFunc(p.D, func(r rune) bool { return r == 'M' || r == 'L' }) {
			var now [2]float64
			for k, text := range strings.Fields(at) {
				v, err := strconv.ParseFloat(text, 64)
				require.NoError(t, err)
				now[k] = v
			}
			if i > 0 {
				run += math.Hypot(now[0]-last[0], now[1]-last[1])
			}
			last = now
		}
		longest = max(longest, run)
	}
	return longest
}
