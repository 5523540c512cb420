package view

import (
	"math"
	"strconv"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// aboard is one of the crew, or the cargo, with the parameter that places it.
type aboard struct {
	key, name string
	at        geom.Vec3 // its middle
}

// everyoneAboard lists the crew from the bow aft, and the cargo where there is any.
func everyoneAboard(c core.Canoe) []aboard {
	var out []aboard
	for i, p := range c.Afloat.Crew {
		n := strconv.Itoa(i + 1)
		out = append(out, aboard{"paddler" + n + "Place", "paddler " + n, p.At})
	}
	if c.Afloat.Cargo.Mass > 0 {
		out = append(out, aboard{"cargoPosition", "cargo", c.Afloat.Cargo.At})
	}
	return out
}

// sideHandle is the height at which the crew is taken in the side view, as a share of
// the depth: inside the boat, clear of the labels over the sheer.
const sideHandle = 0.55

// crewHandles returns the handles of crew and cargo in both views. It leaves out those
// too near to another handle for a finger to tell apart: they are moved by the form.
func crewHandles(c core.Canoe, l layout, there []Handle) []Handle {
	d := c.Design
	out := there
	for _, who := range everyoneAboard(c) {
		for i, h := range []Handle{
			{At: l.top.At(who.at.X, topHandle(c, who.at.X)), PerPixel: 1 / l.top.Scale},
			{At: l.side.At(who.at.X, c.Hull.Bottom(who.at.X)+sideHandle*d.Depth), PerPixel: 1 / l.side.Scale},
		} {
			if i == 0 && !l.hasTop || i == 1 && !l.hasSide {
				continue
			}
			h.Key, h.Axis, h.Reach = who.key, draw.Point{X: 1}, handleReach
			if apart(h, out) {
				out = append(out, h)
			}
		}
	}
	return out[len(there):]
}

// topHandle returns how far from the centre line a person is taken in the top view:
// zero, but amidships a little to starboard, since the beam is labelled on the centre
// line there.
func topHandle(c core.Canoe, x float64) float64 {
	if math.Abs(x) > c.Frame.Thwarts[1].X/2 {
		return 0
	}
	return -0.72 * c.Design.Beam / 2
}

func apart(h Handle, others []Handle) bool {
	for _, o := range others {
		if math.Hypot(h.At.X-o.At.X, h.At.Y-o.At.Y) < handleReach {
			return false
		}
	}
	return true
}

// crewTop names those aboard in the top view, as far as there is room.
func (p *pen) crewTop(c core.Canoe, a scene.Plate) {
	for _, who := range everyoneAboard(c) {
		at := a.At(who.at.X, topHandle(c, who.at.X))
		beside := scene.SpotAt(at.X+1.2*p.Letter, at.Y, draw.Start)
		if math.Abs(who.at.X) > c.Frame.Thwarts[1].X/2 {
			beside = scene.SpotAt(at.X, at.Y+1.7*p.Letter, draw.Middle)
		}
		if p.View.Layer == scene.Plain {
			return
		}
		// In a small drawing the names would lie over the gunwales.
		if c.Hull.HalfBeam(math.Abs(who.at.X))*a.Scale > 2.4*p.Letter {
			p.Say(scene.RankExtra, who.name, draw.Mark, draw.Bark, beside)
		}
	}
}

// crewSide marks the middle of everyone aboard in the side view.
func (p *pen) crewSide(c core.Canoe, a scene.Plate) {
	if p.View.Load == nil {
		return
	}
	depth := a.At(0, c.Design.Depth)
	for _, who := range everyoneAboard(c) {
		// At the handle of the depth a sign would be hidden.
		if at := a.At(who.at.X, who.at.Z); math.Hypot(at.X-depth.X, at.Y-depth.Y) > handleReach {
			radius := 4 * p.Weight
			p.centreSign(at, draw.Mark, radius)
			p.KeepOff(draw.Box{Left: at.X - radius, Top: at.Y - radius, Right: at.X + radius, Bottom: at.Y + radius})
		}
	}
}

// centreSign is the surveyors' sign for a centre of mass: a disc in quarters.
func (p *pen) centreSign(at draw.Point, r draw.Role, radius float64) {
	p.Fill(draw.Paper, draw.Polygon(at, radius, 12, 0))
	p.Fill(r, []draw.Point{at, {X: at.X + radius, Y: at.Y}, {X: at.X + 0.7*radius, Y: at.Y - 0.7*radius},
		{X: at.X, Y: at.Y - radius}})
	p.Fill(r, []draw.Point{at, {X: at.X - radius, Y: at.Y}, {X: at.X - 0.7*radius, Y: at.Y + 0.7*radius},
		{X: at.X, Y: at.Y + radius}})
	p.Ring(r, 1.4, draw.Polygon(at, radius, 12, 0))
}
