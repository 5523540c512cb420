package view

import (
	"barkwright/core"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/wasm/scene"
)

// endSteps is the number of straight pieces that draw an end's profile. The error is
// under half a pixel in a picture 1900 pixels wide.
const endSteps = 18

// skinBreadth returns how far the bark stands out at x, its bulge included.
func skinBreadth(h *hull.Hull, x float64) float64 {
	if h.Bulge() == 0 || x >= h.GunwaleX {
		return h.SkinHalfBreadth(x)
	}
	return h.Column(h.ColumnAtEdge(x)).Section.Breadth()
}

// skinPlan is the port edge of the bark seen from above, from aft forward.
func skinPlan(h *hull.Hull) []geom.Vec2 {
	half := scene.Curve(func(x float64) float64 { return skinBreadth(h, x) }, h.GunwaleX)
	stem := h.SkinHalfBreadth(h.GunwaleX)
	tip := h.Design.Length / 2
	half = append(half, geom.Vec2{X: tip - stem/2, Y: stem}, geom.Vec2{X: tip, Y: stem / 3})
	return scene.Mirrored(half)
}

// edgeSide is the bark's top edge from the side, from amidships to the stem head,
// raised by up.
func edgeSide(h *hull.Hull, up float64) []geom.Vec2 {
	f := func(x float64) float64 { return h.TopEdge(x) + up }
	out := scene.Curve(f, h.GunwaleX)
	const past = 5
	for i := 1; i <= past; i++ {
		x := h.GunwaleX + (h.HeadX-h.GunwaleX)*float64(i)/past
		out = append(out, geom.Vec2{X: x, Y: f(x)})
	}
	return out
}

// endSide is the end's profile from heel to head, moved inboard by depth.
func endSide(h *hull.Hull, depth float64) []geom.Vec2 {
	out := make([]geom.Vec2, endSteps+1)
	for i := range out {
		t := float64(i) / endSteps
		out[i] = h.End.At(t).Add(h.End.Derivative(t).Unit().Left().Scale(depth))
	}
	return out
}

// keelSide is the bottom and the end from amidships to the stem head.
func keelSide(h *hull.Hull) []geom.Vec2 {
	const steps = 14
	out := make([]geom.Vec2, 0, steps+endSteps+2)
	for i := range steps {
		x := h.HeelX * float64(i) / steps
		out = append(out, geom.Vec2{X: x, Y: h.Bottom(x)})
	}
	return append(out, endSide(h, 0)...)
}

// profile is the bark's outline from the side.
func profile(h *hull.Hull) []geom.Vec2 {
	return scene.Between(scene.Mirrored(keelSide(h)), scene.Mirrored(edgeSide(h, 0)))
}

// flatColumn returns a column of the skin laid flat beside the bed's centre line. The
// ends lie as they are seen from the side.
func flatColumn(h *hull.Hull, v float64) (foot, edge geom.Vec2) {
	c := h.Column(v)
	foot = c.Foot
	if v > 1 {
		foot.Y -= h.Bottom(h.HeelX)
	}
	return foot, foot.Add(c.Up.Scale(c.Girth()))
}

// sheetSteps is the number of columns that draw half the flat sheet as far as the heel,
// and again beyond it, where its edge turns.
const sheetSteps = 14

// sheet is the bark laid flat: the quarter's top edge from amidships to the head
// and its end from heel to head.
func sheet(h *hull.Hull) (edge, end []geom.Vec2) {
	for i := range 2*sheetSteps + 1 {
		_, e := flatColumn(h, float64(i)/sheetSteps)
		edge = append(edge, e)
	}
	for _, q := range endSide(h, 0) {
		end = append(end, geom.Vec2{X: q.X, Y: q.Y - h.Bottom(h.HeelX)})
	}
	return edge, end
}

// sheetReach returns roughly how far the flat bark reaches from the centre line.
func sheetReach(h *hull.Hull) float64 {
	most := 0.0
	for _, v := range []float64{0, 0.4, 0.7, 1, 1.5, 2} {
		_, e := flatColumn(h, v)
		most = max(most, e.Y)
	}
	return most
}

// bedTop returns the height of the bed without its blocks, in the heights of the
// finished boat: the bark on the blocks stands at the finished heels.
func bedTop(c core.Canoe, x float64) float64 {
	d, h := c.Design, c.Hull
	half := d.BedLength / 2
	return d.BedCrown*(1-x*x/(half*half)) + bedRise(h)
}

// barkOnBed is the height of the bark's underside on the bed.
func barkOnBed(h *hull.Hull, x float64) float64 { return frame.BedHeight(h, x) + bedRise(h) }

func bedRise(h *hull.Hull) float64 { return h.Bottom(h.HeelX) - frame.BedHeight(h, h.HeelX) }
