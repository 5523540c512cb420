//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
)

// reply carries out what the desk answers.
func (p *page) reply(r desk.Reply) {
	for _, name := range r.Unsay {
		p.unsay(name)
	}
	for _, n := range r.Notices {
		p.notice(n)
	}
	switch {
	case r.TookUp:
		p.shelved()
	case r.Changed:
		p.refresh()
	case r.Ticked:
		p.showSteps()
		p.showControls()
	}
	if (r.TookUp || r.Changed || r.Ticked) && !r.KeepNothing {
		p.save()
	}
	if r.Shelf {
		p.showShelf()
	}
	for _, s := range r.Says {
		p.say(s.At, s.Text)
	}
	for id, hidden := range r.Hidden {
		p.hide(id, hidden)
	}
	for id, wrong := range r.Invalid {
		p.id(id).Call("setAttribute", "aria-invalid", wrong)
	}
	for id, text := range r.Fields {
		p.id(id).Set("value", text)
	}
	p.fillAll(r.Markup)
	if r.Bench {
		p.showBench()
	}
	if r.Focus != "" {
		p.id(r.Focus).Call("focus")
	}
	if r.Save != nil {
		js.Global().Call("handOver", r.Save.Name, r.Save.Kind, r.Save.Text)
	}
	if r.Copy != "" {
		p.id(r.Focus).Call("select")
		js.Global().Call("copyText", r.Copy)
	}
	if r.Print != "" {
		p.id("print").Set("innerHTML", r.Print)
		p.root().Get("dataset").Set("paper", "true")
		js.Global().Call("print")
	}
}

func (p *page) fillAll(slots map[string]string) {
	for id, html := range slots {
		p.fill(id, html)
	}
}

// notice says something at the top of the page, where it is also spoken, until it is
// closed or unsaid. The same said again under its name changes nothing.
func (p *page) notice(n desk.Notice) {
	if at := p.noticeAt(n.Name); !at.IsNull() {
		if at.Call("querySelector", "p").Get("textContent").String() == n.Text {
			return
		}
		at.Call("remove")
	}
	var buttons []string
	for _, b := range n.Buttons {
		buttons = append(buttons, b.Words)
	}
	p.id("notices").Call("insertAdjacentHTML", "beforeend", markup.Notice(n.Name, n.Text, buttons))
	p.noticed[n.Name] = n.Buttons
}

func (p *page) noticeAt(name string) js.Value {
	return p.id("notices").Call("querySelector", `[data-notice="`+js.Global().Get("CSS").Call("escape",
		name).String()+`"]`)
}

// unsay takes a notice away.
func (p *page) unsay(name string) {
	if at := p.noticeAt(name); !at.IsNull() {
		at.Call("remove")
	}
}

func (p *page) listenNotices() {
	p.on(p.id("notices"), "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		name := data(b.Call("closest", "[data-notice]"), "notice")
		if i, ok := whole(data(b, "action")); ok {
			p.reply(p.noticed[name][i].Press())
		} else {
			p.unsay(name)
		}
	})
}
