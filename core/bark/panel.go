package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Panel is a stretch of the forward port quarter where half the sheet that the bark
// is laid flat for falls short of the edge. One that starts amidships goes on aft
// into its mirror image.
type Panel struct {
	From, To float64 // places of the columns it runs between, as hull.Hull.Column takes them
	Width    float64 // greatest, with the lap it is fitted with and the bark to trim, m
}

// placeTolerance is how near the end of a panel is found, as a share of the half
// boat: under a micrometre.
const placeTolerance = 1e-7

// short is how much half a sheet of a width lacks at a column, the bark to trim included;
// negative where it is enough.
func short(h *hull.Hull, l *column, width float64) float64 { return toCover(h, l) - width/2 }

// panels finds where a sheet of a width falls short.
func panels(h *hull.Hull, all []column, width float64) []Panel {
	var out []Panel
	var open *Panel
	lacking := func(v float64) float64 {
		l := newColumn(h, v)
		return short(h, &l, width)
	}
	add := func(l *column) {
		open.To = l.Place
		open.Width = max(open.Width, short(h, l, width)+fitLap(&h.Design))
	}
	for i := range all {
		l := &all[i]
		over := short(h, l, width) > 0
		if over != (open != nil) {
			edge := l
			if i > 0 {
				place, _ := geom.Zero(lacking, all[i-1].Place, l.Place, placeTolerance)
				at := newColumn(h, place)
				edge = &at
			}
			if over {
				open = &Panel{From: edge.Place}
			}
			add(edge)
			if !over {
				out, open = append(out, *open), nil
				continue
			}
			if i == 0 {
				continue
			}
		}
		if over {
			add(l)
		}
	}
	if open != nil {
		out = append(out, *open)
	}
	return out
}

// endPieces is in how many pieces a seam is measured from the last column to the end
// profile, where it runs ever steeper: closer together toward that end.
const endPieces = 10

// pastPieces is in how many pieces a seam is measured between columns past the heel.
const pastPieces = 5

func pathLength(line []geom.Vec3) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += line[i].Sub(line[i-1]).Len()
	}
	return sum
}
