package sheet

// leastPage is how much of a page the last of several holds at the least.
const leastPage = 0.25

// placed is a strip on its page.
type placed struct {
	strip
	top float64
}

// height is how far down the page something reaches.
func height(on []placed) float64 {
	if len(on) == 0 {
		return 0
	}
	last := on[len(on)-1]
	return last.top + last.high
}

// paginate parts strips into pages of a height, mm; lowest is that of the last but one,
// which may be less to leave more for the last.
func paginate(strips []strip, high float64, pages int, lowest float64) [][]placed {
	var out [][]placed
	var now []placed
	y := 0.0
	most := func() float64 {
		if len(out) == pages-2 {
			return lowest
		}
		return high
	}
	for i := 0; i < len(strips); {
		n := i + 1
		for n < len(strips) && strips[n-1].tied {
			n++
		}
		if len(now) > 0 && y+length(strips[i:n]) > most() {
			out, now, y = append(out, now), nil, 0
		}
		if len(now) == 0 {
			for _, s := range strips[i].head {
				now = append(now, placed{s, y})
				y += s.high
			}
		}
		// What is tied and higher than a page is broken where it must be.
		for ; i < n; i++ {
			if len(now) > 0 && y+length(strips[i:i+1]) > high {
				out, now, y = append(out, now), nil, 0
			}
			if len(now) > 0 {
				y += strips[i].space
			}
			now = append(now, placed{strips[i], y})
			y += strips[i].high
		}
	}
	return append(out, now)
}

// length is how much of a page strips take together, with the air over them.
func length(strips []strip) float64 {
	sum := 0.0
	for _, s := range strips {
		sum += s.space + s.high
	}
	return sum
}

// arrange parts a sheet into pages of a height: as it is, more tightly where that saves a
// page with little on it, and otherwise with enough on the last.
func arrange(make func(fit) []strip, high float64) [][]placed {
	strips := make(fits[0])
	pages := paginate(strips, high, 0, high)
	if n := len(pages); n > 1 && height(pages[n-1]) < 2*leastPage*high {
		for _, f := range fits[1:] {
			if tight := paginate(make(f), high, 0, high); len(tight) < n {
				return tight
			}
		}
		const step = 5 // mm
		for lowest := high; lowest > high/2 && height(pages[n-1]) < leastPage*high; lowest -= step {
			if even := paginate(strips, high, n, lowest); len(even) == n {
				pages = even
			}
		}
	}
	return pages
}
