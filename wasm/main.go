//go:build js

// The page's program: bridge reads the form and writes the numbers, paint shows
// the picture.
package main

import (
	"runtime/debug"

	"barkwright/wasm/bridge"
	"barkwright/wasm/paint"
)

// A step of a slider makes under a megabyte of litter: collecting it at four times
// what lives keeps the collector out of most steps.
const collectAt = 400

// What lives takes some 20 MB, and memory that a program in a browser has taken is never
// given back. Past this many bytes it is collected sooner.
const memoryLimit = 96 << 20

func main() {
	debug.SetGCPercent(collectAt)
	debug.SetMemoryLimit(memoryLimit)
	picture := paint.New()
	bridge.Start(picture)
	picture.Run()
}
