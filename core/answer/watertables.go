package answer

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/stage"
	"barkwright/core/units"
)

// figuresTable is what a naval architect asks of the boat as it floats upright.
func figuresTable(c core.Canoe) Table {
	t := Table{
		Key: "figures", Title: "Figures of the hull afloat", Home: stage.Pitch,
		Note: "As it floats upright with its load, in the terms of naval architecture.",
	}
	of := func(k units.Kind) func(*figure) Cell {
		return func(f *figure) Cell { return when(f.kind == k, about(f.value)) }
	}
	return fill(t, refs(figuresAfloat(c)),
		text("figure", "Figure", func(f *figure) string { return f.name }),
		col("length", "Length", units.Length, of(units.Length)),
		col("area", "Area", units.Area, of(units.Area)),
		col("volume", "Volume", units.Volume, of(units.Volume)),
		col("ratio", "Ratio", units.Ratio, of(units.Ratio)),
	).orNone(c.Afloat.Floated.State.String())
}

// figure is one figure of the hull afloat, in the SI unit of its kind.
type figure struct {
	name  string
	kind  units.Kind
	value float64
}

// figuresAfloat returns the figures, or none where the boat does not float upright.
func figuresAfloat(c core.Canoe) []figure {
	floated := c.Afloat.Floated
	if floated.Upright.State != afloat.Floats || !(floated.Upright.Volume > 0) {
		return nil
	}
	f := c.Afloat.Body.Hydrostatics(floated.Upright)
	return []figure{
		{"waterline, length", units.Length, f.Length},
		{"waterline, greatest beam", units.Length, f.Beam},
		{"draught", units.Length, f.Draught},
		{"displaced volume", units.Volume, f.Volume},
		{"water plane", units.Area, f.WaterplaneArea},
		{"wetted surface", units.Area, f.WettedSurface},
		{"largest section under water", units.Area, f.LargestSection},
		{"block coefficient", units.Ratio, f.BlockCoefficient},
		{"prismatic coefficient", units.Ratio, f.PrismaticCoefficient},
		{"largest section's coefficient", units.Ratio, f.SectionCoefficient},
		{"water-plane coefficient", units.Ratio, f.WaterplaneCoefficient},
		{"centre of buoyancy, over the lowest bark", units.Length, f.Buoyancy.Z},
		{"centre of buoyancy, forward of amidships", units.Length, f.Buoyancy.X},
		{"centre of the water plane, forward of amidships", units.Length, f.CentreOfFlotation},
		{"centre of mass, over the lowest bark", units.Length, c.Afloat.Load.Centre.Z},
		{"centre of mass, forward of amidships", units.Length, c.Afloat.Load.Centre.X},
		{"metacentre over the centre of buoyancy, heeling", units.Length, f.TransverseBM},
		{"metacentre over the centre of buoyancy, trimming", units.Length, f.LongitudinalBM},
		{"metacentre over the centre of mass, GM", units.Length, floated.GM},
	}
}

// CurveTables are the curves on the water in numbers, one beside each chart.
func CurveTables(w core.Water) []Table {
	return []Table{rightingTable(w), carriesTable(w), pushTable(w.Moving)}
}

// rightingTable is the righting arm by heel, to where water comes over.
func rightingTable(w core.Water) Table {
	r := w.Righting
	t := Table{
		Key: "righting", Title: "Righting arm by lean", Home: stage.Pitch, Open: true,
		Note: "A rigid load, free to sink and trim. People move: read it as how stiff the boat is, not as how far you " +
			"may lean.",
	}
	type point struct {
		afloat.Attitude
		state afloat.State
	}
	var points []point
	for _, p := range r.Points {
		if !p.Firm {
			break
		}
		points = append(points, point{p.Attitude, p.State})
	}
	if r.State == afloat.Floats && r.Swamps {
		points = append(points, point{r.Swamped, afloat.Swamped})
	}
	return fill(t, refs(points),
		col("heel", "Lean", units.Angle, func(p *point) Cell { return about(p.Waterplane.Heel) }),
		col("arm", "Righting arm", units.Length, func(p *point) Cell { return about(p.Arm) }),
		col("freeboard", "Least freeboard", units.Length, func(p *point) Cell { return about(max(0, p.Freeboard)) }),
		col("draught", "Draught", units.Length, func(p *point) Cell { return about(p.Draught) }),
		col("trim", "Trim, bow down", units.Angle, func(p *point) Cell { return about(p.Trim) }),
		text("state", "State", func(p *point) string { return p.state.String() }),
	).orNone(r.State.String())
}

// carriesTable is the load by the freeboard it leaves.
func carriesTable(w core.Water) Table {
	t := Table{
		Key: "carries", Title: "Load and the freeboard it leaves", Home: stage.Pitch,
		Note: "Floated level in calm water. By custom an open canoe keeps " +
			units.Length.Both(afloat.CustomaryFreeboard) + "; no rule we read rates canoes.",
	}
	var carries []afloat.Carried
	for _, c := range w.Carries {
		if c.Possible {
			carries = append(carries, c)
		}
	}
	return fill(t, refs(carries),
		col("freeboard", "Freeboard", units.Length, func(c *afloat.Carried) Cell { return num(c.Freeboard) }),
		col("load", "Crew and cargo", units.Mass, func(c *afloat.Carried) Cell { return about(c.Payload) }),
		col("all", "With the boat", units.Mass, func(c *afloat.Carried) Cell { return about(c.Total) }),
	).orNone(NoLoad)
}

// pushTable is the push needed by speed.
func pushTable(m core.Moving) Table {
	t := Table{
		Key: "push", Title: "Push needed by speed", Home: stage.Pitch,
		Note: "From friction alone to friction with the most waves that thin-ship theory gives within one part in " +
			"twenty of the speed. A canoe is too broad for that theory: take the wave part as a shape, not a figure.",
	}
	return fill(t, refs(m.Curve),
		col("speed", "Speed", units.Speed, func(p *afloat.Resistance) Cell { return num(p.Speed) }),
		col("friction", "Friction", units.Force, func(p *afloat.Resistance) Cell { return about(p.Friction) }),
		col("waves", "Waves by theory", units.Force, func(p *afloat.Resistance) Cell { return about(p.Wave) }),
		col("low", "Push, least", units.Force, func(p *afloat.Resistance) Cell { return about(p.Low()) }),
		col("high", "Push, most", units.Force, func(p *afloat.Resistance) Cell { return about(p.High()) }),
	).orNone(m.State.String())
}
