package view

import (
	"fmt"
	"math"

	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// whole reads out what runs along all of the boat or the bed; empty for any other part.
func (r reader) whole(part string) string {
	d, f := r.Design, r.Frame
	timber := func(name string, long, wide, deep float64) string {
		return fmt.Sprintf("%s: %s along its curve, %s wide and %s deep.", name, r.length(long), r.small(wide), r.small(deep))
	}
	switch part {
	case answer.InwalePart:
		return timber("Inwale", f.Gunwales.Inwale, d.InwaleThickness, d.InwaleDepth)
	case answer.OutwalePart:
		return timber("Outwale", f.Gunwales.Outwale, d.OutwaleThickness, d.OutwaleDepth)
	case answer.CapPart:
		return timber("Cap", f.Gunwales.Cap, d.CapWidth, d.CapThickness)
	case answer.SheathingPart:
		return fmt.Sprintf("Sheathing: %d strips, %s wide and %s thick.", f.Sheathing.Strips, r.small(d.SheathingWidth),
			r.thick(d.SheathingThickness))
	case answer.BarkPart:
		return fmt.Sprintf("Bark: %s thick, %d on the bed end to end, %s of seam in all.", r.thick(d.BarkThickness),
			len(r.Bark.Bed), units.Run.Format(seamLength(r.Bark), r.system))
	case answer.FramePart:
		cross := f.Bed.Crosspieces[0]
		return fmt.Sprintf("Building frame: %s long, %s out to out at the middle.", r.length(2*r.Hull.FrameEnd()),
			r.length(cross.OutToOut))
	case answer.BlockPart:
		return fmt.Sprintf("Block: it lifts the bark at the heel by %s.", r.small(d.EndBlocking))
	case answer.BedPart:
		return fmt.Sprintf("Bed: %s long, %s higher in the middle.", r.length(d.BedLength), r.small(d.BedCrown))
	case answer.WaterPart:
		if load := scene.LoadOf(r.Canoe); load != nil {
			return fmt.Sprintf("Water line with the load: %s over the bottom amidships, %s under the gunwale there.",
				r.small(load.Height), r.small(r.Hull.Sheer(0)-load.Height))
		}
	}
	return ""
}

func seamLength(l bark.Layout) float64 {
	sum := 0.0
	for _, s := range l.Seams {
		sum += s.Length
	}
	return sum
}

func (r reader) thick(v float64) string { return units.Thickness.Format(v, r.system) }

func (r reader) joint(_ int, j bark.Joint) string {
	end := "forward"
	if j.Along < 0 {
		end = "aft"
	}
	return fmt.Sprintf("Joint of two sheets: %s from the middle along the bark, %s; %s of seam, lapped %s.",
		r.length(math.Abs(j.Along)), end, r.length(j.Length), r.small(r.Design.SeamLap))
}

func (r reader) seam(_ int, b bark.Beside) string {
	return fmt.Sprintf("Seam of a side panel: %s long, the same on the other side.", r.length(b.Seam))
}
