package hull

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/shape"
)

// Section returns the section at x, as far as the heel; beyond it, see Column.
func (h *Hull) Section(x float64) shape.Section { return shape.New(h.outline(math.Abs(x))) }

// HalfGirthOnBed is the half girth of the bark at x, as far as the heel, as it stands
// folded up on the bed.
func (h *Hull) HalfGirthOnBed(x float64) float64 {
	return h.FoldedUp(x, h.SkinHalfBreadth(x), h.TopEdge(x)-h.Bottom(x))
}

// FoldedUp is HalfGirthOnBed where the half breadth of the bark's edge and its height over the bottom are known.
// Round the gunwales that a boat is built on the bark's outer face goes straight up.
func (h *Hull) FoldedUp(x, half, height float64) float64 {
	fold := h.FrameHalfBreadth(x)
	if h.Design.BuiltOn == design.OnGunwales && fold > 0 {
		fold = half
	}
	return design.BedHalfGirth(fold, half, height)
}

func (h *Hull) outline(x float64) shape.Outline {
	return h.cornered(h.edge(x), x)
}

// edge is the outline at x but for its corner.
func (h *Hull) edge(x float64) shape.Outline {
	return shape.Outline{Bottom: h.Bottom(x), Top: h.TopEdge(x), Half: h.SkinHalfBreadth(x)}
}

// cornered gives an outline whose top edge stands at x its corner. A turn line inside
// the gunwale amidships follows the bark's edge in proportion, so that the bend never
// closes on the keel; one outside stands out as far as it is carried.
func (h *Hull) cornered(o shape.Outline, x float64) shape.Outline {
	o.Bilge, o.Along = h.Design.Bilge, x/h.GunwaleX
	if h.out > 0 {
		o = o.At(o.Half + h.turnOut(x))
	} else {
		o = o.At(h.turn0 * o.Half)
	}
	return design.GirthCorrected(o, h.Design.Corrected.Girth.At(x/h.GunwaleX))
}

// HalfGirthInside is the half girth at x, as far as the heel, that a strip reads round the
// inside of the bark: the outer face's less what turning takes from a line laid inside
// it.
func (h *Hull) HalfGirthInside(x float64) float64 {
	s := h.Section(x)
	return s.HalfGirth() - h.Design.BarkThickness*s.Turning()
}
