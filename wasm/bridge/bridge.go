//go:build js

// Package bridge joins the page to the core: it reads the form's events, writes
// results beside their keys and hands the picture to whoever paints it. With
// paint it is the only place where syscall/js is met; what is decided is decided
// in package work.
package bridge

import (
	"syscall/js"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/record"
	"barkwright/core/units"
	"barkwright/wasm/scene"
	"barkwright/wasm/work"
)

// Picture is what a display list is shown on.
type Picture interface {
	Show(scene.List)
	Print(scene.List)
	Size() scene.Size
}

// Start shows the first results and answers the page from then on.
func Start(picture Picture) {
	p := &page{
		document:         js.Global().Get("document"),
		picture:          picture,
		shelf:            work.NewShelf(design.Default(), units.Imperial16),
		view:             scene.View{Zoom: 1, Handles: true},
		outputs:          map[string]*output{},
		unfoldedWorkings: map[string]bool{},
		checksAt:         map[answer.Group]js.Value{},
	}
	p.readout.at = p.id("readout")
	p.recall()
	p.work = p.shelf.InHand()
	p.buildHeadline()
	p.showNumbers()
	p.showChecks()
	p.draw()
	p.afterPicture(func() {
		p.repeatPaddlers()
		p.findControls()
		p.buildResults()
		p.listenForm()
		p.listenTools()
		p.listenPicture()
		p.listenRaise()
		p.listenSheets()
		p.listenFiles()
		p.listenMeasured()
		p.showShelf()
		p.refresh()
		p.rest()
		p.root().Get("dataset").Set("ready", "true")
	})
}

// pictureWait is how long the rest of the page waits for the first picture, ms: in
// a tab that is not looked at none comes.
const pictureWait = 2000

// afterPicture calls act once the first picture has been painted: what is below it
// can wait, and the boat is seen sooner.
func (p *page) afterPicture(act func()) {
	began := js.Global().Get("performance").Call("now").Float()
	var look js.Func
	look = js.FuncOf(func(js.Value, []js.Value) any {
		waited := js.Global().Get("performance").Call("now").Float() - began
		if !p.root().Get("dataset").Get("drawn").Truthy() && waited < pictureWait {
			js.Global().Call("setTimeout", look, pictureLook)
			return nil
		}
		look.Release()
		act()
		return nil
	})
	js.Global().Call("setTimeout", look, pictureLook)
}

// pictureLook is how often it looks, ms.
const pictureLook = 15

// page is everything the program holds of the page.
type page struct {
	document js.Value
	picture  Picture
	shelf    *work.Shelf
	work     *work.Work // the one in hand
	view     scene.View
	list     scene.List
	printing bool  // the picture is the printer's
	drag     *drag // the handle in hand, or nil
	pull     *pull // the picture in hand, or nil
	readout  slot
	aboard   *int // the paddlers whose folds show, nil before any
	waters   waters
	// recorded and readings are the lists of measurements; measured is the notebook
	// whose tables show and measuredIn its units, builtFor the design that what moved
	// is told of.
	recorded, readings *measures
	measured           *record.Notebook
	measuredIn         units.System
	builtFor           design.Design
	unsaved            bool   // something is to be kept once the control rests
	unfolded           string // the key of the fault whose fold was opened last
	controls           map[string]*control
	outputs            map[string]*output
	// unfoldedWorkings are the keys of the numbers whose workings show, checksAt the
	// places of the checks.
	unfoldedWorkings map[string]bool
	checksAt         map[answer.Group]js.Value
	folds            []*fold
	verdicts         map[string]string // last told to those who listen, by the checks' keys
	// before are the numbers compared with, of beforeDesign.
	before       []answer.Number
	beforeDesign design.Design
	skin         skin
	ribs         []int // whose sections are drawn
	sheets       []*sheetRow
	sheetsShown  *shownSheets
	resting      js.Value // the timer of what waits for the control to rest
	turnFunc     js.Func
	turn         int // the next one
}

func (p *page) root() js.Value { return p.document.Get("documentElement") }

func (p *page) id(name string) js.Value { return p.document.Call("getElementById", name) }

// each calls act for every element a selector finds.
func each(in js.Value, selector string, act func(js.Value)) {
	found := in.Call("querySelectorAll", selector)
	for i := range found.Length() {
		act(found.Index(i))
	}
}

func (p *page) on(target js.Value, event string, act func(js.Value)) {
	target.Call("addEventListener", event, js.FuncOf(func(_ js.Value, args []js.Value) any {
		act(args[0])
		return nil
	}))
}

// refresh brings everything that follows a step of a slider up to date: controls,
// numbers and picture. What can wait comes in rest.
func (p *page) refresh() {
	// Asked for before anything is written, which would make the browser lay the page
	// out for the answer.
	size := p.picture.Size()
	p.dress()
	p.showControls()
	p.showNumbers()
	p.showChecks()
	p.waterLate()
	p.drawIn(size)
	p.restSoon()
}

// restDelay is how long a control must be still for the rest, ms: what takes
// longer is then not felt.
const restDelay = 40

// restSoon puts the rest off until the control has been still, and then does it a
// turn at a time, so that each part shows as soon as it is known and a new step waits
// for no more than one.
func (p *page) restSoon() {
	if p.turnFunc.IsUndefined() {
		p.turnFunc = js.FuncOf(func(js.Value, []js.Value) any {
			turns := p.turns()
			turns[p.turn]()
			if p.turn++; p.turn < len(turns) {
				p.resting = js.Global().Call("setTimeout", p.turnFunc, 0)
			}
			return nil
		})
	}
	if !p.resting.IsUndefined() {
		js.Global().Call("clearTimeout", p.resting)
	}
	p.turn = 0
	p.resting = js.Global().Call("setTimeout", p.turnFunc, restDelay)
}

// turns are the parts of what need not follow every step.
func (p *page) turns() []func() { return []func(){p.layFigures, p.showWater, p.follow} }

// rest does all of it at once, in place of what was put off.
func (p *page) rest() {
	js.Global().Call("clearTimeout", p.resting)
	for _, turn := range p.turns() {
		turn()
	}
}

// follow writes what stands further down the page: curves and
// tables, the record, the summary for those who listen; and it keeps the designs.
func (p *page) follow() {
	p.showCurves()
	p.showTables(true)
	p.showTables(false)
	p.showRecord()
	p.readRibs()
	p.say()
	if p.unsaved {
		p.unsaved = false
		p.showControls()
		p.save()
	}
	p.layOn()
}
