package bark

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
)

// Layout is the skin's gores and the sheets and panels it is made of, with their
// seams and root: the one lay-out that picture, tables, paper and lists follow. It is
// worked out from lengths on the hull alone: cheap enough for every step of a slider.
type Layout struct {
	ByRule bool   // the gores stand by the example's rule, not by number
	Gores  []Gore // of the port side, from the after one forward

	// Listed tells whether Sheets are those on hand; without a list they are as many
	// of the size set as are cut.
	Listed bool
	Sheets []Sheet
	Bed    []Laid   // on the bed, from the bow aft; each laps outside the next
	Port   []Laid   // strips of the port side's panels, from the bow aft
	Star   []Laid   // and of the starboard side's
	Beside []Beside // where panels are sewn to the bed's pieces, on both sides
	Joints []Joint  // from the bow aft
	Butts  []Butt   // between strips
	Scant  []Scant
	Over   []Offcut // what the sheets leave
	// Gap is the least distance of a joint or a butt from a gore or from another of
	// them that it does not stand on, m; 0 where Apart is false: nothing else stands there.
	Gap   float64
	Apart bool
	// Asked is the breadth that the bed asks for where a piece on it is narrower, m, or 0.
	// No panel helps there: no seam lies on the bottom.
	Asked float64
	// Short is the area of bark that is wanting, m2.
	Short float64

	// SheetWidth is how wide the sheet is that the bark is laid flat for, m: the
	// narrowest on the bed, which is not the design's where sheets are listed. Panels
	// are those of the forward port quarter beside it.
	SheetWidth float64
	Panels     []Panel

	FlatLength float64 // of the bark on the bed, m
	EndSeam    float64 // length of one end's seam, heel to stem head, m
	Seams      [4]Seam // by Kind
	Root       Root
	// Wide is what one sheet wide enough for the sides would save.
	Wide  Saving
	Needs Needs

	columns []column
}

// Saving is the sewing that goes into side panels beyond what longer gores would.
type Saving struct {
	Seam float64 // m
	Root float64 // split, with waste, m
}

// Plan lays the bark out for the design's sheets on hand or, without a list, for
// sheets of the size set.
func Plan(h *hull.Hull) Layout { return PlanWith(h, h.Design.OnHand.List()) }

// PlanWith lays the bark out for a list of sheets in place of the design's.
func PlanWith(h *hull.Hull, sheets []Sheet) Layout {
	bottom := bottomRun(h)
	l := Layout{
		ByRule:     GoresByRule(h.Design),
		Gores:      gores(h, goreShares(h.Design)),
		Listed:     len(sheets) > 0,
		FlatLength: plainFlatLength(h, bottom),
		EndSeam:    h.End.Path.Length(),
		columns:    plainColumns(h),
	}
	d := newDemand(h, l.columns, bottom, l.FlatLength)
	laid := lay(&d, l.marks(&d), sheets)
	l.SheetWidth = laid.narrowest()
	reach(h, l.Gores, l.SheetWidth)
	// A foot past the sheet's edge is no gore and keeps no joint away.
	if m := l.marks(&d); len(m.gores) != len(laid.marks.gores) {
		laid = lay(&d, m, sheets)
	}
	l.Panels = panels(h, l.columns, l.SheetWidth)
	l.take(&d, laid)
	return l
}

// OnFlat is the layout with the length and the breadth of the sheet laid flat in
// place of the plain ones. Sheets, joints and the bark needed follow them. Where the
// flattening did not converge the plain lengths stand.
func (l Layout) OnFlat(h *hull.Hull, f Flat) Layout {
	if f.State != geom.Converged {
		return l
	}
	var sheets []Sheet
	if l.Listed {
		sheets = h.Design.OnHand.List()
	}
	l.takeFlat(h, &f, sheets)
	if len(f.Panels) == 0 {
		l.Needs.Width = max(f.Breadth, widestOnBed(l.columns)) + 2*h.Design.GunwaleTurn
		l.Needs.TreeWidth = NewTree(l.Needs.Width, l.Needs.Length)
	}
	return l
}

// takeFlat lays sheets over the sides' flat shapes and the flat length.
func (l *Layout) takeFlat(h *hull.Hull, f *Flat, sheets []Sheet) {
	l.FlatLength = f.Length
	d := newDemand(h, l.columns, bottomRun(h), l.FlatLength)
	d.laySide(f)
	l.take(&d, lay(&d, l.marks(&d), sheets))
}

// marks are the places that joints and butts keep clear of.
func (l *Layout) marks(d *demand) marks {
	m := marks{whole: d.whole}
	for i, g := range l.Gores {
		if g.State == GoreCut {
			l.Gores[i].Along = math.Copysign(d.alongOf(g.place), g.Run)
			m.gores = append(m.gores, l.Gores[i].Along)
		}
	}
	h := d.hull
	m.bay = d.alongOf(h.ColumnAtEdge(h.StationAt(h.Design.ThwartAt[0] * h.Gunwale.Length())))
	return m
}

// narrowest is the width of the narrowest piece on the bed, in the range of the
// design's sheets, m.
func (l *laying) narrowest() float64 {
	width := math.Inf(1)
	for _, p := range l.bed {
		width = min(width, p.Width)
	}
	p, _ := design.Lookup("sheetWidth")
	return max(p.Min, min(p.Max, width))
}

// take takes a laying over and adds up its seams, the root and the bark needed.
func (l *Layout) take(d *demand, laid *laying) {
	laid.measure()
	l.Sheets, l.Bed, l.Port, l.Star = laid.sheets, laid.bed, laid.port, laid.star
	l.Beside, l.Butts, l.Scant = laid.beside, laid.butts, laid.scant
	l.Over = laid.over
	l.Asked, l.Short = laid.narrow, laid.wanting
	l.Joints = nil
	for _, along := range laid.joints {
		l.Joints = append(l.Joints, d.joint(along, &laid.marks))
	}
	l.Gap, l.Apart = l.gap(laid.marks.gores)
	l.total(d.hull)
}

// gap is the least distance between seams across the bark, and whether there are two.
func (l *Layout) gap(gores []float64) (float64, bool) {
	least := math.Inf(1)
	var joints []float64
	for _, j := range l.Joints {
		gap, _ := clear(j.Along, gores)
		least = min(least, gap)
		joints = append(joints, j.Along)
	}
	for _, b := range l.Butts {
		for _, x := range append(joints, gores...) {
			least = min(least, math.Abs(b.Along-x))
		}
	}
	if math.IsInf(least, 1) {
		return 0, false
	}
	return least, true
}

// total adds up the seams, the root and the bark needed.
func (l *Layout) total(h *hull.Hull) {
	d := &h.Design
	wide := newSeam(GoreSeams, *d)
	for _, k := range Kinds() {
		l.Seams[k] = newSeam(k, *d)
	}
	for _, g := range l.Gores {
		if l.onJoint(g) {
			continue
		}
		l.Seams[GoreSeams].add(g.Depth, 2)
		if g.State == GoreCut {
			wide.add(g.FullGirth-g.FootGirth, 2)
		}
	}
	for _, b := range l.Beside {
		l.Seams[PanelSeams].add(b.Seam, 2)
	}
	for _, b := range l.Butts {
		l.Seams[PanelSeams].add(b.Length, 1)
	}
	for _, j := range l.Joints {
		l.Seams[JointSeams].add(j.Length, 1)
	}
	l.Seams[EndSeams].add(l.EndSeam, 2)
	split := 0.0
	for _, s := range l.Seams {
		split += s.Root
	}
	l.Root = NewRoot(split, d.RootWaste)
	l.Wide = Saving{
		Seam: l.Seams[PanelSeams].Length - (wide.Length - l.Seams[GoreSeams].Length),
		Root: (l.Seams[PanelSeams].Root - (wide.Root - l.Seams[GoreSeams].Root)) * (1 + d.RootWaste),
	}
	if len(l.Beside) == 0 {
		l.Wide = Saving{}
	}
	l.Needs = needs(h, l.columns, l)
}

// onJoint tells whether a joint of the bed takes a gore's place on both sides.
func (l *Layout) onJoint(g Gore) bool {
	for _, j := range l.Joints {
		if j.OnGore && g.State == GoreCut && math.Abs(j.Along-g.Along) <= samePlace {
			return true
		}
	}
	return false
}
