package markup

import (
	"slices"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/tally"
)

// Field is a field of the page that sets no parameter of the boat: its id, what it is called and its line of
// help.
type Field struct {
	ID, Label, Help string
	Shape           FieldShape
	// Choices are those of a list that never change, each with its value.
	Choices [][2]string
	// Of are the kinds of damage that it is asked of; none for every one.
	Of []tally.DamageKind
}

// FieldShape says how a field is filled in.
type FieldShape int

// The shapes: a text of any kind, a number, one out of a list, a box to tick.
const (
	Plain FieldShape = iota
	Numeric
	List
	Tick
)

// WorkFields are those of what was done of the work.
var WorkFields = []Field{
	{ID: "work-task", Label: "Task", Shape: List, Help: "Beside each stands what it is counted by."},
	{ID: "work-done", Label: "Done", Shape: Numeric, Help: "How much of what the task is counted by, this time alone."},
	{ID: "work-hours", Label: "Hours of practised hands", Shape: Numeric,
		Help: "All of theirs together: two at it for three hours are 6. With no hours at all, no time is learned."},
	{ID: "work-learners", Label: "Hours of learners", Shape: Numeric,
		Help: "All of theirs together. Each counts for less, by what is set under A learner takes."},
}

// MendFields are those of a repair.
var MendFields = []Field{
	{ID: "mend-kind", Label: "Damage", Shape: List,
		Help: "A crack runs with the grain, round the boat. What runs along it is a hole."},
	{ID: "mend-at", Label: "From the middle",
		Help: "Along the gunwale, from the middle of the boat to that of the damage. Empty: amidships."},
	{ID: "mend-end", Label: "Toward", Shape: List, Choices: [][2]string{{"forward", "the bow"}, {"aft", "the stern"}},
		Help: "The end that it lies toward."},
	{ID: "mend-up", Label: "Round from the centre line", Of: []tally.DamageKind{tally.Crack, tally.Hole},
		Help: "Round the bark, from the centre line of the bottom to the middle of the damage. Empty: on that line."},
	{ID: "mend-side", Label: "To", Shape: List, Choices: [][2]string{{"port", "port"}, {"starboard", "starboard"}},
		Of:   []tally.DamageKind{tally.Crack, tally.Hole, tally.TornLacing},
		Help: "The side that it lies to: port is on the left of one who faces the bow."},
	{ID: "mend-along", Label: "Length along the boat", Of: []tally.DamageKind{tally.Hole},
		Help: "Where it is longest, before it is trimmed."},
	{ID: "mend-round", Label: "Length round it", Of: []tally.DamageKind{tally.Crack, tally.Hole},
		Help: "Round the bark, from one end of the damage to the other."},
	{ID: "mend-groups", Label: "Groups of lacing torn", Shape: Numeric, Of: []tally.DamageKind{tally.TornLacing},
		Help: "How many next to one another are to be laced again."},
}

// HoldFields are those of the boat that is held, RankFields those of what an inch costs.
var (
	HoldFields = []Field{
		{ID: "hold-other", Label: "Hold another boat", Shape: List,
			Help: "Yours is compared with it from then on: its lines are dashed in the picture."},
		{ID: "still", Label: "hold still what follows", Shape: Tick,
			Help: "What would follow the control in hand stays as it is, so that this control alone shows what it costs."},
	}
	RankFields = []Field{{ID: "rank", Label: "Rank by", Shape: List,
		Help: "The control that changes this number most stands first."}}
)

// AskedOf tells whether a field is asked of a kind of damage.
func (f Field) AskedOf(k tally.DamageKind) bool { return len(f.Of) == 0 || slices.Contains(f.Of, k) }

// Fault and Control are the ids of where a field's fault stands, and of all that belongs to it.
func (f Field) Fault() string   { return f.ID + "-fault" }
func (f Field) Control() string { return f.ID + "-control" }

// Fields are fields with their names, their help and the places of their faults.
func Fields(all []Field) string {
	var b strings.Builder
	for _, f := range all {
		by := ` id="` + f.ID + `" aria-describedby="` + f.ID + `-help ` + f.Fault() + `"`
		label := `<label for="` + f.ID + `">` + draw.Escape(f.Label) + `</label>`
		b.WriteString(`<div class="control wide" id="` + f.Control() + `">`)
		switch f.Shape {
		case List:
			b.WriteString(label + `<select` + by + `>`)
			for _, c := range f.Choices {
				b.WriteString(Option(c[0], c[1]))
			}
			b.WriteString(`</select>`)
		case Tick:
			b.WriteString(`<label class="choice"><input type="checkbox"` + by + `> ` + draw.Escape(f.Label) + `</label>`)
		default:
			mode := ""
			if f.Shape == Numeric {
				mode = ` inputmode="decimal"`
			}
			b.WriteString(label + `<input type="text" autocomplete="off" spellcheck="false"` + mode + by + `>`)
		}
		b.WriteString(`<p class="help" id="` + f.ID + `-help">` + draw.Escape(f.Help) + `</p><p class="fault" id="` +
			f.Fault() + `"></p></div>`)
	}
	return b.String()
}
