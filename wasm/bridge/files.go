//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/sheet"
)

// listenFiles answers the controls that keep, save and open designs.
func (p *page) listenFiles() {
	var options strings.Builder
	options.WriteString(`<option value="">Start from…</option><option value="-1">` + escape.Replace(design.Default().Name) + `</option>`)
	for i, d := range design.Starting() {
		options.WriteString(`<option value="` + strconv.Itoa(i) + `">` + escape.Replace(d.Name) + `</option>`)
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
		p.shelf.Take(i)
		p.tookUp()
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

// tookUp shows another design than the one before.
func (p *page) tookUp() {
	p.work = p.shelf.InHand()
	p.view.System = p.work.System
	p.forgetEntries()
	p.refresh()
	p.save()
}

// keep answers the buttons of the shelf and the files.
func (p *page) keep(what string) {
	switch what {
	case "copy":
		p.shelf.Copy()
		p.tookUp()
	case "remove":
		p.shelf.Remove()
		p.tookUp()
	case "bring-back":
		p.shelf.BringBack()
		p.tookUp()
	case "save-file":
		p.saveFile()
	case "open-file":
		p.id("open-file").Call("click")
	case "show-line":
		p.showLine()
	case "open-line":
		p.openLine()
	}
}

// showShelf lists the designs that are kept.
func (p *page) showShelf() {
	var b strings.Builder
	for i, w := range p.shelf.All {
		selected := ""
		if i == p.shelf.Current {
			selected = " selected"
		}
		name := w.Entered.Name
		if name == "" {
			name = "without a name"
		}
		b.WriteString(`<option value="` + strconv.Itoa(i) + `"` + selected + `>` + escape.Replace(name) + `</option>`)
	}
	setHTML(p.id("shelf"), b.String())
	p.id("shelf").Set("value", strconv.Itoa(p.shelf.Current))
	back := p.id("bring-back")
	back.Set("hidden", p.shelf.Removed == nil)
	p.id("remove").Set("disabled", len(p.shelf.All) == 1)
}

func (p *page) fileSays(text string) { setText(p.id("file-says"), text) }

func (p *page) saveFile() {
	b, err := p.shelf.File().Encode()
	if err != nil {
		p.fileSays(err.Error())
		return
	}
	p.download(sheet.FileName(p.work.Entered.Name, "", "json"), "application/json", string(b))
	p.fileSays("Saved as a file with every design on this page.")
}

// download hands the user a text as a file.
func (p *page) download(name, kind, text string) {
	js.Global().Call("handOver", name, kind, text)
}

// openFile reads a file of designs and puts them beside those that are there.
func (p *page) openFile(chosen js.Value) {
	if chosen.Get("size").Int() > file.MaxSize {
		p.fileSays(file.ErrTooLarge.Error())
		return
	}
	var read, failed js.Func
	done := func() { read.Release(); failed.Release() }
	read = js.FuncOf(func(_ js.Value, args []js.Value) any {
		defer done()
		f, err := file.Decode([]byte(args[0].String()))
		switch {
		case err != nil:
			p.fileSays(err.Error() + " Nothing is changed.")
		case len(f.Boats) == 0:
			p.fileSays("The file holds no design. Nothing is changed.")
		default:
			p.shelf.Put(f)
			p.tookUp()
			p.fileSays("Opened " + strconv.Itoa(len(f.Boats)) + " from the file, beside those that were here.")
		}
		return nil
	})
	failed = js.FuncOf(func(js.Value, []js.Value) any {
		defer done()
		p.fileSays("The browser could not read the file. Nothing is changed.")
		return nil
	})
	chosen.Call("text").Call("then", read, failed)
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
	d, err := design.ParseLine(strings.TrimSpace(p.id("line").Get("value").String()))
	if err != nil {
		p.fileSays(err.Error() + " Nothing is changed.")
		return
	}
	p.shelf.Add(d)
	p.tookUp()
	p.fileSays("Opened from the line, beside those that were here.")
}

// keptKey names what the browser keeps for this page.
const keptKey = "barkwright.designs"

// save keeps the designs where the browser allows it, and says which; where the
// page is served the boat in hand stands in its address too.
func (p *page) save() {
	p.showShelf()
	b, err := p.shelf.File().Encode()
	if err != nil {
		setText(p.id("kept"), err.Error())
		return
	}
	says := "This browser keeps nothing here: save a file before you close the page."
	if js.Global().Call("keepText", keptKey, string(b)).Bool() {
		says = "Kept in this browser, for this copy of the page: save a file before you move it or change browsers."
	}
	setText(p.id("kept"), says)
	if line, err := design.Line(p.work.Entered); err == nil {
		js.Global().Call("showInAddress", line)
	}
}

// recall brings back what the browser kept, if anything, with the boat of the address
// in hand: one that is kept as it stands there with all that is kept beside it, any
// other beside those.
func (p *page) recall() {
	f, err := file.Decode([]byte(js.Global().Call("keptText", keptKey).String()))
	if err == nil {
		p.shelf.Refill(f)
	}
	line := js.Global().Call("lineInAddress").String()
	d, unread := design.ParseLine(line)
	switch {
	case line == "" || unread != nil:
	case err != nil:
		p.shelf.Refill(file.File{Boats: []file.Boat{{Design: d}}})
	default:
		p.shelf.TakeLine(line, d)
	}
}
