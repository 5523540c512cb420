package desk

import (
	"strconv"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
	"barkwright/wasm/markup"
	"barkwright/wasm/work"
)

// Where it is said what stands of the record and of pasted lines.
const (
	recordSaid  = "record-said"
	recordSays  = "record-says"
	recordLines = "record-text"
	recordBoats = "record-boats"
	builtNotes  = "built-notes"
)

// Invented is a record to try the page with; no such boat was measured.
const Invented = "Boat: an invented boat, to try this with\n" +
	"Length overall\t16' 4\"\n" +
	"Length over gunwales\t14' 9\"\n" +
	"Beam inside the gunwales\t32 1/2\"\n" +
	"Depth to inwale\t12 3/4\"\tlocked\n" +
	"First thwart, from middle\t35\"\n" +
	"End thwart, from middle\t67\"\n" +
	"First thwart clear\t25 1/4\"\n" +
	"End thwart clear\t10 1/2\"\n" +
	"Cap top height at first thwart\t13 1/4\"\tscaled off a drawing\n" +
	"Cap top height at end thwart\t15 1/4\"\tscaled off a drawing\n" +
	"Cap top height at headboard\t18 1/2\"\tscaled off a drawing\n" +
	"Headboard from middle\t84\"\n" +
	"Stem-head height\t25\"\n" +
	"Bottom rise at headboard\t1 1/2\"\n" +
	"Ribs\t44\n"

// recorded is what was last said and found of a record, and of which boat.
type recorded struct {
	found     string
	foundFor  design.Design
	predicted []refit.Prediction
	built     work.Rebuilt
	builtFor  design.Design
	isBuilt   bool
	of, shown noted // whose predictions and readings these are, and what shows
}

// noted is a notebook in the units of its messages.
type noted struct {
	*record.Notebook
	units.System
}

// Record answers the buttons of the record and the readings; lines is what stands pasted.
func (d *Desk) Record(what, lines string) Reply {
	switch what {
	case "example":
		d.shown.SetTyped(recordLines, Invented)
		return Reply{Fields: map[string]string{recordLines: Invented},
			Says: []Said{{recordSays, "An invented record: read it, or write your own over it."}}}
	case "paste":
		return d.paste(lines)
	case "fit":
		return d.find()
	case "built":
		return d.bring()
	case "uncorrect":
		d.shown.DropCorrections()
		return Reply{Changed: true}
	}
	return Reply{}
}

// paste puts a pasted table into the record; of one with many boats, the one chosen.
func (d *Desk) paste(lines string) Reply {
	names := record.Boats(lines)
	if len(names) < 2 {
		r := d.ReadBoat(lines, 0)
		r.Hidden = map[string]bool{recordBoats: true}
		return r
	}
	return Reply{
		Hidden: map[string]bool{recordBoats: false},
		Markup: map[string]string{"record-boat": markup.Option("", "Choose a boat") + markup.Options(names)},
		Focus:  "record-boat",
		Says: []Said{{recordSays, "This table is of " + strconv.Itoa(len(names)) +
			" boats: choose the one to read. The record stays as it was."}},
	}
}

// ReadBoat reads a boat of pasted lines and says which rows could not be read.
func (d *Desk) ReadBoat(lines string, which int) Reply {
	name, data, refused := record.Read(lines, which, d.shown.System)
	said := strconv.Itoa(len(data)) + " read"
	switch was := len(d.shown.Measurements(work.Recorded)); {
	case len(data) == 0:
		said += ". The record stays as it was."
	case was > 0:
		said += ", in place of the " + strconv.Itoa(was) + " there were: undo brings those back."
	default:
		said += " into the record above."
	}
	for _, r := range refused {
		said += "<br>Row " + strconv.Itoa(r.Row) + ", " + draw.Escape(r.Text) + ": " + draw.Escape(r.Why)
	}
	r := Reply{Markup: map[string]string{recordSays: said}}
	if len(data) > 0 {
		if name == "" {
			name = d.notebook().Record.Name
		}
		d.shown.SetRecord(name, data)
		r.Changed = true
	}
	return r
}

// find finds the boat that rebuilds the record.
func (d *Desk) find() Reply {
	if len(d.shown.Measurements(work.Recorded)) == 0 {
		return say(recordSaid, "There is no measurement to go by: add one.")
	}
	d.record.found = d.Shelf.FindBoat()
	d.record.foundFor = d.Shelf.InHand().Entered
	return Reply{TookUp: true}
}

// bring brings the boat shown to what a tape reads, in one step of undo.
func (d *Desk) bring() Reply {
	if len(d.shown.Measurements(work.AsBuilt)) == 0 {
		return Reply{Markup: map[string]string{builtNotes: markup.Notes([]string{"There is no reading to bring the boat to: add one."})}}
	}
	d.forgetOthers()
	d.record.built, d.record.isBuilt = d.shown.BringToReadings(), true
	d.record.builtFor = d.shown.Entered
	return Reply{Changed: true, Markup: d.builtSlots()}
}

// builtSlots are what is said of the boat brought to its readings, and what moved.
func (d *Desk) builtSlots() map[string]string {
	if !d.record.isBuilt {
		return map[string]string{builtNotes: "", "built-moved": "", "built-ribs": ""}
	}
	r, s := d.record.built, d.shown.System
	var notes []string
	for _, c := range r.Conflicts {
		notes = append(notes, c.Message)
	}
	ribs := answer.RibsMoved(r.Before, r.After, s)
	switch {
	case !r.Builds:
		notes = append(notes, "The boat cannot be built to these readings as they stand, so no rib is given.")
	case len(ribs.Rows) == 0:
		notes = append(notes, "No rib changes by as much as a tape shows.")
	}
	return map[string]string{builtNotes: markup.Notes(notes),
		"built-moved": markup.Titled(answer.MovedTable(r.Rebuilt, s), s),
		"built-ribs":  markup.Titled(ribs, s)}
}

// forgetOthers forgets what was predicted and brought of another notebook.
func (d *Desk) forgetOthers() {
	if of := (noted{d.notebook(), d.shown.System}); of != d.record.of {
		d.record.of, d.record.predicted, d.record.isBuilt = of, nil, false
	}
}

// RecordSlots are what stands of the record beside the boat shown, as HTML by the ids of
// its places. another tells that the notebook or its units are others than when it was
// called last.
func (d *Desk) RecordSlots() (slots map[string]string, another bool) {
	n, s := d.notebook(), d.shown.System
	d.forgetOthers()
	if d.shown.Entered != d.record.builtFor {
		// What moved, moved in another boat or in this one as it was.
		d.record.isBuilt = false
	}
	another = d.record.shown != d.record.of
	d.record.shown = d.record.of
	slots = d.builtSlots()
	slots["record-rows"] = markup.Titled(answer.MeasuredTable(d.shown.Measured(), s), s)
	slots["record-each"], slots["record-held"] = "", ""
	if d.record.predicted != nil {
		slots["record-each"] = markup.Titled(answer.PredictedTable(d.record.predicted, s), s)
	}
	if n.Found {
		slots["record-held"] = markup.Titled(answer.HeldTable(d.shown.Fitted().Held, s), s)
	}
	return slots, another
}

// Said is what stands of the measurements: what is wrong with each, by its place, and
// what is said of all and noted under it, as HTML.
func (d *Desk) Said() (rows map[int]string, said, notes string) {
	w, n := d.shown, len(d.shown.Measurements(work.Recorded))
	if n == 0 {
		return nil, "", ""
	}
	rows = map[int]string{}
	aside := 0
	f := w.Fitted()
	for _, c := range f.Conflicts {
		at := c.Aside
		if len(at) == 0 {
			at = c.Data
		}
		for _, i := range at {
			rows[i] = c.Message
		}
		aside += len(c.Aside)
	}
	said = counted(n, "measurement", "measurements")
	if aside > 0 {
		said += ", " + strconv.Itoa(aside) + " left out for the reason at its row"
	}
	said += "."
	if d.record.found != "" && d.record.foundFor == w.Entered {
		said = "Found: " + d.record.found
	}
	if len(w.Faults) > 0 && !w.OnlyTexts() {
		said += " Nothing is compared with them: the boat cannot be built as it stands. " + w.FirstFault()
	}
	return rows, said, markup.Notes(f.EndsDiffer)
}

// Predictor leaves out in turn each measurement that was taken at a place and predicts it
// from the rest: a fit for each.
type Predictor struct {
	desk     *Desk
	record   record.Record
	notebook *record.Notebook
	next     int
	all      []refit.Prediction
}

// Predict begins it.
func (d *Desk) Predict() *Predictor {
	return &Predictor{desk: d, record: d.shown.Record(), notebook: d.notebook()}
}

// Next makes one prediction and says how far it has come; it is false once there is
// no more to do, and what all of them come to stands in RecordSlots. It stops where the
// record is another.
func (p *Predictor) Next() (Reply, bool) {
	data := p.record.Data
	for p.next < len(data) && !data[p.next].Placed() {
		p.next++
	}
	switch {
	case p.desk.notebook() != p.notebook:
		return Reply{}, false
	case p.next < len(data):
		if prediction, ok := refit.Predict(p.record, p.next); ok {
			p.all = append(p.all, prediction)
		}
		p.next++
		return say(recordSaid, "Left out "+strconv.Itoa(p.next)+" of "+strconv.Itoa(len(data))+"."), true
	case len(p.all) == 0:
		return say(recordSaid, "There is no width, height or point taken at a place to leave out: add some."), false
	}
	p.desk.forgetOthers()
	p.desk.record.predicted = p.all
	_, said, _ := p.desk.Said()
	slots, _ := p.desk.RecordSlots()
	return Reply{Says: []Said{{recordSaid, said}},
		Markup: map[string]string{"record-each": slots["record-each"]}}, false
}

// Full is what is said of a list of measurements that takes no more.
func Full() Reply {
	return say(recordSaid, "The list is full: "+strconv.Itoa(record.MostData)+" measurements are kept.")
}
