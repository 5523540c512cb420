package lines

import (
	"math"

	"barkwright/core"
	"barkwright/core/stage"
	"barkwright/core/tally"
	"barkwright/core/units"
)

// Changes are what changes of a list from one boat to another.
type Changes struct {
	Name string
	// Most is the largest change of a figure, m; Others tells of lines that only one of the
	// boats has.
	Most   float64
	Others bool
	Each   []string
}

// Changed are the lines, from a stage on, of each table's first list that are not ticked and whose figure
// differs between two boats as shown, or that only the later one has.
func Changed(before, after core.Canoe, from stage.Key, log tally.Log, s units.System) []Changes {
	var all []Changes
	seen := map[string]bool{}
	_, first, _ := stage.Lookup(from)
	for _, st := range stage.All()[max(0, first-1):] {
		for _, b := range st.Bench {
			if _, made := log.Done(b.Step, ""); seen[b.Table] || made {
				continue
			}
			seen[b.Table] = true
			if c := changed(Make(before, b, s), Make(after, b, s), log, s); len(c.Each) > 0 {
				all = append(all, c)
			}
		}
	}
	return all
}

func changed(was, is List, log tally.Log, s units.System) Changes {
	c := Changes{Name: is.Name}
	old := map[string]Line{}
	for _, l := range was.Lines {
		old[l.Key] = l
	}
	for _, l := range is.Lines {
		if _, made := log.Done(is.Step, l.Key); made {
			continue
		}
		o, had := old[l.Key]
		switch {
		case !had:
			c.Others = true
			c.Each = append(c.Each, l.What+": "+l.Figure+", new")
		case o.Figure != l.Figure:
			if l.Taped() && o.Taped() {
				c.Most = max(c.Most, math.Abs(l.Kind.Shown(l.Value, s)-o.Kind.Shown(o.Value, s)))
			}
			c.Each = append(c.Each, l.What+": "+o.Figure+", then "+l.Figure)
		}
	}
	return c
}

// Text says how many change, and by how much at the most.
func (c Changes) Text(s units.System) string {
	text := c.Name + ": " + units.Count.Format(float64(len(c.Each)), s)
	if c.Most > 0 {
		text += ", by up to " + units.Length.Format(c.Most, s)
	}
	return text
}
