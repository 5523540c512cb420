package sheet

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/plan"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// own is what a stage's sheet has beside what is at home there: before and after it,
// numbers that stand first, and tables in another order. Each may be nil.
var own = map[stage.Key]struct {
	before, after func(*stageSheet)
	first         func([]answer.Number) []answer.Number
	arrange       arrangement
}{
	stage.Choose: {before: theBoat, first: answer.Headlined, after: closingWords},
	stage.Gather: {before: forOneBoat, after: rootsToDig},
	stage.Bark:   {after: func(s *stageSheet) { s.sewn(bark.GoreSeams, bark.PanelSeams, bark.JointSeams) }},
	stage.Lace:   {after: groupsToLace},
	stage.Ends:   {after: func(s *stageSheet) { s.sewn(bark.EndSeams) }},
	stage.Rib:    {arrange: arrangement{"ribs": inFittingOrder}},
	stage.Pitch:  {before: crewAsSet},
	stage.Keep:   {after: repairs},
}

// theBoat shows the boat as designed, over what is worked out.
func theBoat(s *stageSheet) {
	s.heading("As designed")
	var pairs []pair
	for _, key := range []string{"length", "beam", "depth", "gunwaleEndHeight", "endHeight", "rocker", "frameWidth",
		"frameLength", "barkThickness", "ribs", "thwarts", "stemLaminations"} {
		p, _ := design.Lookup(key)
		if on := s.Canoe.Design.BuiltOn; on == design.OnFrame || !strings.HasPrefix(key, "frame") {
			pairs = append(pairs, pair{p.Label, p.Kind.Format(p.Get(&s.Canoe.Design), s.System)})
		} else if key == "frameWidth" {
			pairs = append(pairs, pair{"Built on", on.String()})
		}
	}
	s.pairs(pairs)
	s.heading("As worked out")
}

func closingWords(s *stageSheet) {
	if notes := s.Canoe.Design.Notes; notes != "" {
		s.heading("Notes")
		s.text(notes)
	}
	if s.Head.Code != "" {
		s.heading("The boat as a line to type back in")
		s.text(s.Head.Code)
		s.small("The design code at the head of every page changes with any number of the boat.")
	}
	s.text(respect)
}

// steps adds the steps of the stage, each with a box to tick and room to write in.
func (s *stageSheet) steps() {
	g := grid{title: "Steps", head: []string{"Done", "Step", "With", "Read, and noted"}}
	for _, step := range s.Steps {
		day, done := s.Log.Done(step.Key, "")
		text := step.Text(s.System)
		if step.Hazard != "" {
			text += " (" + step.Hazard + ")"
		}
		g.rows = append(g.rows, []square{{tick: true, done: done}, {text: text, words: true}, {text: step.Tool, words: true},
			{text: s.Dates.Written(day), words: true, blank: true}})
	}
	s.grid(g)
	for _, note := range s.Log.Notes(string(s.Key)) {
		s.text(s.Dates.Written(note.When) + ": " + note.Note)
	}
}

// Boxes to tick as roots are dug, groups laced and seams sewn.

func (s *stageSheet) needed(n int) string {
	return units.Count.Format(float64(n), s.System) + " needed"
}

// forOneBoat says of what is gathered that it is for one boat, where the plan is for several.
func forOneBoat(s *stageSheet) {
	if n := s.Season.Int(plan.Boats); n > 1 {
		s.text(fmt.Sprintf("What stands here is for one boat. The plan is for %d: gather for all of them. The sheet What this "+
			"boat asks of you counts them together.", n))
	}
}

func rootsToDig(s *stageSheet) {
	root := s.Canoe.Gather.Root
	if root.Strands.Fits {
		s.tally("Roots dug, split and scraped",
			s.needed(root.Strands.Roots)+", each "+units.Run.Format(root.Strands.Length,
				s.System)+" as it grows: "+units.Run.RoughUp(root.WithWaste, s.System)+" split in all", root.Strands.Roots, s.System)
	}
}

func groupsToLace(s *stageSheet) {
	l := s.Canoe.Frame.Lacing
	s.tally("Groups laced", s.needed(l.Count)+", "+units.Length.RoughUp(l.Group, s.System)+" of root in each", l.Count, s.System)
	s.tally("Pegs split out", s.needed(l.Pegs), l.Pegs, s.System)
}

func (s *stageSheet) sewn(kinds ...bark.Kind) {
	for _, seam := range s.Canoe.Bark.Seams {
		if seam.Count > 0 && slices.Contains(kinds, seam.Kind) {
			s.tally("Sewn: "+seamNames[seam.Kind], s.needed(seam.Count)+", "+units.Run.Rough(seam.Root,
				s.System)+" of split root in all", seam.Count, s.System)
		}
	}
}

var seamNames = [...]string{bark.GoreSeams: "gores", bark.PanelSeams: "side panels",
	bark.JointSeams: "end-to-end joints", bark.EndSeams: "ends"}

// inFittingOrder lists the ribs as they go in: each end in turn, the middle last.
func inFittingOrder(t answer.Table) answer.Table {
	t.Title = "Ribs in the order they go in"
	t = first(t, "order", "rib")
	slices.Reverse(t.Rows)
	for _, r := range t.Rows {
		r.Cells[0].Text = strings.ReplaceAll(r.Cells[0].Text, " and ", ", ")
	}
	return t
}

func crewAsSet(s *stageSheet) {
	paddlers := strconv.Itoa(s.Canoe.Design.Paddlers) + " paddlers, "
	if s.Canoe.Design.Paddlers == 1 {
		paddlers = "1 paddler, "
	}
	s.text("Crew as set: " + paddlers + s.Canoe.Design.Posture.String() +
		", and " + units.Mass.Format(s.Canoe.Design.Cargo, s.System) + " of cargo.")
}

// repairs are those that the log holds, each with what it took.
func repairs(s *stageSheet) {
	for i, e := range s.Log.Repairs() {
		t := answer.MendTable(answer.Repaired(s.Canoe, s.Season, e.Damage), s.System)
		t.Title = "Repair " + strconv.Itoa(i+1) + ", " + s.Dates.Written(e.When)
		s.table(t)
	}
}
