//go:build js

// The page's program: bridge reads the form and writes the numbers, paint shows
// the picture. Numbers come first, so that they stand even where drawing is late.
package main

import (
	"runtime/debug"

	"barkwright/wasm/bridge"
	"barkwright/wasm/paint"
)

// A step of a slider makes under a megabyte of litter: collecting it at four times
// what lives keeps the collector out of most steps.
const collectAt = 400

func main() {
	debug.SetGCPercent(collectAt)
	picture := paint.New()
	bridge.Start(picture)
	picture.Run()
}
