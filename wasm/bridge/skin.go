//go:build js

package bridge

import (
	"syscall/js"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
)

// skin is what the page keeps of the bark laid flat from one design to the next: the
// last results, to begin the next ones from, and memory to work in.
type skin struct {
	picture, figures laid
	curve            []bark.CurvePoint // of curveOf, as far as it is worked out
	curveOf          design.Design
	memory           geom.FlattenWorkspace
	on, look         js.Func
	looking          bool // look is about to run
}

// laid is the bark of one design laid flat; flat is nil before the first.
type laid struct {
	of   design.Design
	flat *bark.Flat
}

// holds tells whether it still is the bark of a design.
func (l laid) holds(d design.Design) bool { return l.flat != nil && core.SameSkin(l.of, d) }

func (s *skin) lay(l *laid, c core.Canoe, res bark.Resolution) {
	f := core.LayFlat(c, res, l.flat, &s.memory)
	l.of, l.flat = c.Design, &f
}

// showsBark tells whether the picture is one of the bark laid flat.
func (p *page) showsBark() bool {
	return p.view.State == scene.LaidFlat || p.view.State == scene.SidesUp
}

// pictured is the bark laid flat for the picture, or nil where that is not worked
// out: it then is in a turn of its own, and the picture drawn again, so that the
// step of a slider in hand is not held up.
func (p *page) pictured() *bark.Flat {
	s := &p.skin
	if s.picture.holds(p.work.Canoe.Design) {
		return s.picture.flat
	}
	if s.look.IsUndefined() {
		s.look = p.callback(func([]js.Value) {
			s.looking = false
			if !s.picture.holds(p.work.Canoe.Design) {
				s.lay(&s.picture, p.work.Canoe, bark.ForPicture)
			}
			p.draw()
		})
	}
	if !s.looking {
		s.looking = true
		js.Global().Call("setTimeout", s.look, 0)
	}
	return nil
}

// dress gives the canoe the skin again where a step has left the bark as it lies.
func (p *page) dress() {
	c := &p.work.Canoe
	if c.Skin == nil && p.skin.figures.holds(c.Design) {
		*c = c.WithFlat(*p.skin.figures.flat)
		if core.SameSkin(p.skin.curveOf, c.Design) && p.curved() {
			*c = c.WithCurve(p.skin.curve)
		}
	}
	// What is shown of the comparison is worked out once a design.
	if b := &p.work.Before; b.Skin == nil && c.Skin != nil && core.SameSkin(b.Design, c.Design) {
		*b = b.WithFlat(*p.skin.figures.flat)
		p.before = nil
	}
	waiting := ""
	if !p.dressed() {
		waiting = "waiting"
	}
	p.root().Get("dataset").Set("skin", waiting)
}

// curved tells whether the curve of stretch has all its points.
func (p *page) curved() bool { return len(p.skin.curve) == core.MostCurved+1 }

// dressed tells whether everything about the bark is worked out.
func (p *page) dressed() bool {
	s := p.work.Canoe.Skin
	return s != nil && len(s.Curve) > 0 && (p.work.Canoe.Design.OnHand.Count == 0 || s.Makes != nil)
}

// layFigures works out the bark laid flat where a step has changed it.
func (p *page) layFigures() {
	c := p.work.Canoe
	if c.Skin == nil {
		p.skin.lay(&p.skin.figures, c, bark.ForFigures)
		p.dress()
		p.showNumbers()
		p.showChecks()
		if p.showsBark() {
			p.draw()
		}
	}
}

// layOn works out the next piece of what takes longer still, the curve of stretch
// and what the sheets on hand make, and leaves the rest to another turn, so that a
// step of a slider never waits for more than a piece of it.
func (p *page) layOn() {
	c, s := &p.work.Canoe, &p.skin
	switch {
	case c.Skin == nil || p.dressed():
		p.faults = 0
		return
	case len(c.Skin.Curve) == 0:
		if !core.SameSkin(s.curveOf, c.Design) {
			s.curve, s.curveOf = nil, c.Design
		}
		s.curve = append(s.curve, bark.StretchAt(c.Hull, c.Bark, len(s.curve), bark.ForFigures, &s.memory))
		if p.curved() {
			*c = c.WithCurve(s.curve)
			p.showSkin()
		}
	default:
		*c = c.WithMakes()
		p.showSkin()
	}
	p.dress()
	if s.on.IsUndefined() {
		s.on = p.callback(func([]js.Value) { p.layOn() })
	}
	js.Global().Call("setTimeout", s.on, 0)
}

// showSkin shows what has come of the bark.
func (p *page) showSkin() {
	p.showNumbers()
	p.showChecks()
	p.showTables(true)
	p.showTables(false)
	if p.showsBark() {
		p.draw()
	}
}

// listenRaise turns the sides up as the slider under the picture is moved.
func (p *page) listenRaise() {
	slider := p.id("up")
	p.on(slider, "input", func(js.Value) {
		p.view.Up = slider.Get("valueAsNumber").Float() / 100
		slider.Call("setAttribute", "aria-valuetext", raise.UpWords(p.view.Up))
		p.draw()
	})
}
