//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/lesson"
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
		if what := work.LessonByKey(e.Get("key").String()); what != "" {
			e.Call("preventDefault")
			p.lesson(what)
		}
	})
}

// lesson does what a button or a key of the lessons says.
func (p *page) lesson(what string) {
	if what == "big" {
		p.wall(data(p.root(), "teach") == "")
		p.id("lesson-title").Call("focus")
		return
	}
	before := p.desk.OpenLesson()
	p.reply(p.desk.Lesson(what, p.desk.Dates.Written(today())))
	switch open := p.desk.OpenLesson(); open {
	case before:
	case "":
		p.wall(false)
	default:
		p.lookAtLesson(open)
	}
	p.showLessons()
	p.turnIn(0)
}

// lookAtLesson shows the picture as at the lesson's home: what is asked about is seen.
func (p *page) lookAtLesson(key string) {
	l, _, _ := lesson.Lookup(key)
	if st, ok := work.AtStage(l.Home).Stage(); ok {
		p.enter(st.Look, p.picture.Size())
		p.showState()
	}
}

// wall fills the window with the picture and the lesson, to be read from the back of a room, or ends that.
func (p *page) wall(on bool) {
	if on == (data(p.root(), "teach") != "") {
		return
	}
	if on {
		if data(p.root(), "big") != "" {
			p.setPicture("big")
		}
		p.root().Get("dataset").Set("teach", "true")
	} else {
		p.root().Get("dataset").Delete("teach")
	}
	js.Global().Call("measureRoom")
	// Once the browser has laid the page out anew.
	p.later(pictureLook, p.draw)
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
