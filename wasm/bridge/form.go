//go:build js

package bridge

import (
	"strconv"
	"strings"
	"syscall/js"

	"barkwright/core/design"
	"barkwright/core/units"
)

// control is what the form holds for one parameter.
type control struct {
	param                          design.Param
	box, input, typed, echo, fault js.Value
	shown                          float64 // SI value last shown
	known                          bool
}

func (p *page) findControls() {
	p.controls = map[string]control{}
	for _, param := range design.Params() {
		box := p.document.Call("querySelector", `[data-control="`+param.Key+`"]`)
		p.controls[param.Key] = control{
			param: param, box: box,
			input: box.Call("querySelector", "[name]"),
			typed: box.Call("querySelector", "[data-typed]"),
			echo:  box.Call("querySelector", ".echo"),
			fault: box.Call("querySelector", ".fault"),
		}
	}
	p.setRanges()
}

// setRanges writes the sliders' limits and steps in the units in use.
func (p *page) setRanges() {
	for key, c := range p.controls {
		if c.param.Options == nil {
			one := design.SliderUnit(c.param, p.work.System)
			for name, v := range map[string]float64{"min": c.param.Min, "max": c.param.Max, "step": c.param.Step(p.work.System)} {
				c.input.Set(name, decimal(v/one))
			}
		}
		c.known = false
		p.controls[key] = c
	}
}

// decimal writes a number for an attribute, without its last bits.
func decimal(v float64) string {
	text := strconv.FormatFloat(v, 'f', 6, 64)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}

// showControls brings every control to what is entered, and its fault with it.
func (p *page) showControls() {
	d := p.work.Entered
	for key, c := range p.controls {
		v := c.param.Get(d)
		if !c.known || v != c.shown {
			p.showControl(c, v)
			c.shown, c.known = v, true
			p.controls[key] = c
		}
		if c.param.Follows() {
			c.box.Get("classList").Call("toggle", "own", c.param.Owned(d))
		}
		p.showFault(c.fault, key)
	}
	for _, key := range []string{"name", "notes"} {
		field := p.id(key)
		text := map[string]string{"name": d.Name, "notes": d.Notes}[key]
		if field.Get("value").String() != text {
			field.Set("value", text)
		}
		p.showFault(p.id(key+"-fault"), key)
	}
	p.showCrew()
	p.id("undo").Set("disabled", !p.work.CanUndo())
	p.id("redo").Set("disabled", !p.work.CanRedo())
}

func (p *page) showControl(c control, v float64) {
	if c.param.Options != nil {
		c.input.Set("value", strconv.Itoa(int(v)))
		return
	}
	c.input.Set("value", decimal(v/design.SliderUnit(c.param, p.work.System)))
	text, spoken := p.format(c.param, v), c.param.Kind.Spoken(v, p.work.System)
	if c.param.NoneAtMin && v <= c.param.Min {
		spoken = text
	}
	c.input.Call("setAttribute", "aria-valuetext", spoken)
	if !p.document.Get("activeElement").Equal(c.typed) {
		c.typed.Set("value", text)
		setText(c.echo, "")
	}
}

// format is a parameter's value as the form shows it.
func (p *page) format(param design.Param, v float64) string {
	if param.NoneAtMin && v <= param.Min {
		return "none"
	}
	return param.Kind.Format(v, p.work.System)
}

func (p *page) showFault(at js.Value, key string) {
	text := ""
	if f, ok := p.work.Fault(key); ok {
		text = f.Message(p.work.System)
	}
	if at.Get("dataset").Get("entry").Truthy() {
		return // the message of an entry that could not be read stays until it can
	}
	setText(at, text)
}

func setText(at js.Value, text string) {
	if at.Get("textContent").String() != text {
		at.Set("textContent", text)
	}
}

// keyOf is the parameter whose control an event came from, "" for none.
func keyOf(target js.Value) string {
	box := target.Call("closest", "[data-control]")
	if box.IsNull() {
		return ""
	}
	return box.Get("dataset").Get("control").String()
}

func (p *page) listenForm() {
	form := p.id("form")
	p.on(form, "submit", func(e js.Value) { e.Call("preventDefault") })
	p.on(form, "input", p.formInput)
	p.on(form, "change", p.formChange)
	p.on(form, "click", p.formClick)
	p.on(form, "pointerdown", func(e js.Value) {
		if e.Get("target").Get("type").String() == "range" {
			p.work.Commit()
		}
	})
}

func (p *page) formInput(e js.Value) {
	target := e.Get("target")
	key := keyOf(target)
	c, ok := p.controls[key]
	switch {
	case !ok:
		p.work.SetText(key, target.Get("value").String())
	case target.Get("dataset").Get("typed").Truthy():
		p.typed(c, target.Get("value").String(), false)
		return
	case c.param.Options != nil:
		i, _ := strconv.Atoi(target.Get("value").String())
		p.work.Set(key, float64(i))
	default:
		p.clearEntry(c)
		p.work.Set(key, target.Get("valueAsNumber").Float()*design.SliderUnit(c.param, p.work.System))
	}
	p.refresh()
}

func (p *page) formChange(e js.Value) {
	target := e.Get("target")
	if c, ok := p.controls[keyOf(target)]; ok && target.Get("dataset").Get("typed").Truthy() {
		p.typed(c, target.Get("value").String(), true)
	}
	p.work.Commit()
	p.showControls()
	p.save()
}

// typed reads an entry: while it is being typed only its echo shows; done, it is
// set, or its fault stands at the control and what was typed stays.
func (p *page) typed(c control, text string, done bool) {
	v, echo, err := p.read(c.param, text)
	if !done {
		if err == nil {
			setText(c.echo, echo)
		} else {
			setText(c.echo, "")
		}
		return
	}
	if err != nil {
		c.fault.Get("dataset").Set("entry", "true")
		setText(c.fault, err.Error())
		setText(c.echo, "")
		return
	}
	p.clearEntry(c)
	setText(c.echo, echo)
	p.work.Set(c.param.Key, v)
	p.refresh()
	setText(c.echo, echo)
}

func (p *page) read(param design.Param, text string) (float64, string, error) {
	if param.NoneAtMin && strings.EqualFold(strings.TrimSpace(text), "none") {
		return param.Min, "Read as none", nil
	}
	return param.Kind.Parse(text, p.work.System)
}

// clearEntry forgets an entry that could not be read.
func (p *page) clearEntry(c control) {
	c.fault.Get("dataset").Delete("entry")
}

func (p *page) formClick(e js.Value) {
	target := e.Get("target")
	if b := target.Call("closest", "button[data-step]"); !b.IsNull() {
		n, _ := strconv.Atoi(b.Get("dataset").Get("step").String())
		key := keyOf(b)
		p.clearEntry(p.controls[key])
		p.work.Step(key, n)
		p.refresh()
		return
	}
	if b := target.Call("closest", "button[data-reset]"); !b.IsNull() {
		c := p.controls[keyOf(b)]
		p.clearEntry(c)
		c.known = false
		p.controls[c.param.Key] = c
		p.work.Reset(c.param.Key)
		p.refresh()
		p.save()
	}
}

// setSystem changes the units everything is shown in.
func (p *page) setSystem(s units.System) {
	p.work.Commit()
	p.work.System = s
	p.view.System = s
	p.setRanges()
	for _, o := range p.outputs {
		o.stale()
	}
	p.refresh()
	p.rest()
}

// replace shows a design that came from elsewhere.
func (p *page) replace(d design.Design) {
	for _, c := range p.controls {
		p.clearEntry(c)
	}
	p.work.Replace(d)
	p.refresh()
	p.save()
}
