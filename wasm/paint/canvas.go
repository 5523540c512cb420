//go:build js

package paint

import (
	_ "embed"
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
	pen      *ebiten.Shader
	labels   *labels
}

// penSource is what every pixel of the mesh is painted by. A texture would have to be looked up for each.
//
//go:embed pen.kage
var penSource []byte

// newCanvas returns a canvas that calls drawn after each picture and draws inside guard.
func newCanvas(palette draw.Palette, drawn func(), guard func(act func())) *canvas {
	pen, err := ebiten.NewShader(penSource)
	if err != nil {
		panic(err) // the source stands in the program, and a test compiles it
	}
	return &canvas{palette: palette, drawn: drawn, guard: guard, pen: pen, labels: newLabels()}
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
		c.mesh.Build(c.list, c.palette, c.width, c.height, c.scale)
		pixel.Fill(color.White)
		c.unshown = true
	})
}

// DrawFinalScreen plays the list. Ebitengine asks for a few frames more than have changed.
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
	c.vertices = c.vertices[:0]
	for _, v := range c.mesh.Vertices {
		c.vertices = append(c.vertices, ebiten.Vertex{
			DstX: v.X, DstY: v.Y, SrcX: v.Across, SrcY: v.Reach,
			ColorR: v.R, ColorG: v.G, ColorB: v.B, ColorA: v.A,
		})
	}
	screen.DrawTrianglesShader32(c.vertices, c.mesh.Indices, c.pen, nil)
	c.labels.draw(screen, c.list, c.palette, c.scale)
}
