package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// bottomLine is the length along the bottom by place, as far as the heel.
type bottomLine struct{ run []float64 }

// bottomPieces is how many pieces the bottom is measured in: its rise is so slight
// that its length is then good to a hundredth of a millimetre.
const bottomPieces = 64

func bottomRun(h *hull.Hull) bottomLine {
	b := bottomLine{run: make([]float64, bottomPieces+1)}
	last := geom.Vec2{X: 0, Y: h.Bottom(0)}
	for i := 1; i <= bottomPieces; i++ {
		x := h.HeelX * float64(i) / bottomPieces
		p := geom.Vec2{X: x, Y: h.Bottom(x)}
		b.run[i] = b.run[i-1] + p.Sub(last).Len()
		last = p
	}
	return b
}

// at is the length from amidships to a place, held at the heel.
func (b bottomLine) at(place float64) float64 {
	t := min(1, place) * bottomPieces
	i := min(int(t), bottomPieces-1)
	return b.run[i] + (t-float64(i))*(b.run[i+1]-b.run[i])
}

// heel is the length from amidships to the heel.
func (b bottomLine) heel() float64 { return b.run[bottomPieces] }

// placeAt is the place a length from amidships, held at the heel.
func (b bottomLine) placeAt(run float64) float64 {
	i := 0
	for i < bottomPieces-1 && b.run[i+1] < run {
		i++
	}
	return min(1, (float64(i)+(run-b.run[i])/(b.run[i+1]-b.run[i]))/bottomPieces)
}
