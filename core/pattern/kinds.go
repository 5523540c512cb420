package pattern

import (
	"barkwright/core"
	"barkwright/core/units"
)

// Kind is a sort of pattern that can be asked for; it makes one drawing or more.
type Kind struct {
	Key, Label string
	make       func(maker) []Pattern
}

// Options say how patterns are drawn.
type Options struct {
	System units.System
	// Ribs are the numbers of the ribs whose sections are drawn, after ReadRibs; with
	// none that the boat has, they are its usual ones.
	Ribs []int
}

// maker is what patterns are made from.
type maker struct {
	core.Canoe
	Options
}

func (m maker) length(v float64) string { return units.Length.Format(v, m.System) }
func (m maker) small(v float64) string  { return units.SmallLength.Format(v, m.System) }

var kinds = []Kind{
	{"stem", "Stem-piece", stemPattern},
	{"form", "Bending form of the stem", formPattern},
	{"headboard", "Headboard", headboardPattern},
	{"trim", "Trim line of the bark's end", trimPattern},
	{"frame", "Half of the building frame, in strips", framePatterns},
	{"outline", "Outline of the bark laid flat, at a tenth", outlinePattern},
	{"gores", "Gore cuts", gorePatterns},
	{"sections", "Rib sections", sectionPatterns},
	{"tip", "Rib taper and bevel", tipPattern},
	{"stick", "Story stick for the gunwale", stickPattern},
}

// Kinds lists what patterns there are, in the order of the work.
func Kinds() []Kind { return append([]Kind(nil), kinds...) }

// Make draws the patterns of a kind. Gores and the outline are read off the bark
// laid flat: a canoe without its skin, or whose gores are not cut, has none. A key
// that is no kind's has none either.
func Make(c core.Canoe, key string, o Options) []Pattern {
	for _, k := range kinds {
		if k.Key == key {
			return k.make(maker{c, o})
		}
	}
	return nil
}
