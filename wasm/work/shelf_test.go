package work_test

import (
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/core/units"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/keep"
	"barkwright/wasm/work"
)

func named(name string) design.Design {
	d := design.Default()
	d.Name = name
	return d
}

// openShelf is the shelf of a page opened on a store.
func openShelf(store *memory.Store) *work.Shelf {
	s := work.NewShelf(keep.Open(store, &memory.Store{}, time.Now), units.Imperial16)
	_ = s.TakeOver()
	s.Open()
	return s
}

// shelfOf is the shelf of a page that opens with one boat.
func shelfOf(t testing.TB, store *memory.Store, d design.Design) *work.Shelf {
	t.Helper()
	k := keep.Open(store, &memory.Store{}, time.Now)
	_, err := k.Save(k.NewID(), file.Kept{Boat: file.Boat{Design: d}})
	require.NoError(t, err)
	return openShelf(store)
}

func all(t testing.TB, s *work.Shelf) file.File {
	t.Helper()
	f, err := s.All()
	require.NoError(t, err)
	return f
}

func lineOf(t testing.TB, d design.Design) string {
	t.Helper()
	text, err := design.Line(d)
	require.NoError(t, err)
	return text
}

// Boats stand side by side, each with its own undo, in the units last chosen.
func TestShelf(t *testing.T) {
	s := shelfOf(t, &memory.Store{}, named("one"))
	s.InHand().Set("beam", 34*inch)
	s.Add(named("two"))
	s.SetSystem(units.Metric)
	s.InHand().Set("beam", 35*inch)
	require.NoError(t, s.Take(0))
	assert.Equal(t, units.Metric, s.InHand().System)
	assert.True(t, s.InHand().Undo())
	assert.InDelta(t, 33, beam(s.InHand()), 1e-9)
	require.NoError(t, s.Take(1))
	assert.InDelta(t, 35, beam(s.InHand()), 1e-9)
	require.NoError(t, s.Take(7))
	assert.Equal(t, 1, s.Current())
}

// All that was taken off can be brought back, also on another day, until it is cleared.
func TestTakenOff(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	require.NoError(t, s.Remove())
	assert.Equal(t, []string{"one"}, s.Names(), "the last one stays")
	s.Add(named("two"))
	s.Add(named("three"))
	s.InHand().Set("beam", 35*inch)
	require.NoError(t, s.Remove())
	require.NoError(t, s.Remove())
	assert.Equal(t, []string{"one"}, s.Names())
	assert.Equal(t, []string{"three", "two"}, s.TakenOff())
	require.NoError(t, s.Keep().Err)

	s = openShelf(store)
	assert.Equal(t, []string{"one"}, s.Names())
	assert.Equal(t, []string{"two", "three"}, s.TakenOff())
	require.NoError(t, s.BringBack(1))
	assert.InDelta(t, 35, beam(s.InHand()), 1e-9)
	require.NoError(t, s.Keep().Err)
	s.ClearTakenOff()
	s = openShelf(store)
	assert.Equal(t, []string{"one", "three"}, s.Names())
	assert.Empty(t, s.TakenOff())
}

// Of a file those boats are added that are not here already, also among the ones taken
// off; where there is no room for all, none is.
func TestPut(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	f := file.File{Boats: []file.Boat{{Design: named("a")}, {Design: named("b")}, {Design: named("a")}}, Current: 1}
	put, err := s.Put(f)
	require.NoError(t, err)
	assert.Equal(t, work.Put{Added: 2, Here: 1}, put)
	assert.Equal(t, []string{"one", "a", "b"}, s.Names())
	assert.Equal(t, "b", s.InHand().Entered.Name)
	require.NoError(t, s.Remove())
	put, err = s.Put(f)
	require.NoError(t, err)
	assert.Equal(t, work.Put{Here: 3, Back: 1}, put)
	assert.Equal(t, []string{"one", "a", "b"}, s.Names())
	put, err = s.Put(all(t, s))
	require.NoError(t, err)
	assert.Equal(t, work.Put{Here: 3}, put)
	s.InHand().Set("beam", 35*inch)
	put, err = s.Put(f)
	require.NoError(t, err)
	assert.Equal(t, work.Put{Added: 1, Here: 2}, put, "it is another boat now")

	require.NoError(t, s.Keep().Err)
	names := s.Names()
	for k, text := range store.Texts {
		store.Most += len(k) + len(text)
	}
	store.Most += 4000 // room for one
	_, err = s.Put(file.File{Boats: []file.Boat{{Design: named("c")}, {Design: named("d")}}})
	require.ErrorIs(t, err, keep.ErrRefused)
	assert.Equal(t, names, s.Names())
	assert.Equal(t, names, openShelf(store).Names())
}

// The boat of an address is the kept one with all that is kept beside it, or one more.
func TestShelfTakesALine(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	s.Add(named("two"))
	s.InHand().SetRecord("theirs", small)
	require.NoError(t, s.Take(0))
	require.NoError(t, s.Keep().Err)
	for _, s := range []*work.Shelf{s, openShelf(store)} {
		s.TakeLine(lineOf(t, named("two")), named("two"))
		assert.Equal(t, 1, s.Current())
		assert.Len(t, s.InHand().Measurements(work.Recorded), len(small))
		s.TakeLine(lineOf(t, named("three")), named("three"))
		assert.Equal(t, []string{"one", "two", "three"}, s.Names())
		assert.Equal(t, 2, s.Current())
	}
}

// A boat with a fault is shown as it last could be built, and no other in its place:
// where none could be there is none to show.
func TestTheBoatShownIsThisOne(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("wide"))
	s.InHand().Set("beam", 40*inch)
	s.InHand().Set("depth", 9)
	require.NotEmpty(t, s.InHand().Faults)
	require.NoError(t, s.Keep().Err)
	shown := func(s *work.Shelf) float64 {
		assert.False(t, s.InHand().None)
		assert.InDelta(t, 9, s.InHand().Entered.Depth, 1e-9)
		return s.InHand().Canoe().Design.Beam / inch
	}
	again := openShelf(store)
	assert.InDelta(t, 40, shown(again), 1e-9, "after a reload")
	again.Copy()
	assert.InDelta(t, 40, shown(again), 1e-9, "of a copy")
	assert.Equal(t, "wide", again.InHand().Canoe().Design.Name[:4])
	other := shelfOf(t, &memory.Store{}, named("one"))
	_, err := other.Put(all(t, again))
	require.NoError(t, err)
	assert.InDelta(t, 40, shown(other), 1e-9, "from a file")

	d := named("deep")
	d.Depth = 9
	s.Add(d)
	assert.True(t, s.InHand().None)
	assert.Equal(t, d, s.InHand().Entered)
	require.NoError(t, s.Keep().Err)
	assert.True(t, openShelf(store).InHand().None)

	// A name that is too long hides nothing of the boat.
	d = named(strings.Repeat("x", 107))
	d.Beam = 36 * inch
	s.Add(d)
	assert.NotEmpty(t, s.InHand().Faults)
	assert.InDelta(t, 36, s.InHand().Canoe().Design.Beam/inch, 1e-9)
	s.InHand().Set("beam", 37*inch)
	assert.InDelta(t, 37, s.InHand().Canoe().Design.Beam/inch, 1e-9)
	assert.Len(t, s.InHand().Canoe().Design.Name, design.MaxName)
	assert.Len(t, s.InHand().Entered.Name, 107)
}

// Two pages on two boats: both boats stay as they were left.
func TestTwoPagesOnTwoBoats(t *testing.T) {
	store := &memory.Store{}
	shelfOf(t, store, named("one"))
	one, two := openShelf(store), openShelf(store)
	one.Add(named("mine"))
	require.Equal(t, work.Kept{}, one.Keep())
	assert.Equal(t, work.Nothing, two.Heard(keep.KeyOf(one.ID())))
	assert.Equal(t, []string{"one", "mine"}, two.Names())
	two.InHand().Set("beam", 36*inch)
	require.Equal(t, work.Kept{}, two.Keep())
	assert.Equal(t, work.Nothing, one.Heard(keep.KeyOf(two.ID())))
	one.InHand().Set("beam", 35*inch)
	require.Equal(t, work.Kept{}, one.Keep())
	require.NoError(t, one.Take(0))
	assert.InDelta(t, 36, beam(one.InHand()), 1e-9, "as the other page left it")
	f := all(t, openShelf(store))
	assert.InDelta(t, 36, f.Boats[0].Design.Beam/inch, 1e-9)
	assert.InDelta(t, 35, f.Boats[1].Design.Beam/inch, 1e-9)
}

// Two pages on one boat: the later one keeps both versions, and each page is told.
func TestTwoPagesOnOneBoat(t *testing.T) {
	store := &memory.Store{}
	shelfOf(t, store, named("one"))
	one, two := openShelf(store), openShelf(store)
	id := one.ID()
	require.Equal(t, id, two.ID())
	one.InHand().Set("beam", 35*inch)
	require.Equal(t, work.Kept{}, one.Keep())
	assert.Equal(t, work.ChangedInHand, two.Heard(keep.KeyOf(id)))
	assert.True(t, two.Elsewhere())
	assert.InDelta(t, 33, beam(two.InHand()), 1e-9, "what is in hand is not taken out of it")
	two.InHand().Set("depth", 13*inch)
	require.Equal(t, work.Kept{Split: true}, two.Keep())
	require.Equal(t, work.Kept{}, two.Keep(), "said once")
	assert.NotEqual(t, id, two.ID())
	assert.False(t, two.Elsewhere())
	assert.Equal(t, work.SplitFromInHand, one.Heard(keep.KeyOf(two.ID())))
	one.InHand().Set("length", 190*inch)
	require.Equal(t, work.Kept{}, one.Keep())

	for _, s := range []*work.Shelf{openShelf(store), one, two} {
		s.Heard(keep.KeyOf(id))
		f := all(t, s)
		require.Len(t, f.Boats, 2)
		for _, b := range f.Boats {
			if b.Design.Beam > 34*inch {
				assert.InDelta(t, 190, b.Design.Length/inch, 1e-9)
			} else {
				assert.InDelta(t, 13, b.Design.Depth/inch, 1e-9)
			}
		}
	}

	// Or the other's version is taken, and nothing split.
	three := openShelf(store)
	require.True(t, three.TakeID(one.ID()))
	one.InHand().Set("beam", 36*inch)
	require.Equal(t, work.Kept{}, one.Keep())
	assert.Equal(t, work.ChangedInHand, three.Heard(keep.KeyOf(one.ID())))
	require.NoError(t, three.TakeTheirs())
	assert.InDelta(t, 36, beam(three.InHand()), 1e-9)
	three.InHand().Set("beam", 37*inch)
	require.Equal(t, work.Kept{}, three.Keep())
}

// A boat that the full store did not take stays as it is here when another page keeps its own version, or
// takes it off for good.
func TestWhatIsNotKeptYetStays(t *testing.T) {
	for _, what := range []string{"kept", "removed"} {
		store := &memory.Store{}
		one := shelfOf(t, store, named("one"))
		id := one.ID()
		two := openShelf(store)
		one.InHand().Set("beam", 35*inch)
		store.Refuses = true
		require.Error(t, one.Keep().Err)
		one.Add(named("two"))
		store.Refuses = false
		if what == "kept" {
			two.InHand().Set("depth", 13*inch)
			require.NoError(t, two.Keep().Err)
		} else {
			store.Remove(keep.KeyOf(id))
		}
		one.Heard(keep.KeyOf(id))
		require.NoError(t, one.Keep().Err)
		var beams, depths []float64
		for _, b := range all(t, openShelf(store)).Boats {
			beams, depths = append(beams, b.Design.Beam), append(depths, b.Design.Depth)
		}
		assert.Contains(t, beams, 35*inch, what)
		if what == "kept" {
			assert.Contains(t, depths, 13*inch)
		}
	}
}

// Where another page clears the store, what is in memory is kept again, and what is not is told of.
func TestCleared(t *testing.T) {
	store := &memory.Store{}
	k := keep.Open(store, &memory.Store{}, time.Now)
	for _, name := range []string{"never opened", "opened", "in hand"} {
		_, err := k.Save(k.NewID(), file.Kept{Boat: file.Boat{Design: named(name)}})
		require.NoError(t, err)
	}
	s := openShelf(store)
	require.NoError(t, s.Take(1))
	require.NoError(t, s.Take(2))
	clear(store.Texts)
	assert.Equal(t, 1, s.Cleared())
	require.NoError(t, s.Keep().Err)
	assert.Equal(t, []string{"opened", "in hand"}, openShelf(store).Names())
	assert.Equal(t, []string{"opened", "in hand"}, s.Names())

	store = &memory.Store{}
	s = openShelf(store)
	assert.Zero(t, s.Cleared())
	require.NoError(t, s.Keep().Err)
	_, there := store.Get(keep.KeyOf(s.ID()))
	assert.False(t, there, "a new user's boat is not kept before it is changed")
}

// A step writes the boat in hand and nothing else, however many are kept; of the others
// only heads are read.
func TestAStepWritesOneBoat(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	for i := range 400 {
		s.Add(named(strconv.Itoa(i)))
	}
	require.NoError(t, s.Keep().Err)
	s = openShelf(store)
	store.Writes = nil
	s.InHand().Set("beam", 36*inch)
	require.NoError(t, s.Keep().Err)
	require.NoError(t, s.Keep().Err)
	assert.Equal(t, []string{keep.KeyOf(s.ID())}, store.Writes[:1])
	assert.LessOrEqual(t, len(store.Writes), 2, "the boat, and which is in hand")
}

// A page whose browser keeps nothing still works, and says so.
func TestNothingIsKept(t *testing.T) {
	store := &memory.Store{Refuses: true}
	s := openShelf(store)
	s.InHand().Set("beam", 36*inch)
	require.ErrorIs(t, s.Keep().Err, keep.ErrRefused)
	put, err := s.Put(file.File{Boats: []file.Boat{{Design: named("a")}}})
	require.NoError(t, err)
	assert.Equal(t, 1, put.Added)
	require.NoError(t, s.Take(0))
	require.NoError(t, s.Remove())
	require.NoError(t, s.BringBack(0))
	assert.InDelta(t, 36, beam(s.InHand()), 1e-9)
}

// The first boat of a new user is kept once it is changed or another stands beside it.
func TestTheFirstBoat(t *testing.T) {
	store := &memory.Store{}
	s := openShelf(store)
	require.NoError(t, s.Keep().Err)
	assert.Empty(t, keep.Open(store, &memory.Store{}, time.Now).Boats())
	s.Add(named("two"))
	require.NoError(t, s.Keep().Err)
	assert.Len(t, openShelf(store).Names(), 2)
}

// Boats that older pages kept under one key are taken over once, with their boat in
// hand.
func TestTakeOver(t *testing.T) {
	text, err := file.File{Boats: []file.Boat{{Design: named("a")}, {Design: named("b")}, {Design: named("c")}},
		Current: 1}.Encode()
	require.NoError(t, err)
	store := &memory.Store{Texts: map[string]string{"barkwright.designs": string(text)}}
	s := openShelf(store)
	assert.Equal(t, []string{"a", "b", "c"}, s.Names())
	assert.Equal(t, "b", s.InHand().Entered.Name)
	require.NoError(t, s.Remove())
	require.NoError(t, s.Keep().Err)
	s = openShelf(store)
	assert.Equal(t, []string{"a", "c"}, s.Names(), "once")
	assert.Equal(t, string(text), store.Texts["barkwright.designs"])

	// An older page writes there again: what is new is added.
	store.Texts["barkwright.designs"] = strings.Replace(string(text), `"name": "a"`, `"name": "z"`, 1)
	assert.Equal(t, []string{"a", "c", "b", "z"}, openShelf(store).Names())
}

// What is half typed is kept with its boat, but for what stands there already.
func TestHalfTyped(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	s.InHand().SetTyped("record-text", "length overall\t18")
	length, _ := design.Lookup("length")
	s.InHand().TypeControl(length, "17 ban")
	s.InHand().TypeControl(length, s.InHand().Format(length))
	require.NoError(t, s.Keep().Err)
	s = openShelf(store)
	assert.Equal(t, map[string]string{"record-text": "length overall\t18"}, s.InHand().Typed)
}

// A boat that stopped the page is set aside and the others open.
func TestSetAside(t *testing.T) {
	store := &memory.Store{}
	s := shelfOf(t, store, named("one"))
	s.Add(named("bad"))
	require.NoError(t, s.Keep().Err)
	bad := s.ID()
	s.SetAside(bad)
	s.Open()
	assert.Equal(t, []string{"one"}, s.Names())
	s = openShelf(store)
	assert.Equal(t, []string{"one"}, s.Names())
	s.Retry(keep.KeyOf(bad))
	assert.Equal(t, []string{"one", "bad"}, s.Names())
}

// A page that each boat stops in turn sets one after another aside until one stands,
// whichever was in hand; where none is left what stops it is no boat's, and it is not
// opened again and again.
func TestOneAfterAnotherIsSetAside(t *testing.T) {
	store, own := &memory.Store{}, &memory.Store{}
	s := shelfOf(t, store, named("good"))
	for _, name := range []string{"bad", "worse"} {
		s.Add(named(name))
	}
	require.True(t, s.TakeID(s.IDAt(1)))
	require.NoError(t, s.Keep().Err)
	open := func() (*work.Shelf, *keep.Keeper) {
		k := keep.Open(store, own, time.Now)
		s := work.NewShelf(k, units.Imperial16)
		s.Open()
		return s, k
	}
	for _, name := range []string{"bad", "worse"} {
		s, k := open()
		require.Equal(t, name, s.InHand().Entered.Name)
		require.True(t, k.Stopped(), name)
	}
	s, k := open()
	assert.Equal(t, []string{"good"}, s.Names())
	assert.Equal(t, "good", s.InHand().Entered.Name)
	require.True(t, k.Stopped())
	s, k = open()
	assert.Equal(t, design.Default().Name, s.InHand().Entered.Name)
	assert.Len(t, k.Unread(), 3)
	assert.False(t, k.Stopped())

	for _, u := range k.Unread() {
		k.Retry(u.Key)
	}
	_, k = open()
	k.Done()
	assert.False(t, k.Stopped(), "what has opened did not stop")
	_, err := k.Load(k.Boats()[0].ID)
	require.NoError(t, err)
	assert.False(t, k.Stopped(), "what is read later is not being opened")
}

// A boat kept under the one key of before that stops the page is set aside too, and the
// others are not added once more.
func TestTakeOverThatStops(t *testing.T) {
	text, err := file.File{Boats: []file.Boat{{Design: named("a")}, {Design: named("bad")}}, Current: 1}.Encode()
	require.NoError(t, err)
	store, own := &memory.Store{Texts: map[string]string{"barkwright.designs": string(text)}}, &memory.Store{}
	k := keep.Open(store, own, time.Now)
	s := work.NewShelf(k, units.Imperial16)
	require.NoError(t, s.TakeOver())
	require.Equal(t, "bad", s.InHand().Entered.Name)
	require.True(t, k.Stopped())

	k = keep.Open(store, own, time.Now)
	s = work.NewShelf(k, units.Imperial16)
	require.NoError(t, s.TakeOver())
	s.Open()
	assert.Equal(t, []string{"a"}, s.Names())
	require.Len(t, k.Unread(), 1)
	assert.Equal(t, "bad", k.Unread()[0].Name)
}

// What stands at the next opening before the program is awake is only of a boat that is
// kept as it stands, and without a fault.
func TestAsKept(t *testing.T) {
	store := &memory.Store{}
	s := openShelf(store)
	_, _, stands := s.AsKept()
	assert.False(t, stands, "the first boat of a new user is not kept")
	s.InHand().Set("beam", 34*units.Inch)
	_, _, stands = s.AsKept()
	assert.False(t, stands, "not kept yet")
	s.Keep()
	id, stamp, stands := s.AsKept()
	assert.True(t, stands)
	text, _ := store.Get(keep.KeyOf(id))
	head, err := file.ReadHead(text)
	require.NoError(t, err)
	assert.Equal(t, head.Stamp, stamp)
	s.InHand().Set("beam", 35*units.Inch)
	_, _, stands = s.AsKept()
	assert.False(t, stands, "changed since")
	s.InHand().Set("beam", 350*units.Inch)
	s.Keep()
	_, _, stands = s.AsKept()
	assert.False(t, stands, "with a fault")
}
