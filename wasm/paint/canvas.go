//go:build js

package paint

import (
	"image"
	"image/color"
	"syscall/js"

	"barkwright/core/draw"
	"barkwright/wasm/paint/mesh"

	"github.com/hajimehoshi/ebiten/v2"
)

// canvas is the Ebitengine game: it draws the list when something changed and
// otherwise leaves the screen as it is. It draws straight on the screen: by way of the image that
// Ebitengine keeps of a frame, every pixel would be painted once more.
type canvas struct {
	palette draw.Palette
	drawn   func()
	guard   func(act func())
	list    draw.List
	dirty   bool // the list is not in the mesh yet
	unshown bool // nor has what is in the mesh been on the screen

	width, height int     // device pixels
	scale         float64 // device pixels a CSS pixel

	mesh     mesh.Mesh
	vertices []ebiten.Vertex
	white    *ebiten.Image
	labels   *labels
}

// newCanvas returns a canvas that calls drawn after each picture and draws inside guard.
func newCanvas(palette draw.Palette, drawn func(), guard func(act func())) *canvas {
	c := &canvas{palette: palette, drawn: drawn, guard: guard, labels: newLabels()}
	// One pixel inside a white square. Its neighbours are white too, so rounding of the
	// place in the texture cannot darken an edge.
	square := ebiten.NewImage(3, 3)
	square.Fill(color.White)
	c.white = square.SubImage(image.Rect(1, 1, 2, 2)).(*ebiten.Image)
	return c
}

func (c *canvas) show(l draw.List) {
	c.list, c.dirty = l, true
	js.Global().Call("wake", 1)
}

// Update does nothing: a picture changes only by show.
func (c *canvas) Update() error { return nil }

// Layout receives the view's size in device pixels, by way of boot.js. A resize
// empties the screen, and page zoom changes the scale while the size may stay. The image kept
// of a frame is one pixel, which only tells Ebitengine that something has changed.
func (c *canvas) Layout(width, height int) (int, int) {
	scale := js.Global().Get("devicePixelRatio").Float()
	if width != c.width || height != c.height || scale != c.scale {
		c.width, c.height, c.scale, c.dirty = width, height, scale, true
	}
	return 1, 1
}

// Draw makes the triangles of the list if it has changed.
func (c *canvas) Draw(pixel *ebiten.Image) {
	if !c.dirty || len(c.list.Ops) == 0 {
		return
	}
	c.dirty = false
	c.guard(func() {
		c.mesh.Build(c.list, c.palette, c.scale)
		pixel.Fill(color.White)
		c.unshown = true
	})
}

// DrawFinalScreen plays the list. Ebitengine has painted the screen black before, and it asks for a few
// frames more than have changed.
func (c *canvas) DrawFinalScreen(screen ebiten.FinalScreen, _ *ebiten.Image, _ ebiten.GeoM) {
	c.guard(func() {
		c.play(screen)
		if c.unshown {
			c.unshown = false
			c.drawn()
		}
	})
}

func (c *canvas) play(screen ebiten.FinalScreen) {
	paper := c.palette.Of(draw.Paper)
	screen.Fill(color.RGBA{R: paper.R, G: paper.G, B: paper.B, A: 0xff})
	c.vertices = c.vertices[:0]
	for _, v := range c.mesh.Vertices {
		c.vertices = append(c.vertices, ebiten.Vertex{
			DstX: v.X, DstY: v.Y, SrcX: 1.5, SrcY: 1.5,
			ColorR: v.R, ColorG: v.G, ColorB: v.B, ColorA: v.A,
		})
	}
	screen.DrawTriangles32(c.vertices, c.mesh.Indices, c.white,
		&ebiten.DrawTrianglesOptions{ColorScaleMode: ebiten.ColorScaleModePremultipliedAlpha})
	c.labels.draw(screen, c.list, c.palette, c.scale)
}
