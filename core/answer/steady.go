package answer

import (
	"barkwright/core/stage"
	"strings"

	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/crew"
	"barkwright/core/design"
	"barkwright/core/units"
)

const spreadSource = fromStanding + ". The spread: half girth and bilge by one standard deviation of midsections " +
	"drawn in " + fromAdney + ", measured by this project, and the crew's height by what a segment model and a " +
	"published sitting height differ (from memory), taken as having nothing to do with one another"

// stiffFrom is the GM from which a boat is called stiff, even at its low end, m. No scale
// was found in print: a choice of this project.
const stiffFrom = 3 * units.Inch

// gmShown is how finely GM is shown: one that shows as nothing is not below it.
const gmShown = 0.25 * units.Inch

// steadiness of a boat, the worse the larger.
type steadiness int

const (
	stiff steadiness = iota
	steady
	tender
	falls
)

func (s steadiness) String() string {
	return [...]string{"stiff", "steady", "tender", "would not stay upright"}[s]
}

// steadinessOf names what both ends of the spread say.
func steadinessOf(a core.Afloat) steadiness {
	switch {
	case a.GMHigh < -gmShown/2:
		return falls
	case a.GMLow < 0:
		return tender
	case a.GMLow < stiffFrom:
		return steady
	}
	return stiff
}

// steadyCheck says in words how stiff the boat is, with its spread, and what helps.
func steadyCheck(c core.Canoe) Warning {
	a := c.Afloat
	w := Warning{Key: "afloat.steady", Label: "Steadiness", Home: stage.Pitch, State: NotChecked,
		Word: NotChecked.String()}
	f := a.Floated
	if f.Upright.State != afloat.Floats || f.State == afloat.Overloaded || f.State == afloat.NotConverged {
		w.Text = working("the load comes first")
		return w
	}
	how := steadinessOf(a)
	w.State, w.Word = [...]State{stiff: Within, steady: Within, tender: Near, falls: Beyond}[how], how.String()
	says := [...]string{
		stiff:  "GM # to #",
		steady: "GM # to #: upright even at the low end",
		tender: "GM # to #: it hangs on how broad the bottom comes out and how high the crew sits, and at the low " +
			"end the boat would not stay upright. Small hunting boats in print come out like this",
		falls: "GM # to #: even with a bottom at its broadest and the crew low. A published boat of under 10 ft " +
			"(fig. 102) comes out like this when two and cargo are put in it: it was one hunter's",
	}[how]
	spread := working(says, length(a.GMLow).rough(), length(a.GMHigh).rough())
	w.Text = spread
	if how >= tender {
		w.Text = func(s units.System) string {
			return spread(s) + ". What helps: " + strings.Join(remedies(c, s), "; ")
		}
	}
	return w
}

// remedies are what makes the boat steadier, the quickest first.
func remedies(c core.Canoe, s units.System) []string {
	d, a := c.Design, c.Afloat
	var all []string
	if d.Posture != design.SittingOnBottom && crewMass(a) > 0 {
		down := 0.0
		for _, p := range d.Aboard[:d.Paddlers] {
			down += p.Mass * (crew.CentreHeight(d.Posture, p.SeatHeight,
				d.Stature) - crew.CentreHeight(design.SittingOnBottom, 0, d.Stature))
		}
		if more := down / a.Load.Mass; more > 0 {
			all = append(all, "sitting on the bottom, GM "+units.Length.Rough(more, s)+" more")
		}
	}
	if d.Cargo > 0 {
		without := a.Load.With(afloat.Item{Mass: -a.Cargo.Mass, At: a.Cargo.At})
		light, ok := a.Body.LevelStiffness(without, a.Water)
		loaded, _ := a.Body.LevelStiffness(a.Load, a.Water)
		if more := light - loaded; ok && more > gmShown {
			all = append(all, "without the cargo, GM "+units.Length.Rough(more, s)+" more")
		} else {
			all = append(all, "the cargo lower")
		}
	}
	return append(all, "a wider building frame or a broader boat")
}
