package scene

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/record"
	"barkwright/core/units"
)

// measuredPart names measurement i of the record in the picture.
func measuredPart(i int) string { return "measured." + strconv.Itoa(i) }

// measured draws what a record says of the boat where it was measured: a bar as
// long as its tolerance both ways, crossed at the measurement; one that the boat
// misses has a ring too.
func (p *pen) measured(c core.Canoe, l layout) {
	for i, r := range p.view.Measured {
		if r.State == record.SetAside {
			continue
		}
		sides := []float64{1, -1}
		switch r.At.Side {
		case record.Forward:
			sides = sides[:1]
		case record.Aft:
			sides = sides[1:]
		}
		for _, end := range sides {
			switch r.Kind {
			case record.ClearWidth:
				for _, side := range []float64{1, -1} {
					p.bar(i, l.top, end*r.X, side*r.Value/2, r.Within()/2, r.State)
				}
			case record.SheerHeight, record.RailHeight, record.BottomRise, record.EndPoint:
				p.bar(i, l.side, end*r.X, r.Value, r.Within(), r.State)
			case record.EndHeight:
				p.bar(i, l.side, end*c.Hull.HeadX, r.Value, r.Within(), r.State)
			}
		}
	}
}

// bar is one measurement in a view. It is never drawn too short to see.
func (p *pen) bar(i int, a plate, x, v, within float64, s record.State) {
	const least, half = 3, 4 // CSS pixels
	at := a.at(x, v)
	reach := max(least, within*a.Scale)
	up, down := Point{at.X, at.Y - reach}, Point{at.X, at.Y + reach}
	if !p.seen([]Point{up, down}) {
		return
	}
	role, width := Water, 1.5*p.weight
	if s == record.OutsideTolerance {
		role = Warn
		ring := []Point{{at.X - 6, at.Y}, {at.X, at.Y - 6}, {at.X + 6, at.Y}, {at.X, at.Y + 6}}
		p.marks = append(p.marks, Stroke{Role: role, Points: ring, Width: width, Closed: true})
	}
	p.marks = append(p.marks,
		Stroke{Role: role, Points: []Point{up, down}, Width: width},
		Stroke{Role: role, Points: []Point{{at.X - half, at.Y}, {at.X + half, at.Y}}, Width: width})
	p.list.Touch(measuredPart(i), true, Point{up.X - half, up.Y}, Point{up.X + half, up.Y}, Point{down.X + half, down.Y}, Point{down.X - half, down.Y})
}

// ReadMeasured is one sentence on a measurement in the picture; empty for a name
// that is none.
func ReadMeasured(rows []record.Row, part string, s units.System) string {
	for i, r := range rows {
		if part == measuredPart(i) {
			return r.Datum.Named(s) + ": " + units.Length.Format(r.Value, s) + " measured, " + units.Length.Format(r.Model, s) + " as the boat stands, " + r.State.String() + "."
		}
	}
	return ""
}
