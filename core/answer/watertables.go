package answer

import (
	"barkwright/core"
	"barkwright/core/afloat"
	"barkwright/core/units"
)

// figuresTable is what a naval architect asks of the boat as she floats upright.
func figuresTable(c core.Canoe) Table {
	t := Table{
		Key: "figures", Title: "Figures of the hull afloat", Group: OnTheWater,
		Note: "As she floats upright with her load, in the terms of naval architecture.",
		Columns: []Column{{"figure", "Figure", units.Count}, {"length", "Length", units.Length}, {"area", "Area", units.Area},
			{"volume", "Volume", units.Volume}, {"ratio", "Ratio", units.Ratio}},
	}
	row := func(name string, column int, v float64) {
		cells := []Cell{words(name), words("–"), words("–"), words("–"), words("–")}
		cells[column] = about(v)
		t.Rows = append(t.Rows, Row{Cells: cells})
	}
	const length, area, volume, ratio = 1, 2, 3, 4
	floated := c.Afloat.Floated
	if floated.Upright.State != afloat.Floats || !(floated.Upright.Volume > 0) {
		return t.orState(floated.State)
	}
	f := c.Afloat.Body.Figures(floated.Upright)
	row("waterline, length", length, f.Length)
	row("waterline, greatest beam", length, f.Beam)
	row("draught", length, f.Draught)
	row("displaced volume", volume, f.Volume)
	row("water plane", area, f.WaterPlane)
	row("wetted surface", area, f.WettedSurface)
	row("largest section under water", area, f.LargestSection)
	row("block coefficient", ratio, f.Block)
	row("prismatic coefficient", ratio, f.Prismatic)
	row("largest section's coefficient", ratio, f.Section)
	row("water-plane coefficient", ratio, f.Plane)
	row("centre of buoyancy, over the lowest bark", length, f.Buoyancy.Z)
	row("centre of buoyancy, forward of amidships", length, f.Buoyancy.X)
	row("centre of the water plane, forward of amidships", length, f.PlaneCentre)
	row("centre of mass, over the lowest bark", length, c.Afloat.Load.Centre.Z)
	row("centre of mass, forward of amidships", length, c.Afloat.Load.Centre.X)
	row("metacentre over the centre of buoyancy, heeling", length, f.MetacentreAcross)
	row("metacentre over the centre of buoyancy, trimming", length, f.MetacentreAlong)
	row("metacentre over the centre of mass, GM", length, floated.GM)
	return t
}

// CurveTables are the curves on the water in numbers, one beside each chart.
func CurveTables(w core.Water) []Table {
	return []Table{RightingTable(w), CarriesTable(w), PushTable(w.Moving)}
}

// RightingTable is the righting arm by heel, to where water comes over.
func RightingTable(w core.Water) Table {
	r := w.Righting
	t := Table{
		Key: "righting", Title: "Righting arm by heel", Group: OnTheWater,
		Note: "A rigid load, free to sink and trim. People move: read it as how stiff she is, not as how far you may lean.",
		Columns: []Column{{"heel", "Heel", units.Angle}, {"arm", "Righting arm", units.Length}, {"freeboard", "Least freeboard", units.Length},
			{"draught", "Draught", units.Length}, {"trim", "Trim, bow down", units.Angle}, {"state", "State", units.Count}},
	}
	add := func(a afloat.Attitude, state string) {
		t.Rows = append(t.Rows, Row{Cells: []Cell{about(a.Plane.Heel), about(a.Arm), about(max(0, a.Freeboard)), about(a.Draught), about(a.Trim), words(state)}})
	}
	for _, p := range r.Points {
		if !p.Firm {
			break
		}
		add(p.Attitude, p.State.String())
	}
	if r.State == afloat.Floats && r.Swamps {
		add(r.Swamped, afloat.Swamped.String())
	}
	return t.orState(r.State)
}

// CarriesTable is the load by the freeboard it leaves.
func CarriesTable(w core.Water) Table {
	t := Table{
		Key: "carries", Title: "Load and the freeboard it leaves", Group: OnTheWater,
		Note:    "Floated level in calm water. By custom an open canoe keeps 6 in; no rule looked at rates canoes.",
		Columns: []Column{{"freeboard", "Freeboard", units.Length}, {"load", "Crew and cargo", units.Mass}, {"all", "With the boat", units.Mass}},
	}
	for _, c := range w.Carries {
		if c.State == afloat.Floats {
			t.Rows = append(t.Rows, Row{Cells: []Cell{num(c.Freeboard), about(c.Payload), about(c.Total)}})
		}
	}
	return t.orState(afloat.NoSuchLoad)
}

// PushTable is the push needed by speed.
func PushTable(m core.Moving) Table {
	t := Table{
		Key: "push", Title: "Push needed by speed", Group: OnTheWater,
		Note: "From friction alone to friction with the most waves that thin-ship theory gives within one part in twenty of the speed. A canoe is too broad for that theory: take the wave part as a shape, not a figure.",
		Columns: []Column{{"speed", "Speed", units.Speed}, {"friction", "Friction", units.Force}, {"waves", "Waves by theory", units.Force},
			{"low", "Push, least", units.Force}, {"high", "Push, most", units.Force}},
	}
	for _, p := range m.Curve {
		t.Rows = append(t.Rows, Row{Cells: []Cell{num(p.Speed), num(p.Friction), num(p.Wave), num(p.Low()), num(p.High())}})
	}
	return t.orState(m.State)
}

// orState is the table, or its state in one row where it would have none.
func (t Table) orState(s afloat.State) Table {
	if len(t.Rows) > 0 {
		return t
	}
	cells := make([]Cell, len(t.Columns))
	for i := range cells {
		cells[i] = words("–")
	}
	cells[0] = words(s.String())
	t.Rows = []Row{{Cells: cells}}
	return t
}
