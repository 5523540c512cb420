//go:build js

package paint

import (
	"fmt"
	"runtime/debug"
	"strconv"
	"strings"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"

	"barkwright/core/draw"
)

// Painter shows one picture at a time in the page's element "view". Its methods have to
// be called on the page's own thread, as js callbacks are.
type Painter struct {
	view    js.Value
	palette draw.Palette
	list    draw.List
	words   string  // what the picture shows, as last said
	canvas  *canvas // nil once the twin has taken over
	texture int     // most pixels a side of an image here
	drawn   int
	kept    draw.Size // the view's size as last read
	stale   bool      // kept has to be read again
}

// New moves Ebitengine's canvas, which its package initialisation has already made, into
// the view. Without WebGL2 it removes that canvas. The view is empty until Show.
func New() *Painter {
	document := js.Global().Get("document")
	p := &Painter{view: document.Call("getElementById", "view"), palette: draw.Screen(), stale: true}
	// boot.js sends it too where the view, the lettering or the density alone have changed.
	js.Global().Call("addEventListener", "resize", js.FuncOf(func(js.Value, []js.Value) any {
		p.stale = true
		return nil
	}), true)
	element := document.Call("querySelector", "body > canvas")
	if !hasWebGL2(element) {
		element.Call("remove")
		p.useTwin(noWebGL)
		return p
	}
	p.texture = mostTexture(element)
	js.Global().Call("limitPicture", mostPixels(p.texture))
	// Ebitengine must not take the focus: its canvas is a picture, not a control.
	element.Set("tabIndex", -1)
	element.Call("setAttribute", "aria-hidden", "true")
	p.view.Call("insertBefore", element, p.view.Get("firstChild"))
	p.canvas = newCanvas(p.palette, p.counted, p.guard)
	// boot.js stops Ebitengine's frames and sends this when the context is lost.
	js.Global().Call("addEventListener", "picturelost", js.FuncOf(func(js.Value, []js.Value) any {
		p.guard(func() { p.leaveCanvas(noWebGL) })
		return nil
	}))
	// Ebitengine stops the program over an image larger than the device takes: boot.js
	// gives it no such size.
	p.Size()
	return p
}

// Size returns the view's size and the page's lettering. It is called before every
// picture, so it is read only after a resize: to answer, the browser may have to lay the
// page out. A size that one image cannot hold switches to SVG.
func (p *Painter) Size() draw.Size {
	if !p.stale {
		return p.kept
	}
	p.kept, p.stale = p.size(), false
	if p.canvas != nil && !fits(p.kept, js.Global().Get("devicePixelRatio").Float(), p.texture) {
		p.leaveCanvas(tooLarge)
	}
	return p.kept
}

// leaveCanvas stops Ebitengine's frames and switches to SVG.
func (p *Painter) leaveCanvas(why string) {
	js.Global().Call("stopFrames")
	if element := p.view.Call("querySelector", "canvas"); element.Truthy() {
		element.Call("remove")
	}
	p.useTwin(why)
}

// guard runs act. If act panics, the fault is named in the console and the picture
// switches to SVG.
func (p *Painter) guard(act func()) {
	defer func() {
		if fault := recover(); fault != nil {
			js.Global().Get("console").Call("error", fmt.Sprintf("%v\n%s", fault, debug.Stack()))
			p.leaveCanvas(faulty)
		}
	}()
	act()
}

func (p *Painter) size() draw.Size {
	window := js.Global()
	style := window.Call("getComputedStyle", p.view)
	return draw.Size{
		Width:  p.view.Get("clientWidth").Float(),
		Height: p.view.Get("clientHeight").Float(),
		Letter: window.Call("parseFloat", style.Get("fontSize")).Float(),
	}
}

// Show draws the list at the next frame, once.
func (p *Painter) Show(l draw.List) {
	if words := l.Title + ". " + l.Words(); words != p.words {
		p.words = words
		js.Global().Get("document").Call("getElementById", "hit").Call("setAttribute", "aria-label", words)
	}
	p.list = l
	if p.canvas == nil {
		p.writeTwin(l, p.palette)
		p.counted()
		return
	}
	p.canvas.show(l)
}

// Colours draws in other colours from now on.
func (p *Painter) Colours(palette draw.Palette) {
	p.palette = palette
	if p.canvas != nil {
		p.canvas.palette = palette
	}
	if len(p.list.Ops) > 0 {
		p.Show(p.list)
	}
}

// Print gives the printer a list, in the colours of paper, until the next Show.
func (p *Painter) Print(l draw.List) { p.writeTwin(l, draw.Print()) }

// Run plays pictures until the page closes. It never returns, since callbacks into Go
// stop working when main returns.
func (p *Painter) Run() {
	if p.canvas != nil {
		ebiten.SetScreenClearedEveryFrame(false)
		ebiten.SetTPS(ebiten.SyncWithFPS)
		options := &ebiten.RunGameOptions{InitUnfocused: true, DisableHiDPI: true}
		if err := ebiten.RunGameWithOptions(p.canvas, options); err != nil {
			js.Global().Get("console").Call("warn", "picture: "+err.Error())
			js.Global().Call("stopFrames")
			p.useTwin(noWebGL)
		}
	}
	select {}
}

// Why the picture is SVG.
const (
	noWebGL  = "This browser gives the page no WebGL, so the picture is drawn as SVG. Every number is the same."
	faulty   = "The picture met a fault of its own, so it is drawn as SVG. Every number is the same."
	tooLarge = "The picture is larger than this device's graphics take, so it is drawn as SVG. Every number is the same."
)

// useTwin switches to SVG for the rest of the visit, and says why.
func (p *Painter) useTwin(why string) {
	p.canvas = nil
	document := js.Global().Get("document")
	document.Get("documentElement").Get("dataset").Set("picture", "svg")
	document.Call("getElementById", "picture-note").Set("textContent", why)
	if len(p.list.Ops) > 0 {
		p.writeTwin(p.list, p.palette)
		p.counted()
	}
}

// writeTwin puts a list into the page as SVG: the picture itself without
// WebGL, and always what the printer gets.
func (p *Painter) writeTwin(l draw.List, palette draw.Palette) {
	var b strings.Builder
	if err := (draw.SVG{Palette: palette, ID: "picture"}).Write(&b, l); err != nil {
		panic("paint: a strings.Builder does not fail")
	}
	js.Global().Get("document").Call("getElementById", "twin").Set("innerHTML", b.String())
}

func (p *Painter) counted() {
	p.drawn++
	js.Global().Get("document").Get("documentElement").Get("dataset").Set("drawn", strconv.Itoa(p.drawn))
}

// hasWebGL2 requests from Ebitengine's canvas the same context that Ebitengine will
// request. A second request of the same kind returns the same context, so this costs
// nothing. The attributes of the first request stay in force. They are Ebitengine's own, but without
// antialiasing, since pen.kage feathers every edge, and without an alpha, since nothing is seen through the
// picture: four samples a pixel took graphics without a GPU a quarter longer for the same picture, and an
// alpha an eighth. Ebitengine must not be started without a context: it would panic at the next resize.
func hasWebGL2(canvas js.Value) bool {
	attributes := map[string]any{"alpha": false, "premultipliedAlpha": true, "stencil": true, "antialias": false}
	context := canvas.Call("getContext", "webgl2", attributes)
	// boot.js asked for it while the program was unpacked: it may be lost since.
	return context.Truthy() && !context.Call("isContextLost").Bool()
}

// mostTexture is the most pixels a side of a texture of an element's WebGL2.
func mostTexture(canvas js.Value) int {
	context := canvas.Call("getContext", "webgl2")
	return context.Call("getParameter", context.Get("MAX_TEXTURE_SIZE")).Int()
}
