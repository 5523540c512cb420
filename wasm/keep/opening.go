package keep

import (
	"slices"
	"strconv"
	"strings"
	"time"
)

// A page that is stopped while it opens a boat would be stopped by it again at each
// opening. So what is being opened is marked, and the mark taken away once it stands: a
// mark found at the next opening names what stopped the page.

// stale is how old another page's mark must be before it counts as left behind, and
// not as that of a page still opening.
const stale = 30 * time.Second

// lineStops is the ID of a boat in the address, among those that stop.
const lineStops = "address"

// Begin marks that a boat is being opened: its ID, or line for one in the address.
func (k *Keeper) Begin(id, line string) {
	what := "boat " + id
	if line != "" {
		what = "line " + line
	}
	k.own.Set(opening, what)
	k.shared.Set(opening, strconv.FormatInt(k.now().UnixMilli(), 10)+" "+what)
}

// Done takes the mark away.
func (k *Keeper) Done() {
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

// Stopped notes that what this page is opening stopped it. It is false where nothing
// could be noted: the page would only be stopped again.
func (k *Keeper) Stopped() bool {
	what, _ := k.own.Get(opening)
	k.Done()
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

// Stops notes that a boat as it is kept now stops the page: it is not opened again
// until Retry, or until it is changed. It is false where the note is not kept.
func (k *Keeper) Stops(id string) bool {
	b, ok := k.Heard(boatPrefix + id)
	if !ok {
		return false
	}
	k.setAside(Unread{Key: boatPrefix + id, ID: id, Name: b.Name, Stops: true, Why: stopsWhy})
	return k.shared.Set(stopsPrefix+id, b.Stamp)
}

// LineStops tells whether the boat of an address stopped the page.
func (k *Keeper) LineStops(line string) bool {
	stops, _ := k.shared.Get(stopsPrefix + lineStops)
	return line != "" && stops == line
}

// Retry lets a boat that stopped the page be opened once more.
func (k *Keeper) Retry(key string) {
	id := strings.TrimPrefix(key, boatPrefix)
	k.shared.Remove(stopsPrefix + id)
	k.unread = slices.DeleteFunc(k.unread, func(u Unread) bool { return u.Key == key })
	k.list(key)
}
