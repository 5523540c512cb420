package keep

import (
	"cmp"
	"strconv"
)

// InHand returns the ID of the boat that was in hand on this page, or else on the page
// used last.
func (k *Keeper) InHand() string {
	mine, _ := k.own.Get(inHandKey)
	last, _ := k.shared.Get(inHandKey)
	return cmp.Or(mine, last)
}

// SetInHand remembers the boat in hand.
func (k *Keeper) SetInHand(id string) {
	for _, s := range []Store{k.own, k.shared} {
		if was, _ := s.Get(inHandKey); was != id {
			s.Set(inHandKey, id)
		}
	}
}

// Units returns what SetUnits was last given, or "".
func (k *Keeper) Units() string {
	text, _ := k.shared.Get(unitsKey)
	return text
}

// SetUnits remembers the units shown.
func (k *Keeper) SetUnits(id string) { k.shared.Set(unitsKey, id) }

// Place is what SetPlace was last given, or empty.
func (k *Keeper) Place() string {
	text, _ := k.shared.Get(placeKey)
	return text
}

// SetPlace remembers where on the page the user is.
func (k *Keeper) SetPlace(name string) { k.shared.Set(placeKey, name) }

// SetMet remembers whether the user knows the page, and has closed what it says first.
func (k *Keeper) SetMet(met bool) { k.shared.Set(metKey, strconv.FormatBool(met)) }

// Bench is what SetBench was last given, or empty.
func (k *Keeper) Bench() string {
	text, _ := k.shared.Get(benchKey)
	return text
}

// SetBench remembers the line in hand at the bench; empty where it is closed.
func (k *Keeper) SetBench(place string) { k.shared.Set(benchKey, place) }

// Sun is what SetSun was last given, or empty.
func (k *Keeper) Sun() string {
	text, _ := k.shared.Get(sunKey)
	return text
}

// SetSun remembers whether the page is shown for sunlight on this device.
func (k *Keeper) SetSun(id string) { k.shared.Set(sunKey, id) }

// Letters reports whether keys of one letter do something on this device; they do until
// SetLetters says otherwise.
func (k *Keeper) Letters() bool {
	text, _ := k.shared.Get(lettersKey)
	return text != strconv.FormatBool(false)
}

// SetLetters remembers whether keys of one letter do something on this device.
func (k *Keeper) SetLetters(on bool) { k.shared.Set(lettersKey, strconv.FormatBool(on)) }

// Lessons are what SetLessons was last given by this page and by any, each empty where it was not.
func (k *Keeper) Lessons() (mine, last string) {
	mine, _ = k.own.Get(lessonKey)
	last, _ = k.shared.Get(lessonKey)
	return mine, last
}

// SetLessons remembers what was done of the lessons.
func (k *Keeper) SetLessons(text string) {
	k.own.Set(lessonKey, text)
	k.shared.Set(lessonKey, text)
}
