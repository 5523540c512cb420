package weigh

import (
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// Control is a control that stands otherwise in the two boats.
type Control struct {
	Key, Label string
	Home       stage.Key
	Held, Now  string
	// Change is the difference as shown, with its sign; empty where there is none in numbers.
	Change string
	// Follows tells that nobody set it: it followed others.
	Follows bool
}

// Controls lists what was moved, in its order, and then what followed. What moves with
// another control by being its equal is not listed.
func Controls(held, now design.Design, moved, followers []string, s units.System) []Control {
	var out []Control
	add := func(key string, follows bool) {
		p, ok := design.Lookup(key)
		if !ok {
			out = append(out, Control{Key: key, Label: NameOf(key), Home: stage.Choose, Now: "other than they were"})
			return
		}
		if follows && p.Solved() {
			return
		}
		a, b := p.Get(&held), p.Get(&now)
		c := Control{Key: key, Label: p.Label, Home: p.Home, Held: p.Format(a, s), Now: p.Format(b, s), Follows: follows}
		switch {
		case p.Options != nil:
			c.Held, c.Now = p.Options[int(a)], p.Options[int(b)]
		case a == b:
			c.Held, c.Now = followsOrSet(p, held), followsOrSet(p, now)
		default:
			c.Change = p.Kind.Difference(a, b, s)
		}
		out = append(out, c)
	}
	for _, key := range moved {
		add(key, false)
	}
	for _, key := range followers {
		add(key, true)
	}
	return out
}

func followsOrSet(p design.Param, d design.Design) string {
	if p.Owned(d) {
		return "set"
	}
	return "follows"
}

// NameOf is the label of a control, or what else differs between two designs.
func NameOf(key string) string {
	switch key {
	case Corrected:
		return "Corrections from readings"
	case OnHand:
		return "Bark on hand"
	}
	p, _ := design.Lookup(key)
	return p.Label
}
