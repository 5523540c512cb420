//go:build js

package bridge

import (
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"

	"syscall/js"
)

// invented is a record to try the page with; no such boat was measured.
const invented = "Boat: an invented boat, to try this with\n" +
	"Length overall\t16' 4\"\n" +
	"Length over gunwales\t14' 9\"\n" +
	"Beam inside the gunwales\t32 1/2\"\n" +
	"Depth to inwale\t12 3/4\"\tlocked\n" +
	"First thwart, from middle\t35\"\n" +
	"End thwart, from middle\t67\"\n" +
	"First thwart clear\t25 1/4\"\n" +
	"End thwart clear\t10 1/2\"\n" +
	"Rail height at first thwart\t13 1/4\"\tscaled off a drawing\n" +
	"Rail height at end thwart\t15 1/4\"\tscaled off a drawing\n" +
	"Rail height at headboard\t18 1/2\"\tscaled off a drawing\n" +
	"Headboard from middle\t84\"\n" +
	"End height\t25\"\n" +
	"Bottom rise at headboard\t1 1/2\"\n" +
	"Ribs\t44\n"

// listenMeasured answers the record of a measured boat and the tape's readings.
func (p *page) listenMeasured() {
	p.recorded = p.listenMeasures(work.Recorded, "record-list")
	p.readings = p.listenMeasures(work.AsBuilt, "built-list")
	p.on(p.id("record-name"), "change", func(js.Value) {
		p.work.SetTyped("record-name", "")
		p.work.SetRecord(p.id("record-name").Get("value").String(), p.work.Measurements(work.Recorded))
		p.noted()
	})
	p.on(p.id("record-boat"), "change", func(e js.Value) {
		if which, err := strconv.Atoi(e.Get("target").Get("value").String()); err == nil {
			p.readBoat(p.id("record-text").Get("value").String(), which)
		}
	})
	p.on(p.id("record-name"), "input", func(e js.Value) { p.half(e) })
	p.on(p.id("record-text"), "input", func(e js.Value) { p.half(e) })
	p.on(p.id("measured-boat"), "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		switch b.Get("dataset").Get("measured").String() {
		case "add":
			p.addMeasure(p.recorded)
		case "add-reading":
			p.addMeasure(p.readings)
		case "example":
			p.id("record-text").Set("value", invented)
			p.work.SetTyped("record-text", invented)
			p.saveSoon()
			setText(p.id("record-says"), "An invented record: read it, or write your own over it.")
		case "paste":
			p.readPaste()
		case "fit":
			p.findBoat()
		case "each":
			p.predictEach()
		case "built":
			p.bringToReadings()
		case "uncorrect":
			p.work.DropCorrections()
			p.refresh()
			p.save()
		}
	})
}

// half remembers what is being typed in a field that is read when it is left.
func (p *page) half(e js.Value) {
	at := e.Get("target")
	p.work.SetTyped(at.Get("id").String(), at.Get("value").String())
	p.saveSoon()
}

// readPaste puts a pasted table into the record; of one with many boats, the one chosen.
func (p *page) readPaste() {
	text := p.id("record-text").Get("value").String()
	boats := record.Boats(text)
	if len(boats) < 2 {
		p.id("record-boats").Set("hidden", true)
		p.readBoat(text, 0)
		return
	}
	var b strings.Builder
	b.WriteString(`<option value="">Choose a boat</option>`)
	for i, name := range boats {
		b.WriteString(`<option value="` + strconv.Itoa(i) + `">` + draw.Escape(name) + `</option>`)
	}
	choice := p.id("record-boat")
	setHTML(choice, b.String())
	p.id("record-boats").Set("hidden", false)
	setText(p.id("record-says"), "This table is of "+strconv.Itoa(len(boats))+" boats: choose the one to read. The record stays as it was.")
	choice.Call("focus")
}

// readBoat reads a boat of a pasted table and says which rows could not be read.
func (p *page) readBoat(text string, which int) {
	name, data, refused := record.Read(text, which, p.work.System)
	var b strings.Builder
	b.WriteString(strconv.Itoa(len(data)) + " read")
	switch was := len(p.work.Measurements(work.Recorded)); {
	case len(data) == 0:
		b.WriteString(". The record stays as it was.")
	case was > 0:
		b.WriteString(", in place of the " + strconv.Itoa(was) + " there were: undo brings those back.")
	default:
		b.WriteString(" into the record above.")
	}
	for _, r := range refused {
		b.WriteString("<br>Row " + strconv.Itoa(r.Row) + ", " + draw.Escape(r.Text) + ": " + draw.Escape(r.Why))
	}
	setHTML(p.id("record-says"), b.String())
	if len(data) > 0 {
		if name == "" {
			name = p.work.Notebook.Record.Name
		}
		p.work.SetRecord(name, data)
		p.noted()
	}
}

// findBoat finds the boat that rebuilds the record.
func (p *page) findBoat() {
	if len(p.work.Measurements(work.Recorded)) == 0 {
		setText(p.id("record-said"), "There is no measurement to go by: add one.")
		return
	}
	said := p.shelf.FindBoat()
	p.found, p.foundFor = said, p.shelf.InHand().Entered
	p.tookUp()
}

// showRecord stands the boat in hand beside its record, as it changes, in the table
// and over the picture, and shows what is in the notebook.
func (p *page) showRecord() {
	p.showMeasures(p.recorded)
	p.showMeasures(p.readings)
	p.showSaid()
	corrections := p.work.Corrections()
	setText(p.id("corrected"), corrections)
	p.id("uncorrect").Set("hidden", corrections == "")
	if p.work.Entered != p.builtFor {
		// What moved, moved in another boat or in this one as it was.
		p.clear("built-notes", "built-moved", "built-ribs")
	}
	another := p.measured != p.work.Notebook || p.measuredIn != p.work.System
	if len(p.work.Measurements(work.Recorded)) == 0 && !another {
		return
	}
	if another {
		p.measured, p.measuredIn = p.work.Notebook, p.work.System
		p.id("record-name").Set("value", p.work.Notebook.Record.Name)
		p.clear("record-each", "built-notes", "built-moved", "built-ribs")
		held := answer.Table{}
		if p.work.Notebook.Found {
			held = answer.HeldTable(p.work.Fitted().Held, p.work.System)
		}
		p.writeInto("record-held", held)
	}
	rows := p.work.Measured()
	p.writeInto("record-rows", answer.MeasuredTable(rows, p.work.System))
	p.view.Measured = rows
	p.draw()
}

func (p *page) clear(ids ...string) {
	for _, id := range ids {
		setHTML(p.id(id), "")
	}
}

// showSaid writes what is wrong with the measurements at their rows, and what the
// record says of the boat's ends under them.
func (p *page) showSaid() {
	more := map[int]string{}
	var notes []string
	text := ""
	if n := len(p.work.Measurements(work.Recorded)); n > 0 {
		aside := 0
		f := p.work.Fitted()
		for _, c := range f.Conflicts {
			at := c.Aside
			if len(at) == 0 {
				at = c.Data
			}
			for _, i := range at {
				more[i] = c.Message
			}
			aside += len(c.Aside)
		}
		notes = f.EndsDiffer
		text = strconv.Itoa(n) + " measurements"
		if n == 1 {
			text = "1 measurement"
		}
		if aside > 0 {
			text += ", " + strconv.Itoa(aside) + " left out for the reason at its row"
		}
		text += "."
		if p.found != "" && p.foundFor == p.work.Entered {
			text = "Found: " + p.found
		}
		if w := p.work; len(w.Faults) > 0 && !w.OnlyTexts() {
			text += " Nothing is compared with them: the boat cannot be built as it stands. " + w.FirstFault()
		}
	}
	p.recorded.say(more)
	p.readings.say(nil)
	setText(p.id("record-said"), text)
	p.fill("record-notes", markup.Notes(notes))
}

// predictEach leaves out in turn each measurement that was taken at a place and
// predicts it from the rest: a fit for each, and a turn of the page for each.
func (p *page) predictEach() {
	rec, notebook := p.work.Record(), p.work.Notebook
	var all []refit.Prediction
	i := 0
	var next js.Func
	next = p.callback(func([]js.Value) {
		for i < len(rec.Data) && !rec.Data[i].Placed() {
			i++
		}
		switch {
		case p.work.Notebook != notebook:
		case i < len(rec.Data):
			if prediction, ok := refit.Predict(rec, i); ok {
				all = append(all, prediction)
			}
			i++
			setText(p.id("record-said"), "Left out "+strconv.Itoa(i)+" of "+strconv.Itoa(len(rec.Data))+".")
			js.Global().Call("setTimeout", next, 0)
			return
		case len(all) == 0:
			setText(p.id("record-said"), "There is no width, height or point taken at a place to leave out: add some.")
		default:
			p.showSaid()
			p.writeInto("record-each", answer.PredictedTable(all, p.work.System))
		}
		next.Release()
	})
	js.Global().Call("setTimeout", next, 0)
}

// bringToReadings brings the boat in hand to what a tape reads, in one step of undo,
// and lists what moved.
func (p *page) bringToReadings() {
	if len(p.work.Measurements(work.AsBuilt)) == 0 {
		p.fill("built-notes", markup.Notes([]string{"There is no reading to bring the boat to: add one."}))
		return
	}
	r := p.work.BringToReadings()
	p.builtFor = p.work.Entered
	p.refresh()
	p.save()
	var notes []string
	for _, c := range r.Conflicts {
		notes = append(notes, c.Message)
	}
	ribs := answer.RibsMoved(r.Before, r.After, p.work.System)
	switch {
	case !r.Builds:
		notes = append(notes, "The boat cannot be built to these readings as they stand, so no rib is given.")
	case len(ribs.Rows) == 0:
		notes = append(notes, "No rib changes by as much as a tape shows.")
	}
	p.fill("built-notes", markup.Notes(notes))
	p.writeInto("built-moved", answer.MovedTable(r.Rebuilt, p.work.System))
	p.writeInto("built-ribs", ribs)
}

// writeInto writes a table where there is one to write.
func (p *page) writeInto(id string, t answer.Table) { p.fill(id, markup.Titled(t, p.work.System)) }
