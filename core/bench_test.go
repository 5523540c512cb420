package core_test

import (
	"testing"

	"barkwright/core"
	"barkwright/core/design"
)

// The budget of one step of a slider is 5 ms native, the skin laid flat and the
// curves on the water apart.
func BenchmarkEvaluate(b *testing.B) {
	d := design.Default()
	b.ReportAllocs()
	for b.Loop() {
		core.Evaluate(d)
	}
}

func BenchmarkValidate(b *testing.B) {
	d := design.Default()
	b.ReportAllocs()
	for b.Loop() {
		core.Validate(d)
	}
}

// BenchmarkTry is what a step of a slider asks of the core: faults and, without any, the canoe.
func BenchmarkTry(b *testing.B) {
	d := design.Default()
	b.ReportAllocs()
	for b.Loop() {
		core.Try(d)
	}
}
