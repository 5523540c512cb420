package work

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/find"
)

// Found is one line of what was looked for: what it is, its value now, and where it
// stands. Go is where to go for it: its kind and its key.
type Found struct{ Go, Kind, Name, Value, At string }

// Find lists what answers a question best, with the values of the boat in hand.
func (w *Work) Find(question string) []Found {
	water, _ := w.Known().Water()
	c := w.Canoe()
	var out []Found
	for _, e := range find.New(c, water, w.System).Find(question) {
		line := Found{Go: string(e.Kind) + ":" + e.Key, Kind: string(e.Kind), Name: e.Name}
		if s, _, ok := stage.Lookup(e.Home); ok {
			line.At = s.Short
		}
		switch e.Kind {
		case find.Control:
			if p, ok := design.Lookup(e.Key); ok {
				line.Value = w.Reads(p)
			}
		case find.Number:
			for _, n := range append(answer.All(c), answer.Water(c, water)...) {
				if n.Key == e.Key && !w.None {
					line.Value = n.Text(w.System)
				}
			}
		case find.Check:
			for _, check := range w.Checks() {
				if check.Key == e.Key {
					line.Value = check.Word
				}
			}
		}
		out = append(out, line)
	}
	return out
}

// FoundSays says how many lines answer a question.
func FoundSays(question string, lines int) string {
	switch {
	case strings.TrimSpace(question) == "":
		return "Type a part, a number or a word: rib, post, how much root."
	case lines == 0:
		return "Nothing of that name here."
	case lines == 1:
		return "1 line; Enter goes there."
	}
	return units.Count.Format(float64(lines), units.Metric) + " lines; Enter goes to the one marked."
}
