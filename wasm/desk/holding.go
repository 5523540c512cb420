package desk

import (
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/sheet"
	"barkwright/wasm/markup"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/onsheet"
	"barkwright/wasm/scene/view"
	"barkwright/wasm/work"
)

// heldSays is where it is said what is held.
const heldSays = "held-says"

// Hold answers the buttons of what is held: hold the boat as it stands at a time, let it go, or
// do the one that the button says.
func (d *Desk) Hold(what, clock string) Reply {
	w := d.shown
	held := w.HeldBoat()
	switch {
	case what == "let-go" && held == nil:
		return say(heldSays, "No boat is held.")
	case what == "let-go", what == "turn" && held != nil:
		w.LetGo()
		return Reply{Changed: true, Says: []Said{{heldSays, "Let go: " + held.Name + ". Undo holds it again."}}}
	case w.None:
		return say(heldSays, "There is no boat to hold yet.")
	case what == "now", what == "turn":
		return d.hold(w.Canoe().Design, "this boat as it stood at "+clock)
	case what == "opened":
		return d.hold(w.Opened(), "this boat as opened")
	}
	kind, at, _ := strings.Cut(what, ":")
	i, err := strconv.Atoi(at)
	if err != nil {
		return Reply{}
	}
	if kind == "start" {
		from := starting(i)
		return d.hold(from, from.Name)
	}
	from, err := d.Shelf.DesignAt(i)
	if err != nil {
		return say(heldSays, err.Error())
	}
	return d.hold(from, from.Name)
}

// Against is what the button of holding does next, and the line beside it.
func Against(h *work.Holding) (button, line string) {
	if h == nil {
		return "Hold", "Nothing is held."
	}
	return "Let go", "Against " + h.Name + "."
}

func (d *Desk) hold(from design.Design, name string) Reply {
	instead, ok := d.shown.Hold(from, name)
	if !ok {
		return say(heldSays, "That boat cannot be built as it stands, and so cannot be held.")
	}
	said := "Held: " + name + "."
	if instead != "" {
		said += " It stands in place of " + instead + ", which undo brings back."
	}
	return Reply{Changed: true, Says: []Said{{heldSays, said}}}
}

// Still marks what follows a control as set, or frees it again.
func (d *Desk) Still(control string, on bool) Reply {
	n := d.shown.Still(control, on)
	p, _ := design.Lookup(control)
	said := "What follows moves again."
	switch {
	case on && n == 0:
		said = "Nothing follows " + p.Label + "."
	case on:
		said = "Held still: " + counted(n, "control", "controls") + " that would follow " + p.Label + "."
	}
	return Reply{Changed: true, Says: []Said{{heldSays, said}}}
}

// HoldChoices lists what can be held beside the boat as it stands.
func (d *Desk) HoldChoices() string {
	list := markup.Option("", "Hold another boat…") + markup.Option("opened", "This boat as opened")
	for i, name := range d.Shelf.Names() {
		if i != d.Shelf.Current() {
			list += markup.Option("shelf:"+strconv.Itoa(i), name)
		}
	}
	return list + startingBoats("start:", d.Shelf.InHand().System)
}

// starting is a boat to start from, the default for -1.
func starting(i int) design.Design {
	if i < 0 {
		return design.Default()
	}
	return design.Starting()[i]
}

// Beside are the boats of the shelf to be chosen, and those chosen side by side, as HTML.
func (d *Desk) Beside(chosen map[int]bool, p draw.Palette) (choices, beside string) {
	var boats []markup.Column
	for i, name := range d.Shelf.Names() {
		choices += markup.BesideChoice(i, name, chosen[i])
		if !chosen[i] || len(boats) == markup.MostBeside {
			continue
		}
		from, err := d.Shelf.DesignAt(i)
		if c, faults := core.Try(from); err == nil && len(faults) == 0 {
			boats = append(boats, markup.Column{Name: name, Canoe: c})
		}
	}
	if d.Shelf.Len() < 2 {
		return "", markup.OneBoat
	}
	return choices, markup.Beside(boats, d.shown.System, p)
}

// Costs is what differs from the boat held, as HTML.
func (d *Desk) Costs(stepByStep bool) string {
	c, ok := d.shown.Costs(stepByStep)
	if !ok {
		return markup.NothingHeld
	}
	return markup.Costs(c)
}

// PrintCosts is one page of what differs from the boat held, with both in outline.
func (d *Desk) PrintCosts(day string) Reply {
	w := d.shown
	c, ok := w.Costs(false)
	if !ok {
		return say(heldSays, "No boat is held: there is nothing to print.")
	}
	held, _ := w.HeldCanoe()
	j := sheet.Job{Canoe: w.Canoe(), System: w.System, Head: d.head(day)}
	pages := sheet.CostsSheet(j, sheet.Costs{Against: c.Against, Controls: c.Controls, Rows: c.Rows, Most: c.Most,
		From: markup.FromWhat, Boats: sheet.Figure{Caption: "Dashed: the boat held.", Drawing: outlines(w, held)}})
	var b strings.Builder
	if err := sheet.Print(&b, pages); err != nil {
		return say(heldSays, err.Error())
	}
	return Reply{Print: b.String()}
}

// outlines are the boat in hand and the one held over it, for paper.
func outlines(w *work.Work, held core.Canoe) draw.List {
	v := scene.View{State: scene.Finished, Zoom: 1, System: w.System, Layer: scene.Plain, Held: &held}
	return view.Draw(w.Canoe(), v, draw.Size{Width: onsheet.Wide.Width, Height: 165, Letter: onsheet.Wide.Letter})
}

// Clock is a time of day.
func Clock(hours, minutes int) string {
	text := strconv.Itoa(minutes)
	if minutes < 10 {
		text = "0" + text
	}
	return strconv.Itoa(hours) + ":" + text
}
