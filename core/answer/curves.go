package answer

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/known"
	"barkwright/core/stage"
	"barkwright/core/units"
)

const (
	fromMoving = "friction by the ITTC-1957 line (8th International Towing Tank Conference, Madrid) and thin-ship " +
		"waves (J. H. Michell, Philosophical Magazine 45, 1898), for which a canoe is too broad: the wave part is " +
		"theory, shown as a range. Calm deep water, no wind"
	fromDay = fromMoving + ". Power and the paddle's share of it are estimates; the range is that of the power, " +
		"and a bark canoe is slower than a smooth hull"
)

// Water lists the results that need the curves on the water: they come when the
// slider rests.
func Water(c core.Canoe, w core.Water) []Number {
	return values(append(rightingNumbers(c, w), movingNumbers(c, w.Moving)...))
}

func rightingNumbers(c core.Canoe, w core.Water) []*Number {
	r := w.Righting
	curve := func(key, label string, k units.Kind, v float64, how func(units.System) string) *Number {
		n := number(stage.Pitch, key, label, k, v, fromStanding, how).by(known.Estimate)
		if r.State != afloat.Floats {
			return n.absent(r.State.String())
		}
		return n
	}
	most := curve("afloat.maxRightingArm", "Largest righting arm, dry", units.Length, r.Most.Arm,
		working("at # of lean, with # of freeboard left there", angle(r.Most.Waterplane.Heel).rough(),
			length(r.Most.Freeboard).rough()))
	mostAt := curve("afloat.maxRightingHeel", "Lean at which it is largest", units.Angle, r.Most.Waterplane.Heel,
		working("the arm is looked for from upright to where water comes over the gunwale"))
	if r.State == afloat.Floats && !(r.Most.Arm > 0) {
		mostAt = mostAt.absent("none rights it")
	}
	swamp := curve("afloat.swampHeel", "Lean at which water comes over the gunwale", units.Angle,
		r.Swamped.Waterplane.Heel,
		working("the righting arm is # there; past it the boat fills, and no curve holds", length(r.Swamped.Arm).rough()))
	switch {
	case r.State == afloat.Floats && r.Vanishes:
		swamp = swamp.absent("goes over dry")
		swamp.Working = working("the righting arm falls to nothing at # of lean, before water comes over",
			angle(r.VanishAt).rough())
	case r.State == afloat.Floats && !r.Swamps:
		swamp = swamp.absent("none to 90°")
	}
	return append([]*Number{most, mostAt, swamp}, leanNumbers(c, w)...)
}

func leanNumbers(c core.Canoe, w core.Water) []*Number {
	rest, heaviest := w.Lean.Rest, c.Afloat.Heaviest().Mass
	lean := number(stage.Pitch, "afloat.lean", "Lean with a paddler leaning out", units.Angle, rest.Waterplane.Heel,
		fromStanding,
		working("the middle of the heaviest paddler, #, moved # to the side, the shoulders two or three times as "+
			"far, the others still", mass(heaviest).rough(), small(core.LeanDistance))).by(known.Estimate)
	most := number(stage.Pitch, "afloat.leanMost", "How far a paddler can lean before water comes in, at the hips",
		units.SmallLength, w.LeanMost, fromStanding,
		working("the heaviest, #, to where water comes over or the righting arm gives out",
			mass(heaviest).rough())).by(known.Estimate)
	if heaviest == 0 {
		return []*Number{lean.absent("no paddler"), most.absent("no paddler")}
	}
	if w.ToGunwale {
		most = most.in("as far as the gunwale")
		most.Working = working("the heaviest, #, with the hips at the gunwale, #, and the boat still dry; "+
			"shoulders and head are farther out, so this is no leave to lean", mass(heaviest).rough(),
			small(w.LeanMost))
	}
	switch state := w.Lean.State; {
	case state == afloat.Swamped && w.Lean.Upright.State == afloat.Floats:
		lean = lean.absent("water comes over")
	case state == afloat.CapsizesUpright && rest.State != afloat.Floats:
		lean = lean.absent("goes over")
	case state != afloat.Floats && state != afloat.CapsizesUpright:
		lean = lean.absent(state.String())
	}
	if w.Righting.State != afloat.Floats {
		most = most.absent(w.Righting.State.String())
	}
	return []*Number{lean, most}
}

func movingNumbers(c core.Canoe, m core.Moving) []*Number {
	p, crew := m.Pace, len(c.Afloat.Crew)
	push := func(key, label string, v, low, high float64, how func(units.System) string) *Number {
		n := number(stage.Pitch, key, label, units.Force, v, fromMoving, how).between(low, high)
		if m.State != afloat.Floats {
			return n.absent(m.State.String())
		}
		return n
	}
	day := func(key, label string, k units.Kind, v, low, high float64) *Number {
		n := number(stage.Pitch, key, label, k, v, fromDay,
			working("# at # to # each, of which # to # drives the boat, in flat calm water without a rest; nothing "+
				"is added for seams, ribs, steering or wind. Loaded canoes are commonly paddled at #", many(crew,
				"paddler", "paddlers"),
				power(afloat.LeastPower), power(afloat.BriskPower), percent(afloat.LeastPaddleEfficiency),
				percent(afloat.MostPaddleEfficiency), speed(afloat.CommonPace))).between(low, high)
		switch {
		case m.State != afloat.Floats:
			return n.absent(m.State.String())
		case crew == 0:
			return n.absent("no paddler")
		case !m.Day.OnCurve:
			return n.absent("no speed on the curve")
		}
		return n
	}
	return []*Number{
		push("afloat.push", "Push needed at a walking pace", p.Theory(), p.Low(), p.High(),
			working("at #: friction alone, to friction and the most that theory gives within one part in twenty of "+
				"that speed", speed(p.Speed))),
		push("afloat.pushFriction", "Push to friction alone", p.Friction, p.Friction, p.Friction,
			working("water rubbing along the wet bark, at #", speed(p.Speed))),
		push("afloat.pushWave", "Push to waves, by theory", p.Wave, p.WaveLow, p.WaveHigh,
			working("thin-ship theory at #, and one part in twenty slower and faster", speed(p.Speed))),
		day("afloat.speed", "Speed a smooth hull of this shape could be held at", units.Speed, m.Day.Speed,
			m.Day.SpeedLow, m.Day.SpeedHigh),
		day("afloat.day", "Six hours of paddling on flat calm water, without rests", units.Distance, m.Day.Distance,
			m.Day.DistanceLow, m.Day.DistanceHigh),
	}
}
