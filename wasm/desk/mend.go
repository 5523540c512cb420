package desk

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core/answer"
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

// mendSays is where what came of a repair is said; what is wrong with it is said at its field.
const mendSays = "mend-says"

// Mend is what a repair takes; a size that cannot be read is named.
func (d *Desk) Mend(form MendForm) Reply {
	damage, wrong := d.damage(form)
	r := atFields(markup.MendFields, mendSays, wrong, "")
	if wrong == (plan.Fault{}) {
		repair := answer.Repaired(d.shown.Canoe(), d.shown.Season(), damage)
		r.Markup = map[string]string{"mend-table": markup.Mended(repair, d.shown.System)}
	}
	return r
}

// KeepRepair enters a repair in the log on a day, one step of undo; a size that cannot be read is named.
func (d *Desk) KeepRepair(form MendForm, day string) Reply {
	damage, wrong := d.damage(form)
	if wrong == (plan.Fault{}) && !d.shown.Repair(string(stage.Keep), day, damage) {
		wrong = plan.Fault{Key: mendSays, Text: "The log is full: nothing was entered."}
	}
	r := atFields(markup.MendFields, mendSays, wrong,
		"Entered in the log. It is marked on the picture of the finished boat and stands on this stage's sheet.")
	if wrong == (plan.Fault{}) {
		r.Markup = map[string]string{"mend-table": ""}
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

// damage reads the fields that the damage is asked, or says at which one what cannot be.
func (d *Desk) damage(form MendForm) (damage tally.Damage, wrong plan.Fault) {
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
	for _, f := range []struct {
		id, text string
		into     *float64
	}{{"mend-at", form.At, &damage.At}, {"mend-up", form.Up, &damage.Up}, {"mend-along", form.Along, &damage.Along},
		{"mend-round", form.Round, &damage.Round}} {
		if !asked[f.id] || strings.TrimSpace(f.text) == "" {
			continue
		}
		v, _, err := units.Length.Parse(f.text, d.shown.System)
		if err != nil {
			return damage, plan.Fault{Key: f.id, Text: err.Error()}
		}
		if v < 0 {
			return damage, plan.Fault{Key: f.id,
				Text: "A length of no less than nothing: toward which end and side is chosen beside it."}
		}
		*f.into = v
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
