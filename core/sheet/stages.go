package sheet

import (
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
	for _, key := range []string{"length", "beam", "depth", "gunwaleEndHeight", "endHeight", "rocker", "frameWidth", "frameLength", "barkThickness", "ribs", "thwarts", "stemLaminations"} {
		p, _ := design.Lookup(key)
		s.raw("<div>")
		s.element("dt", p.Label)
		s.element("dd", p.Kind.Format(p.Get(&s.Canoe.Design), s.System))
		s.raw("</div>")
	}
	s.raw("</dl>")
	s.element("h3", "As worked out")
	s.numbers(append(answer.Headline(), "weight.total", "bark.treeDiameter")...)
	s.checks(answer.Groups()...)
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

func barkStage(s *stage) {
	s.cautions(permission, felling, edgeTools)
	s.numbers("bark.verdict", "bark.width", "tree.girth", "tree.diameter", "bark.sheets", "bark.pieces", "bark.joinGap", "bark.area", "logs.bolts", "materials.billets", "materials.pitch")
	s.checks(answer.BarkAndFrame)
	s.list("gores", []string{"gore", "run", "foot", "depth", "width", "edges", "state"})
	s.list("cutting", nil, "Cut")
	s.list("trees", []string{"sheet", "width", "length", "girth", "least", "most", "diameter"}, "Found")
	s.list("logs", nil, "Found")
	s.list("riving", []string{"piece", "need", "sectors", "layers", "bolt", "take"})
	s.list("pieces", []string{"piece", "count", "spares", "length", "width", "thickness"}, "Ready")
}

func bedStage(s *stage) {
	s.cautions(edgeTools)
	s.numbers("frame.width", "hull.halfGirth", "frame.turnWidth", "sheer.amidships", "sheer.end", "bed.stakes", "bed.slack")
	s.list("frame", nil, "As built")
	s.list("posts", nil, "As built")
	s.list("stakes", nil)
	s.list("gear", []string{"gear", "count", "low", "high", "width", "thickness"}, "Ready")
}

func marksStage(s *stage) {
	s.numbers("gunwale.length", "gunwale.outwale", "lacing.groups", "lacing.pegs")
	s.checks(answer.Gunwales)
	s.list("marks", nil, "✓")
	s.list("holes", nil)
}

func rootStage(s *stage) {
	s.cautions(permission, edgeTools, hotPitch, flames)
	s.numbers("root.total", "root.dug", "root.pieces", "root.published", "root.gunwales", "root.seams", "lacing.group", "lacing.turn", "seams.total", "materials.pitch")
	s.list("seams", []string{"seam", "count", "length", "stitch", "stitches", "root"})
	s.list("strands", nil)
	s.element("h3", "Prepared against needed")
	count := func(n int) string { return units.Count.Format(float64(n), s.System) + " needed" }
	root := s.Canoe.Gather.Root
	if root.Strands.Fits {
		s.tally("Roots dug, split and scraped", count(root.Strands.Roots)+", each "+units.Run.Format(root.Strands.Length, s.System)+" as it grows: "+units.Run.Format(root.WithWaste, s.System)+" split in all", root.Strands.Roots)
	}
	s.tally("Groups laced", count(s.Canoe.Frame.Lacing.Count)+" of "+units.Length.Format(s.Canoe.Frame.Lacing.Group, s.System), s.Canoe.Frame.Lacing.Count)
	s.tally("Pegs split out", count(s.Canoe.Frame.Lacing.Pegs), s.Canoe.Frame.Lacing.Pegs)
	for _, seam := range s.Canoe.Bark.Seams {
		if seam.Count > 0 {
			s.tally("Sewn: "+seamNames[seam.Kind], count(seam.Count)+", "+units.Run.Format(seam.Root, s.System)+" of split root in all", seam.Count)
		}
	}
}

var seamNames = [...]string{bark.GoreSeams: "gores", bark.PanelSeams: "side panels", bark.JointSeams: "end-to-end joints", bark.EndSeams: "ends"}

// ribsStage lists the ribs as they go in: each end in turn, the middle last.
func ribsStage(s *stage) {
	s.cautions(scalds, bending, edgeTools)
	s.numbers("ribs.count", "ribs.broken", "ribs.spacing", "ribs.longest", "ribs.minRadius")
	s.checks(answer.Ribs)
	t, _ := answer.MakeTable(s.Canoe, "ribs")
	t = pick(t, []string{"order", "rib", "run", "length", "rough", "bend", "taper", "width", "thickness", "state"})
	for i, j := 0, len(t.Rows)-1; i < j; i, j = i+1, j-1 {
		t.Rows[i], t.Rows[j] = t.Rows[j], t.Rows[i]
	}
	for _, r := range t.Rows {
		r.Cells[0].Text = strings.ReplaceAll(r.Cells[0].Text, " and ", ", ")
	}
	t.Title = "Ribs in the order they go in"
	s.table(t, "As built, fore", "aft")
	s.list("sheathing", nil, "Ready")
}

func endsStage(s *stage) {
	s.cautions(scalds, flames, bending, edgeTools)
	s.numbers("stem.height", "stem.curve", "stem.blank", "stem.laminationThickness", "stem.minRadius", "stem.ratio", "stem.splitsNeeded", "stem.springback")
	s.checks(answer.Ends)
	s.list("laminations", nil)
	s.list("headboard", nil, "As built")
	s.list("thwarts", []string{"thwart", "run", "shoulder", "ends", "longest", "plan", "flare"}, "As built")
	s.list("joinery", nil)
	s.list("bends", []string{"timber", "radius", "layers", "ratio", "verdict", "mend"})
}

func loadStage(s *stage) {
	s.cautions(coldWater, trialSwamp, noRating)
	var keys []string
	for _, n := range answer.All(s.Canoe) {
		if n.Group == answer.OnTheWater {
			keys = append(keys, n.Key)
		}
	}
	s.numbers(append([]string{"weight.total"}, keys...)...)
	s.checks(answer.OnTheWater)
	s.element("h3", "All through the work")
	s.cautions(felling, scalds, flames, hotPitch, bending, edgeTools, permission, teacher)
	s.element("p", "Crew as set: "+strconv.Itoa(s.Canoe.Design.Paddlers)+" paddlers, "+s.Canoe.Design.Posture.String()+", and "+units.Mass.Format(s.Canoe.Design.Cargo, s.System)+" of cargo.")
}
