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
	p := pager{high: high, lowest: lowest, pages: pages}
	for i := 0; i < len(strips); {
		n := i + 1
		for n < len(strips) && strips[n-1].tied {
			n++
		}
		group := strips[i:n]
		i = n
		if group[0].floats && (len(p.later) > 0 || p.over(group)) {
			p.later = append(p.later, group)
			continue
		}
		for p.over(group) {
			p.turn()
		}
		p.put(group)
	}
	for len(p.later) > 0 {
		p.turn()
	}
	return append(p.out, p.now)
}

// pager is a sheet being parted into pages.
type pager struct {
	high, lowest float64
	pages        int
	out          [][]placed
	// now is the page in hand, filled down to y; begun tells whether more than drawings
	// put off stands on it.
	now   []placed
	y     float64
	begun bool
	// later are the drawings put off to the head of the next page: what comes after them
	// fills the one in hand.
	later [][]strip
}

// over reports whether a group of strips does not fit the page in hand.
func (p *pager) over(group []strip) bool {
	most := p.high
	if len(p.out) == p.pages-2 {
		most = p.lowest
	}
	need := length(group)
	if !p.begun {
		need += length(group[0].head)
	}
	return len(p.now) > 0 && p.y+need > most
}

// turn begins a page, with the drawings put off that it has room for.
func (p *pager) turn() {
	if len(p.now) > 0 {
		p.out = append(p.out, p.now)
	}
	p.now, p.y, p.begun = nil, 0, false
	for len(p.later) > 0 && !p.over(p.later[0]) {
		group := p.later[0]
		p.later = p.later[1:]
		p.put(group)
		p.begun = false
	}
}

// put lays a group on the page in hand. What is higher than a page is broken where it must
// be.
func (p *pager) put(group []strip) {
	if !p.begun {
		for _, s := range group[0].head {
			p.lay(s)
		}
	}
	p.begun = true
	for _, s := range group {
		if len(p.now) > 0 && p.y+s.space+s.high > p.high {
			p.turn()
			p.begun = true
		}
		p.lay(s)
	}
}

func (p *pager) lay(s strip) {
	if len(p.now) > 0 {
		p.y += s.space
	}
	p.now = append(p.now, placed{s, p.y})
	p.y += s.high
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
