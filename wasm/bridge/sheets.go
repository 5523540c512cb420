//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// sheetRow is what the form holds for one sheet on hand.
type sheetRow struct {
	body  js.Value
	sides [work.Sides]*sheetSide
	echo  slot
}

// sheetSide is one of a sheet's two fields.
type sheetSide struct {
	input  js.Value
	fault  slot
	unread bool // an entry could not be read: its message stays until it can
}

// shownSheets is what the list shows: it is written anew where that changes.
type shownSheets struct {
	list   design.OnHand
	system units.System
}

// listenSheets writes the rows of the list, hidden until they are needed, and
// answers them.
func (p *page) listenSheets() {
	box := p.id("onhand")
	table := box.Call("querySelector", "table")
	table.Call("insertAdjacentHTML", "beforeend", markup.SheetRows())
	each(table, "tbody", func(body js.Value) {
		i := len(p.sheets)
		row := &sheetRow{body: body, echo: emptySlot(body.Call("querySelector", ".echo"))}
		for s := range work.Sides {
			key := work.SheetKey(i, s)
			row.sides[s] = &sheetSide{input: p.id(key), fault: emptySlot(p.id(key + "-fault"))}
			p.on(row.sides[s].input, "input", func(js.Value) { p.sheetTyped(i, s, false) })
			p.on(row.sides[s].input, "change", func(js.Value) { p.sheetTyped(i, s, true) })
		}
		p.on(body.Call("querySelector", "button"), "click", func(js.Value) {
			p.dropEntries()
			p.work.SetOnHand(p.work.Entered.OnHand.Without(i))
			p.noted()
			p.id("add-sheet").Call("focus")
		})
		p.sheets = append(p.sheets, row)
	})
	p.on(p.id("add-sheet"), "click", func(js.Value) {
		i := p.work.AddSheet()
		p.noted()
		if i < len(p.sheets) {
			p.sheets[i].sides[work.SheetWidth].input.Call("focus")
			p.sheets[i].sides[work.SheetWidth].input.Call("select")
		}
	})
	// The form's own listeners know parameters only.
	for _, event := range []string{"input", "change", "click"} {
		p.on(box, event, func(e js.Value) { e.Call("stopPropagation") })
	}
}

// showSheets brings the list to what is entered, but for a field being typed in.
func (p *page) showSheets() {
	o := p.work.Entered.OnHand
	if shown := (shownSheets{o, p.work.System}); p.sheetsShown == nil || *p.sheetsShown != shown {
		p.sheetsShown = &shown
	} else {
		return
	}
	p.id("onhand").Call("querySelector", "table").Set("hidden", o.Count == 0)
	p.id("add-sheet").Set("disabled", o.Count == design.MostSheets)
	active := p.document.Get("activeElement")
	p.eachSide(func(i int, s work.Side, side *sheetSide) {
		p.sheets[i].body.Set("hidden", i >= o.Count)
		if i >= o.Count {
			side.unread = false
		}
		if side.unread {
			return
		}
		if !active.Equal(side.input) {
			side.input.Set("value", p.work.SheetText(i, s))
		}
		side.says(p.work.FaultText(work.SheetKey(i, s)))
	})
}

func (p *page) eachSide(act func(int, work.Side, *sheetSide)) {
	for i, row := range p.sheets {
		for s, side := range row.sides {
			act(i, work.Side(s), side)
		}
	}
}

func (s *sheetSide) says(fault string) {
	s.fault.set(fault)
	setWrong(s.input, fault)
}

// sheetTyped reads an entry: while it is typed only its echo shows; done, it is set,
// or its fault stands at the field and what was typed stays.
func (p *page) sheetTyped(i int, s work.Side, done bool) {
	row, side := p.sheets[i], p.sheets[i].sides[s]
	text := side.input.Get("value").String()
	v, echo, err := p.work.ReadSheet(i, s, text)
	p.work.SetTyped(work.SheetKey(i, s), text)
	p.saveSoon()
	if done {
		echo = ""
	}
	row.echo.set(echo)
	switch {
	case !done:
	case err != nil:
		side.unread = true
		side.says(err.Error())
		p.speakWrong(work.SheetLabel(i, s), err.Error())
	default:
		side.unread = false
		p.work.SetSheet(i, s, v)
		side.input.Set("value", p.work.SheetText(i, s))
		p.noted()
	}
}

// forgetSheets drops what was typed and could not be read.
func (p *page) forgetSheets() {
	p.eachSide(func(i int, _ work.Side, side *sheetSide) {
		side.unread = false
		p.sheets[i].echo.set("")
	})
	p.sheetsShown = nil
}
