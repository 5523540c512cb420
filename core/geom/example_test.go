package geom_test

import (
	"fmt"
	"math"

	"barkwright/core/geom"
)

// A quarter of a cylinder of radius 1 m and length 2 m, like bark bent round a tree,
// lies flat without stretch. Its area is pi m2. A quarter of a ball from its equator to
// 60 degrees does not lie flat: gores are cut to take up such stretch. Its area is pi/2
// sin 60 degrees, 1.36 m2, less what the chords of the grid cut off.
func ExampleFlatten() {
	const cells = 16
	round := func(part int) (sin, cos float64) { return math.Sincos(math.Pi / 2 * float64(part) / cells) }
	cylinder := geom.NewGrid(cells+1, cells+1, func(c, r int) geom.Vec3 {
		sin, cos := round(r)
		return geom.Vec3{X: 2 * float64(c) / cells, Y: sin, Z: 1 - cos}
	})
	ball := geom.NewGrid(cells+1, cells+1, func(c, r int) geom.Vec3 {
		sin, cos := round(c)
		up, out := math.Sincos(math.Pi / 3 * float64(r) / cells)
		return geom.Vec3{X: sin * out, Y: cos * out, Z: up}
	})
	for _, grid := range []geom.Grid{cylinder, ball} {
		flat := geom.Flatten(geom.FlattenProblem{Grid: grid}, nil)
		fmt.Printf("%v: %.2f square metres laid flat as %.2f, stretched by up to %.0f %%\n",
			flat.State, flat.Area, flat.FlatArea, 100*flat.P95)
	}
	// Output:
	// converged: 3.14 square metres laid flat as 3.14, stretched by up to 0 %
	// converged: 1.36 square metres laid flat as 1.36, stretched by up to 5 %
}
