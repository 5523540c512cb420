package pattern

import (
	"strconv"
	"strings"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/model"
	"barkwright/core/units"
)

// kitStep is a step of the work on a model. The minutes are estimates for pairs of pupils.
type kitStep struct {
	text    string
	minutes int
}

// kitSteps are in the order of the work, as on the boat.
var kitSteps = []kitStep{
	{"Read the boat's numbers. Check the scale of the paper with a ruler.", 10},
	{"Glue the pieces of bark together and cut the outline. Score nothing: bark bends round the frame.", 20},
	{"Slit the slits and prick the holes.", 15},
	{"Glue up the frame and tie the crosspieces across it.", 15},
	{"Make the bed: its sides under a strip, a centre line on it, pins for the stakes.", 15},
	{"Lay the bark on the bed, the frame on the bark, and a weight on the frame.", 5},
	{"Turn the sides up pair by pair and hold them with pins. Watch the slits close and ride over.", 10},
	{"Stand the posts under the gunwales' marks, put the gunwales on, tie the thwarts in. Read the sheer: nobody drew it.", 20},
	{"Tape the gunwales to the bark, then whip the edge with thread and take the tape off.", 30},
	{"Take the frame out, put the stem-pieces in, sew the ends and trim.", 20},
	{"Put the headboards in, then ribs from each end to the middle, the middle ones last.", 25},
	{"Measure. Launch it in a tray with nuts for a crew, and write down what differs.", 15},
}

// kitCaution stands over the steps.
const kitCaution = "Knives, needles and hot water: as the person teaching says. An adult cuts what is thick and pours what " +
	"is hot."

// sized is something to be measured on the finished model.
type sized struct {
	what string
	size float64 // m of the model
}

// measures are what the finished model should measure, to be read with a ruler.
func (k kit) measures() []sized {
	h, f := k.Hull, k.Frame
	out := []sized{{"length overall", k.OnModel(k.Design.Length)},
		{"depth amidships, bark to top of the gunwale", k.OnModel(h.Sheer(0))}}
	for i, t := range f.Thwarts {
		out = append(out, sized{"inside the gunwales at the " + frame.ThwartName(i, len(f.Thwarts)), k.OnModel(t.Shoulder)})
	}
	for _, b := range f.Bed.Posts[1:] {
		out = append(out, sized{"top of the gunwale at the " + b.Under, k.OnModel(h.Sheer(b.X))})
	}
	out = append(out, sized{"stem heads, both alike", k.OnModel(k.Design.EndHeight)},
		sized{"a strip round half the outside amidships", k.OnModel(h.Section(0).HalfGirth())})
	for i, g := range k.Skin.Flat.Gores {
		if g.X >= 0 && g.State == bark.GoreCut {
			slit := strconv.Itoa(i - len(k.Skin.Flat.Gores)/2)
			out = append(out, sized{"rides over at slit " + slit + " from the middle", k.OnModel(g.Width)})
		}
	}
	return out
}

// thickened names the parts that are made thicker than the boat's at scale, since they would be
// too small to cut.
func (k kit) thickened() []string {
	var out []string
	part := func(name string, boat, here float64) {
		if here > boat*(1+1e-9) {
			out = append(out, name+": "+millimetre(k.OnModel(here))+" instead of "+millimetre(k.OnModel(boat)))
		}
	}
	of, d := k.Of, k.Design
	part("inwale, thickness", of.InwaleThickness, d.InwaleThickness)
	part("inwale, depth", of.InwaleDepth, d.InwaleDepth)
	part("outwale, thickness", of.OutwaleThickness, d.OutwaleThickness)
	part("outwale, depth", of.OutwaleDepth, d.OutwaleDepth)
	part("rib, thickness", of.RibThickness, d.RibThickness)
	part("rib, breadth of its tip", of.RibTipWidth, d.RibTipWidth)
	part("stem-piece, depth", of.StemDepth, d.StemDepth)
	part("frame, breadth", frame.Batten, max(frame.Batten, model.LeastStrip*k.Scale))
	return out
}

// wordPage is a page of a kit's words.
type wordPage struct {
	title string
	texts []string
}

// words are the pages of numbers and of steps.
func (k kit) words() []planned {
	var out []planned
	for _, w := range append(k.paged("its numbers", k.numbers()), k.paged("steps", k.steps())...) {
		out = append(out, planned{names: []string{w.title}, draw: func(h Head, of string) draw.List {
			s := newPage(Paper, w.title, strings.Join(w.texts, "\n"))
			at := s.heading(w.title, h, of)
			at.Y += wordGap
			for _, text := range w.texts {
				at = s.paragraph(at, text)
				at.Y += wordGap
			}
			s.bars()
			return s.List
		}})
	}
	return out
}

// wordGap is the air between paragraphs, mm, and wordsFrom where they begin at the latest.
const wordGap, wordsFrom = 1.2, 30.0

// paged shares paragraphs out on pages.
func (k kit) paged(what string, texts []string) []wordPage {
	w := wordPage{title: k.name(what)}
	var out []wordPage
	y := wordsFrom
	for _, text := range texts {
		high := line*float64(len(draw.Wrapped(text, twelvePoints, false, textWidth))) + wordGap
		if y+high > Paper.Height {
			out = append(out, w)
			w, y = wordPage{title: k.name(what + ", continued")}, wordsFrom
		}
		w.texts, y = append(w.texts, text), y+high
	}
	return append(out, w)
}

// numbers say what the model is made of and what it should measure.
func (k kit) numbers() []string {
	out := []string{"The boat worked out again with the model's own thicknesses; it is not a drawing made smaller. Bark is " +
		k.CardOf + " " + millimetre(k.Card) + " thick, its grain across the boat; gunwales are split sticks, ribs stirrers or " +
		"strips of veneer, the root waxed thread and a blunt needle."}
	if thick := k.thickened(); len(thick) > 0 {
		out = append(out, "Too small to cut, and so made thicker than at scale: "+strings.Join(thick, "; ")+".")
	}
	out = append(out, "Bark: cut the outline and the slits on the whole lines, and leave the trim outside the thin edge. Dotted "+
		"beside a slit are the two lips that come together when the sides are up, as long as one another; dash and dot "+
		"are the centre line and the building frame. Crosses are holes for sewing the ends. Pieces are butted at their "+
		"joints, and a strip of card 10 mm broad is glued behind each.")
	out = append(out, "When it is done, read with a ruler. Within 2 mm is good work. Beside each write what yours measures.")
	for _, m := range k.measures() {
		out = append(out, "– "+m.what+": "+millimetre(m.size)+"   ________")
	}
	total := 0.0
	for _, r := range k.kitRibs() {
		n := 2.0
		if r.Alone() {
			n = 1
		}
		total += n * k.OnModel(r.Length)
	}
	return append(out, "Ribs, all of them end to end: "+units.Trimmed(total, 2)+" m. A paddler of 185 lb weighs "+
		units.Trimmed(1000*paddler/(k.Scale*k.Scale*k.Scale), 0)+" g at this scale.")
}

// steps are the steps of the work.
func (k kit) steps() []string {
	out := []string{kitCaution}
	minutes := 0
	for i, step := range kitSteps {
		out = append(out, strconv.Itoa(i+1)+". "+step.text+" About "+strconv.Itoa(step.minutes)+" minutes.")
		minutes += step.minutes
	}
	return append(out, "In all about "+strconv.Itoa(minutes)+" minutes for a pair of pupils, in four lessons. An estimate.")
}

// paddler is the mass of a paddler of 185 lb, kg.
const paddler = 185 * units.Pound
