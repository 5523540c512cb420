package work

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
)

// Speaker tells those who listen what changed, once the control rests. It remembers
// what was told last.
type Speaker struct {
	verdicts map[string]string // by the checks' keys
	told     design.Design     // what they are of
}

// Say returns what is to be spoken, and whether anything is: first the verdicts that
// are others than when it was called last, then the headline's numbers that changed. Of
// the boat that was last told of nothing is: what was said since stays, which may be of
// a bad entry.
func (s *Speaker) Say(w *Work, shown []Shown) (text string, speak bool) {
	another := s.told != w.Entered
	s.told = w.Entered
	if len(w.Faults) > 0 {
		return "Not changed: " + w.FirstFault(), another
	}
	var said []string
	verdicts := map[string]string{}
	for _, c := range answer.Checks(w.Canoe()) {
		verdicts[c.Key] = c.Label + ": " + c.Word
		if s.verdicts != nil && s.verdicts[c.Key] != verdicts[c.Key] {
			said = append(said, verdicts[c.Key])
		}
	}
	s.verdicts = verdicts
	for _, key := range answer.Headline() {
		for _, n := range shown {
			if n.Key == key && n.Change != "" {
				said = append(said, n.Short+" "+n.Text)
			}
		}
	}
	return strings.Join(said, ", "), another
}

// Wrong is what is spoken of a bad entry, by the name of its field: the focus is on its
// way to another. last is what was spoken before it; the same text would not be spoken
// again.
func Wrong(name, fault, last string) string {
	text := name + ": " + fault
	if text == last {
		text += "\u00a0"
	}
	return text
}
