package pattern

import (
	"strconv"
	"strings"

	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
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
	{"Lay the pieces of bark joint to joint, bow to bow, inside up, and glue a strip of card over each joint between its " +
		"dotted lines. Cut the outline. Score nothing: bark bends round the frame.", 20},
	{"Slit the slits from the edge in to the foot, and prick the holes at the ends.", 15},
	{"Butt the halves of the frame on a strip and tie the crosspieces across it, each on the mark of its number.", 15},
	{"Make the bed: its sides under a strip, curved edge up, a centre line on it, pins for the stakes.", 15},
	{"Lay the bark on the bed, inside up, its centre line on the bed's; the frame on its line, and a weight on the frame.", 5},
	{"Turn the sides up round the frame, toward you, pair by pair, and hold them with pins. Watch the slits close and ride " +
		"over: the lip nearer the bow goes outside. Read what rides over.", 10},
	{"Stand the posts on the bark under the gunwales' marks, put the inwales on inside and the outwales outside, tie the " +
		"thwarts in. Read the sheer: nobody drew it.", 20},
	{"Tape the gunwales to the bark, then whip the edge with thread and take the tape off.", 30},
	{"Take posts and frame out, put the stem-pieces in, heels inward, sew the two edges of each end hole to hole, and trim.", 20},
	{"Put the headboards in, then the ribs by their numbers, 1 the next to the middle, from each end to the middle; the " +
		"middle ones last.", 25},
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
		out = append(out, sized{"inside the gunwales at the " + frame.ThwartName(i, len(f.Thwarts)),
			k.OnModel(t.Shoulder)})
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
		if here > boat*(1+rounding) {
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
	part("frame, breadth", frame.Batten, k.batten())
	return out
}

// wordPage is a page of a kit's words.
type wordPage struct {
	title string
	texts []wordLine
}

// wordLine is a paragraph, or with a size a line of what is to be measured.
type wordLine struct{ text, size string }

// Where the sizes of what is to be measured end, and the room to write what was, mm.
const (
	sizeEnds  = 138.0
	blankFrom = 143.0
)

// words are the pages of numbers and of steps.
func (k kit) words() []planned {
	var out []planned
	for _, w := range append(k.paged("its numbers", k.numbers()), k.paged("steps", k.steps())...) {
		out = append(out, planned{names: []string{w.title}, draw: w.draw})
	}
	return out
}

func (w wordPage) draw(h Head, of string) draw.List {
	var spoken []string
	for _, l := range w.texts {
		spoken = append(spoken, joined(l.text, l.size))
	}
	s := newPage(Paper, w.title, strings.Join(spoken, "\n"))
	at := s.heading(w.title, h, of)
	at.Y += wordGap
	for _, l := range w.texts {
		foot := at.Y + 0.8*line
		at = s.say(at, l.wrapped())
		if l.size != "" {
			s.label(Label{At: geom.Vec2{X: sizeEnds, Y: foot}, Text: l.size, End: true})
			s.line(Line{[]geom.Vec2{{X: blankFrom, Y: foot + 0.6}, {X: textLeft + textWidth, Y: foot + 0.6}}, Mark})
		}
		at.Y += wordGap
	}
	s.bars()
	return s.List
}

// wrapped are the lines of its text.
func (l wordLine) wrapped() []string {
	width := textWidth
	if l.size != "" {
		const room = 26 // for the size
		width = sizeEnds - room
	}
	return draw.Wrapped(l.text, twelvePoints, false, width)
}

// wordGap is the air between paragraphs, mm, and wordsFrom where they begin at the latest.
const wordGap, wordsFrom = 1.2, 30.0

// paged shares paragraphs out on pages.
func (k kit) paged(what string, texts []wordLine) []wordPage {
	w := wordPage{title: k.name(what)}
	var out []wordPage
	y := wordsFrom
	for _, text := range texts {
		high := line*float64(len(text.wrapped())) + wordGap
		if y+high > Paper.Height {
			out = append(out, w)
			w, y = wordPage{title: k.name(what + ", continued")}, wordsFrom
		}
		w.texts, y = append(w.texts, text), y+high
	}
	return append(out, w)
}

// numbers say what the model is made of and what it should measure.
func (k kit) numbers() []wordLine {
	var out []wordLine
	say := func(text string) { out = append(out, wordLine{text: text}) }
	say("The boat worked out again with the model's own thicknesses; it is not a drawing made smaller. Bark is " +
		k.CardOf + " " + millimetre(k.Card) + " thick, its grain across the boat; gunwales are split sticks, ribs stirrers or " +
		"strips of veneer, the root waxed thread and a blunt needle.")
	if thick := k.thickened(); len(thick) > 0 {
		say("Too small to cut, and so made thicker than at scale: " + strings.Join(thick, "; ") + ".")
	}
	say("Bark: cut the outline and the slits on the whole lines, and leave the trim outside the thin edge. Dotted " +
		"beside a slit are the two lips that come together when the sides are up, as long as one another; dash and dot " +
		"are the centre line and the building frame. Crosses are holes for sewing the ends.")
	say("When it is done, read with a ruler. Within 2 mm is good work. Beside each write what yours measures.")
	for _, m := range k.measures() {
		out = append(out, wordLine{m.what, millimetre(m.size)})
	}
	afloat, ok := k.Afloat()
	if ok {
		grams := func(mass float64) string { return units.Trimmed(1000*mass, 0) + " g" }
		say("In a tray of water: spread nuts along the bottom until model and nuts weigh " + grams(afloat.Mass) +
			" together, which is the boat with its crew and load at this scale; a paddler of 185 lb (84 kg) weighs " +
			grams(k.AtScale(paddler)) + ". Then read:")
		out = append(out, wordLine{"freeboard, where the gunwale is lowest", millimetre(afloat.Freeboard)})
	}
	total := 0.0
	for _, r := range k.kitRibs() {
		n := 2.0
		if r.Alone() {
			n = 1
		}
		total += n * k.OnModel(r.Length)
	}
	say("Ribs, all of them end to end: " + units.Trimmed(total, 2) + " m.")
	return out
}

// steps are the steps of the work.
func (k kit) steps() []wordLine {
	out := []wordLine{{text: kitCaution}}
	minutes := 0
	for i, step := range kitSteps {
		out = append(out, wordLine{text: strconv.Itoa(i+1) + ". " + step.text + " About " +
			strconv.Itoa(step.minutes) + " minutes."})
		minutes += step.minutes
	}
	return append(out, wordLine{text: "In all about " + strconv.Itoa(minutes) +
		" minutes for a pair of pupils, in four lessons. An estimate."})
}

// paddler is the mass of a paddler of 185 lb, kg.
const paddler = 185 * units.Pound
