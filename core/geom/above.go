package geom

// Above returns the outlines of where a value, given at the corners of triangles and linear
// between them, is over a level. An outline does not repeat its first point. Round a hole in what
// lies above it runs the other way.
func Above(points []Vec2, triangles [][3]int, values []float64, level float64) [][]Vec2 {
	next := map[edgePoint][]edgePoint{}
	var order []edgePoint
	add := func(from, to edgePoint) {
		// The edge between two neighbours is passed both ways, and is no outline.
		for i, back := range next[to] {
			if back == from {
				next[to] = append(next[to][:i], next[to][i+1:]...)
				return
			}
		}
		if next[from] == nil {
			order = append(order, from)
		}
		next[from] = append(next[from], to)
	}
	for _, t := range triangles {
		var part [4]edgePoint
		n := 0
		for i, a := range t {
			b := t[(i+1)%3]
			if values[a] > level {
				part[n] = edgePoint{a, a}
				n++
			}
			if values[a] > level != (values[b] > level) {
				part[n] = edgePoint{min(a, b), max(a, b)}
				n++
			}
		}
		for i := range n {
			add(part[i], part[(i+1)%n])
		}
	}
	place := func(e edgePoint) Vec2 {
		u, v := values[e[0]], values[e[1]]
		if u == v {
			return points[e[0]]
		}
		return points[e[0]].Lerp(points[e[1]], (level-u)/(v-u))
	}
	var out [][]Vec2
	for _, first := range order {
		for len(next[first]) > 0 {
			var line []Vec2
			for at := first; len(next[at]) > 0; {
				line = append(line, place(at))
				to := next[at][0]
				next[at] = next[at][1:]
				at = to
			}
			out = append(out, line)
		}
	}
	return out
}

// edgePoint is where a level crosses the edge between two corners, or a corner twice.
type edgePoint [2]int
