//go:build js

package bridge

import (
	"errors"
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/file"
	"barkwright/core/sheet"
	"barkwright/wasm/keep"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// listenFiles answers the controls that save and open boats, and the shelf.
func (p *page) listenFiles() {
	var options strings.Builder
	options.WriteString(`<option value="">Start from…</option><option value="-1">` + draw.Escape(design.Default().Name) + `</option>`)
	for i, d := range design.Starting() {
		options.WriteString(`<option value="` + strconv.Itoa(i) + `">` + draw.Escape(d.Name) + `</option>`)
	}
	p.id("starting").Set("innerHTML", options.String())
	p.on(p.id("starting"), "change", func(e js.Value) {
		i, err := strconv.Atoi(e.Get("target").Get("value").String())
		e.Get("target").Set("value", "")
		if err != nil {
			return
		}
		d := design.Default()
		if i >= 0 {
			d = design.Starting()[i]
		}
		p.shelf.Add(d)
		p.tookUp()
	})
	p.on(p.id("shelf"), "change", func(e js.Value) {
		i, _ := strconv.Atoi(e.Get("target").Get("value").String())
		p.takeUp(func(s *work.Shelf) error { return s.Take(i) }, p.shelf.IDAt(i))
	})
	p.on(p.id("open-file"), "change", func(e js.Value) {
		files := e.Get("target").Get("files")
		if files.Length() > 0 {
			p.openFile(files.Index(0))
		}
		e.Get("target").Set("value", "")
	})
	p.on(p.id("line"), "keydown", func(e js.Value) {
		if e.Get("key").String() == "Enter" {
			e.Call("preventDefault")
			p.openLine()
		}
	})
	p.listenPaper()
}

// tookUp shows another boat than the one before.
func (p *page) tookUp() {
	p.shelved()
	p.save()
}

// shelved shows the boat that is in hand on the shelf.
func (p *page) shelved() {
	p.work = p.shelf.InHand()
	p.view.System = p.work.System
	if !p.shelf.Elsewhere() {
		p.unsay("elsewhere")
	}
	p.did("")
	p.forgetEntries()
	p.showTyped()
	p.refresh()
	p.showShelf()
	p.sayMoved()
}

// sayMoved tells of numbers that moved since the boat was written.
func (p *page) sayMoved() {
	if text := p.work.SayMoved(); text != "" {
		p.notice("moved", text)
	}
}

// did says under the buttons over the form what one of them has done.
func (p *page) did(text string) { setText(p.id("did"), text) }

// keep answers the buttons of the shelf and the files.
func (p *page) keep(what string) {
	clearing := p.clearing
	p.clearing = false
	switch what {
	case "copy":
		p.shelf.Copy()
		p.tookUp()
	case "remove":
		p.takeUp((*work.Shelf).Remove, "")
	case "bring-back":
		i := p.id("taken-off").Get("selectedIndex").Int()
		p.takeUp(func(s *work.Shelf) error { return s.BringBack(i) }, "")
	case "clear-off":
		p.clearTakenOff(clearing)
	case "save-file":
		p.saveThis()
	case "save-all":
		p.saveAll()
	case "open-file":
		p.id("open-file").Call("click")
	case "show-line":
		p.showLine()
	case "open-line":
		p.openLine()
	}
}

// clearTakenOff forgets what was taken off, once it has been asked for twice.
func (p *page) clearTakenOff(sure bool) {
	if n := strconv.Itoa(len(p.shelf.TakenOff())); !sure {
		p.clearing = true
		p.fileSays("Taken off: " + n + ". Press once more to forget them for good.")
		return
	}
	p.shelf.ClearTakenOff()
	p.showShelf()
	p.fileSays("What was taken off is forgotten.")
}

// showShelf lists the boats that are kept, and those taken off.
func (p *page) showShelf() {
	names := p.shelf.Names()
	setHTML(p.id("shelf"), markup.Named(names))
	p.id("shelf").Set("value", strconv.Itoa(p.shelf.Current()))
	off := p.shelf.TakenOff()
	setHTML(p.id("taken-off"), markup.Named(off))
	p.id("off").Set("hidden", len(off) == 0)
	p.id("remove").Set("disabled", len(names) == 1)
	p.id("save-all").Set("hidden", len(names) == 1)
}

func (p *page) fileSays(text string) { setText(p.id("file-says"), text) }

func (p *page) saveThis() {
	if p.saveBoats(p.shelf.Whole(), sheet.FileName(p.work.Entered.Name, "", "json")) {
		p.fileSays("Saved as a file: this boat, with what was measured of it.")
	}
}

func (p *page) saveAll() {
	f, err := p.shelf.All()
	if err != nil {
		p.nameUnread()
		p.fileSays(err.Error() + " Nothing is saved: open the boats that can be opened and save each.")
		return
	}
	n := strconv.Itoa(len(f.Boats))
	if p.saveBoats(f, n+"-canoes.json") {
		p.fileSays("Saved as a file: all " + n + " boats on this page.")
	}
}

// saveBoats hands the user a file of boats, or says why it cannot.
func (p *page) saveBoats(f file.File, name string) bool {
	b, err := f.Encode()
	if err != nil {
		p.fileSays(err.Error())
		return false
	}
	p.download(name, "application/json", string(b))
	return true
}

// download hands the user a text as a file.
func (p *page) download(name, kind, text string) {
	js.Global().Call("handOver", name, kind, text)
}

// openFile reads a file of boats and puts those beside the others that are not here.
func (p *page) openFile(chosen js.Value) {
	if chosen.Get("size").Int() > file.MaxSize {
		p.fileSays(file.ErrTooLarge.Error())
		return
	}
	var read, failed js.Func
	done := func() { read.Release(); failed.Release() }
	read = p.callback(func(args []js.Value) {
		defer done()
		p.put(args[0].String())
	})
	failed = p.callback(func([]js.Value) {
		defer done()
		p.fileSays("The browser could not read the file. Nothing is changed.")
	})
	chosen.Call("text").Call("then", read, failed)
}

// put puts the boats of a file's text on the shelf.
func (p *page) put(text string) {
	f, err := file.Decode([]byte(text))
	switch {
	case err != nil:
		p.fileSays(err.Error() + " Nothing is changed.")
		return
	case len(f.Boats) == 0:
		p.fileSays("The file holds no design. Nothing is changed.")
		return
	}
	p.save()
	put, err := p.shelf.Put(f)
	if errors.Is(err, keep.ErrRefused) {
		p.fileSays("The file holds " + strconv.Itoa(len(f.Boats)) + " boats, and the browser has no room to keep them beside those that are here. Nothing is changed: save what is here as a file and take it off, then open this one.")
		return
	}
	if err != nil {
		p.nameUnread()
	}
	p.tookUp()
	says := "Opened " + strconv.Itoa(put.Added) + " from the file, beside those that were here."
	if put.Here > 0 {
		says += " Here already, and not added again: " + strconv.Itoa(put.Here) + "."
	}
	if put.Back > 0 {
		says += " Brought back from what was taken off: " + strconv.Itoa(put.Back) + "."
	}
	p.fileSays(says)
}

// showLine writes the boat as one line of text, ready to be copied.
func (p *page) showLine() {
	line, err := design.Line(p.work.Entered)
	if err != nil {
		p.fileSays(err.Error())
		return
	}
	field := p.id("line")
	field.Set("value", line)
	field.Call("focus")
	field.Call("select")
	js.Global().Call("copyText", line)
	p.fileSays("The boat as one line, selected to be copied. Its notes and the crew's sheets of bark stay in the file.")
}

func (p *page) openLine() {
	d, moved, err := design.ReadLine(strings.TrimSpace(p.id("line").Get("value").String()))
	if err != nil {
		p.fileSays(err.Error() + " Nothing is changed.")
		return
	}
	p.shelf.Add(d)
	p.shelf.InHand().Moved = moved
	p.tookUp()
	p.fileSays("Opened from the line, beside those that were here.")
}
