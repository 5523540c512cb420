package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Panel is a stretch of the forward port quarter where half a sheet falls short
// of the edge and a panel is sewn on. One that starts amidships goes on aft into
// its mirror image.
type Panel struct {
	From, To float64     // places of the columns it runs between, as hull.Hull.Column takes them
	Seam     []geom.Vec3 // the sheet's edge on the hull, from From to To
	Length   float64     // of the seam, m
	Width    float64     // greatest, from the lapped seam to the edge left to trim, m

	sewn float64 // the last place the seam was carried to
}

// Amidships tells whether the panel goes on aft of amidships in one piece.
func (p Panel) Amidships() bool { return p.From == 0 }

// placeTolerance is how near the end of a panel is found, as a share of the half
// boat: under a tenth of a millimetre.
const placeTolerance = 1e-5

// short is how much half a sheet lacks at a column, the bark to trim included;
// negative where it is enough.
func short(h hull.Hull, l line) float64 {
	return l.reach() + h.Design.GunwaleTurn - h.Design.SheetWidth/2
}

// panels finds where the sheet falls short.
func panels(h hull.Hull, all []line) []Panel {
	var out []Panel
	var open *Panel
	add := func(l line) {
		open.To = l.place
		open.Width = max(open.Width, short(h, l)+h.Design.SeamLap)
		open.sew(h, l)
	}
	for i, l := range all {
		over := short(h, l) > 0
		if over != (open != nil) {
			edge := l
			if i > 0 {
				place, _ := geom.Bisect(func(v float64) float64 { return short(h, newLine(h, v)) },
					all[i-1].place, l.place, placeTolerance)
				edge = newLine(h, place)
			}
			if over {
				open = &Panel{From: edge.place}
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
	for i := range out {
		out[i].Length = pathLength(out[i].Seam)
	}
	return out
}

// sew carries the seam on to a column, as far as the place where the sheet's edge
// meets the end profile.
func (p *Panel) sew(h hull.Hull, l line) {
	half := h.Design.SheetWidth / 2
	if l.lifted <= half {
		for k := 1; k < pastPieces && p.sewn >= 1; k++ {
			between := newLine(h, p.sewn+(l.place-p.sewn)*float64(k)/pastPieces)
			p.Seam = append(p.Seam, between.at(between.girthAt(half)))
		}
		p.Seam, p.sewn = append(p.Seam, l.at(l.girthAt(half))), l.place
		return
	}
	if p.sewn == 0 {
		return
	}
	end, _ := geom.Bisect(func(v float64) float64 { return newLine(h, v).lifted - half }, p.sewn, l.place, placeTolerance)
	for k := endPieces - 1; k > 0; k-- {
		t := float64(k) / endPieces
		near := newLine(h, end+(p.sewn-end)*t*t)
		p.Seam = append(p.Seam, near.at(near.girthAt(half)))
	}
	p.Seam, p.sewn = append(p.Seam, newLine(h, end).at(0)), 0
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
