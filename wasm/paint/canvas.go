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
// otherwise leaves the screen as it is.
type canvas struct {
	palette draw.Palette
	drawn   func()
	guard   func(act func())
	list    draw.List
	dirty   bool

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
	// A frame with the previous list may already be running. The second frame has this one.
	js.Global().Call("wake", 2)
}

// Update does nothing: a picture changes only by show.
func (c *canvas) Update() error { return nil }

// Layout receives the view's size in device pixels, by way of boot.js. A resize
// empties the screen, and page zoom changes the scale while the size may stay.
func (c *canvas) Layout(width, height int) (int, int) {
	scale := js.Global().Get("devicePixelRatio").Float()
	if width != c.width || height != c.height || scale != c.scale {
		c.width, c.height, c.scale, c.dirty = width, height, scale, true
	}
	return width, height
}

// Draw plays the list if it has changed.
func (c *canvas) Draw(screen *ebiten.Image) {
	if !c.dirty || len(c.list.Ops) == 0 {
		return
	}
	c.dirty = false
	c.guard(func() { c.play(screen) })
}

func (c *canvas) play(screen *ebiten.Image) {
	paper := c.palette.Of(draw.Paper)
	screen.Fill(color.RGBA{R: paper.R, G: paper.G, B: paper.B, A: 0xff})
	c.mesh.Build(c.list, c.palette, c.scale)
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
	c.drawn()
}
