//go:build js

package bridge

import (
	"fmt"
	"strings"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
)

// sheetRow is what the form holds for one sheet on hand.
type sheetRow struct {
	body  js.Value
	sides [2]*sheetSide // width and length
	echo  slot
}

// sheetSide is one of a sheet's two fields.
type sheetSide struct {
	input  js.Value
	fault  slot
	key    string
	unread bool // an entry could not be read: its message stays until it can
}

// shownSheets is what the list shows: it is written anew where that changes.
type shownSheets struct {
	list   design.OnHand
	system units.System
}

// sideNames are the sides' names in the form, in the order of sheetRow.
var sideNames = [2]string{"width", "length"}

const sheetRowHTML = `<tbody data-sheet="%[1]d" hidden><tr><th scope="row">%[2]d</th>
<td><input type="text" id="%[3]s" aria-label="Sheet %[2]d, width" aria-describedby="%[3]s-fault sheet%[2]d-echo"></td>
<td><input type="text" id="%[4]s" aria-label="Sheet %[2]d, length" aria-describedby="%[4]s-fault sheet%[2]d-echo"></td>
<td><button type="button" aria-label="Take sheet %[2]d off the list">✕</button></td></tr>
<tr><td colspan="4"><output aria-live="off" class="echo" id="sheet%[2]d-echo"></output><p class="fault" id="%[3]s-fault"></p><p class="fault" id="%[4]s-fault"></p></td></tr></tbody>`

// listenSheets writes the rows of the list, hidden until they are needed, and
// answers them.
func (p *page) listenSheets() {
	box := p.id("onhand")
	table := box.Call("querySelector", "table")
	var rows strings.Builder
	for i := range design.MostSheets {
		fmt.Fprintf(&rows, sheetRowHTML, i, i+1, design.SheetWidthKey(i), design.SheetLengthKey(i))
	}
	table.Call("insertAdjacentHTML", "beforeend", rows.String())
	each(table, "tbody", func(body js.Value) {
		i := len(p.sheets)
		row := &sheetRow{body: body, echo: slot{at: body.Call("querySelector", ".echo"), known: true}}
		for k, key := range [2]string{design.SheetWidthKey(i), design.SheetLengthKey(i)} {
			row.sides[k] = &sheetSide{input: p.id(key), key: key, fault: slot{at: p.id(key + "-fault"), known: true}}
			p.on(row.sides[k].input, "input", func(js.Value) { p.sheetTyped(i, k, false) })
			p.on(row.sides[k].input, "change", func(js.Value) { p.sheetTyped(i, k, true) })
		}
		p.on(body.Call("querySelector", "button"), "click", func(js.Value) { p.removeSheet(i) })
		p.sheets = append(p.sheets, row)
	})
	p.on(p.id("add-sheet"), "click", func(js.Value) { p.addSheet() })
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
	for i, row := range p.sheets {
		row.body.Set("hidden", i >= o.Count)
		for k, side := range row.sides {
			if i >= o.Count {
				side.unread = false
			}
			if side.unread {
				continue
			}
			if !active.Equal(side.input) {
				v := [2]float64{o.Sheets[i].Width, o.Sheets[i].Length}[k]
				side.input.Set("value", units.Length.Format(v, p.work.System))
			}
			side.fault.set(p.work.FaultText(side.key))
			setWrong(side.input, side.fault.text)
		}
	}
}

// sheetTyped reads an entry: while it is typed only its echo shows; done, it is set,
// or its fault stands at the field and what was typed stays.
func (p *page) sheetTyped(i, k int, done bool) {
	row, side := p.sheets[i], p.sheets[i].sides[k]
	v, echo, err := units.Length.Parse(side.input.Get("value").String(), p.work.System)
	row.echo.set("")
	p.work.SetTyped(side.key, side.input.Get("value").String())
	p.saveSoon()
	switch {
	case err == nil && !done:
		row.echo.set("Sheet " + units.Count.Format(float64(i+1), p.work.System) + ", " + sideNames[k] + ": " + echo)
	case err != nil && done:
		side.unread = true
		side.fault.set(err.Error())
		setWrong(side.input, side.fault.text)
		p.speakWrong(side.input.Call("getAttribute", "aria-label").String(), err.Error())
	case done:
		side.unread = false
		p.work.SetTyped(side.key, "")
		s := p.work.Entered.OnHand.Sheets[i]
		*[2]*float64{&s.Width, &s.Length}[k] = v
		side.input.Set("value", units.Length.Format(v, p.work.System))
		p.setSheets(p.work.Entered.OnHand.Put(i, s))
	}
}

func (p *page) setSheets(o design.OnHand) {
	p.work.SetOnHand(o)
	p.refresh()
	p.save()
}

// addSheet adds a sheet of the size set for all, to be changed to the real one.
func (p *page) addSheet() {
	d := p.work.Entered
	i := d.OnHand.Count
	p.setSheets(d.OnHand.Put(i, design.Sheet{Width: d.SheetWidth, Length: d.SheetLength}))
	if i < len(p.sheets) {
		first := p.sheets[i].sides[0].input
		first.Call("focus")
		first.Call("select")
	}
}

// removeSheet takes a sheet off the list and moves the focus to what is left.
func (p *page) removeSheet(i int) {
	p.dropEntries()
	p.setSheets(p.work.Entered.OnHand.Without(i))
	p.id("add-sheet").Call("focus")
}

// forgetSheets drops what was typed and could not be read.
func (p *page) forgetSheets() {
	for _, row := range p.sheets {
		for _, side := range row.sides {
			side.unread = false
		}
		row.echo.set("")
	}
	p.sheetsShown = nil
}
