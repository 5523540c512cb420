package answer

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"barkwright/core"
	"barkwright/core/geom"
	"barkwright/core/mend"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Repaired is a repair of the boat worked out.
func Repaired(c core.Canoe, season plan.Season, d tally.Damage) mend.Repair {
	return mend.Make(mend.Boat{Design: c.Design, Frame: c.Frame, Bark: c.Bark, Gather: c.Gather, Season: season}, d)
}

// longRoot is past what length of root inches no longer matter, m.
const longRoot = 20 * units.Foot

// Mended is a repair of the log worked out.
type Mended struct {
	tally.Entry
	Repair mend.Repair
	// Outline is where it lies on the finished boat, as mend.Outline has it.
	Outline []geom.Vec3
	Closed  bool
}

// Repairs are those of a log worked out for the boat, the oldest first.
func Repairs(c core.Canoe, season plan.Season, l tally.Log) []Mended {
	var out []Mended
	for _, e := range l.Repairs() {
		m := Mended{Entry: e, Repair: Repaired(c, season, e.Damage)}
		m.Outline, m.Closed = mend.Outline(c.Hull, m.Repair)
		out = append(out, m)
	}
	return out
}

// MendTable is what a repair takes, a line for each thing.
func MendTable(r mend.Repair, s units.System) Table {
	d := r.Damage
	type line struct{ what, takes, how string }
	var all []line
	add := func(what, takes, how string) { all = append(all, line{what, takes, how}) }
	small := func(v float64) string { return units.SmallLength.Rough(v, s) }
	add("Damage", DamageWords(r, s), "")
	if r.PatchAlong > 0 {
		lap := fmt.Sprintf("the damage and a lap of %s all round; the only lap in print is a panel's, about %s",
			small(mend.Lap), small(mend.PanelLap))
		if d.Kind == tally.TornLacing {
			lap = fmt.Sprintf("under the gunwale, only where holes tore out: a group more on each side, %s to %s deep",
				small(mend.StripLow), small(mend.StripHigh))
		}
		add("Patch", fmt.Sprintf("%s along the boat by %s round it, its grain round the boat as the bark's is",
			small(r.PatchAlong), small(r.PatchRound)), lap)
	}
	if r.Stitches > 0 {
		add("Seam", small(r.Seam)+", "+many(r.Stitches, "stitch", "stitches").text(s)+", over and over",
			"sewn as side panels are")
	}
	if r.Groups > 0 {
		add("Lacing", groups(r.Groups, s)+" again, "+many(r.Pegs, "peg", "pegs").text(s), "the cap is lifted there")
	}
	if r.Root > 0 {
		root := units.Length.Rough(r.Root, s)
		if r.Root > longRoot {
			root = units.Run.Rough(r.Root, s)
		}
		add("Split root", root, "with waste and tails")
	}
	if r.Pitch > 0 {
		add("Pitch", units.Mass.RoughUp(r.Pitch, s), "both faces, as on the boat's own seams")
	}
	if n := r.New; n != nil {
		bends := ""
		if n.Bend >= wood.ColdRib {
			bends = "; its bend: " + n.Bend.String() + ", so split out spares"
		}
		add("New rib", fmt.Sprintf("%s long, %s wide, %s thick", units.Length.Format(n.Length, s), small(n.Width),
			units.Thickness.Format(n.Thickness, s)),
			fmt.Sprintf("%s longer than it will be; bent, and bound %s%s", small(mend.RibMore), daysBound(n.Dry),
				bends))
	}
	if len(r.Out) > 0 {
		var out, back []string
		for _, rib := range r.Out {
			word := ribWords(rib)
			out, back = append(out, word), append([]string{word}, back...)
		}
		add("Ribs out", strings.Join(out, ", "), "the last that went in first; wet and warm, tapped from the bilge; no "+
			"source tells the steps")
		add("Ribs in again", strings.Join(back, ", "), "in fitting order, hull wet and hot")
	}
	add("Hours of a practised hand", fmt.Sprintf("about %.1f", r.Hours),
		"by the times of the plan; published: within a few hours, a leaflet of 1961; two hours for a bad break, "+
			"a journey of 1820")
	t := Table{Key: "mend", Title: "What this repair takes", Home: stage.Keep,
		Note: "Estimates. Ask the one who teaches you before ribs come out."}
	return fill(t, refs(all),
		text("what", "What", func(l *line) string { return l.what }),
		text("takes", "Takes", func(l *line) string { return l.takes }),
		text("how", "How it is known", func(l *line) string { return l.how }),
	)
}

// daysBound is how long a rib stays bound.
func daysBound(days float64) string {
	if days == 1 {
		return "a day"
	}
	return strconv.FormatFloat(days, 'f', -1, 64) + " days"
}

// DamageWords say what is broken, how large it is and where: of a rib, which one and where it stands.
func DamageWords(r mend.Repair, s units.System) string {
	d := r.Damage
	small := func(v float64) string { return units.SmallLength.Format(v, s) }
	text := d.Kind.String()
	switch d.Kind {
	case tally.Crack:
		text += " of " + small(d.Round)
	case tally.Hole:
		text += " of " + small(d.Along) + " along the boat by " + small(d.Round) + " round it"
	case tally.TornLacing:
		text += ", " + groups(d.Groups, s)
	case tally.BrokenRib:
		text += ": " + ribWords(*r.Broken)
	}
	text += ", " + along(d.At, s)
	side := "port"
	if math.Signbit(d.Up) {
		side = "starboard"
	}
	switch {
	case d.Kind == tally.BrokenRib:
	case d.Kind == tally.TornLacing:
		text += ", to " + side
	case d.Up == 0:
		text += ", on the centre line"
	default:
		text += ", " + small(math.Abs(d.Up)) + " round the bark from the centre line to " + side
	}
	return text
}

// groups is a number of groups of lacing in words.
func groups(n int, s units.System) string { return many(n, "group", "groups").text(s) }

// along says how far from the middle a place lies along the gunwale, and toward which end.
func along(at float64, s units.System) string {
	switch {
	case at == 0:
		return "amidships"
	case at < 0:
		return units.Length.Format(-at, s) + " aft of the middle"
	}
	return units.Length.Format(at, s) + " forward of the middle"
}

func ribWords(r mend.Rib) string {
	where := "aft"
	if r.Forward {
		where = "forward"
	}
	name := fmt.Sprintf("rib %d %s", r.Number, where)
	if r.Number == 0 {
		name = "the middle rib"
	}
	if r.Slack {
		name += " (only slackened)"
	}
	return name
}
