package frame

import (
	"barkwright/core/design"
	"barkwright/core/geom"
)

// ThinnerRibs is the least change of the thickness amidships and at the ends, on whole
// steps, that lets every rib that is not broken bend to ratio times its thickness or
// more. It reports false where none down to the least thickness does.
func (f Frame) ThinnerRibs(d design.Design, ratio, step float64) (amidships, ends float64, ok bool) {
	mid, end := thinner("ribThickness", d.RibThickness, step), thinner("ribThicknessEnd", d.RibThicknessEnd, step)
	least := -1
	for i, t := range mid {
		for j, e := range end {
			if (least < 0 || i+j < least) && f.bendAt(t, e, ratio) {
				least, amidships, ends = i+j, t, e
			}
		}
	}
	return amidships, ends, least >= 0
}

// thinner lists a parameter's value and the whole steps under it, down to its least.
func thinner(key string, v, step float64) []float64 {
	p, _ := design.Lookup(key)
	all := []float64{v}
	for n := geom.Ceil(v/step) - 1; n*step >= p.Min-design.Rounding; n-- {
		all = append(all, n*step)
	}
	return all
}

// bendAt tells whether all ribs bend whole to the ratio with these thicknesses.
func (f Frame) bendAt(amidships, ends, ratio float64) bool {
	last := f.Ribs[len(f.Ribs)-1].Run
	for _, r := range f.Ribs {
		if r.Broken {
			continue
		}
		t := amidships + r.Run/last*(ends-amidships)
		outer := r.Bend.Radius + r.Thickness/2
		if (outer-t/2)/t < ratio {
			return false
		}
	}
	return true
}

// RibsToBreak is how many ribs at either end have to be broken at the centre for the
// others to bend to the ratio.
func (f Frame) RibsToBreak(ratio float64) int {
	for i, r := range f.Ribs {
		if r.Bend.WillNotFit || r.Bend.Ratio < ratio {
			return len(f.Ribs) - i
		}
	}
	return 0
}
