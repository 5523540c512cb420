//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/wasm/work"
)

func (p *page) listenLessons() {
	p.on(p.id("lessons"), "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "[data-lesson]")
		if !b.IsNull() {
			p.lesson(data(b, "lesson"))
		}
	})
	p.on(p.document, "keydown", func(e js.Value) {
		if data(p.root(), "teach") == "" || e.Get("target").Call("matches", "input, select, textarea, button").Bool() {
			return
		}
		key := e.Get("key").String()
		// Where keys of one letter do nothing, the space bar and the arrows still do.
		if len(key) == 1 && key != " " && !p.desk.Letters() {
			return
		}
		if what := work.LessonByKey(key); what != "" {
			e.Call("preventDefault")
			p.lesson(what)
		}
	})
}

// lesson does what a button or a key of the lessons says.
func (p *page) lesson(what string) {
	if what == "big" {
		if data(p.root(), "teach") != "" {
			p.root().Get("dataset").Delete("teach")
		} else {
			p.root().Get("dataset").Set("teach", "true")
		}
		js.Global().Call("measureRoom")
		p.id("lesson-title").Call("focus")
		// Once the browser has laid the page out anew.
		p.later(pictureLook, p.draw)
		return
	}
	if what == "hold" {
		p.hold(p.desk.Hold("turn", clock()))
	} else {
		p.reply(p.desk.Lesson(what, p.desk.Dates.Written(today())))
	}
	if p.desk.OpenLesson() == "" {
		p.root().Get("dataset").Delete("teach")
	}
	p.showLessons()
	p.turnIn(0)
}

// showLessons writes the list of lessons, or the one that is open.
func (p *page) showLessons() {
	if !p.sees(work.Lessons) {
		return
	}
	list, open := p.desk.ShowLesson()
	p.asking.list.set(list)
	p.asking.lesson.set(open)
}
