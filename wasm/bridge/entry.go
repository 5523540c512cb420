//go:build js

package bridge

import (
	"strings"

	"barkwright/core/design"
	"barkwright/core/units"
)

// typed reads an entry: while it is being typed only its echo shows; done, it is
// set, or its fault stands at the control and what was typed stays.
func (p *page) typed(c *control, text string, done bool) {
	v, echo, err := p.read(c.param, text)
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
		p.sayWrong(c.param.Label, err.Error())
		p.showNotBuilt()
		return
	}
	c.unread = false
	c.echo.set(echo)
	p.work.Set(c.param.Key, v)
	p.refresh()
	c.echo.set(echo)
}

func (p *page) read(param design.Param, text string) (float64, string, error) {
	if param.NoneAtMin && strings.EqualFold(strings.TrimSpace(text), "none") {
		return param.Min, "Read as none", nil
	}
	v, echo, err := param.Kind.Parse(text, p.work.System)
	if feet, ok := design.MeantFeet(param, v, text, p.work.System); err == nil && ok {
		err = &units.ParseError{Message: "A number by itself is read in inches, and " + param.Kind.Format(v, p.work.System) + " is less than this can be.", Suggest: feet}
	}
	return v, echo, err
}

// forgetEntries drops what was typed and could not be read, message and all.
func (p *page) forgetEntries() {
	for _, c := range p.controls {
		if c.unread {
			p.forgetEntry(c)
		}
	}
	p.forgetSheets()
}

func (p *page) forgetEntry(c *control) {
	c.unread, c.known = false, false
	if !c.typed.IsNull() {
		c.typed.Set("value", p.format(c.param, c.param.Get(&p.work.Entered)))
	}
}
