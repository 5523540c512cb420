package desk

import (
	"math"
	"strconv"
	"strings"

	"barkwright/core/mend"
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

// mendSays is where what is wrong with a repair is said.
const mendSays = "mend-says"

// Mend is what a repair takes; a size that cannot be read is named.
func (d *Desk) Mend(form MendForm) Reply {
	damage, wrong := d.damage(form)
	r := say(mendSays, wrong)
	if wrong == "" {
		r.Markup = map[string]string{"mend-table": markup.Mended(d.shown.Canoe(), d.shown.Season(), damage, d.shown.System)}
	}
	return r
}

// KeepRepair enters a repair in the log on a day, one step of undo; a size that cannot be read is named.
func (d *Desk) KeepRepair(form MendForm, day string) Reply {
	damage, wrong := d.damage(form)
	if wrong != "" {
		return say(mendSays, wrong)
	}
	if !d.shown.Repair(string(stage.Keep), day, damage) {
		return say(mendSays, "The log is full: nothing was entered.")
	}
	r := say(mendSays, "Entered in the log. It is marked on the picture of the finished boat and stands on this stage's sheet.")
	r.Markup = map[string]string{"mend-table": ""}
	return r
}

// damage reads the form, or says what of it cannot be.
func (d *Desk) damage(form MendForm) (damage tally.Damage, wrong string) {
	if d.shown.None {
		return damage, "This boat could not be built so far: there is nothing of it to mend."
	}
	kind, ok := tally.DamageOf(form.Kind)
	if !ok {
		return damage, "Choose the damage."
	}
	damage.Kind = kind
	for _, f := range []struct {
		text string
		into *float64
	}{{form.At, &damage.At}, {form.Up, &damage.Up}, {form.Along, &damage.Along}, {form.Round, &damage.Round}} {
		if strings.TrimSpace(f.text) == "" {
			continue
		}
		v, _, err := units.Length.Parse(f.text, d.shown.System)
		if err != nil {
			return damage, err.Error()
		}
		if v < 0 {
			return damage, "A length of no less than nothing: toward which end and side is chosen beside it."
		}
		*f.into = v
	}
	if text := strings.TrimSpace(form.Groups); text != "" {
		n, err := strconv.Atoi(text)
		if err != nil || n < 0 || n > tally.MostGroups {
			return damage, "Groups of lacing torn: a whole number, such as 3."
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

// unlikely says why a boat has no such damage.
func (d *Desk) unlikely(damage tally.Damage) string {
	c := d.shown.Canoe()
	length := func(v float64) string { return units.Length.Format(v, d.shown.System) }
	if half := c.Frame.Gunwales.Run; math.Abs(damage.At) > half {
		return "The place lies past the end of the gunwale, " + length(half) + " from the middle."
	}
	_, girth := mend.Column(c.Hull, damage.At)
	switch damage.Kind {
	case tally.BrokenRib:
		return ""
	case tally.TornLacing:
		if damage.Groups == 0 {
			return "Say how many groups of lacing are torn."
		}
		return ""
	case tally.Crack:
		if damage.Round == 0 {
			return "Say how long the crack is round the boat. Along the boat, say it is a hole."
		}
	case tally.Hole:
		if damage.Along == 0 || damage.Round == 0 {
			return "Say how large the hole is, along the boat and round it."
		}
	}
	switch {
	case math.Abs(damage.Up) > girth:
		return "The place lies past the edge of the bark, " + length(girth) + " round it from the centre line there."
	case damage.Round > 2*girth:
		return "It is longer than the bark is round the boat there, " + length(2*girth) + "."
	case damage.Along > 2*c.Frame.Gunwales.Run:
		return "It is longer than the boat."
	}
	return ""
}
