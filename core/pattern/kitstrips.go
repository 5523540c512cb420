package pattern

import (
	"math"
	"strconv"

	"barkwright/core/draw"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/model"
)

// The room on one page, m: the block less what is left free beside a drawing.
var (
	stripsHigh = (Paper.Height - 2*narrow) / millimetres
	stripsWide = (Paper.Width - 2*narrow) / millimetres
)

// standing is a strip to be cut: half its outline from its middle to its tip, broad side first,
// or the whole length where that goes on a page.
type standing struct {
	length float64
	// breadths are half-breadths, and where they are, from the middle.
	along, breadth []float64
	text           string
}

// plain is a strip as broad all along, with its length in its name.
func plain(length, breadth float64, text string) standing {
	return standing{length: length, along: []float64{0, length / 2}, breadth: []float64{breadth / 2, breadth / 2},
		text: text + ", " + millimetre(length)}
}

// kitRibs are the ribs that are made, from the middle outward.
func (k kit) kitRibs() []frame.Rib {
	var out []frame.Rib
	for i, r := range k.Frame.Ribs {
		if i%k.RibEvery == 0 {
			out = append(out, r)
		}
	}
	return out
}

// ribs are strips of their lengths.
func (k kit) ribs() []Pattern {
	var all []standing
	for _, r := range k.kitRibs() {
		t := r.Taper(k.Design)
		n := 2
		if r.Alone() {
			n = 1
		}
		all = append(all, standing{length: k.OnModel(r.Length),
			along:   []float64{0, k.OnModel(r.Length/2 - t.Length), k.OnModel(r.Length / 2)},
			breadth: []float64{k.OnModel(t.Middle / 2), k.OnModel(t.Shoulder / 2), k.OnModel(t.Tip / 2)},
			text:    "rib " + nameOfRib(r.Number) + ", " + strconv.Itoa(n) + ", " + millimetre(k.OnModel(r.Length))})
	}
	note := "Strips " + millimetre(k.OnModel(k.Design.RibThickness)) + " thick, the grain along them: stirrers, thin ply or " +
		"veneer. Soaked in hot water, which an adult pours, they bend. Put in from each end to the middle."
	if k.RibEvery > 1 {
		note += " Every second rib of the boat is left out: nearer than " + millimetre(model.RibSpacing) + " they cannot be put in."
	}
	return k.stand("kit-ribs", "ribs", note, all)
}

// crosspieces are those of the building frame.
func (k kit) crosspieces() []Pattern {
	var all []standing
	for i, c := range k.Frame.Bed.Crosspieces {
		n := 2
		if c.X == 0 {
			n = 1
		}
		all = append(all, plain(k.OnModel(c.OutToOut), k.OnModel(k.batten()), "crosspiece "+strconv.Itoa(i)+", "+strconv.Itoa(n)))
	}
	return k.stand("kit-cross", "crosspieces of the frame",
		"Of two layers of stiff card, tied across the frame on their marks.", all)
}

// sticks are the posts and the thwarts.
func (k kit) sticks() []Pattern {
	var all []standing
	for i, t := range k.Frame.Thwarts {
		n := 2
		if i == 0 {
			n = 1
		}
		all = append(all, plain(k.OnModel(t.Shoulder), max(model.LeastStrip, k.OnModel(frame.ThwartWidth)),
			frame.ThwartName(i, len(k.Frame.Thwarts))+", "+strconv.Itoa(n)))
	}
	for i, b := range k.Frame.Bed.Posts {
		n := 4
		if i == 0 {
			n = 2
		}
		all = append(all, plain(k.OnModel(b.Length), model.LeastStrip, "post at "+b.Under+", "+strconv.Itoa(n)))
	}
	return k.stand("kit-sticks", "thwarts and posts", "Thwarts stand between the inwales. Posts stand on the bark under the "+
		"gunwales and make the sheer: cut them to a quarter of a millimetre. The second figure is how many are needed.", all)
}

// stand puts strips beside one another on as many pages as they need, each standing up, with its
// name beside it.
func (k kit) stand(key, what, note string, all []standing) []Pattern {
	const gap = 0.006 // for the name
	longest := 0.0
	for _, s := range all {
		longest = max(longest, s.length)
	}
	half := longest > stripsHigh
	if half {
		note += " Drawn from the middle to one tip: the other half is the same."
	}
	var out []Pattern
	var p Pattern
	x := math.Inf(1)
	for _, s := range all {
		wide := 2 * s.breadth[0]
		if x+wide+gap > besideBox(s.high(half)) {
			if len(p.Lines) > 0 {
				out = append(out, p.done())
			}
			p = Pattern{Key: key + "-" + strconv.Itoa(len(out)+1), Name: k.name(what), Note: note}
			x = 0
		}
		p.stand(s, x+wide/2, half)
		x += wide + gap
	}
	return append(out, p.done())
}

// high is how high a strip stands on the paper, all of it or half.
func (s standing) high(half bool) float64 {
	if half {
		return s.length / 2
	}
	return s.length
}

// besideBox is how far across a page a strip so high may stand, m, and leave room for the frame
// with the page's names, over which nothing is drawn.
func besideBox(high float64) float64 {
	if high*millimetres+2*packName+2*packEdge+packAir+boxOutside <= Paper.Height {
		return stripsWide
	}
	return stripsWide - (boxOutside+packAir)/millimetres
}

func down(q geom.Vec2) geom.Vec2 { return geom.Vec2{X: q.X, Y: -q.Y} }

// stand draws a strip about a line up the paper, from the top of the drawing down.
func (p *Pattern) stand(s standing, x float64, half bool) {
	var right []geom.Vec2
	for i, along := range s.along {
		right = append(right, geom.Vec2{X: s.breadth[i], Y: along})
	}
	if !half {
		right = append(geom.Reversed(each(right[1:], down)), right...)
	}
	left := geom.Reversed(mirrored(right))
	round := append(append(right, left...), right[0])
	middle := geom.Vec2{X: x, Y: -s.length / 2}
	p.draw(Cut, each(round, middle.Add)...)
	p.draw(Mark, middle.Add(geom.Vec2{X: -s.breadth[0]}), middle.Add(geom.Vec2{X: s.breadth[0]}))
	// Beside a short one the lettering goes on under it.
	room := draw.Lettered(s.text, smallLetters, false) / millimetres
	p.up(geom.Vec2{X: x + s.breadth[0] + 0.004, Y: -max(room, s.length/2)}, s.text)
}
