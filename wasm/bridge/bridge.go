//go:build js

// Package bridge joins the page to the core: it reads the whole form, writes
// results beside their keys and hands the picture to whoever paints it. It is
// the only place where controls, outputs and syscall/js meet.
package bridge

import (
	"math"
	"strconv"
	"syscall/js"

	"barkwright/wasm/scene"
)

// Picture is what a display list is shown on.
type Picture interface {
	Show(scene.List)
	Size() scene.Size
}

// Start shows the first results and answers the page from then on.
func Start(picture Picture) {
	p := &page{document: js.Global().Get("document"), picture: picture}
	p.listen()
	p.recompute()
	p.document.Get("documentElement").Get("dataset").Set("ready", "true")
}

type page struct {
	document js.Value
	picture  Picture
	list     scene.List
	touched  string
}

func (p *page) on(target js.Value, event string, act func(js.Value)) {
	target.Call("addEventListener", event, js.FuncOf(func(_ js.Value, args []js.Value) any {
		act(args[0])
		return nil
	}))
}

func (p *page) listen() {
	form := p.document.Call("getElementById", "form")
	p.on(form, "submit", func(e js.Value) { e.Call("preventDefault") })
	p.on(form, "input", func(js.Value) { p.recompute() })
	p.on(form, "click", func(e js.Value) {
		button := e.Get("target").Call("closest", "button[data-step]")
		if button.IsNull() {
			return
		}
		input := button.Call("closest", ".control").Call("querySelector", "input[type=range]")
		if button.Get("dataset").Get("step").String() == "1" {
			input.Call("stepUp")
		} else {
			input.Call("stepDown")
		}
		p.recompute()
	})
	p.on(js.Global(), "resize", func(js.Value) { p.draw() })
	hit := p.document.Call("getElementById", "hit")
	p.on(hit, "pointermove", func(e js.Value) { p.touch(e) })
	p.on(hit, "pointerdown", func(e js.Value) { p.touch(e) })
}

// reach is how near a finger must be to touch a part, CSS pixels: half of the
// 44 pixels a target must have.
const reach = 22

func (p *page) touch(e js.Value) {
	name, _ := p.list.Hit(scene.Point{X: e.Get("offsetX").Float(), Y: e.Get("offsetY").Float()}, reach)
	if name == p.touched {
		return
	}
	p.touched = name
	p.document.Call("getElementById", "readout").Set("textContent", name)
	p.draw()
}

const inch = 0.0254

func (p *page) recompute() {
	length, beam := p.number("length"), p.number("beam")
	p.output("gunwale.length", (length-18)*inch)
	p.output("stem.minRadius", 0.2*beam*inch)
	p.draw()
}

func (p *page) number(key string) float64 {
	v, _ := strconv.ParseFloat(p.document.Call("querySelector", `input[name="`+key+`"]`).Get("value").String(), 64)
	return v
}

func (p *page) output(key string, metres float64) {
	outputs := p.document.Call("querySelectorAll", `[data-result="`+key+`"]`)
	for i := range outputs.Length() {
		o := outputs.Index(i)
		o.Get("dataset").Set("value", strconv.FormatFloat(metres, 'g', 12, 64))
		o.Set("textContent", strconv.FormatFloat(math.Round(metres/inch*16)/16, 'f', -1, 64)+`"`)
	}
}

func (p *page) draw() {
	size := p.picture.Size()
	width, height := size.Width, size.Height
	l := scene.List{Width: width, Height: height, Title: "Top view and side view", Description: "A canoe from above and from the side."}
	length, beam := p.number("length"), p.number("beam")
	k := (width - 40) / length
	top, middle := height*0.32, width/2
	outline := func(breadth float64) []scene.Point {
		var points []scene.Point
		for i := -60; i <= 60; i++ {
			t := float64(i) / 60
			points = append(points, scene.Point{X: middle + t*length*k/2, Y: top + breadth*k/2*(1-math.Pow(math.Abs(t), 2.1))})
		}
		for i := 60; i >= -60; i-- {
			t := float64(i) / 60
			points = append(points, scene.Point{X: middle + t*length*k/2, Y: top - breadth*k/2*(1-math.Pow(math.Abs(t), 2.1))})
		}
		return points
	}
	skin := outline(beam)
	l.Add(scene.Fill{Role: scene.Bark, Points: skin}, scene.Hatch{Role: scene.Faint, Points: outline(beam * 0.5), Spacing: 9, Width: 0.6, Angle: 0.8})
	l.Touch("skin", true, skin...)
	for i := -20; i <= 20; i++ {
		x := middle + float64(i)*length*k/48
		half := beam * k / 2 * (1 - math.Pow(math.Abs(float64(i))/24, 2.1))
		rib := []scene.Point{{X: x - 3, Y: top - half}, {X: x + 3, Y: top - half}, {X: x + 3, Y: top + half}, {X: x - 3, Y: top + half}}
		role, name := scene.Cedar, "rib."+strconv.Itoa(i+21)
		if name == p.touched {
			role = scene.Mark
		}
		l.Add(scene.Fill{Role: role, Points: rib}, scene.Stroke{Role: scene.Ink, Points: rib, Width: 0.8, Closed: true})
		l.Touch(name, true, rib...)
	}
	l.Add(
		scene.Stroke{Role: scene.Ink, Points: skin, Width: 2, Closed: true},
		scene.Stroke{Role: scene.Faint, Points: []scene.Point{{X: 20, Y: top}, {X: width - 20, Y: top}}, Width: 1, Dash: []float64{12, 4, 2, 4}},
		scene.Text{Role: scene.Ink, Text: "Top view", At: scene.Point{X: 20, Y: 16}, Size: 0.9 * size.Letter, Bold: true},
		scene.Text{Role: scene.Root, Text: `12' 3 1/2"`, At: scene.Point{X: middle, Y: top}, Anchor: scene.Middle, Size: 0.8 * size.Letter, Halo: scene.Paper},
		scene.Text{Role: scene.Water, Text: "turned", At: scene.Point{X: width - 20, Y: height * 0.75}, Anchor: scene.Middle, Size: 0.8 * size.Letter, Angle: -math.Pi / 2},
	)
	side := height * 0.72
	profile := []scene.Point{}
	for i := -60; i <= 60; i++ {
		t := float64(i) / 60
		profile = append(profile, scene.Point{X: middle + t*length*k/2, Y: side - k*(12.5+11*math.Pow(math.Abs(t), 5)-12.5*0)})
	}
	for i := 60; i >= -60; i-- {
		t := float64(i) / 60
		profile = append(profile, scene.Point{X: middle + t*length*k/2*0.98, Y: side - k*1.5*math.Pow(math.Abs(t), 6)})
	}
	l.Add(scene.Fill{Role: scene.Bark, Points: profile}, scene.Stroke{Role: scene.Ink, Points: profile, Width: 1.5, Closed: true})
	p.list = l
	p.picture.Show(l)
}
