package solid

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core/draw"
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// A line on a face is painted after every face of its layer, also after one that is nearer
// to the eye, and before the faces of the next.
func TestLinesLieOverTheFacesOfTheirLayer(t *testing.T) {
	s := Solid{Pen: scene.NewPen(scene.View{Zoom: 1}, draw.Size{Width: 100, Height: 100}),
		Camera: Camera{toward: geom.Vec3{Y: 1}}}
	named := func(r draw.Role) draw.Op { return draw.Fill{Role: r} }
	s.AddLines(Inner, named(draw.Ink))
	s.Add(Outer, []geom.Vec3{{Y: 1}}, named(draw.Bark))
	s.Add(Inner, []geom.Vec3{{Y: 9}}, named(draw.Inside))
	s.Add(Inner, []geom.Vec3{{Y: 2}}, named(draw.Seam))
	s.addKind(Inner, rims, named(draw.Faint))
	s.Paint()
	var order []draw.Role
	for _, op := range s.List.Ops {
		order = append(order, op.(draw.Fill).Role)
	}
	assert.Equal(t, []draw.Role{draw.Faint, draw.Seam, draw.Inside, draw.Ink, draw.Bark}, order)
}
