package bark

import (
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/wood"
)

// Needs is the bark that the boat takes and the tree it comes off.
type Needs struct {
	Width     float64 // of one sheet that needs no side panels, m
	WidestAt  float64 // place of the column that asks for it
	Length    float64 // of one sheet that needs no joint, m
	TreeWidth Tree    // that gives a sheet of Width
	TreeSheet Tree    // that gives a sheet as wide as the narrowest laid
	Sheets    int     // on the bed, end to end
	Area      float64 // skin with laps and the bark left to trim, m2
	Laps      float64 // of panels and joints, m2
	SkinArea  float64 // of the finished skin, m2
}

// Tree is the least trunk that gives a sheet, if the whole girth is used.
type Tree struct {
	Diameter float64 // outside the bark, m
	Girth    float64 // by a tape round it, m: the sheet's width
	Clear    float64 // length of clear trunk, m: the sheet's length
}

// NewTree returns the trunk for a sheet; the grain of bark runs round the tree, so
// a sheet's width is the girth and its length goes up the trunk.
func NewTree(width, length float64) Tree {
	return Tree{Diameter: wood.TreeDiameter(width), Girth: width, Clear: length}
}

// areaRows is the number of pieces a column is cut into for the skin's area.
const areaRows = 8

// rung is a column's points at equal shares of its girth.
type rung [areaRows + 1]geom.Vec3

// skinArea returns the area of the whole skin. The error of chords along the boat is of
// the second order in their length, so the areas over every column and over every
// second one are extrapolated to chords of length zero (Richardson's extrapolation).
func skinArea(all []column) float64 {
	every, second := 0.0, 0.0
	var rungs [3]rung // of this column and the two before it
	for i := range all {
		l, here := &all[i], &rungs[i%3]
		for r := range here {
			here[r] = l.At(l.girth * float64(r) / areaRows)
		}
		if i > 0 {
			every += between(&rungs[(i-1)%3], here, all[i-1].girth, l.girth)
		}
		if i > 0 && i%2 == 0 {
			second += between(&rungs[(i-2)%3], here, all[i-2].girth, l.girth)
		}
	}
	return 4 * (4*every - second) / 3
}

// between is the area of the skin between two columns: the flat cells between their
// points, each as much larger as its arcs are longer than their chords.
func between(a, b *rung, girthA, girthB float64) float64 {
	sum := 0.0
	for r := 1; r <= areaRows; r++ {
		across, back := b[r].Sub(a[r-1]), b[r-1].Sub(a[r])
		chords := b[r].Sub(b[r-1]).Len() + a[r].Sub(a[r-1]).Len()
		if chords > 0 {
			sum += across.Cross(back).Len() / 2 * (girthA + girthB) / areaRows / chords
		}
	}
	return sum
}

// widestOnBed is the breadth of bark that the boat takes folded up on the bed, the bark
// left to trim apart.
func widestOnBed(all []column) float64 {
	most := 0.0
	for i := range all {
		most = max(most, 2*all[i].onBed)
	}
	return most
}

func needs(h *hull.Hull, all []column, l *Layout) Needs {
	d := &h.Design
	n := Needs{Length: l.FlatLength, Sheets: len(l.Bed), SkinArea: skinArea(all)}
	for i := range all {
		if w := 2 * toCover(h, &all[i]); w > n.Width {
			n.Width, n.WidestAt = w, all[i].Place
		}
	}
	n.TreeWidth = NewTree(n.Width, n.Length)
	n.TreeSheet = NewTree(l.SheetWidth, min(d.SheetLength, n.Length))
	edge := 2 * (h.Gunwale.RunTo(min(h.HeelX, h.GunwaleX)) + h.Edge.Length())
	laps := 0.0
	for _, k := range []Kind{PanelSeams, JointSeams} {
		laps += l.Seams[k].Length
	}
	n.Laps = laps * d.SeamLap
	n.Area = n.SkinArea + 2*edge*d.GunwaleTurn + n.Laps
	return n
}
