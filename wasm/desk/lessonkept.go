package desk

import (
	jsontext "encoding/json"
	"slices"

	"barkwright/core/lesson"
)

// lessonsKept is what the browser keeps of the lessons.
type lessonsKept struct {
	// Seen are the keys of those that were opened, Last the one that was in hand last.
	Seen []string `json:"seen"`
	Last string   `json:"last"`
	// Boat is the ID of the boat that the lesson in hand is on, empty where none is, and Mine that of
	// the user's boat. Own is the name of the page's boat that it is a copy of, empty for the user's.
	Boat string `json:"boat"`
	Mine string `json:"mine"`
	Own  string `json:"own"`
	// Part is how much of it was shown, Did the step that was set last.
	Part int `json:"part"`
	Did  int `json:"did"`
}

// see marks a lesson as seen.
func (k *lessonsKept) see(key string) {
	if !slices.Contains(k.Seen, key) {
		k.Seen = append(k.Seen, key)
	}
}

// readLessons reads what is kept; of a text that cannot be read nothing.
func readLessons(text string) (k lessonsKept) {
	if jsontext.Unmarshal([]byte(text), &k) != nil {
		return lessonsKept{}
	}
	l, _, ok := lesson.Lookup(k.Last)
	if !ok {
		k.Last, k.Boat = "", ""
	}
	k.Part, k.Did = max(0, k.Part), max(0, min(len(l.Steps), k.Did))
	return k
}

// resumeLesson goes on with the lesson that was in hand when the page was left, if its boat is.
func (d *Desk) resumeLesson() {
	mine, last := d.keeper.Lessons()
	k := readLessons(last)
	if mine != "" {
		seen := k.Seen
		k = readLessons(mine)
		for _, key := range seen {
			k.see(key)
		}
	}
	d.taught.lessonsKept = k
	if d.Shelf.Place(k.Boat) < 0 {
		d.taught.Boat = ""
	} else {
		d.taught.base = d.lessonBase()
	}
}

// keepLessons keeps it, with what other windows have marked as seen meanwhile.
func (d *Desk) keepLessons() {
	_, last := d.keeper.Lessons()
	for _, key := range readLessons(last).Seen {
		d.taught.see(key)
	}
	// A text, numbers and a list of texts can always be written.
	text, _ := jsontext.Marshal(d.taught.lessonsKept)
	d.keeper.SetLessons(string(text))
}
