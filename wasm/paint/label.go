//go:build js

package paint

import (
	"image"
	"math"
	"strconv"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"

	"barkwright/core/draw"
)

// labels has the browser letter each line once on a hidden 2D canvas, with the
// system's own font and every script it knows, and keeps the result.
type labels struct {
	element, context js.Value
	kept             map[key]*label
}

type key struct {
	text         string
	size         float64 // device pixels
	bold         bool
	colour, halo draw.Colour
	hasHalo      bool
}

type label struct {
	image *ebiten.Image // a part of the sheet's
	sheet *sheet
	// advance is the breadth of the lettering and margin what surrounds it on
	// every side, device pixels.
	advance, margin float64
	used            bool
}

// sheet is one image of all lines of text that were new in one picture. The time that
// the browser takes to hand over an image hardly depends on its size.
type sheet struct {
	image *ebiten.Image
	kept  int // labels that are still in use
}

func newLabels() *labels {
	element := js.Global().Get("document").Call("createElement", "canvas")
	options := map[string]any{"willReadFrequently": true}
	return &labels{element: element, context: element.Call("getContext", "2d", options), kept: map[key]*label{}}
}

func keyOf(t draw.Text, palette draw.Palette, scale float64) key {
	k := key{text: t.Text, size: t.Size * scale, bold: t.Bold, colour: palette.Of(t.Role), hasHalo: t.Halo != ""}
	if k.hasHalo {
		k.halo = palette.Of(t.Halo)
	}
	return k
}

// draw draws all the lettering of a list.
func (l *labels) draw(screen ebiten.FinalScreen, list draw.List, palette draw.Palette, scale float64) {
	var missing []key
	for _, op := range list.Ops {
		if text, ok := op.(draw.Text); ok && text.Text != "" {
			k := keyOf(text, palette, scale)
			if _, known := l.kept[k]; !known {
				l.kept[k] = nil
				missing = append(missing, k)
			}
		}
	}
	for len(missing) > 0 {
		missing = missing[l.letter(missing):]
	}
	for _, op := range list.Ops {
		if text, ok := op.(draw.Text); ok && text.Text != "" {
			l.kept[keyOf(text, palette, scale)].draw(screen, text, scale)
		}
	}
	l.forgetUnused()
}

func (found *label) draw(screen ebiten.FinalScreen, t draw.Text, scale float64) {
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

// sheetWidth and sheetHeight bound a sheet in device pixels, unless one line alone is
// larger. With its margin such a sheet is within the 2048 that every WebGL2 takes.
const (
	sheetWidth  = 1024
	sheetHeight = 2000
)

// letter draws lines of text under one another on a sheet and copies its pixels. It
// returns how many of the lines fit.
func (l *labels) letter(keys []key) int {
	type place struct{ x, y, width, height int }
	places, sheet := make([]place, len(keys)), &sheet{}
	width, height, x, y := 0, 0, 0, 0
	for i, k := range keys {
		l.context.Set("font", k.font())
		made := &label{sheet: sheet, margin: math.Ceil(k.size*draw.HaloRatio/2) + 1}
		made.advance = l.context.Call("measureText", k.text).Get("width").Float()
		l.kept[k] = made
		at := place{width: int(math.Ceil(made.advance + 2*made.margin)), height: int(math.Ceil(k.size*1.3 + 2*made.margin))}
		if x+at.width > sheetWidth {
			x, y = 0, height
		}
		if i > 0 && y+at.height > sheetHeight {
			delete(l.kept, k)
			keys = keys[:i]
			break
		}
		at.x, at.y = x, y
		x += at.width
		width, height = max(width, x), max(height, y+at.height)
		places[i] = at
	}
	// Setting the size of a canvas clears it and resets its state.
	l.element.Set("width", width)
	l.element.Set("height", height)
	l.context.Set("textBaseline", "alphabetic")
	l.context.Set("lineJoin", "round")
	for i, k := range keys {
		at := places[i]
		left := float64(at.x) + l.kept[k].margin
		// 0.35 of the size is what SVG's labels use, so that both stand alike.
		baseline := float64(at.y) + float64(at.height)/2 + 0.35*k.size
		l.context.Set("font", k.font())
		if k.hasHalo {
			l.context.Set("lineWidth", k.size*draw.HaloRatio)
			l.context.Set("strokeStyle", k.halo.Hex())
			l.context.Call("strokeText", k.text, left, baseline)
		}
		l.context.Set("fillStyle", k.colour.Hex())
		l.context.Call("fillText", k.text, left, baseline)
	}
	sheet.kept = len(keys)
	sheet.image = ebiten.NewImage(width, height)
	sheet.image.WritePixels(l.pixels(width, height))
	for i, k := range keys {
		at := places[i]
		l.kept[k].image = sheet.image.SubImage(image.Rect(at.x, at.y, at.x+at.width, at.y+at.height)).(*ebiten.Image)
	}
	return len(keys)
}

func (k key) font() string {
	font := strconv.FormatFloat(k.size, 'f', 2, 64) + "px " + draw.FontFamily
	if k.bold {
		font = "700 " + font
	}
	return font
}

// pixels copies what is on the canvas, each colour times its alpha.
func (l *labels) pixels(width, height int) []byte {
	pixels := make([]byte, 4*width*height)
	js.CopyBytesToGo(pixels, l.context.Call("getImageData", 0, 0, width, height).Get("data"))
	for i := 0; i < len(pixels); i += 4 {
		alpha := int(pixels[i+3])
		if alpha == 0 || alpha == 0xff {
			continue
		}
		for j := i; j < i+3; j++ {
			pixels[j] = byte((int(pixels[j])*alpha + 127) / 255)
		}
	}
	return pixels
}

// keepAtMost bounds the labels kept. A picture has about a hundred. While a slider
// moves, the same numbers come back.
const keepAtMost = 600

func (l *labels) forgetUnused() {
	crowded := len(l.kept) > keepAtMost
	for k, kept := range l.kept {
		if crowded && !kept.used {
			if kept.sheet.kept--; kept.sheet.kept == 0 {
				kept.sheet.image.Deallocate()
			}
			delete(l.kept, k)
		}
		kept.used = false
	}
}
