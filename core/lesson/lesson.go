package lesson

import (
	"barkwright/core/design"
	"barkwright/core/known"
	"barkwright/core/stage"
)

// Lesson is one of them. In its texts a result of a step stands as {key@step}, a difference of
// two steps as {key@step-step}, and a length in inches as {2in}.
type Lesson struct {
	// Key names it in addresses and files; it never changes.
	Key, Title, Question string
	Home                 stage.Key
	Minutes              int
	Steps                []Step
	// Watch are the results to watch, the most telling first.
	Watch  []string
	Claims []Claim
	// Found is the answer as found, Why the reason, Next what to try, Mistake what may mislead.
	Found, Why, Next, Mistake string
	Source                    known.Source
	// Also is the name of a boat that Next speaks of, empty for none.
	Also string
}

// Boat is the lesson's own boat: every claim of it holds there.
func (l Lesson) Boat() design.Design { return design.Default() }

// Named is the boat of a name that the page comes with, the lessons' own for any other.
func Named(name string) design.Design {
	for _, d := range design.Starting() {
		if d.Name == name {
			return d
		}
	}
	return design.Default()
}

// Control is the one control that every step sets; false where there is more than one, or where a step
// holds followers too.
func (l Lesson) Control() (design.Param, bool) {
	key := ""
	for _, s := range l.Steps {
		if s.Still || len(s.Sets) != 1 || key != "" && s.Sets[0].Key != key {
			return design.Param{}, false
		}
		key = s.Sets[0].Key
	}
	return design.Lookup(key)
}

// Step is one thing to set on the boat as it was opened. Steps are numbered from 1; 0 is the
// boat as opened.
type Step struct {
	Does string
	Sets []Setting
	// Still tells that what follows is held as it stands.
	Still bool
}

// Setting is one control, set, added to or taken as a share, in SI.
type Setting struct {
	Key string
	// To is the value where By and Times are zero.
	To, By float64
	// Times is by how much Of is multiplied: another control, or the result Of rounded up to Up.
	Times float64
	Of    string
	Up    float64
}

// Claim says that a sum of results is at least so much: the sum of A times the result at a
// step, in SI.
type Claim struct {
	Says  string
	Terms []Term
	Least float64
	// Where tells on which boats it is made; nil on all. Limit names them.
	Where func(*Run) bool
	Limit string
}

// Term is one summand of a claim.
type Term struct {
	A      float64
	Result string
	Step   int
}

// All lists the lessons in their order.
func All() []Lesson { return lessons() }

// Afternoon are the keys of those that make one afternoon.
func Afternoon() []string { return []string{"depth", "frame", "sheet", "root"} }

// Lookup finds a lesson and its place from 1; false where there is none.
func Lookup(key string) (Lesson, int, bool) {
	for i, l := range lessons() {
		if l.Key == key {
			return l, i + 1, true
		}
	}
	return Lesson{}, 0, false
}

// Apply is the boat of a step, from the one as opened.
func (s Step) Apply(r *Run) design.Design {
	d := r.Canoes[0].Design
	if s.Still {
		d.Own |= design.Decisions()
	}
	for _, set := range s.Sets {
		p, ok := design.Lookup(set.Key)
		if !ok {
			continue
		}
		d = p.Set(d, max(p.Min, min(p.Max, set.value(p, d, r))))
	}
	return d
}

// value is what a setting sets.
func (s Setting) value(p design.Param, d design.Design, r *Run) float64 {
	switch {
	case s.Times != 0 && s.Up > 0:
		return up(s.Times*r.Value(s.Of, 0), s.Up)
	case s.Times != 0:
		of, _ := design.Lookup(s.Of)
		return s.Times * of.Get(&d)
	case s.By != 0:
		return p.Get(&d) + s.By
	}
	return s.To
}
