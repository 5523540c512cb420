package desk

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/wasm/markup"
)

// MendForm is what the form of a repair holds, as typed; Kind is the key of the damage.
type MendForm struct {
	Kind, At, Up, Along, Round, Groups string
	Aft, Starboard                     bool
}

// Where what came of a repair is said, and where what it takes stands; what is wrong with it is said at its field.
const (
	mendSays  = "mend-says"
	mendTable = "mend-table"
)

// mending is the repair that the page says something of: what was asked, in which units it was typed, and the boat,
// the times and the units that it is told for.
type mending struct {
	form  MendForm
	typed units.System

	none   bool
	of     design.Design
	season plan.Season
	shown  units.System
}

// Mend is what a repair takes; a size that cannot be read is named.
func (d *Desk) Mend(form MendForm) Reply { return d.mend(form, d.shown.System) }

func (d *Desk) mend(form MendForm, typed units.System) Reply {
	w := d.shown
	d.mending = &mending{form, typed, w.None, w.Canoe().Design, w.Season(), w.System}
	damage, wrong := d.damage(form, typed)
	r := atFields(markup.MendFields, mendSays, wrong, "")
	r.Markup = map[string]string{mendTable: ""}
	if wrong == (plan.Fault{}) {
		r.Markup[mendTable] = markup.Mended(answer.Repaired(w.Canoe(), w.Season(), damage), w.System)
	}
	return r
}

// MendAgain tells what was asked of a repair for the boat, the times and the units that stand now, where they are
// others.
func (d *Desk) MendAgain() Reply {
	m, w := d.mending, d.shown
	if m == nil || *m == (mending{m.form, m.typed, w.None, w.Canoe().Design, w.Season(), w.System}) {
		return Reply{}
	}
	r := d.mend(m.form, m.typed)
	r.Focus = "" // whoever changes the boat is elsewhere
	return r
}

// KeepRepair enters a repair in the log on a day, one step of undo; a size that cannot be read is named.
func (d *Desk) KeepRepair(form MendForm, day string) Reply {
	damage, wrong := d.damage(form, d.shown.System)
	if wrong != (plan.Fault{}) {
		return d.Mend(form)
	}
	d.mending = nil
	if !d.shown.Repair(string(stage.Keep), day, damage) {
		wrong = plan.Fault{Key: mendSays, Text: "The log is full: nothing was entered."}
	}
	r := atFields(markup.MendFields, mendSays, wrong,
		"Entered in the log. It is marked on the picture of the finished boat and stands on this stage's sheet.")
	r.Markup = map[string]string{mendTable: ""}
	return r
}

// TypedIn writes what is typed of a repair and of work done in other units, where a number without its unit would be
// read as another size in them.
func (d *Desk) TypedIn(mended MendForm, done WorkForm, s units.System) Reply {
	r := Reply{Fields: map[string]string{}}
	for _, f := range mended.lengths() {
		v, _, err := units.Length.Parse(f.text, d.shown.System)
		if then, _, cannot := units.Length.Parse(f.text, s); err == nil && (cannot != nil || then != v) {
			r.Fields[f.id] = units.Length.Format(v, s)
		}
	}
	if text := d.shown.DoneIn(done.Task, done.Done, s); text != done.Done {
		r.Fields["work-done"] = text
	}
	return r
}

// StrikeRepair takes a repair off the log, counted from 0, one step of undo.
func (d *Desk) StrikeRepair(n int) Reply {
	d.shown.StrikeRepair(n)
	return atFields(markup.MendFields, mendSays, plan.Fault{}, "Taken off the log. Undo brings it back.")
}

// MendAsks are the fields of a repair with whether each is put away: what this damage is not asked.
func MendAsks(kind string) Reply {
	k, _ := tally.DamageOf(kind)
	r := Reply{Hidden: map[string]bool{}}
	for _, f := range markup.MendFields {
		r.Hidden[f.Control()] = !f.AskedOf(k)
	}
	return r
}

// atFields says at the fields of a form what is wrong, at none where nothing is, and goes to the one; done is said
// at says then. A fault whose key is no field's is said at says.
func atFields(all []markup.Field, says string, wrong plan.Fault, done string) Reply {
	text := done
	if wrong.Key == says {
		text = wrong.Text
	} else if wrong != (plan.Fault{}) {
		text = ""
	}
	r := say(says, text)
	r.Invalid = map[string]bool{}
	for _, f := range all {
		here := ""
		if f.ID == wrong.Key {
			here, r.Focus = wrong.Text, f.ID
		}
		r = r.saying(f.Fault(), here)
		r.Invalid[f.ID] = here != ""
	}
	return r
}

// typedLength is a field of a repair that holds a length, as typed.
type typedLength struct{ id, text string }

func (f MendForm) lengths() [4]typedLength {
	return [4]typedLength{{"mend-at", f.At}, {"mend-up", f.Up}, {"mend-along", f.Along}, {"mend-round", f.Round}}
}

// damage reads the fields that the damage is asked, typed in some units, or says at which one what cannot be.
func (d *Desk) damage(form MendForm, typed units.System) (damage tally.Damage, wrong plan.Fault) {
	if d.shown.None {
		return damage, plan.Fault{Key: mendSays, Text: "This boat could not be built so far: there is nothing of it to mend."}
	}
	kind, ok := tally.DamageOf(form.Kind)
	if !ok {
		return damage, plan.Fault{Key: "mend-kind", Text: "Choose the damage."}
	}
	damage.Kind = kind
	asked := map[string]bool{}
	for _, f := range markup.MendFields {
		asked[f.ID] = f.AskedOf(kind)
	}
	into := [...]*float64{&damage.At, &damage.Up, &damage.Along, &damage.Round}
	for i, f := range form.lengths() {
		if !asked[f.id] || strings.TrimSpace(f.text) == "" {
			continue
		}
		v, _, err := units.Length.Parse(f.text, typed)
		if err != nil {
			return damage, plan.Fault{Key: f.id, Text: err.Error()}
		}
		if v < 0 {
			return damage, plan.Fault{Key: f.id,
				Text: "A length of no less than nothing: toward which end and side is chosen beside it."}
		}
		*into[i] = v
	}
	if text := strings.TrimSpace(form.Groups); asked["mend-groups"] && text != "" {
		n, err := strconv.Atoi(text)
		if err != nil || n < 0 || n > tally.MostGroups {
			return damage, plan.Fault{Key: "mend-groups", Text: "Groups of lacing torn: a whole number, such as 3."}
		}
		damage.Groups = n
	}
	if form.Aft {
		damage.At = -damage.At
	}
	if kind == tally.TornLacing {
		_, damage.Up = mend.Column(d.shown.Canoe().Hull, damage.At)
	}
	if form.Starboard && damage.Up > 0 {
		damage.Up = -damage.Up
	}
	return damage, d.unlikely(damage)
}

// unlikely says why a boat has no such damage, by the field that it stands at.
func (d *Desk) unlikely(damage tally.Damage) plan.Fault {
	c := d.shown.Canoe()
	length := func(v float64) string { return units.Length.Format(v, d.shown.System) }
	if half := c.Frame.Gunwales.Run; math.Abs(damage.At) > half {
		return plan.Fault{Key: "mend-at",
			Text: "The place lies past the end of the gunwale, " + length(half) + " from the middle."}
	}
	_, girth := mend.Column(c.Hull, damage.At)
	side := c.Frame.Lacing.Count / 2
	isCrack, isHole := damage.Kind == tally.Crack, damage.Kind == tally.Hole
	switch {
	case damage.Kind == tally.TornLacing && damage.Groups == 0:
		return plan.Fault{Key: "mend-groups", Text: "Say how many groups of lacing are torn."}
	case damage.Groups > side:
		return plan.Fault{Key: "mend-groups", Text: fmt.Sprintf("The boat has %d groups of lacing on a side.", side)}
	case isHole && damage.Along == 0:
		return plan.Fault{Key: "mend-along", Text: "Say how large the hole is along the boat."}
	case isHole && damage.Round == 0:
		return plan.Fault{Key: "mend-round", Text: "Say how large the hole is round the boat."}
	case isCrack && damage.Round == 0:
		return plan.Fault{Key: "mend-round",
			Text: "Say how long the crack is round the boat. Along the boat, say it is a hole."}
	case !isCrack && !isHole:
		return plan.Fault{}
	case math.Abs(damage.Up) > girth:
		return plan.Fault{Key: "mend-up", Text: "The place lies past the edge of the bark, " + length(girth) +
			" round it from the centre line there."}
	case damage.Round > 2*girth:
		return plan.Fault{Key: "mend-round",
			Text: "It is longer than the bark is round the boat there, " + length(2*girth) + "."}
	case damage.Along > 2*c.Frame.Gunwales.Run:
		return plan.Fault{Key: "mend-along", Text: "It is longer than the boat."}
	}
	return plan.Fault{}
}
