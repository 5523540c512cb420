//go:build js

// An empty Ebitengine page, booted as ours is: the measure for our own start.
package main

import (
	"image/color"
	"syscall/js"

	"github.com/hajimehoshi/ebiten/v2"
)

type game struct{ drawn bool }

func (g *game) Update() error                       { return nil }
func (g *game) Layout(width, height int) (int, int) { return width, height }
func (g *game) Draw(screen *ebiten.Image) {
	if g.drawn {
		return
	}
	g.drawn = true
	screen.Fill(color.White)
	js.Global().Get("document").Get("documentElement").Get("dataset").Set("drawn", "1")
}

func main() {
	document := js.Global().Get("document")
	view := document.Call("getElementById", "view")
	view.Call("insertBefore", document.Call("querySelector", "body > canvas"), view.Get("firstChild"))
	js.Global().Call("wake", 2)
	ebiten.SetScreenClearedEveryFrame(false)
	ebiten.SetTPS(ebiten.SyncWithFPS)
	options := &ebiten.RunGameOptions{InitUnfocused: true, DisableHiDPI: true}
	if err := ebiten.RunGameWithOptions(&game{}, options); err != nil {
		panic(err)
	}
}
