package view

import (
	"strconv"

	"barkwright/core"
	"barkwright/core/draw"
	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// measuredPart names measurement i of the record in the picture.
func measuredPart(i int) string { return "measured." + strconv.Itoa(i) }

// measured draws a record's measurements where they were taken. Each is a bar as long as
// its tolerance both ways, with a cross at the measurement. One that the boat misses has
// a ring too.
func (p *pen) measured(c core.Canoe, l layout) {
	for i, r := range p.View.Measured {
		if r.State == refit.SetAside {
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
					if !l.hasTop {
						break
					}
					p.bar(i, l.top, end*r.X, side*r.Value/2, r.Within()/2, r.State)
				}
			case record.SheerHeight, record.RailHeight, record.BottomRise, record.EndPoint:
				if l.hasSide {
					p.bar(i, l.side, end*r.X, r.Value, r.Within(), r.State)
				}
			case record.EndHeight:
				if !l.hasSide {
					break
				}
				p.bar(i, l.side, end*c.Hull.HeadX, r.Value, r.Within(), r.State)
			}
		}
	}
}

// bar draws one measurement in a view, never too short to see.
func (p *pen) bar(i int, a scene.Plate, x, v, within float64, s refit.State) {
	const least, half = 3, 4 // CSS pixels
	at := a.At(x, v)
	reach := max(least, within*a.Scale)
	up, down := draw.Point{X: at.X, Y: at.Y - reach}, draw.Point{X: at.X, Y: at.Y + reach}
	if !p.Seen([]draw.Point{up, down}) {
		return
	}
	role, width := draw.Water, 1.5*p.Weight
	if s == refit.OutsideTolerance {
		role = draw.Warn
		ring := []draw.Point{{X: at.X - 6, Y: at.Y}, {X: at.X, Y: at.Y - 6}, {X: at.X + 6, Y: at.Y}, {X: at.X, Y: at.Y + 6}}
		p.Marks = append(p.Marks, draw.Stroke{Role: role, Points: ring, Width: width, Closed: true})
	}
	p.Marks = append(p.Marks,
		draw.Stroke{Role: role, Points: []draw.Point{up, down}, Width: width},
		draw.Stroke{Role: role, Points: []draw.Point{{X: at.X - half, Y: at.Y}, {X: at.X + half, Y: at.Y}}, Width: width})
	p.List.Touch(measuredPart(i), true, draw.Point{X: up.X - half, Y: up.Y}, draw.Point{X: up.X + half, Y: up.Y},
		draw.Point{X: down.X + half, Y: down.Y}, draw.Point{X: down.X - half, Y: down.Y})
}

// ReadMeasured returns one sentence about a measurement in the picture. It is empty for
// a name that is not one.
func ReadMeasured(rows []refit.Row, part string, s units.System) string {
	for i, r := range rows {
		if part == measuredPart(i) {
			return r.Datum.Named(s) + ": " + units.Length.Format(r.Value, s) + " measured, " + units.Length.Format(r.Model, s) +
				" as the boat stands, " + r.State.String() + "."
		}
	}
	return ""
}
