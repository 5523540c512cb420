//go:build js

package bridge

import (
	"strconv"
	"syscall/js"
	"time"

	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/stage"
	"barkwright/wasm/desk"
	"barkwright/wasm/hands"
	"barkwright/wasm/keep"
	"barkwright/wasm/scene"
	"barkwright/wasm/work"
)

// Picture is what a display list is shown on.
type Picture interface {
	Show(draw.List)
	Print(draw.List)
	Colours(draw.Palette)
	Size() draw.Size
}

// Start shows the first results and answers the page from then on.
func Start(picture Picture) {
	p := &page{
		document: js.Global().Get("document"),
		picture:  picture,
		palette:  draw.Screen(),
		desk:     desk.New(keep.Open(browserStore("localStorage"), browserStore("sessionStorage"), time.Now)),
		noticed:  map[string][]desk.Button{},
		trip:     readTrip(),
		view:     openingView,
		places:   places{looked: map[work.Place]scene.View{}, standings: map[string]*standing{}},
		outputs:  map[string]*output{},
		checksAt: map[stage.Key]*filling{},
		flags:    map[flagOf]*flag{},
		opening:  true,
	}
	p.none = flag{at: p.root(), name: "data-none"}
	p.skin, p.rest = markOf(p.root(), "skin"), markOf(p.root(), "rest")
	p.readout, p.key = slotAt(p.id("readout")), slotAt(p.id("picture-key"))
	p.guard(p.start)
}

func (p *page) start() {
	p.listenNotices()
	p.recall()
	p.trips("start")
	// Numbers stand where they stood before the program was awake: they come after the picture.
	// The first picture is the one that the place is come to with. That of the bark laid flat would come late.
	p.view.System, p.view.Load = p.work.System, scene.LoadOf(p.work.Canoe())
	if v := p.comeTo(p.openingPlace(), p.view, p.picture.Size()); !showsBark(v) {
		p.view = v
	}
	p.draw()
	p.afterPicture(func() {
		p.id("first").Call("remove")
		p.findHand()
		p.findHeadline()
		p.showNumbers()
		p.markSystem()
		p.repeatPaddlers()
		p.findControls()
		p.buildResults()
		p.findPlaces()
		p.findSteps()
		p.listenForm()
		p.listenSliders()
		p.listenTools()
		p.listenPlaces()
		p.listenFind()
		p.listenBench()
		p.listenPicture()
		p.listenMotion()
		p.listenSheets()
		p.listenFiles()
		p.listenPaper()
		p.listenMeasured()
		p.listenTracing()
		p.listenSeason()
		p.listenKept()
		p.listenHolding()
		p.listenWhatIf()
		p.listenLessons()
		p.showWords()
		p.showTyped()
		p.showShelf()
		p.goPlace(p.openingPlace(), false)
		p.refresh()
		p.listenToolbars() // asks what can be seen, once all is written
		p.started = true
		p.guard(p.follow)
		p.turnIn(0)
		p.reply(p.desk.ResumeBench())
		p.save()
		p.later(0, func() {
			js.Global().Call("wakened")
			p.root().Get("dataset").Set("ready", "true")
		})
	})
}

// recall puts on the shelf what the browser kept and takes the first boat in hand.
func (p *page) recall() {
	p.desk.Dates = dates()
	r := p.desk.Open(address())
	p.work = p.desk.Show()
	p.id("units").Set("value", strconv.Itoa(int(p.work.System)))
	p.reply(r)
}

// pictureWait is how long the rest of the page waits for the first picture, ms: in
// a tab that is not looked at none comes.
const pictureWait = 2000

// afterPicture calls act once the first picture has been painted: what is below it
// can wait, and the boat is seen sooner.
func (p *page) afterPicture(act func()) {
	began := now()
	var look func()
	look = func() {
		if data(p.root(), "drawn") == "" && now()-began < pictureWait {
			p.later(pictureLook, look)
			return
		}
		act()
	}
	p.later(pictureLook, look)
}

// pictureLook is how often it looks, ms.
const pictureLook = 15

// page is everything the program holds of the page.
type page struct {
	document js.Value
	picture  Picture
	palette  draw.Palette // of pictures on the screen
	desk     *desk.Desk
	work     *work.Work // the one in hand
	view     scene.View
	list     draw.List
	printing bool // the picture is the printer's
	hands    hands.Hands
	hand     hand
	holding  holding
	asking   asking
	finder   finder
	places   places
	motions  motions
	steps    steps
	planned  planned
	finger   *finger // on a slider, or nil
	readout  slot
	key      slot // of the picture
	aboard   *int // the paddlers whose folds show, nil before any
	// waterOf is the design whose numbers on the water show, heel that of the heeled
	// section, rad.
	waterOf            design.Design
	waterIsLate        bool // as said last
	heel               float64
	recorded, readings *measures        // the lists of measurements
	tracedOf           *record.Notebook // the one that the page last followed from the picture's window
	unfolded           string           // the key of the fault whose fold was opened last
	controls           map[string]*control
	inOrder            []*control // of the form
	texts              []*textField
	outputs            map[string]*output
	checksAt           map[stage.Key]*filling // the places of the checks
	flags              map[flagOf]*flag
	none               flag // no boat of this design could be built
	// skin and rest say until when there is something to wait for: the bark laid flat and what
	// follows it, and what follows once a control rests.
	skin, rest   mark
	headChecks   filling
	folds        []*fold
	numbers      work.Numbers
	speaker      work.Speaker
	sheets       []*sheetRow
	sheetsShown  *shownSheets
	paperInSight bool // the form of what can be printed is on the screen
	turns        turns

	noticed map[string][]desk.Button // the buttons of the notices, by their names
	keeping bool                     // what changed is about to be kept
	// started tells that the page answers, inEvent that an event of the user's is answered.
	started, inEvent bool
	// opening lasts until the bark of the first boat is laid flat: until then what follows
	// it stays as it stood before the program was awake.
	opening bool
	// checkAwaited is the key of the check pressed before that, or empty.
	checkAwaited string
	firsts       int // how often what is to stand before the program is awake has been put off
	trip         trip
}

// answering is act as what answers an event.
func (p *page) answering(act func(js.Value)) js.Func {
	return p.callback(func(args []js.Value) {
		p.inEvent = true
		act(args[0])
		p.inEvent = false
	})
}

// refresh brings everything that follows a step of a slider up to date: controls,
// numbers and picture. What can wait comes in rest.
func (p *page) refresh() {
	// Asked for before anything is written, which would make the browser lay the page
	// out for the answer.
	size := p.picture.Size()
	p.trips("step")
	p.opening = p.opening && !p.started
	if p.started {
		js.Global().Call("stepped")
	}
	writes.together(func() {
		p.none.put(p.work.None)
		p.skin.put("waiting")
		p.showControls()
		p.showNumbers()
		p.showChecks()
		p.showHand()
		p.showHolding()
		p.waterLate()
		p.drawIn(size)
		p.restSoon()
		p.saveSoon()
	})
}

// follow writes what stands further down the page: curves and
// tables, the record, the summary for those who listen.
func (p *page) follow() {
	p.trips("rest")
	// Also what was known before, as of a boat undone, which nothing works out anew.
	p.showWater()
	p.showCurves()
	p.showTables()
	p.showRecord()
	p.showTracing(false)
	p.showSeason()
	p.showSteps()
	p.showAsked()
	p.showPaper()
	p.speak()
	p.showShelf()
	p.desk.Stood()
}
