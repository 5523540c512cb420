//go:build js

package bridge

import (
	"barkwright/core/design"
	"barkwright/wasm/work"
)

// typed reads an entry: while it is being typed only its echo shows; done, it is
// set, or its fault stands at the control and what was typed stays.
func (p *page) typed(c *control, text string, done bool) {
	v, echo, err := p.read(c.param, text)
	p.work.TypeControl(c.param, text)
	p.saveSoon()
	if !done {
		if err == nil {
			c.echo.set(echo)
		} else {
			c.echo.set("")
		}
		return
	}
	if err != nil {
		c.unread = true
		c.fault.set(err.Error())
		c.echo.set("")
		c.markWrong()
		p.speakWrong(c.param.Label, err.Error())
		p.showNotBuilt()
		return
	}
	p.readAgain(c)
	c.echo.set(echo)
	p.work.Set(c.param.Key, v)
	p.refresh()
	c.echo.set(echo)
}

func (p *page) read(param design.Param, text string) (float64, string, error) {
	return param.Read(text, param.Get(&p.work.Entered), p.work.System)
}

// readAgain lets go of what was typed at a control: it is read, or another value stands.
func (p *page) readAgain(c *control) {
	c.unread = false
	p.work.SetTyped(c.param.Key, "")
}

// dropEntries drops what was typed and could not be read for good.
func (p *page) dropEntries() {
	p.forgetEntries()
	for _, c := range p.controls {
		p.work.SetTyped(c.param.Key, "")
	}
	p.eachSide(func(i int, s work.Side, _ *sheetSide) { p.work.SetTyped(work.SheetKey(i, s), "") })
	for key := range p.planned.fields {
		p.work.SetTyped(work.SeasonKey(key), "")
	}
}

// forgetEntries takes what was typed and could not be read off the fields, message and all.
func (p *page) forgetEntries() {
	for _, c := range p.controls {
		if c.unread {
			p.forgetEntry(c)
		}
	}
	p.forgetSheets()
	for key, unread := range p.planned.unread {
		if unread {
			p.forgetSeason(key)
		}
	}
}

func (p *page) forgetEntry(c *control) {
	c.unread, c.known = false, false
	if !c.typed.IsNull() {
		c.typed.Set("value", p.work.Format(c.param))
	}
}
