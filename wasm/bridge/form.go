//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
)

// control is what the form holds for one parameter.
type control struct {
	param             design.Param
	box, input, typed js.Value
	slider, field     spot // input and typed
	lacking           flag // the boat has no part that it is of
	echo, fault       slot
	shown             float64 // SI value last shown
	known             bool
	own, wrong        bool // last shown as set, as at fault
	// why is what makes it a readout, as last shown.
	why string
	// unread says that an entry could not be read: its message stays until it can.
	unread bool
}

func (p *page) findControls() {
	p.controls = map[string]*control{}
	boxes := map[string]js.Value{}
	each(p.id("form"), "[data-control]", func(box js.Value) { boxes[data(box, "control")] = box })
	for _, param := range design.Params() {
		box := boxes[param.Key]
		c := &control{
			param: param, box: box,
			input:   box.Call("querySelector", "[name]"),
			typed:   box.Call("querySelector", "[data-typed]"),
			lacking: flag{at: box, name: "hidden"},
			echo:    emptySlot(box.Call("querySelector", ".echo")),
			fault:   emptySlot(box.Call("querySelector", ".fault")),
		}
		c.slider, c.field = spot{at: c.input}, spot{at: c.typed}
		p.controls[param.Key] = c
		p.inOrder = append(p.inOrder, c)
	}
	for _, key := range []string{"name", "notes"} {
		p.texts = append(p.texts, &textField{key: key, at: p.id(key), fault: emptySlot(p.id(key + "-fault"))})
	}
	p.setRanges()
}

// textField is the field of the name or of the notes.
type textField struct {
	key          string
	at           js.Value
	fault        slot
	shown        string
	known, wrong bool // shown is what stands in the field; last marked as at fault
}

func (t *textField) show(text, fault string) {
	if (!t.known || text != t.shown) && t.at.Get("value").String() != text {
		t.at.Set("value", text)
	}
	t.shown, t.known = text, true
	t.fault.set(fault)
	if wrong := fault != ""; wrong != t.wrong {
		t.wrong = wrong
		setWrong(t.at, fault)
	}
}

// setRanges writes the sliders' limits and steps in the units in use.
func (p *page) setRanges() {
	for _, c := range p.controls {
		if c.param.Options == nil {
			least, most, step := p.work.Range(c.param)
			c.input.Set("min", least)
			c.input.Set("max", most)
			c.input.Set("step", step)
		}
		c.known = false
	}
}

// showControls brings every control to what is entered, and its fault with it.
func (p *page) showControls() {
	d := p.work.Entered
	active := p.document.Get("activeElement")
	for _, c := range p.inOrder {
		v, why := p.work.Stands(c.param)
		if !c.known || v != c.shown {
			p.showControl(c, v, active)
			c.shown, c.known = v, true
		}
		c.readOut(why)
		if own := c.param.Owned(d); own != c.own {
			c.box.Get("classList").Call("toggle", "own", own)
			c.own = own
		}
		if !c.unread {
			c.fault.set(p.work.FaultText(c.param.Key))
		}
		c.markWrong()
	}
	for i, text := range [...]string{d.Name, d.Notes} {
		p.texts[i].show(text, p.work.FaultText(p.texts[i].key))
	}
	p.showCrew()
	p.showThwarts()
	p.showSheets()
	p.showNotBuilt()
	p.toggle("undo", "disabled", !p.work.CanUndo())
	p.toggle("redo", "disabled", !p.work.CanRedo())
}

// readOut lets the control show a number and take none, with a sentence of what it
// follows from; with none it takes numbers again.
func (c *control) readOut(why string) {
	if why == c.why {
		return
	}
	c.why = why
	each(c.box, "input, select, [data-step]", func(at js.Value) { at.Set("disabled", why != "") })
	c.echo.set(why)
}

// markWrong marks the field of a control as wrong where a fault stands at it: the
// typed one, or the list there is to choose from.
func (c *control) markWrong() {
	wrong := c.fault.text != ""
	if wrong == c.wrong {
		return
	}
	c.wrong = wrong
	field := c.typed
	if field.IsNull() {
		field = c.input
	}
	setWrong(field, c.fault.text)
}

// showControl brings a control to a value, SI, but for what is being typed in it.
func (p *page) showControl(c *control, v float64, active js.Value) {
	shown := p.work.Control(c.param, v)
	c.slider.write(itsValue, shown.Slider)
	if c.param.Options != nil {
		return
	}
	c.slider.write("aria-valuetext", shown.Spoken)
	if !c.unread && !active.Equal(c.typed) {
		c.field.write(itsValue, shown.Text)
		c.echo.set(c.why)
	}
}

// keyOf is the parameter whose control an event came from, "" for none.
func keyOf(target js.Value) string {
	if box := target.Call("closest", "[data-control]"); !box.IsNull() {
		return data(box, "control")
	}
	return ""
}

func (p *page) listenForm() {
	form := p.id("form")
	p.on(form, "submit", func(e js.Value) { e.Call("preventDefault") })
	p.on(form, "input", p.formInput)
	p.on(form, "change", p.formChange)
	p.on(form, "click", p.formClick)
	p.on(form, "focusout", func(e js.Value) {
		if e.Get("target").Get("type").String() == "range" {
			p.work.Commit()
		}
	})
	p.on(form, "keydown", func(e js.Value) {
		c, ok := p.controls[keyOf(e.Get("target"))]
		switch key := e.Get("key").String(); {
		case !ok:
		case key == "Escape":
			p.forgetEntry(c)
			p.readAgain(c)
			p.showControls()
		case key == "Enter" && c.unread:
			// What was typed before the page was opened has changed nothing since.
			p.typed(c, c.typed.Get("value").String(), true)
		}
	})
	p.on(form, "pointerdown", func(e js.Value) {
		if e.Get("target").Get("type").String() == "range" {
			p.work.Commit()
		}
	})
}

func (p *page) formInput(e js.Value) {
	target := e.Get("target")
	key := target.Get("name").String()
	if key == "" {
		key = keyOf(target)
	}
	c, ok := p.controls[key]
	switch {
	case !ok:
		for _, t := range p.texts {
			t.known = false
		}
		p.work.SetText(key, target.Get("value").String())
	case target.Get("dataset").Get("typed").Truthy():
		p.typed(c, target.Get("value").String(), false)
		return
	case c.param.Options != nil:
		i, _ := number(target)
		p.work.SetSlider(c.param, float64(i))
	default:
		p.readAgain(c)
		p.work.SetSlider(c.param, target.Get("valueAsNumber").Float())
	}
	p.refresh()
}

// formChange ends a change, but for a slider's: its keys are one change until it
// is left, or taken up again by a pointer.
func (p *page) formChange(e js.Value) {
	target := e.Get("target")
	if target.Get("type").String() == "range" {
		p.restSoon()
		return
	}
	if c, ok := p.controls[keyOf(target)]; ok && target.Get("dataset").Get("typed").Truthy() {
		p.typed(c, target.Get("value").String(), true)
	}
	p.work.Commit()
	p.showControls()
	p.save()
}

func (p *page) formClick(e js.Value) {
	target := e.Get("target")
	if b := target.Call("closest", "button[data-step]"); !b.IsNull() {
		n, _ := whole(data(b, "step"))
		key := keyOf(b)
		p.readAgain(p.controls[key])
		p.work.Step(key, n)
		p.refresh()
		return
	}
	if b := target.Call("closest", "button[data-reset]"); !b.IsNull() {
		c := p.controls[keyOf(b)]
		p.readAgain(c)
		c.known = false
		p.work.Reset(c.param.Key)
		p.refresh()
		p.save()
	}
}

// setSystem changes the units everything is shown in.
func (p *page) setSystem(s units.System) {
	p.reply(p.desk.TypedIn(p.mendForm(), p.workForm(), s))
	p.desk.SetSystem(s)
	p.view.System = s
	p.setRanges()
	p.showWords()
	p.showStarting()
	p.markSystem()
	p.refresh()
	p.turnIn(0)
}
