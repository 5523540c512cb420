package geom

import "math"

// Flat is a patch laid flat. Its lengths are in the grid's unit.
type Flat struct {
	Points     []Vec2 // by vertex, column by column, the two sides of a slit together
	State      FlattenState
	Iterations int
	Stretches  []Stretch

	// P95 and RMS are the stretch left, as shares, by area: the 95th percentile
	// of max(|S1-1|, |S2-1|) and the root of the mean of
	// (S1-1)^2 + (S2-1)^2. The largest stretch is not given: at a slit's foot
	// it grows as the mesh is refined.
	P95, RMS float64

	Area, FlatArea float64 // of the surface and of the sheet

	grid  Grid
	slits []Slit
	mesh  slitMesh
}

// Stretch is how one triangle was strained to lie flat: principal stretches,
// flat over curved, S1 the larger (above 1 stretched, below 1 gathered), and the
// area on the surface. Corners are indices into Points.
type Stretch struct {
	S1, S2  float64
	Area    float64
	Corners [3]int
}

// Worst returns max(|S1-1|, |S2-1|).
func (s Stretch) Worst() float64 { return max(math.Abs(s.S1-1), math.Abs(s.S2-1)) }

// At returns the flat place of the point in column c and row r.
func (f *Flat) At(c, r int, side Side) Vec2 { return f.Points[f.mesh.vertex(c, r, side)] }

// Slits returns the slits the patch was laid flat with.
func (f *Flat) Slits() []Slit { return f.slits }

// measure fills the stretches and what is drawn from them.
func (f *Flat) measure(rest []restTriangle) {
	f.Stretches = make([]Stretch, len(rest))
	squares := 0.0
	for i, v := range f.mesh.triangles {
		s1, s2 := rest[i].deform(f.Points[v[0]], f.Points[v[1]], f.Points[v[2]]).stretches()
		a := rest[i].area
		f.Stretches[i] = Stretch{s1, s2, a, v}
		f.Area += a
		f.FlatArea += a * s1 * s2
		squares += a * ((s1-1)*(s1-1) + (s2-1)*(s2-1))
	}
	f.RMS = math.Sqrt(squares / f.Area)
	f.P95 = StretchPercentile(f.Stretches, 0.95)
}

// part is the stretch of a piece of area.
type part struct{ worst, area float64 }

// StretchPercentile returns the least Worst that a share of the area does not exceed.
// It panics where there is no stretch.
func StretchPercentile(stretches []Stretch, share float64) float64 {
	parts := make([]part, len(stretches))
	total := 0.0
	for i := range stretches {
		s := &stretches[i]
		parts[i] = part{s.Worst(), s.Area}
		total += s.Area
	}
	return percentile(parts, share*total)
}

// percentile returns the least worst that an area does not exceed. It sorts no more than it
// must: C. A. R. Hoare, "Algorithm 65: find", Communications of the ACM 4 (1961), 321-322.
func percentile(parts []part, area float64) float64 {
	for {
		pivot := parts[len(parts)/2].worst
		// Those under the pivot come first and those over it last.
		less, equal := 0.0, 0.0
		low, high := 0, len(parts)
		for i := 0; i < high; {
			switch p := parts[i]; {
			case p.worst < pivot:
				less += p.area
				parts[i], parts[low] = parts[low], p
				low++
				i++
			case p.worst > pivot:
				high--
				parts[i], parts[high] = parts[high], p
			default:
				equal += p.area
				i++
			}
		}
		switch {
		case low > 0 && area <= less:
			parts = parts[:low]
		case high == len(parts) || area <= less+equal:
			return pivot
		default:
			parts, area = parts[high:], area-less-equal
		}
	}
}

// Column returns one side of column c from row from to the last.
func (f *Flat) Column(c, from int, side Side) []Vec2 {
	line := make([]Vec2, 0, f.grid.Rows-from)
	for r := from; r < f.grid.Rows; r++ {
		line = append(line, f.At(c, r, side))
	}
	return line
}

// Row returns row r in its pieces between slits.
func (f *Flat) Row(r int) [][]Vec2 {
	var pieces [][]Vec2
	var piece []Vec2
	for c := range f.grid.Cols {
		piece = append(piece, f.At(c, r, Before))
		if f.mesh.vertex(c, r, Before) != f.mesh.vertex(c, r, After) {
			pieces = append(pieces, piece)
			piece = []Vec2{f.At(c, r, After)}
		}
	}
	return append(pieces, piece)
}

// Lengths are those of one line on the surface and on the sheet.
type Lengths struct{ Surface, Flat float64 }

// ColumnLengths returns the chord lengths of one side of column c from a row on.
func (f *Flat) ColumnLengths(c, from int, side Side) Lengths {
	l := Lengths{Flat: chords(f.Column(c, from, side))}
	for r := from + 1; r < f.grid.Rows; r++ {
		l.Surface += f.grid.Point(c, r).Sub(f.grid.Point(c, r-1)).Len()
	}
	return l
}

func chords(line []Vec2) float64 {
	sum := 0.0
	for i := 1; i < len(line); i++ {
		sum += line[i].Sub(line[i-1]).Len()
	}
	return sum
}

// Outline returns the edge of the sheet once round, as a closed line whose first
// point is not repeated: along row 0, up the last column, back along the last
// row, down into each slit and out again, and down the first column.
func (f *Flat) Outline() []Vec2 {
	g := f.grid
	var line []Vec2
	add := func(p Vec2) {
		if len(line) == 0 || line[len(line)-1] != p {
			line = append(line, p)
		}
	}
	for c := range g.Cols {
		add(f.At(c, 0, Before))
	}
	for r := range g.Rows {
		add(f.At(g.Cols-1, r, Before))
	}
	slit := len(f.slits) - 1
	for c := g.Cols - 1; c >= 0; c-- {
		if slit < 0 || f.slits[slit].Col != c {
			add(f.At(c, g.Rows-1, Before))
			continue
		}
		for r := g.Rows - 1; r >= f.slits[slit].Foot; r-- {
			add(f.At(c, r, After))
		}
		for r := f.slits[slit].Foot; r < g.Rows; r++ {
			add(f.At(c, r, Before))
		}
		slit--
	}
	for r := g.Rows - 1; r > 0; r-- {
		add(f.At(0, r, Before))
	}
	return line
}

// Vertex returns the number in Points of a side of the point in column c and row r.
func (f *Flat) Vertex(c, r int, side Side) int { return f.mesh.vertex(c, r, side) }
