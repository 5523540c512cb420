package sheet_test

import (
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/sheet"
)

func TestFileName(t *testing.T) {
	for _, row := range []struct{ boat, part, want string }{
		{"Heron Cove, first canoe", "", "Heron-Cove-first-canoe.json"},
		{"Heron Cove, first canoe", "ribs", "Heron-Cove-first-canoe-ribs.json"},
		{`../../a\b:c*d?"e"<f>|g` + "\x00\n", "", "a-b-c-d-e-f-g.json"},
		{"'; rm -rf $HOME #", "", "rm-rf-HOME.json"},
		{"", "ribs", "canoe-ribs.json"},
		{" .. ", "", "canoe.json"},
		{"🛶🛶", "", "canoe.json"},
		{"Red 🛶 two", "", "Red-two.json"},
		{"زورق صغير", "", "زورق-صغير.json"},
		{"قَارِب\u202e", "", "قَارِب.json"}, // the vowels' marks stay, what turns the text round does not
		{"e\u0301te\u0301", "", "e\u0301te\u0301.json"},
		{"\u0301x\xff-y", "", "x-y.json"},
		{"CON", "", "canoe-CON.json"}, // Windows keeps these for devices: Microsoft, Naming Files, Paths, and Namespaces
		{"nul", "", "canoe-nul.json"},
		{" Aux.", "", "canoe-Aux.json"},
		{"lpt9", "", "canoe-lpt9.json"},
		{"COM0", "", "canoe-COM0.json"},
		{"con", "ribs", "con-ribs.json"},
		{"Connie", "", "Connie.json"},
		{"com10", "", "com10.json"},
	} {
		assert.Equal(t, row.want, sheet.FileName(row.boat, row.part, "json"), "%q", row.boat)
	}
}

// unsafe is what some file system or shell reads something into, and hidden or odd
// beginnings and ends. The characters are those that the file systems of the three
// desktop systems forbid or shells read; from memory.
var unsafe = regexp.MustCompile(`[\x00-\x20/\\:*?"<>|'$&;` + "`" +
	`(){}\[\]!#~%^\x{7f}\x{202a}-\x{202e}\x{2066}-\x{2069}]|^[-.]|--|-\.`)

// Every name fits the 255 bytes that file systems take, whole letters and all; the
// limit is common practice of file systems, no one published source.
func FuzzFileName(f *testing.F) {
	for _, name := range []string{"", "a", strings.Repeat("a", 300), strings.Repeat("ق", 300), strings.Repeat("🛶", 300),
		strings.Repeat("𠀀", 300), "a/../b", "-x-", "x.", "\xff"} {
		f.Add(name)
	}
	f.Fuzz(func(t *testing.T, boat string) {
		name := sheet.FileName(boat, "sections", "json")
		require.LessOrEqual(t, len(name), 255)
		require.True(t, utf8.ValidString(name))
		require.False(t, unsafe.MatchString(name), "%q", name)
		require.True(t, strings.HasSuffix(name, "-sections.json") && len(name) > len("-sections.json"))
	})
}
