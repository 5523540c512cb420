package geom

// Vertex returns the number in Points of a side of the point in column c and row r.
func (f *Flat) Vertex(c, r int, side Side) int { return f.mesh.vertex(c, r, side) }
