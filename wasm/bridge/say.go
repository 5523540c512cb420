//go:build js

package bridge

import "barkwright/wasm/work"

// speak tells those who listen what changed, once the control rests.
func (p *page) speak() {
	if text, speak := p.speaker.Say(p.work, p.numbers.Shown); speak {
		p.say("status", text)
	}
}

// speakWrong tells those who listen what is wrong with an entry, by the name of its field.
func (p *page) speakWrong(name, fault string) {
	p.say("status", work.Wrong(name, fault, p.id("status").Get("textContent").String()))
}
