//go:build js

// The page's program: bridge reads the form and writes the numbers, paint shows
// the picture. Numbers come first, so that they stand even where drawing is late.
package main

import (
	"barkwright/wasm/bridge"
	"barkwright/wasm/paint"
)

func main() {
	picture := paint.New()
	bridge.Start(picture)
	picture.Run()
}
