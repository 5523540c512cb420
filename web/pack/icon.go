package main

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"slices"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/core/geom"
)

// icon is the page's mark for a home screen, a square PNG of a side of pixels: the opening
// boat from the side in the picture's colours, twice as deep as it is so that it can be
// made out. All of it lies in the middle four fifths, which no mask of a home screen cuts:
// W3C, Web Application Manifest, Icon masks.
func icon(side int) ([]byte, error) {
	h := core.Evaluate(design.Default()).Hull
	const stations, safe, deeper = 120, 0.74, 2
	var low, high []geom.Vec2
	for i := range stations + 1 {
		c := h.Column(2 * float64(i) / stations)
		foot, edge := c.At(0), c.At(c.Girth())
		low = append(low, geom.Vec2{X: foot.X, Y: foot.Z})
		high = append(high, geom.Vec2{X: edge.X, Y: edge.Z})
	}
	scale := safe * float64(side) / (2 * high[stations].X)
	place := func(x float64, p geom.Vec2) geom.Vec2 {
		return geom.Vec2{X: float64(side)/2 + x*p.X*scale, Y: 0.6*float64(side) - deeper*p.Y*scale}
	}
	var boat []geom.Vec2
	for i := stations; i >= 0; i-- {
		boat = append(boat, place(-1, high[i]))
	}
	for _, p := range high {
		boat = append(boat, place(1, p))
	}
	for i := stations; i >= 0; i-- {
		boat = append(boat, place(1, low[i]))
	}
	for _, p := range low {
		boat = append(boat, place(-1, p))
	}
	// The gunwale is what lies above the top edge moved down a little.
	rail := append([]geom.Vec2{}, boat[:2*(stations+1)]...)
	for i := 2*stations + 1; i >= 0; i-- {
		rail = append(rail, boat[i].Add(geom.Vec2{Y: 0.03 * float64(side)}))
	}
	colours := draw.Screen()
	skin, above := covered(boat, side), covered(rail, side)
	im := image.NewRGBA(image.Rect(0, 0, side, side))
	for i := range side * side {
		shade := over(colours.Of(draw.Paper), colours.Of(draw.Root), skin[i])
		shade = over(shade, colours.Of(draw.Ink), min(skin[i], above[i]))
		im.SetRGBA(i%side, i/side, color.RGBA{R: shade.R, G: shade.G, B: shade.B, A: 255})
	}
	var b bytes.Buffer
	err := png.Encode(&b, im)
	return b.Bytes(), err
}

func over(below, above draw.Colour, share float64) draw.Colour {
	mix := func(a, b uint8) uint8 { return uint8(float64(a)*(1-share) + float64(b)*share + 0.5) }
	return draw.Colour{R: mix(below.R, above.R), G: mix(below.G, above.G), B: mix(below.B, above.B)}
}

// covered is the share of every pixel of a square that lies in a shape, row by row: where
// four lines across each row cross the shape's edge, it is in and out by turns.
func covered(points []geom.Vec2, side int) []float64 {
	const lines = 4
	share := make([]float64, side*side)
	for line := range side * lines {
		y := (float64(line) + 0.5) / lines
		var crossings []float64
		for i, a := range points {
			b := points[(i+1)%len(points)]
			if (a.Y > y) != (b.Y > y) {
				crossings = append(crossings, a.X+(y-a.Y)/(b.Y-a.Y)*(b.X-a.X))
			}
		}
		slices.Sort(crossings)
		for pair := range slices.Chunk(crossings, 2) {
			for x := int(pair[0]); x <= int(pair[1]); x++ {
				across := min(pair[1], float64(x+1)) - max(pair[0], float64(x))
				share[line/lines*side+x] += across / lines
			}
		}
	}
	return share
}
