//go:build js

package bridge

import (
	"strconv"
	"syscall/js"
)

func (p *page) root() js.Value { return p.document.Get("documentElement") }

func (p *page) id(name string) js.Value { return p.document.Call("getElementById", name) }

// text is what a field holds, number that as a whole one and whether it is one.
func (p *page) text(id string) string { return p.id(id).Get("value").String() }

func number(field js.Value) (int, bool) { return whole(field.Get("value").String()) }

func whole(text string) (int, bool) {
	n, err := strconv.Atoi(text)
	return n, err == nil
}

// data is what stands in the attribute data-name of an element, "" for nothing.
func data(at js.Value, name string) string {
	if v := at.Get("dataset").Get(name); v.Type() == js.TypeString {
		return v.String()
	}
	return ""
}

// each calls act for every element a selector finds.
func each(in js.Value, selector string, act func(js.Value)) {
	found := in.Call("querySelectorAll", selector)
	for i := range found.Length() {
		act(found.Index(i))
	}
}

// say and fill write an element's text and its markup, by its ID, where they differ.
func (p *page) say(id, text string) { setText(p.id(id), text) }

func (p *page) fill(id, html string) { setHTML(p.id(id), html) }

func (p *page) hide(id string, hidden bool) { p.id(id).Set("hidden", hidden) }

func setText(at js.Value, text string) {
	if at.Get("textContent").String() != text {
		at.Set("textContent", text)
		at.Delete("shownHTML")
	}
}

// setHTML writes markup of the page's own where it differs from what it wrote last. A part that scrolls and has
// the focus keeps both.
func setHTML(at js.Value, html string) {
	if last := at.Get("shownHTML"); last.Type() == js.TypeString && last.String() == html {
		return
	}
	at.Set("shownHTML", html)
	const scrolls = ".scroll"
	read := at.Call("querySelector", scrolls+":focus")
	if read.IsNull() {
		at.Set("innerHTML", html)
		return
	}
	before, top := at.Call("querySelectorAll", scrolls), read.Get("scrollTop")
	at.Set("innerHTML", html)
	after := at.Call("querySelectorAll", scrolls)
	for i := range min(before.Length(), after.Length()) {
		if before.Index(i).Equal(read) {
			after.Index(i).Call("focus", map[string]any{"preventScroll": true})
			after.Index(i).Set("scrollTop", top)
		}
	}
}

// setWrong marks a field as wrong where there is a fault; its aria-describedby names
// where that stands.
func setWrong(field js.Value, fault string) {
	if fault == "" {
		field.Call("removeAttribute", "aria-invalid")
		return
	}
	field.Call("setAttribute", "aria-invalid", "true")
}

func (p *page) on(target js.Value, event string, act func(js.Value)) {
	target.Call("addEventListener", event, p.answering(act))
}

// onCapture answers an event before anything inside the target does.
func (p *page) onCapture(target js.Value, event string, act func(js.Value)) {
	target.Call("addEventListener", event, p.answering(act), true)
}

// onEnter answers the Enter key in a field.
func (p *page) onEnter(id string, act func()) {
	p.on(p.id(id), "keydown", func(e js.Value) {
		if e.Get("key").String() == "Enter" {
			e.Call("preventDefault")
			act()
		}
	})
}

// now is the time since the page was opened, ms.
func now() float64 { return js.Global().Get("performance").Call("now").Float() }

// later calls act once, in so many ms.
func (p *page) later(ms int, act func()) {
	var f js.Func
	f = p.callback(func([]js.Value) {
		f.Release()
		act()
	})
	js.Global().Call("setTimeout", f, ms)
}

// filling is a slot for markup of the page's own.
type filling struct {
	at    js.Value
	html  string
	known bool
}

func (f *filling) set(html string) {
	if f.known && f.html == html {
		return
	}
	f.at.Set("innerHTML", html)
	f.html, f.known = html, true
}
