package keep

import (
	"slices"
	"strconv"
	"strings"
	"time"
)

// A page that is stopped while it opens a boat would be stopped by it again at each
// opening. So until Done every boat is marked as it is read, before it is worked out: a
// mark found at the next opening names what stopped the page.

// stale is the age from which another page's mark counts as left behind. A younger one
// may be that of a page that is still opening.
const stale = 30 * time.Second

// lineStops is the ID, among those that stop the page, of a boat in the address.
const lineStops = "address"

// Begin marks that the boat of a line in the address is being opened.
func (k *Keeper) Begin(line string) { k.mark("line " + line) }

func (k *Keeper) mark(what string) {
	k.own.Set(opening, what)
	k.shared.Set(opening, strconv.FormatInt(k.now().UnixMilli(), 10)+" "+what)
}

// Done removes the mark: the page is open, and what it reads from now on is not marked.
func (k *Keeper) Done() {
	k.opened = true
	k.unmark()
}

func (k *Keeper) unmark() {
	what, _ := k.own.Get(opening)
	k.own.Remove(opening)
	if all, ok := k.shared.Get(opening); ok && strings.HasSuffix(all, " "+what) {
		k.shared.Remove(opening)
	}
}

// noteStop turns a mark that was left behind into a note of what stopped the page.
func (k *Keeper) noteStop() {
	k.Stopped()
	all, _ := k.shared.Get(opening)
	at, what, found := strings.Cut(all, " ")
	if since, err := strconv.ParseInt(at, 10, 64); found && err == nil {
		if age := k.now().Sub(time.UnixMilli(since)); age > stale || age < -stale {
			k.noteWhat(what)
			k.shared.Remove(opening)
		}
	}
}

// Stopped notes that the boat this page is opening stopped it. It returns false where
// the note could not be kept: the page would be stopped again.
func (k *Keeper) Stopped() bool {
	what, _ := k.own.Get(opening)
	k.unmark()
	return k.noteWhat(what)
}

func (k *Keeper) noteWhat(what string) bool {
	switch kind, of, _ := strings.Cut(what, " "); kind {
	case "boat":
		return k.Stops(of)
	case "line":
		return k.shared.Set(stopsPrefix+lineStops, of)
	}
	return false
}

// Stops notes that a boat as it is kept now stops the page. It is not opened again until
// Retry, or until it is changed. It returns false where the note could not be kept.
func (k *Keeper) Stops(id string) bool {
	b, ok := k.Heard(boatPrefix + id)
	if !ok {
		return false
	}
	k.setAside(Unread{Key: boatPrefix + id, ID: id, Name: b.Name, Stops: true, Why: stopsWhy})
	return k.shared.Set(stopsPrefix+id, b.Stamp)
}

// LineStops reports whether the boat of an address stopped the page.
func (k *Keeper) LineStops(line string) bool {
	stops, _ := k.shared.Get(stopsPrefix + lineStops)
	return line != "" && stops == line
}

// Retry allows a boat that stopped the page to be opened again.
func (k *Keeper) Retry(key string) {
	id := strings.TrimPrefix(key, boatPrefix)
	k.shared.Remove(stopsPrefix + id)
	k.unread = slices.DeleteFunc(k.unread, func(u Unread) bool { return u.Key == key })
	k.list(key)
}
