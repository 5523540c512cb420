package keep_test

import (
	"maps"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"barkwright/core/design"
	"barkwright/core/file"
	"barkwright/wasm/internal/memory"
	"barkwright/wasm/keep"
)

// clock is a time that changes only when the test moves it.
type clock struct{ at time.Time }

func (c *clock) now() time.Time { return c.at }

func newClock() *clock { return &clock{time.Date(2026, 3, 1, 9, 0, 0, 0, time.UTC)} }

func named(name string) file.Kept {
	d := design.Default()
	d.Name = name
	return file.Kept{Boat: file.Boat{Design: d}}
}

func save(t testing.TB, k *keep.Keeper, name string) string {
	t.Helper()
	id := k.NewID()
	_, err := k.Save(id, named(name))
	require.NoError(t, err)
	return id
}

func load(t testing.TB, k *keep.Keeper, id string) {
	t.Helper()
	_, err := k.Load(id)
	require.NoError(t, err)
}

func names(k *keep.Keeper) (out []string) {
	for _, b := range k.Boats() {
		out = append(out, b.Name)
	}
	return out
}

// Boats come back in the order they were made, each under a key of its own with a
// revision that counts.
func TestBoatsAreKeptOneByOne(t *testing.T) {
	shared, c := &memory.Store{}, newClock()
	k := keep.Open(shared, &memory.Store{}, c.now)
	a := save(t, k, "first")
	for range 20 {
		save(t, k, "later")
	}
	c.at = c.at.Add(-time.Hour) // a clock put back does not reorder
	save(t, k, "last")
	shared.Writes = nil
	_, err := k.Save(a, named("first, again"))
	require.NoError(t, err)
	assert.Equal(t, []string{keep.KeyOf(a)}, shared.Writes, "one boat's change writes one boat")

	k = keep.Open(shared, &memory.Store{}, c.now)
	require.Len(t, k.Boats(), 22)
	assert.Equal(t, "first, again", names(k)[0])
	assert.Equal(t, 2, k.Boats()[0].Revision)
	assert.Equal(t, "last", names(k)[21])
	got, err := k.Load(a)
	require.NoError(t, err)
	assert.Equal(t, "first, again", got.Boat.Design.Name)
}

// A boat that another page has kept since is not overwritten until it is read again.
func TestAnotherPagesWritingStands(t *testing.T) {
	shared, c := &memory.Store{}, newClock()
	one := keep.Open(shared, &memory.Store{}, c.now)
	id := save(t, one, "boat")
	two := keep.Open(shared, &memory.Store{}, c.now)
	_, err := two.Load(id)
	require.NoError(t, err)
	_, err = one.Save(id, named("ones"))
	require.NoError(t, err)
	b, stands := two.Heard(keep.KeyOf(id))
	assert.True(t, stands)
	assert.False(t, two.Knows(b))
	before := maps.Clone(shared.Texts)
	_, err = two.Save(id, named("twos"))
	require.ErrorIs(t, err, keep.ErrElsewhere)
	assert.Equal(t, before, shared.Texts)
	_, err = two.Load(id)
	require.NoError(t, err)
	_, err = two.Save(id, named("twos"))
	require.NoError(t, err)
}

// What cannot be read is named, offered and left alone, whatever else is done. A torn
// text is copied, and the copy is named once its original is gone.
func TestWhatCannotBeReadIsLeftAlone(t *testing.T) {
	c := newClock()
	good, err := named("A torn one").Encode()
	require.NoError(t, err)
	newer := strings.Replace(strings.Replace(good, `"version":3,`, `"version":9,`, 1), "A torn one", "A newer one", 2)
	unknown := strings.Replace(strings.Replace(strings.Replace(good, `"table":"`, `"table":"x`, 1),
		`"rocker":`, `"keel":1,"rocker":`, 1),
		"A torn one", "One with a keel", 2)
	bad := map[string]string{
		"barkwright.boat.newer": newer, "barkwright.boat.unknown": unknown,
		"barkwright.boat.torn": good[:len(good)/2], "barkwright.boat.foreign": `{"some":"thing"}`,
		"barkwright.designs": `{"format":"barkwright designs","version":9}`,
	}
	shared := &memory.Store{Texts: maps.Clone(bad)}
	k := keep.Open(shared, &memory.Store{}, c.now)
	assert.Empty(t, k.Boats())
	_, ok := k.Old()
	assert.False(t, ok)
	found := map[string]string{}
	for _, u := range k.Unread() {
		found[u.Name] = u.Why
		assert.Equal(t, bad[u.Key], k.Text(u.Key))
	}
	assert.Len(t, found, 5)
	assert.Contains(t, found["A newer one"], "version 9")
	assert.Contains(t, found["One with a keel"], `"keel"`)
	assert.Contains(t, found["A torn one"], "damaged")
	assert.Contains(t, found["barkwright.boat.foreign"], "not a file of Barkwright designs")
	assert.Contains(t, found["barkwright.designs"], "version 9")

	// A page that has such a boat in hand from before does not write over it either.
	id := save(t, k, "mine")
	shared.Set(keep.KeyOf(id), newer)
	_, err = k.Save(id, named("mine"))
	require.ErrorIs(t, err, keep.ErrElsewhere)
	for key, text := range bad {
		assert.Equal(t, text, shared.Texts[key], key)
	}

	k = keep.Open(shared, &memory.Store{}, c.now)
	require.Len(t, k.Unread(), 5, "the copy of what still stands is not named beside it")
	shared.Remove("barkwright.boat.torn")
	k = keep.Open(shared, &memory.Store{}, c.now)
	torn := 0
	for _, u := range k.Unread() {
		if strings.HasPrefix(u.Key, "barkwright.torn.") {
			torn++
			assert.Equal(t, "A torn one", u.Name)
			assert.Equal(t, bad["barkwright.boat.torn"], k.Text(u.Key))
		}
	}
	assert.Equal(t, 1, torn)
}

// Several boats are kept together or not at all.
func TestSaveAll(t *testing.T) {
	shared := &memory.Store{Most: 12000}
	k := keep.Open(shared, &memory.Store{}, newClock().now)
	save(t, k, "mine")
	before := maps.Clone(shared.Texts)
	_, err := k.SaveAll([]file.Kept{named("a"), named("b"), named("c"), named("d"), named("e")})
	require.ErrorIs(t, err, keep.ErrRefused)
	assert.Equal(t, before, shared.Texts)
	saved, err := k.SaveAll([]file.Kept{named("a"), named("b")})
	require.NoError(t, err)
	assert.Len(t, saved, 2)
	assert.False(t, k.Refuses())
	assert.True(t, keep.Open(&memory.Store{Refuses: true}, &memory.Store{}, newClock().now).Refuses())
}

// The one key of older pages is read once for each text under it, and left as it is.
func TestOldKey(t *testing.T) {
	d := design.Default()
	text, err := file.File{Boats: []file.Boat{{Design: d}, {Design: d}}, Current: 1}.Encode()
	require.NoError(t, err)
	shared := &memory.Store{Texts: map[string]string{"barkwright.designs": string(text)}}
	open := func() *keep.Keeper { return keep.Open(shared, &memory.Store{}, newClock().now) }
	k := open()
	f, ok := k.Old()
	require.True(t, ok)
	assert.Len(t, f.Boats, 2)
	k.Taken()
	_, ok = open().Old()
	assert.False(t, ok)
	assert.Equal(t, string(text), shared.Texts["barkwright.designs"])
	shared.Texts["barkwright.designs"] += " "
	_, ok = open().Old()
	assert.True(t, ok, "another page of before has written there since")
}

// A boat that was being opened when the page stopped is set aside at the next opening,
// but only in the version that was kept then.
func TestWhatStopsTheStart(t *testing.T) {
	shared, own, c := &memory.Store{}, &memory.Store{}, newClock()
	k := keep.Open(shared, own, c.now)
	bad, good := save(t, k, "bad"), save(t, k, "good")
	load(t, k, bad)
	k = keep.Open(shared, &memory.Store{}, c.now)
	assert.Len(t, k.Boats(), 2, "another page that is still opening is not a stopped one")
	k = keep.Open(shared, own, c.now)
	assert.Equal(t, []string{"good"}, names(k))
	require.Len(t, k.Unread(), 1)
	assert.Equal(t, "bad", k.Unread()[0].Name)
	assert.True(t, k.Unread()[0].Stops)
	load(t, k, good)
	k.Done()
	k = keep.Open(shared, own, c.now)
	assert.Equal(t, []string{"good"}, names(k), "aside at each opening")
	k.Retry(keep.KeyOf(bad))
	assert.Empty(t, k.Unread())
	assert.Len(t, k.Boats(), 2)

	// Left behind by a window that is gone.
	k = keep.Open(shared, &memory.Store{}, c.now)
	load(t, k, good)
	c.at = c.at.Add(time.Minute)
	k = keep.Open(shared, &memory.Store{}, c.now)
	assert.Equal(t, []string{"bad"}, names(k))

	// The boat of an address is set aside by its line.
	gone := &memory.Store{}
	k = keep.Open(shared, gone, c.now)
	k.Begin("barkwright2_Gf0")
	k = keep.Open(shared, gone, c.now)
	assert.True(t, k.LineStops("barkwright2_Gf0"))
	assert.False(t, k.LineStops("barkwright2_Gf1"))
	assert.False(t, k.LineStops(""))
}

// The boat in hand is the page's own, and for a new page the last one's.
func TestInHandAndUnits(t *testing.T) {
	shared, c := &memory.Store{}, newClock()
	own := [2]*memory.Store{{}, {}}
	one, two := keep.Open(shared, own[0], c.now), keep.Open(shared, own[1], c.now)
	one.SetInHand("a")
	two.SetInHand("b")
	assert.Equal(t, "a", keep.Open(shared, own[0], c.now).InHand())
	assert.Equal(t, "b", keep.Open(shared, own[1], c.now).InHand())
	assert.Equal(t, "b", keep.Open(shared, &memory.Store{}, c.now).InHand())
	assert.Empty(t, one.Units())
	one.SetUnits("mm")
	assert.Equal(t, "mm", two.Units())
}

// Keys of one letter do something until they are turned off, for every page on the device.
func TestLetters(t *testing.T) {
	shared, c := &memory.Store{}, newClock()
	k, other := keep.Open(shared, &memory.Store{}, c.now), keep.Open(shared, &memory.Store{}, c.now)
	assert.True(t, k.Letters())
	for _, on := range []bool{false, true} {
		k.SetLetters(on)
		assert.Equal(t, on, k.Letters())
		assert.Equal(t, on, other.Letters())
	}
}
