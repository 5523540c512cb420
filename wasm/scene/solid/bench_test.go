package solid_test

import (
	"testing"

	"barkwright/core"
	"barkwright/core/design"
	"barkwright/core/draw"
	"barkwright/wasm/scene"
	"barkwright/wasm/scene/solid"
)

// A picture of the turn may take 8 ms on one core. A choice of this project: two frames in the
// browser.
func BenchmarkInTheRound(b *testing.B) {
	c := core.Evaluate(design.Default())
	for f := scene.BowQuarter; f <= scene.Above; f++ {
		b.Run(f.String(), func(b *testing.B) {
			for b.Loop() {
				solid.Draw(c, scene.View{State: scene.InTheRound, Zoom: 1, From: f}, draw.Size{Width: 1000, Height: 620, Letter: 16})
			}
		})
	}
}
