package work

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
)

// Speaker announces what changed once the control rests. It remembers what it announced
// last.
type Speaker struct {
	verdicts map[string]string // by the checks' keys
	told     design.Design     // what they are of
}

// Say returns the text to speak and whether there is any: first the verdicts that have
// changed since the last call, then the numbers of the headline that changed. For the
// design that was announced last it returns nothing. What was said since, perhaps of a
// bad entry, then stays.
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
			if n.Key == key && n.Change() != "" {
				said = append(said, n.Short+" "+n.Text())
			}
		}
	}
	return strings.Join(said, ", "), another
}

// Wrong returns what is spoken of a bad entry. It begins with the name of the field,
// since the focus is moving on. last is the text spoken before: the same text again
// would not be spoken.
func Wrong(name, fault, last string) string {
	text := name + ": " + fault
	if text == last {
		text += "\u00a0"
	}
	return text
}
