package sheet

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// own is what a stage's sheet has beside what is at home there: before and after it, and
// tables in another order. Each may be nil.
var own = map[stage.Key]struct {
	before, after func(*page)
	arrange       arrangement
}{
	stage.Choose: {before: theBoat, after: closingWords},
	stage.Gather: {after: rootsToDig},
	stage.Bark:   {after: func(s *page) { s.sewn(bark.GoreSeams, bark.PanelSeams, bark.JointSeams) }},
	stage.Lace:   {after: groupsToLace},
	stage.Ends:   {after: func(s *page) { s.sewn(bark.EndSeams) }},
	stage.Rib:    {arrange: arrangement{"ribs": inFittingOrder}},
	stage.Pitch:  {before: crewAsSet},
}

// theBoat shows the boat in pictures and as designed.
func theBoat(s *page) {
	for _, f := range s.Figures {
		s.raw("<figure>" + f.SVG)
		s.element("figcaption", f.Caption)
		s.raw("</figure>")
	}
	s.element("h3", "As designed")
	s.raw(`<dl class="numbers">`)
	for _, key := range []string{"length", "beam", "depth", "gunwaleEndHeight", "endHeight", "rocker", "frameWidth",
		"frameLength", "barkThickness", "ribs", "thwarts", "stemLaminations"} {
		p, _ := design.Lookup(key)
		s.raw("<div>")
		s.element("dt", p.Label)
		s.element("dd", p.Kind.Format(p.Get(&s.Canoe.Design), s.System))
		s.raw("</div>")
	}
	s.raw("</dl>")
	s.element("h3", "As worked out")
	s.numbers(answer.Headlined(answer.All(s.Canoe)))
}

func closingWords(s *page) {
	if notes := s.Canoe.Design.Notes; notes != "" {
		s.element("h3", "Notes")
		s.element("p", notes)
	}
	if s.Head.Code != "" {
		s.element("h3", "The boat as a line to type back in")
		s.raw(`<p class="code">`)
		s.text(s.Head.Code)
		s.raw("</p>")
	}
	s.element("p", respect)
}

// steps writes the steps of the stage, each with a box to tick and room to write in.
func (s *page) steps() {
	s.raw(`<div class="short"><table class="list steps"><caption>Steps</caption><thead><tr><th scope="col">Done</th>` +
		`<th scope="col">Step</th><th scope="col">With</th><th scope="col">Read, and noted</th></tr></thead><tbody>`)
	for _, step := range s.Steps {
		day, done := s.Log.Done(step.Key, "")
		if s.raw(`<tr><td><span class="tick">`); done {
			s.raw("✓")
		}
		s.raw("</span></td>")
		text := step.Text(s.System)
		if step.Hazard != "" {
			text += " (" + step.Hazard + ")"
		}
		s.raw(`<td class="words">`)
		s.text(text)
		s.raw(`</td><td class="words">`)
		s.text(step.Tool)
		s.raw(`</td><td class="blank">`)
		if done {
			s.text(day)
		}
		s.raw("</td></tr>")
	}
	s.raw("</tbody></table>")
	for _, note := range s.Log.Notes(string(s.Key)) {
		s.element("p", note.When+": "+note.Note)
	}
	s.raw("</div>")
}

// Boxes to tick as roots are dug, groups laced and seams sewn.

func (s *page) needed(n int) string { return units.Count.Format(float64(n), s.System) + " needed" }

func rootsToDig(s *page) {
	root := s.Canoe.Gather.Root
	if root.Strands.Fits {
		s.tally("Roots dug, split and scraped",
			s.needed(root.Strands.Roots)+", each "+units.Run.Format(root.Strands.Length,
				s.System)+" as it grows: "+units.Run.Format(root.WithWaste, s.System)+" split in all", root.Strands.Roots)
	}
}

func groupsToLace(s *page) {
	l := s.Canoe.Frame.Lacing
	s.tally("Groups laced", s.needed(l.Count)+" of "+units.Length.Format(l.Group, s.System), l.Count)
	s.tally("Pegs split out", s.needed(l.Pegs), l.Pegs)
}

func (s *page) sewn(kinds ...bark.Kind) {
	for _, seam := range s.Canoe.Bark.Seams {
		if seam.Count > 0 && slices.Contains(kinds, seam.Kind) {
			s.tally("Sewn: "+seamNames[seam.Kind], s.needed(seam.Count)+", "+units.Run.Format(seam.Root,
				s.System)+" of split root in all", seam.Count)
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

func crewAsSet(s *page) {
	s.element("p", "Crew as set: "+strconv.Itoa(s.Canoe.Design.Paddlers)+" paddlers, "+s.Canoe.Design.Posture.String()+
		", and "+units.Mass.Format(s.Canoe.Design.Cargo, s.System)+" of cargo.")
}
