package solid_test

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"

	"barkwright/core"
	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/raise"
)

// thick counts the pixels of ink with nothing but ink round them.
func (r *raster) thick() int {
	n := 0
	for y := 1; y < r.height-1; y++ {
		for x := 1; x < r.width-1; x++ {
			ink := 0
			for dy := -1; dy <= 1; dy++ {
				for dx := -1; dx <= 1; dx++ {
					if r.at[(y+dy)*r.width+x+dx] == draw.Ink {
						ink++
					}
				}
			}
			if ink == 9 {
				n++
			}
		}
	}
	return n
}

// While the near side is on its way past the eye it is seen by its edge: its outline is then one line as
// wide as any other, and not two beside each other in dashes. An outline is 1.35 pixels wide here, so that
// no pixel has ink all round it but where lines meet: 120 and 130 in five pictures, over 300 while both
// outlines were drawn as wide as they are beside a broad face. A choice of this project, no published source.
func TestOutlineOfAnEdge(t *testing.T) {
	for _, d := range []design.Design{design.Default(), design.Starting()[0]} {
		c := core.Evaluate(d)
		f := core.LayFlat(c, bark.ForPicture, nil, nil)
		n := 0
		for _, up := range []float64{0.2, 0.21, 0.22, 0.23, 0.24} {
			v := scene.View{State: scene.SidesUp, Zoom: 1, Up: up, Flat: &f, Layer: scene.Plain}
			l := raise.Draw(c, v, draw.Size{Width: 1000, Height: 560, Letter: 16})
			// The bar on the ground is filled with ink.
			l.Ops = slices.DeleteFunc(l.Ops, func(op draw.Op) bool { f, ok := op.(draw.Fill); return ok && f.Role == draw.Ink })
			r := rastered(l)
			n += r.thick()
		}
		assert.Less(t, n, 200, d.Name)
	}
}
