//go:build js

package paint

import (
	"math"
	"strconv"
	"syscall/js"

	"barkwright/wasm/scene"

	"github.com/hajimehoshi/ebiten/v2"
)

// labels has the browser letter each line once on a hidden 2D canvas, with the
// system's own font and every script it knows, and keeps the result as an image.
type labels struct {
	element, context js.Value
	kept             map[key]*label
}

type key struct {
	text         string
	size         float64 // device pixels
	bold         bool
	colour, halo scene.Colour
	hasHalo      bool
}

type label struct {
	image *ebiten.Image
	// advance is the breadth of the lettering and margin what surrounds it on
	// every side, device pixels.
	advance, margin float64
	used            bool
}

func newLabels() *labels {
	element := js.Global().Get("document").Call("createElement", "canvas")
	options := map[string]any{"willReadFrequently": true}
	return &labels{element: element, context: element.Call("getContext", "2d", options), kept: map[key]*label{}}
}

func (l *labels) draw(screen *ebiten.Image, t scene.Text, palette scene.Palette, scale float64) {
	if t.Text == "" {
		return
	}
	k := key{text: t.Text, size: t.Size * scale, bold: t.Bold, colour: palette.Of(t.Role), hasHalo: t.Halo != ""}
	if k.hasHalo {
		k.halo = palette.Of(t.Halo)
	}
	found := l.kept[k]
	if found == nil {
		found = l.letter(k)
		l.kept[k] = found
	}
	found.used = true
	anchored := found.margin + [...]float64{0, 0.5, 1}[t.Anchor]*found.advance
	options := &ebiten.DrawImageOptions{}
	options.GeoM.Translate(-anchored, -float64(found.image.Bounds().Dy())/2)
	if t.Angle != 0 {
		options.GeoM.Rotate(t.Angle)
		options.Filter = ebiten.FilterLinear
		options.GeoM.Translate(t.At.X*scale, t.At.Y*scale)
	} else {
		// Letters stay sharp only on whole pixels.
		x, y := options.GeoM.Apply(0, 0)
		options.GeoM.Reset()
		options.GeoM.Translate(math.Round(x+t.At.X*scale), math.Round(y+t.At.Y*scale))
	}
	screen.DrawImage(found.image, options)
}

// letter draws one line of lettering and copies its pixels.
func (l *labels) letter(k key) *label {
	font := strconv.FormatFloat(k.size, 'f', 2, 64) + "px " + scene.FontFamily
	if k.bold {
		font = "700 " + font
	}
	l.context.Set("font", font)
	margin := math.Ceil(k.size*scene.HaloRatio/2) + 1
	advance := l.context.Call("measureText", k.text).Get("width").Float()
	width, height := int(math.Ceil(advance+2*margin)), int(math.Ceil(k.size*1.3+2*margin))
	// Sizing a canvas clears it and puts its state back, the font too.
	l.element.Set("width", width)
	l.element.Set("height", height)
	l.context.Set("font", font)
	l.context.Set("textBaseline", "alphabetic")
	// 0.35 of the size is what SVG's labels use, so that both stand alike.
	baseline := float64(height)/2 + 0.35*k.size
	if k.hasHalo {
		l.context.Set("lineJoin", "round")
		l.context.Set("lineWidth", k.size*scene.HaloRatio)
		l.context.Set("strokeStyle", k.halo.Hex())
		l.context.Call("strokeText", k.text, margin, baseline)
	}
	l.context.Set("fillStyle", k.colour.Hex())
	l.context.Call("fillText", k.text, margin, baseline)
	pixels := make([]byte, 4*width*height)
	js.CopyBytesToGo(pixels, l.context.Call("getImageData", 0, 0, width, height).Get("data"))
	for i := 0; i < len(pixels); i += 4 {
		alpha := int(pixels[i+3])
		for j := i; j < i+3; j++ {
			pixels[j] = byte((int(pixels[j])*alpha + 127) / 255)
		}
	}
	image := ebiten.NewImage(width, height)
	image.WritePixels(pixels)
	return &label{image: image, advance: advance, margin: margin}
}

// keepAtMost bounds the labels kept: a picture has about a hundred, and while a
// slider moves its numbers come round again.
const keepAtMost = 600

func (l *labels) forgetUnused() {
	crowded := len(l.kept) > keepAtMost
	for k, kept := range l.kept {
		if crowded && !kept.used {
			kept.image.Deallocate()
			delete(l.kept, k)
		}
		kept.used = false
	}
}
