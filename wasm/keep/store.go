package keep

import "errors"

// Store holds texts by key, as a browser does. It may refuse to.
type Store interface {
	Get(key string) (text string, ok bool)
	// Set reports whether the text now stands under the key.
	Set(key, text string) bool
	Remove(key string)
	// Keys returns all keys that begin with Prefix, in any order.
	Keys() []string
}

// Prefix begins every key that is this program's.
const Prefix = "barkwright."

// The keys. A boat's is boatPrefix and its ID. boot.js reads some of them too, and keeps
// under Prefix + "first" what stands before the program is awake.
const (
	boatPrefix  = Prefix + "boat."
	stopsPrefix = Prefix + "stops."
	tornPrefix  = Prefix + "torn."
	// oldKey held every boat in one text; it is read, and left standing.
	oldKey = Prefix + "designs"
	// oldTaken holds the mark of the text under oldKey that has been taken over.
	oldTaken   = Prefix + "designs.taken"
	inHandKey  = Prefix + "in-hand"
	unitsKey   = Prefix + "units"
	placeKey   = Prefix + "place"
	metKey     = Prefix + "met"
	benchKey   = Prefix + "bench"
	sunKey     = Prefix + "sun"
	lettersKey = Prefix + "letters"
	lessonKey  = Prefix + "lessons"
	opening    = Prefix + "opening"
	probe      = Prefix + "probe"
)

// Why a boat was not kept.
var (
	// ErrRefused is the store's refusal: it is full, or takes nothing at all.
	ErrRefused = errors.New("The browser keeps no more for this page.")
	// ErrElsewhere tells that another page has kept the boat since this one read it.
	ErrElsewhere = errors.New("Another window has changed this boat since.")
)

// KeyOf returns the key that a boat is kept under.
func KeyOf(id string) string { return boatPrefix + id }
