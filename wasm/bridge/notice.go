//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/sheet"
	"barkwright/wasm/markup"
)

// action is a button of a notice: its words and what it does.
type action struct {
	words string
	act   func()
}

// notice says something at the top of the page, where it is also spoken, until it is
// closed or unsaid. The same said again under its name changes nothing.
func (p *page) notice(name, text string, actions ...action) {
	if at := p.noticeAt(name); !at.IsNull() {
		if at.Call("querySelector", "p").Get("textContent").String() == text {
			return
		}
		at.Call("remove")
	}
	var buttons []string
	for _, a := range actions {
		buttons = append(buttons, a.words)
	}
	p.id("notices").Call("insertAdjacentHTML", "beforeend", markup.Notice(name, text, buttons))
	p.noticed[name] = actions
}

func (p *page) noticeAt(name string) js.Value {
	return p.id("notices").Call("querySelector", `[data-notice="`+js.Global().Get("CSS").Call("escape", name).String()+`"]`)
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
		if i, err := strconv.Atoi(data(b, "action")); err == nil {
			p.noticed[name][i].act()
		} else {
			p.unsay(name)
		}
	})
}

// nameUnread says at the top what is kept and cannot be opened, and offers it.
func (p *page) nameUnread() {
	for _, u := range p.keeper.Unread() {
		text := "“" + u.Name + "” is kept and was not opened. " + u.Why
		actions := []action{{"Save it as a file", func() {
			p.download(sheet.FileName(u.Name, "", "json"), "application/json", p.keeper.Text(u.Key))
		}}}
		if u.Stops {
			actions = append(actions, action{"Try it again", func() {
				p.unsay(u.Key)
				p.shelf.Retry(u.Key)
				p.showShelf()
			}})
		} else {
			text += " It stays as it is."
		}
		p.notice(u.Key, text, actions...)
	}
}
