//go:build js

package bridge

import (
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
)

// say tells those who listen what changed, once the control rests: first the
// verdicts that are others than when it last did, then the headline numbers. Where the
// boat is the one last told of, what was said since stays: a bad entry may have been.
func (p *page) say() {
	another := p.told != p.work.Entered
	p.told = p.work.Entered
	if len(p.work.Faults) > 0 {
		if !another {
			return
		}
		f := p.work.Faults[0]
		setText(p.id("status"), "Not changed: "+labelOf(f.Key)+": "+f.Message(p.work.System))
		return
	}
	var said []string
	verdicts := map[string]string{}
	for _, c := range answer.Checks(p.work.Canoe()) {
		verdicts[c.Key] = c.Label + ": " + c.Word
		if p.verdicts != nil && p.verdicts[c.Key] != verdicts[c.Key] {
			said = append(said, verdicts[c.Key])
		}
	}
	p.verdicts = verdicts
	if !another {
		return
	}
	for _, n := range answer.Headlined(answer.All(p.work.Canoe())) {
		if o := p.outputs[n.Key]; o.change != "" {
			said = append(said, n.Short+" "+o.texts[0].text)
		}
	}
	setText(p.id("status"), strings.Join(said, ", "))
}

// sayWrong tells those who listen what is wrong with an entry, by the name of its
// field; the focus is on its way to another.
func (p *page) sayWrong(name, fault string) {
	status, text := p.id("status"), name+": "+fault
	if status.Get("textContent").String() == text {
		// A text that stays as it is is not spoken again.
		text += "\u00a0"
	}
	setText(status, text)
}

// labelOf is a parameter's label, or the key where it is none.
func labelOf(key string) string {
	if p, ok := design.Lookup(key); ok {
		return p.Label
	}
	if key == design.CorrectionsKey {
		return "Corrections from readings"
	}
	return key
}
