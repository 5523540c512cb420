package desk_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/pattern"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/wasm/desk"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/keep"
	"barkwright/wasm/pipeline"
	"barkwright/wasm/work"
)

const inch = units.Inch

// open is the desk of a page opened on a store, with the boat in hand.
func open(store *memory.Store) (*desk.Desk, *work.Work) {
	d := desk.New(keep.Open(store, &memory.Store{}, time.Now))
	d.Open("", "")
	return d, d.Show()
}

// said is what a reply says at an element; "" where it says nothing there.
func said(r desk.Reply, at string) (text string) {
	for _, s := range r.Says {
		if s.At == at {
			text = s.Text
		}
	}
	return text
}

// notice is the notice of a name, which must be there.
func notice(t *testing.T, r desk.Reply, name string) desk.Notice {
	t.Helper()
	for _, n := range r.Notices {
		if n.Name == name {
			return n
		}
	}
	require.Fail(t, "no notice", name)
	return desk.Notice{}
}

func line(t *testing.T, d design.Design) string {
	t.Helper()
	text, err := design.Line(d)
	require.NoError(t, err)
	return text
}

func decoded(t *testing.T, r desk.Reply) file.File {
	t.Helper()
	require.NotNil(t, r.Save)
	assert.Equal(t, "application/json", r.Save.Kind)
	f, err := file.Decode([]byte(r.Save.Text))
	require.NoError(t, err)
	return f
}

func TestSaveThisAndAll(t *testing.T) {
	d, w := open(&memory.Store{})
	w.SetText("name", "Otter")
	r := d.Keep("save-file", 0, "")
	assert.Equal(t, "Otter.json", r.Save.Name)
	assert.Len(t, decoded(t, r).Boats, 1)
	assert.Contains(t, said(r, "file-says"), "this boat")
	assert.True(t, d.Keep("copy", 0, "").TookUp)
	r = d.Keep("save-all", 0, "")
	assert.Equal(t, "2-canoes.json", r.Save.Name)
	assert.Len(t, decoded(t, r).Boats, 2)
	assert.Contains(t, said(r, "file-says"), "all 2 boats")
}

// Opening a file says what was added, what was here, and what came back.
func TestOpenFileSaysWhatItDid(t *testing.T) {
	d, _ := open(&memory.Store{})
	d.Start(0)
	d.Kept()
	all := d.Keep("save-all", 0, "").Save.Text
	first, _ := open(&memory.Store{})
	first.Start(1)
	r := first.OpenFile(all)
	assert.True(t, r.TookUp)
	n := len(decoded(t, d.Keep("save-all", 0, "")).Boats)
	text := said(r, "file-says")
	assert.True(t, strings.HasPrefix(text, "Opened "), text)
	r = first.OpenFile(all)
	assert.Contains(t, said(r, "file-says"), "Opened 0 from the file")
	assert.Contains(t, said(r, "file-says"), "not added again: "+string(rune('0'+n)))
	first.Keep("remove", 0, "")
	assert.Contains(t, said(first.OpenFile(all), "file-says"), "Brought back from what was taken off: 1.")
}

func TestFilesThatCannotBeOpenedChangeNothing(t *testing.T) {
	d, w := open(&memory.Store{})
	for _, text := range []string{"", "{", `{"a":1}`} {
		r := d.OpenFile(text)
		assert.False(t, r.TookUp)
		assert.True(t, strings.HasSuffix(said(r, "file-says"), " Nothing is changed."), text)
	}
	assert.Same(t, w, d.Shelf.InHand())
	assert.Equal(t, file.ErrTooLarge.Error(), said(desk.TooLarge(), "file-says"))
	assert.Contains(t, said(desk.Unreadable(), "file-says"), "Nothing is changed.")
}

func TestForgetIsAskedForTwice(t *testing.T) {
	d, _ := open(&memory.Store{})
	d.Start(0)
	d.Keep("remove", 0, "")
	require.Len(t, d.Shelf.TakenOff(), 1)
	assert.Contains(t, said(d.Keep("clear-off", 0, ""), "file-says"), "Removed: 1. Press once more")
	d.Keep("save-file", 0, "")
	d.Keep("clear-off", 0, "")
	assert.Len(t, d.Shelf.TakenOff(), 1, "something else came between")
	assert.True(t, d.Keep("clear-off", 0, "").Shelf)
	assert.Empty(t, d.Shelf.TakenOff())
}

func TestBoatAsOneLine(t *testing.T) {
	d, w := open(&memory.Store{})
	w.Set("beam", 34*inch)
	r := d.Keep("show-line", 0, "")
	assert.Equal(t, r.Copy, r.Fields["line"])
	assert.Equal(t, "line", r.Focus)
	assert.False(t, d.OpenLine("no line").TookUp)
	w.Set("beam", 30*inch)
	assert.True(t, d.Keep("open-line", 0, " "+r.Copy+" ").TookUp)
	assert.InDelta(t, 34, d.Show().Entered.Beam/inch, 1e-9)
}

// Where the browser keeps nothing it is said at once and offered as a file; once it
// keeps again the notice goes.
func TestRefusalIsSaid(t *testing.T) {
	d := desk.New(keep.Open(&memory.Store{Refuses: true}, &memory.Store{}, time.Now))
	r := d.Open("", "")
	n := notice(t, r, "not kept")
	assert.Contains(t, said(r, "kept"), "keeps nothing")
	d.Show()
	assert.Len(t, decoded(t, n.Buttons[0].Press()).Boats, 1)
	kept, _ := open(&memory.Store{})
	r = kept.Kept()
	assert.Contains(t, r.Unsay, "not kept")
	assert.Contains(t, said(r, "kept"), "Kept in this browser")
}

// A boat changed in two windows: each is told, and both versions stand.
func TestTwoWindows(t *testing.T) {
	store := &memory.Store{}
	one, w := open(store)
	w.SetText("name", "Otter")
	one.Kept()
	two, v := open(store)
	require.Equal(t, "Otter", v.Entered.Name)
	w.Set("beam", 34*inch)
	one.Kept()
	n := notice(t, two.Heard(keep.KeyOf(two.Shelf.ID())), "elsewhere")
	v.Set("beam", 30*inch)
	r := two.Kept()
	// It names the boat, for it stands until it is closed, whatever boat is in hand then.
	assert.Contains(t, notice(t, r, "split").Text, "“Otter” was changed in another window")
	assert.Contains(t, r.Unsay, "elsewhere")
	assert.Len(t, two.Shelf.Names(), 2)
	r = n.Buttons[0].Press()
	assert.True(t, r.TookUp && r.KeepNothing)
}

func TestAddress(t *testing.T) {
	d, w := open(&memory.Store{})
	_, _, _, write := d.InAddress()
	assert.False(t, write, "it stands there as it is")
	w.Set("beam", 34*inch)
	text, id, anew, write := d.InAddress()
	assert.True(t, write && !anew)
	assert.Equal(t, d.Shelf.ID(), id)
	assert.Equal(t, line(t, w.Entered), text)
	assert.False(t, d.Address(text, id).TookUp, "it is the one in hand")
	r := d.Address("no line", "")
	assert.False(t, r.TookUp)
	assert.Equal(t, "no line", notice(t, r, "address").Buttons[0].Press().Save.Text)
	w.Set("beam", 35*inch)
	_, _, anew, write = d.InAddress()
	assert.True(t, write && anew, "what cannot be read is left in the history")
	w.Set("beam", 36*inch)
	_, _, anew, write = d.InAddress()
	assert.True(t, write && !anew, "once")

	w.SetText("notes", "cedar in the shed")
	assert.False(t, d.Address(text, id).TookUp, "a step back from place to place")
	assert.InDelta(t, 36, w.Entered.Beam/inch, 1e-9)
	_, _, _, write = d.InAddress()
	assert.True(t, write, "the address follows the boat")

	d.Keep("copy", 0, "")
	assert.True(t, d.Address(text, id).TookUp, "the boat before")
	back := d.Show()
	assert.InDelta(t, 34, back.Entered.Beam/inch, 1e-9, "as it was there")
	assert.Equal(t, "cedar in the shed", back.Entered.Notes)
	assert.True(t, back.CanUndo())
}

func TestAddressAtTheStart(t *testing.T) {
	from := design.Default()
	from.Beam = 30 * inch
	d := desk.New(keep.Open(&memory.Store{}, &memory.Store{}, time.Now))
	d.Open(line(t, from), "")
	assert.InDelta(t, 30, d.Show().Entered.Beam/inch, 1e-9)
}

func TestUndoAndReset(t *testing.T) {
	d, w := open(&memory.Store{})
	w.SetText("name", "Otter")
	w.Set("beam", 34*inch)
	assert.True(t, d.Do("undo").Changed)
	assert.InDelta(t, 33, w.Entered.Beam/inch, 1e-9)
	assert.True(t, d.Do("redo").Changed)
	assert.InDelta(t, 34, w.Entered.Beam/inch, 1e-9)
	assert.Contains(t, said(d.Do("reset"), "did"), "Undo takes it back")
	assert.InDelta(t, 33, w.Entered.Beam/inch, 1e-9)
	assert.Equal(t, "Otter", w.Entered.Name)
	assert.False(t, d.Do("").Changed)
}

// After a fault the boat stands as it last did; one that never stood is set aside, and
// after too many the page no longer shows it.
func TestMeet(t *testing.T) {
	d, w := open(&memory.Store{})
	w.SetText("name", "Otter")
	d.Kept()
	d.Stood()
	w.Set("beam", 34*inch)
	r, goOn := d.Meet(true)
	assert.True(t, goOn)
	assert.InDelta(t, 33, w.Entered.Beam/inch, 1e-9)
	f := decoded(t, notice(t, r, "fault").Buttons[0].Press())
	assert.InDelta(t, 34, f.Boats[0].Design.Beam/inch, 1e-9, "what was entered can be saved")

	for i := 1; i <= 4; i++ {
		r, goOn = d.Meet(false)
		d.Show()
		assert.Equal(t, i <= 3, goOn, i)
	}
	assert.Greater(t, len(r.Notices), 1, "boats set aside are offered")
}

// breaking is a store that fails, once it is armed, as a fault of the program would.
type breaking struct {
	*memory.Store
	armed string // the key
}

func (s *breaking) Get(key string) (string, bool) {
	if key == s.armed {
		panic("a fault made on purpose")
	}
	return s.Store.Get(key)
}

// A boat that stops the page while it is taken in hand is set aside, not the one shown.
func TestMeetWhileTaking(t *testing.T) {
	first, w := open(&memory.Store{})
	w.SetText("name", "Otter")
	first.Start(-1)
	store := &memory.Store{}
	f := first.Keep("save-all", 0, "").Save.Text
	one, _ := open(store)
	one.OpenFile(f)
	one.Kept()

	b := &breaking{Store: store}
	d := desk.New(keep.Open(b, &memory.Store{}, time.Now))
	d.Open("", "")
	w = d.Show()
	w.Known() // it stands on the page
	d.Stood()
	at := 1 - d.Shelf.Current()
	b.armed = keep.KeyOf(d.Shelf.IDAt(at))
	assert.Panics(t, func() { d.Take(at) })
	b.armed = ""
	r, goOn := d.Meet(true)
	assert.True(t, goOn)
	assert.Same(t, w, d.Show())
	assert.Len(t, d.Shelf.Names(), 1)
	assert.Len(t, r.Notices, 2, "the fault, and the boat set aside")
}

func TestUnreadIsNamedAndOffered(t *testing.T) {
	store := &memory.Store{}
	one, w := open(store)
	w.SetText("name", "Otter")
	one.Kept()
	key := keep.KeyOf(one.Shelf.ID())
	store.Set(key, `{"name":"Otter"`)
	d := desk.New(keep.Open(store, &memory.Store{}, time.Now))
	n := notice(t, d.Open("", ""), key)
	assert.Contains(t, n.Text, "“Otter” is kept and was not opened.")
	assert.Contains(t, n.Text, "It stays as it is.")
	assert.Equal(t, `{"name":"Otter"`, n.Buttons[0].Press().Save.Text)
}

func TestStartingBoats(t *testing.T) {
	d, _ := open(&memory.Store{})
	list := desk.Starting(units.Imperial16)
	assert.Contains(t, list, "Small solo, 12 ft")
	assert.Contains(t, desk.Starting(units.Metric), "Small solo, 3.7 m")
	for i, s := range design.Starting() {
		assert.Contains(t, list, s.Name)
		assert.True(t, d.Start(i).TookUp)
		assert.Equal(t, s.Name, d.Show().Entered.Name)
	}
	d.Start(-1)
	assert.Equal(t, design.Default().Name, d.Show().Entered.Name)
}

// form is a paper form with everything there is chosen.
func form() desk.PaperForm {
	f := desk.PaperForm{Drawing: "stem", Table: "ribs", Day: "2026-05-01"}
	for _, s := range stage.All() {
		f.Sheets = append(f.Sheets, s.Key)
	}
	f.Drawing = pattern.Kinds()[0].Key
	return f
}

func TestPaper(t *testing.T) {
	d, w := open(&memory.Store{})
	w.SetText("name", "Otter")
	r := d.Paper("print", desk.PaperForm{})
	assert.Equal(t, "Nothing is chosen to print.", said(r, "paper-says"))
	r = d.Paper("print", form())
	assert.Contains(t, r.Print, "Otter")
	assert.Contains(t, r.Print, "1 May 2026")
	assert.Contains(t, r.Print, "Top and side view, finished.")
	r = d.Paper("csv", form())
	assert.Equal(t, "Otter-ribs.csv", r.Save.Name)
	assert.Contains(t, said(r, "paper-says"), "Handed over")
	r = d.Paper("svg", form())
	assert.Equal(t, "image/svg+xml", r.Save.Kind)
	assert.Contains(t, r.Save.Text, "<svg")
	assert.NotEmpty(t, d.Paper("roll", form()).Print)
	assert.Empty(t, said(d.ShowPaper(form()), "paper-says"))
	assert.False(t, func() (there bool) {
		for _, s := range d.ShowPaper(form()).Says {
			there = there || s.At == "paper-says"
		}
		return there
	}(), "what was said of this boat stays")
	w.Set("beam", 34*inch)
	assert.Contains(t, d.ShowPaper(form()).Says, desk.Said{At: "paper-says"}, "what was said of another goes")
}

// The pages are counted before they are printed, and shown as they will be; what was
// counted or shown of another choice or boat goes.
func TestPagesAreCountedAndShown(t *testing.T) {
	d, w := open(&memory.Store{})
	f := form()
	f.Patterns, f.InSight = []string{"stem", "tip"}, true
	assert.Empty(t, said(d.ShowPaper(f), "paper-count"), "the bark does not lie flat yet")
	w.Known().Need(pipeline.Figures)
	counted := said(d.ShowPaper(f), "paper-count")
	assert.NotContains(t, said(d.ShowPaper(f), "paper-count"), "pages", "said once")
	printed := strings.Count(d.Paper("print", f).Print, `<section class="tile">`)
	assert.Contains(t, counted, fmt.Sprintf("together %d pages, A4 or Letter.", printed))
	shown := d.Paper("show", f)
	assert.Equal(t, printed, strings.Count(shown.Markup["paper-pages"], "<li>"))
	assert.Equal(t, counted, said(shown, "paper-count"))
	assert.Equal(t, "paper-pages", shown.Focus, "they come into sight")
	assert.Contains(t, shown.Markup["paper-pages"], "1. 1. Choose the boat, page 1 of ")

	f.Sheets = f.Sheets[:1]
	r := d.ShowPaper(f)
	assert.Equal(t, "", r.Markup["paper-pages"])
	assert.Contains(t, r.Markup, "paper-pages")
	assert.NotEqual(t, counted, said(r, "paper-count"))
	f.Patterns = nil
	assert.Contains(t, said(d.ShowPaper(f), "paper-count"), "Build sheets: ")
	f.Cards = []stage.Key{stage.Rib}
	both := strings.Count(d.Paper("print", f).Print, `<section class="tile">`)
	assert.Regexp(t, fmt.Sprintf(`^Build sheets: \d+ pages; cards: \d+ pages; together %d pages, A4 or Letter\.$`,
		both),
		said(d.ShowPaper(f), "paper-count"))
	f.Sheets, f.Cards, f.Patterns = nil, nil, []string{"tip"}
	assert.Contains(t, said(d.ShowPaper(f), "paper-count"), "Patterns: ")
	f.Patterns = nil
	assert.Equal(t, "Nothing is chosen to print.", said(d.ShowPaper(f), "paper-count"))
	f = form()
	f.InSight = true
	d.ShowPaper(f)
	w.Set("beam", 34*inch)
	assert.Contains(t, d.ShowPaper(f).Says, desk.Said{At: "paper-count"}, "of the boat before")
}

// A boat that cannot be built is neither printed nor mended: the figures would be another boat's.
func TestNothingToPrint(t *testing.T) {
	bad := design.Default()
	bad.Beam = -1
	store := &memory.Store{}
	k := keep.Open(store, &memory.Store{}, time.Now)
	_, err := k.Save(k.NewID(), file.Kept{Boat: file.Boat{Design: bad}})
	require.NoError(t, err)
	d, w := open(store)
	require.True(t, w.None)
	for _, what := range []string{"print", "svg", "roll", "csv"} {
		assert.Contains(t, said(d.Paper(what, form()), "paper-says"), "nothing of it to print")
	}
	crack := desk.MendForm{Kind: "crack", Round: `4"`}
	for _, r := range []desk.Reply{d.Mend(crack), d.KeepRepair(crack, "2027-06-14")} {
		assert.Contains(t, said(r, "mend-says"), "nothing of it to mend")
		assert.Empty(t, r.Markup["mend-table"])
	}
	assert.Empty(t, w.Notebook.Log.Repairs())
}

func TestPrintIsChecked(t *testing.T) {
	d, w := open(&memory.Store{})
	f := form()
	assert.Empty(t, said(d.ShowPaper(f), "measured-says"))
	f.Measured = "what"
	assert.NotEmpty(t, said(d.Paper("check", f), "measured-says"))
	f.Measured = "148.5"
	r := d.Paper("check", f)
	was := said(r, "measured-says")
	require.NotEmpty(t, was)
	w.Set("length", 14*12*inch)
	now := said(d.ShowPaper(f), "measured-says")
	assert.NotEmpty(t, now)
	assert.NotEqual(t, was, now, "a print is measured against the boat shown")
	f.Bar, f.Measured = 1, "6"
	assert.NotEqual(t, now, said(d.Paper("check", f), "measured-says"), "a bare number is in the bar's unit")
}

func TestRibsChosen(t *testing.T) {
	d, _ := open(&memory.Store{})
	r := d.Ribs("1, 3")
	assert.False(t, r.Invalid["section-ribs"])
	was := said(r, "section-ribs-echo")
	r = d.Ribs("900")
	assert.True(t, r.Invalid["section-ribs"])
	assert.NotEmpty(t, said(r, "section-ribs-fault"))
	assert.Equal(t, was, said(r, "section-ribs-echo"), "what was last read stays")
}

// The bench opens at a stage's list, by its name where that is given; where nothing is made
// one by one it says why, beside the picture.
func TestBenchOpensAtAList(t *testing.T) {
	d, w := open(&memory.Store{})
	for at, want := range map[string]string{"open:choose": "other stages", "open:shed": "choose a stage",
		"open:all": "choose a stage"} {
		assert.Contains(t, said(d.AtBench(at, "2026-06-14"), "readout"), want, at)
		assert.False(t, d.BenchOpen())
	}
	d.AtBench("open:rib|Ribs to shave", "2026-06-14")
	require.True(t, d.BenchOpen())
	d.AtBench("done", "2026-06-14")
	assert.Equal(t, 1, w.Notebook.Log.Rows("rib.shave"))
	d.AtBench("open:rib|No such list", "2026-06-14")
	require.True(t, d.BenchOpen(), "the first list of the stage stays")
	d.AtBench("done", "2026-06-14")
	assert.Equal(t, 1, w.Notebook.Log.Rows("rib.drive"))
}
