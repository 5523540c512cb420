package answer

import (
	"strings"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/stage"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// ribWord is a rib's bend in words.
func ribWord(b wood.Bend, s wood.Stock) string {
	if b.WillNotFit {
		return willNotFit
	}
	return b.Rib(s).String()
}

// RibWord is what becomes of a rib, in words.
func RibWord(c core.Canoe, r frame.Rib) string {
	if r.Broken {
		return "broken at the centre"
	}
	return ribWord(r.Bend, c.Design.RibStock)
}

// ribStates are the states of the bands of ribs.
var ribStates = [...]State{wood.EasyRib: Within, wood.PublishedRib: Within, wood.ColdRib: Near,
	wood.TighterThanMost: Near, wood.TighterThanAny: Beyond}

// ribsCheck judges the rib bent hardest, and names what would mend it.
func ribsCheck(c core.Canoe) Warning {
	stock, r := c.Design.RibStock, hardestRib(c)
	band := r.Bend.Rib(stock)
	w := Warning{Key: "ribs.verdict", Label: "Ribs", Home: stage.Rib, State: ribStates[band], Word: ribWord(r.Bend,
		stock)}
	bends := term{kind: units.Ratio, value: max(0, r.Bend.Ratio)}
	switch band {
	case wood.EasyRib:
		w.Text = working("rib # from the middle bends to # times its thickness: bend a trial piece first",
			count(r.Number), bends)
	case wood.PublishedRib:
		w.Text = working("rib # from the middle bends to # times its thickness. Published ribs bend to # to #: "+
			"bend a trial piece first, and make spares", count(r.Number), bends,
			ratio(wood.PublishedRibsTightest), ratio(wood.PublishedRibsEasiest))
	default:
		found := working("rib # from the middle bends to # times its thickness. "+publishedRibs,
			append([]term{count(r.Number), bends}, publishedTerms()...)...)
		if r.Bend.WillNotFit {
			found = working("rib # from the middle is thicker than its bend is wide", count(r.Number))
		}
		mend := ribsMend(c, r.Bend.Limit)
		w.Text = func(s units.System) string { return found(s) + ". " + mend(s) }
	}
	if band != wood.EasyRib && !hotStock(stock) {
		cold := w.Text
		w.Text = func(s units.System) string { return cold(s) + ". Bent hot they may bend farther" }
	}
	return w
}

func hotStock(s wood.Stock) bool { return s.Condition == wood.Boiled || s.Condition == wood.Strapped }

// ribsMend names the controls and the values that bring every rib that bends whole to
// a radius over thickness.
func ribsMend(c core.Canoe, limit float64) func(units.System) string {
	d := c.Design
	mid, _ := design.Lookup("ribThickness")
	end, _ := design.Lookup("ribThicknessEnd")
	broken, _ := design.Lookup("ribsBroken")
	return func(s units.System) string {
		step := mid.Step(s)
		if s == units.Imperial8 {
			step = units.Inch / 8 // a size that is shown rounded up would not clear it
		}
		var ways []string
		if t, e, ok := c.Frame.ThinnerRibs(d, limit, step); ok {
			var set []string
			if t < d.RibThickness {
				set = append(set, mid.Label+" "+mid.Kind.Format(t, s))
			}
			if e < d.RibThicknessEnd {
				set = append(set, end.Label+" "+end.Kind.Format(e, s))
			}
			if len(set) > 0 {
				ways = append(ways, strings.Join(set, " and "))
			}
		}
		if n := c.Frame.RibsToBreak(limit); n > d.RibsBroken && float64(n) <= broken.Max {
			ways = append(ways, broken.Label+" "+broken.Kind.Format(float64(n), s))
		}
		if len(ways) == 0 {
			return "No thinner rib would clear it: make the turn of the bilge easier or the bottom broader"
		}
		return "To clear it, set " + strings.Join(ways, ", or ")
	}
}

// bendState is the state of a bend on the scale of checks.
func bendState(b wood.Bend) State { return [...]State{Within, Near, Beyond, NotChecked}[b.Verdict] }
