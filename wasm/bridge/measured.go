//go:build js

package bridge

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/record"
	"barkwright/core/sheet"

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
	p.on(p.id("measured-boat"), "click", func(e js.Value) {
		b := e.Get("target").Call("closest", "button")
		if b.IsNull() {
			return
		}
		switch b.Get("dataset").Get("measured").String() {
		case "example":
			p.id("record-text").Set("value", invented)
			setText(p.id("record-says"), "An invented record: read it, or write your own over it.")
		case "fit":
			p.fitRecord()
		case "each":
			p.predictEach()
		case "built":
			p.asBuilt()
		}
	})
}

// readPaste reads a text of measurements and says which rows could not be read.
func (p *page) readPaste(field, says string) []record.Datum {
	data, refused := record.Read(p.id(field).Get("value").String(), p.work.System)
	var b strings.Builder
	b.WriteString(strconv.Itoa(len(data)) + " read")
	for _, r := range refused {
		b.WriteString("<br>Row " + strconv.Itoa(r.Row) + ", " + escape.Replace(r.Text) + ": " + escape.Replace(r.Why))
	}
	setHTML(p.id(says), b.String())
	return data
}

// fitRecord puts the boat that rebuilds the record beside those that are here.
func (p *page) fitRecord() {
	data := p.readPaste("record-text", "record-says")
	if len(data) == 0 {
		// Nothing of an earlier record may stand under the refusals of this one.
		p.record, p.fitted, p.view.Measured = nil, nil, nil
		for _, id := range []string{"record-notes", "record-rows", "record-each", "record-held"} {
			setHTML(p.id(id), "")
		}
		p.draw()
		return
	}
	rec := record.Record{Name: firstLine(p.id("record-text").Get("value").String()), Data: data}
	f := record.Fit(rec)
	p.record, p.fitted = &rec, &f
	p.shelf.Add(f.Design)
	p.tookUp()
	var notes []string
	for _, c := range f.Conflicts {
		notes = append(notes, c.Message)
	}
	notes = append(notes, f.EndsDiffer...)
	p.writeNotes("record-notes", notes)
	p.writeInto("record-held", answer.HeldTable(f.Held, p.work.System))
	setHTML(p.id("record-each"), "")
	p.showRecord()
}

// firstLine is a record's name where its first line says one.
func firstLine(text string) string {
	line, _, _ := strings.Cut(text, "\n")
	if name, ok := strings.CutPrefix(line, "Boat:"); ok {
		return strings.TrimSpace(name)
	}
	return "From a record"
}

// showRecord stands the boat in hand beside the record, as it changes, in the table
// and over the picture.
func (p *page) showRecord() {
	if p.record == nil {
		return
	}
	rows := record.Measure(p.work.Canoe.Design, *p.record)
	if p.work.Canoe.Design == p.fitted.Design {
		rows = p.fitted.Rows
	}
	p.writeInto("record-rows", answer.MeasuredTable(rows))
	p.view.Measured = rows
	p.draw()
}

func (p *page) predictEach() {
	if p.record == nil {
		setText(p.id("record-says"), "Read a record first.")
		return
	}
	p.writeInto("record-each", answer.PredictedTable(record.PredictEach(*p.record)))
}

// asBuilt brings the boat in hand to what a tape reads, in one step of undo, and
// lists what moved.
func (p *page) asBuilt() {
	readings := p.readPaste("built-text", "built-says")
	if len(readings) == 0 {
		return
	}
	before := p.work.Canoe
	r := record.AsBuilt(before.Design, readings)
	p.replace(r.Design)
	var notes []string
	for _, c := range r.Conflicts {
		notes = append(notes, c.Message)
	}
	p.writeNotes("built-notes", notes)
	p.writeInto("built-moved", answer.MovedTable(r.Moved, p.work.System))
	if len(core.Validate(r.Design)) > 0 {
		setHTML(p.id("built-ribs"), "<p>The boat cannot be built to these readings as they stand, so no rib is given.</p>")
		return
	}
	p.writeInto("built-ribs", answer.RibsMoved(before, p.work.Canoe))
}

// writeNotes writes each note on a line of its own.
func (p *page) writeNotes(id string, notes []string) {
	var b strings.Builder
	for _, n := range notes {
		b.WriteString("<p>" + escape.Replace(n) + "</p>")
	}
	setHTML(p.id(id), b.String())
}

// writeInto writes a table where there is one to write.
func (p *page) writeInto(id string, t answer.Table) {
	var b strings.Builder
	if len(t.Rows) > 0 {
		b.WriteString(`<h3>` + escape.Replace(t.Title) + `</h3><p class="help">` + escape.Replace(t.Note) + `</p><div class="scroll" tabindex="0" role="region" aria-label="` + escape.Replace(t.Title) + `">`)
		if err := sheet.HTMLTable(&b, t, p.work.System); err != nil {
			panic("bridge: a strings.Builder does not fail")
		}
		b.WriteString("</div>")
	}
	setHTML(p.id(id), b.String())
}
