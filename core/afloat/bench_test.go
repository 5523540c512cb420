package afloat_test

import (
	"testing"

	"barkwright/core/afloat"
)

// BenchmarkFloat measures what a slider waits for: attitude, stiffness, hydrostatics and
// loads.
func BenchmarkFloat(b *testing.B) {
	body := leaning()
	boat, load := crewed()
	b.ReportAllocs()
	for b.Loop() {
		f := body.Float(load, fresh)
		body.Hydrostatics(f.Upright)
		for _, freeboard := range afloat.MarkedFreeboards() {
			body.CarriesLevel(boat, fresh, freeboard)
		}
	}
}

// BenchmarkBody is what each new shape costs before it can float.
func BenchmarkBody(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		leaning()
	}
}

// BenchmarkRighting is the righting curve by 2 1/2 degrees.
func BenchmarkRighting(b *testing.B) {
	body := leaning()
	_, load := crewed()
	b.ReportAllocs()
	for b.Loop() {
		body.Righting(load, fresh, 36)
	}
}

// BenchmarkDrag is the live curve of push: 25 speeds and the band about them.
func BenchmarkDrag(b *testing.B) {
	body := leaning()
	_, load := crewed()
	a := body.At(load, fresh, 0)
	b.ReportAllocs()
	for b.Loop() {
		body.Towed(a, fresh, afloat.LiveGrid()).Curve(0.8, 25)
	}
}
