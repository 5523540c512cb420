package solid

import (
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// groundBar is a scale bar that lies on the ground along the boat, beside it. It is foreshortened
// as the boat is.
type groundBar struct {
	cell  float64 // length of one of its cells, m
	cells int
	out   float64 // from the centre line to its near edge, m
}

// How far the bar is off what stands beside it and how broad it may be, m; how broad it is drawn,
// CSS pixels; and the most of the boat's length that it takes. By eye.
const (
	barGap   = 0.12
	barRoom  = 0.1
	barTall  = 4
	barShare = 1.0 / 3
)

// newGroundBar is the bar of whole feet, or of half metres, beside a boat of a length that reaches
// so far out on the ground.
func newGroundBar(length, reach float64, s units.System) groundBar {
	b := groundBar{cell: units.Foot, cells: 1, out: reach + barGap}
	if s == units.Metric {
		b.cell = 0.5
	}
	for _, n := range []int{2, 3, 4, 6, 8, 10} {
		if float64(n)*b.cell <= barShare*length {
			b.cells = n
		}
	}
	return b
}

func (b groundBar) long() float64 { return float64(b.cells) * b.cell }

// extremes are what a picture must hold for the bar on either side of the boat.
func (b groundBar) extremes() []geom.Vec3 {
	var all []geom.Vec3
	for _, m := range scene.Quarters {
		all = append(all, InPlace(geom.Vec3{X: b.long() / 2, Y: b.out + barRoom}, m))
	}
	return all
}

// GroundBarExtremes are what a picture must hold for the bar, whichever side is seen.
func GroundBarExtremes(length, reach float64, s units.System) []geom.Vec3 {
	return newGroundBar(length, reach, s).extremes()
}

// GroundBarWords say for a picture's description that the bar is there.
func GroundBarWords(length float64, s units.System) string {
	return " A bar of " + units.Length.Format(newGroundBar(length, 0, s).long(), s) +
		" lies on the ground beside the boat, in the same perspective."
}

// GroundBar draws the bar on the side that is seen, and says how long it is.
func (p *Solid) GroundBar(length, reach float64) {
	b := newGroundBar(length, reach, p.View.System)
	side := -1.0
	if p.Camera.toward.Y > 0 {
		side = 1
	}
	wide := min(barRoom, barTall*p.Weight/(p.Camera.scale*p.Camera.toward.Z))
	at := func(x, off float64) geom.Vec3 { return geom.Vec3{X: x, Y: side * (b.out + off*wide)} }
	var corners []draw.Point
	for i := range b.cells {
		from := (float64(i) - float64(b.cells)/2) * b.cell
		points := p.Place([]geom.Vec3{at(from, 0), at(from+b.cell, 0), at(from+b.cell, 1), at(from, 1)})
		role := draw.Role(draw.Ink)
		if i%2 == 1 {
			role = draw.Paper
		}
		p.Fill(role, points)
		p.Ring(draw.Ink, scene.HairWidth, points)
		p.KeepOff(draw.BoxOf(points))
		corners = append(corners, points...)
	}
	p.sayGroundBar(units.Length.Format(b.long(), p.View.System)+" on the ground", corners)
}

// sayGroundBar letters the bar at the end that is farther from the middle of the boat or, where that
// is near the picture's edge, at the other.
func (p *Solid) sayGroundBar(text string, corners []draw.Point) {
	left, right := corners[0], corners[0]
	for _, q := range corners {
		if q.X < left.X {
			left = q
		}
		if q.X > right.X {
			right = q
		}
	}
	gap, middle := 0.6*p.Letter, p.Camera.At(geom.Vec3{}).X
	room := 2*gap + draw.Lettered(text, p.Letter, false)
	end, spot := right, scene.SpotAt(right.X+gap, right.Y, draw.Start)
	if right.X+room > p.List.Width || middle-left.X > right.X-middle && left.X > room {
		end, spot = left, scene.SpotAt(left.X-gap, left.Y, draw.End)
	}
	n := p.Say(scene.RankPart, text, draw.Ink, draw.Paper, spot)
	n.Key, n.Lead = "scale bar, "+text+" beside the boat", &end
}
