package geom

// Above returns the outlines of where a value, given at the corners of triangles and linear
// between them, is over a level. An outline does not repeat its first point. Round a hole in what
// lies above it runs the other way.
func Above(points []Vec2, triangles [][3]int, values []float64, level float64) [][]Vec2 {
	rim := map[[2]edgePoint]bool{}
	var order [][2]edgePoint
	for _, t := range triangles {
		var part [4]edgePoint
		n := 0
		for i, a := range t {
			b := t[(i+1)%3]
			if values[a] > level {
				part[n] = crossing(a, a)
				n++
			}
			if values[a] > level != (values[b] > level) {
				part[n] = crossing(a, b)
				n++
			}
		}
		for i := range n {
			edge := [2]edgePoint{part[i], part[(i+1)%n]}
			// The edge between two neighbours is passed both ways, and is no outline.
			if back := [2]edgePoint{edge[1], edge[0]}; rim[back] {
				delete(rim, back)
				continue
			}
			rim[edge] = true
			order = append(order, edge)
		}
	}
	next := make(map[edgePoint][]edgePoint, len(rim))
	for _, edge := range order {
		if rim[edge] {
			next[edge[0]] = append(next[edge[0]], edge[1])
		}
	}
	var out [][]Vec2
	for _, edge := range order {
		var line []Vec2
		for at := edge[0]; len(next[at]) > 0; {
			line = append(line, at.place(points, values, level))
			to := next[at][0]
			next[at] = next[at][1:]
			at = to
		}
		if len(line) > 0 {
			out = append(out, line)
		}
	}
	return out
}

// edgePoint is where a level crosses the edge between two corners, or a corner twice: the lower
// number, and the other in the upper half.
type edgePoint uint64

func crossing(a, b int) edgePoint { return edgePoint(min(a, b)) | edgePoint(max(a, b))<<32 }

func (e edgePoint) place(points []Vec2, values []float64, level float64) Vec2 {
	a, b := int(e&(1<<32-1)), int(e>>32)
	if a == b {
		return points[a]
	}
	return points[a].Lerp(points[b], (level-values[a])/(values[b]-values[a]))
}
