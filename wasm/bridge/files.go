//go:build js

package bridge

import (
	"strconv"
	"syscall/js"

	"barkwright/core/file"
	"barkwright/core/units"
	"barkwright/wasm/desk"
	"barkwright/wasm/markup"
)

// listenFiles answers the controls that save and open boats, and the shelf.
func (p *page) listenFiles() {
	p.showStarting()
	p.on(p.id("starting"), "change", func(e js.Value) {
		i, ok := number(e.Get("target"))
		e.Get("target").Set("value", "")
		if ok {
			p.reply(p.desk.Start(i))
		}
	})
	p.on(p.id("shelf"), "change", func(e js.Value) {
		i, _ := number(e.Get("target"))
		p.reply(p.desk.Take(i))
	})
	p.on(p.id("open-file"), "change", func(e js.Value) {
		if files := e.Get("target").Get("files"); files.Length() > 0 {
			p.openFile(files.Index(0))
		}
		e.Get("target").Set("value", "")
	})
	p.onEnter("line", func() { p.reply(p.desk.OpenLine(p.text("line"))) })
}

// keep answers the buttons of the shelf and the files.
func (p *page) keep(what string) {
	if what == "open-file" {
		p.id("open-file").Call("click")
	}
	p.reply(p.desk.Keep(what, p.id("taken-off").Get("selectedIndex").Int(), p.text("line")))
}

// openFile reads a file of boats.
func (p *page) openFile(chosen js.Value) {
	if chosen.Get("size").Int() > file.MaxSize {
		p.reply(desk.TooLarge())
		return
	}
	var read, failed js.Func
	done := func() { read.Release(); failed.Release() }
	read = p.callback(func(args []js.Value) {
		defer done()
		p.reply(p.desk.OpenFile(args[0].String()))
	})
	failed = p.callback(func([]js.Value) {
		defer done()
		p.reply(desk.Unreadable())
	})
	chosen.Call("text").Call("then", read, failed)
}

// shelved shows the boat that is in hand on the shelf.
func (p *page) shelved() {
	p.work = p.desk.Show()
	p.view.System = p.work.System
	p.reply(p.desk.TookUp())
	p.forgetEntries()
	p.showTyped()
	p.refresh()
	p.showShelf()
	p.reply(p.desk.Moved())
}

// showShelf lists the boats that are kept, and those taken off.
func (p *page) showShelf() {
	names, off := p.desk.Shelf.Names(), p.desk.Shelf.TakenOff()
	p.fill("shelf", markup.Named(names))
	p.id("shelf").Set("value", strconv.Itoa(p.desk.Shelf.Current()))
	p.fill("taken-off", markup.Named(off))
	p.hide("off", len(off) == 0)
	p.id("remove").Set("disabled", len(names) == 1)
	p.hide("save-all", len(names) == 1)
}

// showStarting lists the boats to start from, with their lengths.
func (p *page) showStarting() {
	p.fill("starting", desk.Starting(p.work.System))
}

// markSystem tells the page's style which of the sizes written both ways to show.
func (p *page) markSystem() { p.root().Get("dataset").Set("metric", p.work.System == units.Metric) }
