package core

import (
	"math"

	"barkwright/core/bark"
	"barkwright/core/design"
	"barkwright/core/gather"
	"barkwright/core/plan"
	"barkwright/core/units"
)

const (
	// greenCedar is what cedar weighs as it is carried out, kg a cubic metre, between dry
	// and fresh; Load is what two carry, kg. Estimates.
	greenCedar = 450.0
	Load       = 30.0
	// squareFoot in m2.
	squareFoot = units.Foot * units.Foot
)

// Asks is how much of each task of the plan the canoe asks for.
func (c Canoe) Asks() plan.Counts {
	d, f, g, b := c.Design, c.Frame, c.Gather, c.Bark
	out := plan.Counts{OnGunwales: d.BuiltOn != design.OnFrame}
	set := func(n float64, ids ...plan.ID) {
		for _, id := range ids {
			out.Units[id] = n
		}
	}
	feet := func(v float64) float64 { return v / units.Foot }
	withSpares := func(kinds ...gather.Kind) float64 { return float64(g.Count(true, kinds...)) }

	set(1, plan.AskLeave, plan.GetMaple, plan.MakeSite, plan.TestWater, plan.KeepWinter)
	trees, sheets := sheetsToTake(c)
	set(plan.TreesTested*trees, plan.FindBirch)
	set(sheets, plan.TakeBark, plan.CarryBark)
	set(float64(g.Bark.Sheets), plan.SoakBark)
	set(plan.CedarTrees, plan.FindCedar, plan.FellCedar)
	set(boltVolume(g, d.CedarDiameter)*greenCedar/Load, plan.CarryCedar)
	set(feet(g.Root.Dug), plan.DigRoots, plan.PeelRoots)
	set(feet(b.Root.WithWaste), plan.SplitSeamRoot)
	set(feet(f.Lacing.WithWaste), plan.SplitLacingRoot)
	set(g.Pitch.Typical, plan.GatherGum, plan.MeltGum)

	posts := 2*len(f.Bed.Posts) - 1 // the middle one stands once
	set(float64(f.Bed.StakeCount+posts), plan.CutStakes)
	set(float64(f.Bed.StakeCount), plan.StakeBark)
	set(feet(d.BedLength), plan.MakeBed)
	if !out.OnGunwales {
		set(float64(2+2*len(f.Bed.Crosspieces)-1), plan.MakeFrame)
	}
	set(withSpares(gather.Inwales, gather.Outwales, gather.Caps), plan.MakeGunwales)
	thwarts := float64(g.Count(false, gather.Thwarts))
	set(thwarts, plan.MakeThwarts)
	set(thwarts+2, plan.FitThwarts) // and the two ends of the gunwales
	set(withSpares(gather.Stems), plan.BendStems)
	set(withSpares(gather.Ribs), plan.SplitRibs, plan.CarveRibs, plan.BendRibs)
	set(float64(d.Ribs), plan.DriveRibs, plan.DriveAgain)
	set(withSpares(gather.Sheathing), plan.SplitSheathing)
	set(float64(f.Sheathing.Strips), plan.LaySheathing)
	set(2, plan.MakeHeadboards, plan.SetHeadboards, plan.SetStems, plan.FitCaps)
	set(float64(g.Pegs.All()), plan.MakePegs)

	set(b.Needs.Area/squareFoot, plan.LayBark)
	pieces, stitches, ends, seams := 0, 0, 0, 0.0
	for _, s := range b.Seams {
		seams += s.Length
		if s.Kind == bark.EndSeams {
			ends += s.Stitches
			continue
		}
		pieces += s.Count
		stitches += s.Stitches
	}
	set(float64(pieces), plan.GoreBark)
	set(float64(stitches), plan.SewSeams)
	set(float64(ends), plan.SewEnds)
	set(feet(seams), plan.PitchInside, plan.PitchOutside)
	set(feet(2*f.Gunwales.Inwale+2*f.Gunwales.Outwale), plan.SetGunwales)
	set(float64(f.Lacing.Count), plan.Lace)
	return out
}

// sheetsToTake is how many trees are looked for and how many sheets are taken. Strips for
// the sides are taken too, but need no tree of a boat's girth. Of sheets on hand only what
// they leave wanting is taken.
func sheetsToTake(c Canoe) (trees, sheets float64) {
	if !c.Bark.Listed {
		return float64(c.Bark.Needs.Sheets), float64(c.Gather.Bark.Sheets)
	}
	d := c.Design
	wanting := math.Ceil(c.Bark.Short / (d.SheetWidth * d.SheetLength))
	return wanting, wanting
}

// boltVolume is the cedar that is carried out, m3: the part of its bolts that pieces are
// split from.
func boltVolume(g gather.List, diameter float64) float64 {
	v := 0.0
	for _, n := range g.Bolts {
		if n.Log != gather.Hardwood {
			v += (float64(n.Bolts) - n.Left) * n.Length
		}
	}
	return v * math.Pi / 4 * diameter * diameter
}
