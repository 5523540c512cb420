package sheet

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/units"
)

func summaryStage(s *stage) {
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
	all := answer.All(s.Canoe)
	s.numbers(append(answer.Headlined(all), on(all, s.Key)...))
	s.checks(answer.Checks(s.Canoe))
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

// rootTallies are boxes to tick as roots are dug and groups and seams sewn.
func rootTallies(s *stage) {
	s.element("h3", "Prepared against needed")
	count := func(n int) string { return units.Count.Format(float64(n), s.System) + " needed" }
	root := s.Canoe.Gather.Root
	if root.Strands.Fits {
		s.tally("Roots dug, split and scraped",
			count(root.Strands.Roots)+", each "+units.Run.Format(root.Strands.Length,
				s.System)+" as it grows: "+units.Run.Format(root.WithWaste, s.System)+" split in all", root.Strands.Roots)
	}
	s.tally("Groups laced", count(s.Canoe.Frame.Lacing.Count)+" of "+units.Length.Format(s.Canoe.Frame.Lacing.Group,
		s.System), s.Canoe.Frame.Lacing.Count)
	s.tally("Pegs split out", count(s.Canoe.Frame.Lacing.Pegs), s.Canoe.Frame.Lacing.Pegs)
	for _, seam := range s.Canoe.Bark.Seams {
		if seam.Count > 0 {
			s.tally("Sewn: "+seamNames[seam.Kind], count(seam.Count)+", "+units.Run.Format(seam.Root,
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

func loadNotes(s *stage) {
	s.element("h3", "All through the work")
	s.cautions(felling, scalds, flames, hotPitch, bending, edgeTools, permission, teacher)
	s.element("p", "Crew as set: "+strconv.Itoa(s.Canoe.Design.Paddlers)+" paddlers, "+s.Canoe.Design.Posture.String()+
		", and "+units.Mass.Format(s.Canoe.Design.Cargo, s.System)+" of cargo.")
}
