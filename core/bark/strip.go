package bark

import (
	"math"
	"sort"
)

// stretchOf is a stretch of one side, along the flat bark, that side panels cover.
type stretchOf struct{ aft, bow float64 }

// beside is what the sides lack beside the bark on the bed.
type beside struct {
	*demand
	bed []Laid
}

// extent is where a piece on the bed is the outer one: as far as the laps' middles.
func (b *beside) extent(i int) (aft, bow float64) {
	aft, bow = b.bed[i].Aft, b.bed[i].Bow
	lap := b.hull.Design.SeamLap
	if i > 0 {
		bow -= lap / 2
	}
	if i < len(b.bed)-1 {
		aft += lap / 2
	}
	return aft, bow
}

// lack is what a side lacks at a place beside a piece on the bed, the bark to trim
// included, m; negative where it is enough.
func (b *beside) lack(i int, along float64) float64 {
	return (b.at(b.full, along) - b.bed[i].Width) / 2
}

// most is the most that a side lacks between two places.
func (b *beside) mostLack(aft, bow float64) float64 {
	most := math.Inf(-1)
	for i := range b.bed {
		from, to := b.extent(i)
		from, to = max(from, aft), min(to, bow)
		if from < to {
			most = max(most, (b.most(b.full, from, to)-b.bed[i].Width)/2)
		}
	}
	return most
}

// lackAt is what a side lacks at a place.
func (b *beside) lackAt(along float64) float64 {
	for i := range b.bed {
		if aft, bow := b.extent(i); along >= aft && along <= bow {
			return b.lack(i, along)
		}
	}
	return 0
}

// stretches lists where the sides lack bark, from the stern forward. Stretches less
// than a foot apart are one. One of half a foot is carried on to a foot; a shorter
// one, and one that lacks no more than was left to trim, is scant.
func (b *beside) stretches() (out []stretchOf, scant []Scant) {
	add := func(aft, bow float64) {
		if n := len(out); n > 0 && aft-out[n-1].bow < leastPiece {
			out[n-1].bow = bow
			return
		}
		out = append(out, stretchOf{aft, bow})
	}
	for i := len(b.bed) - 1; i >= 0; i-- {
		aft, bow := b.extent(i)
		places := b.between(aft, bow)
		open := math.NaN()
		for k, x := range places {
			now := b.lack(i, x)
			if k > 0 {
				if last := b.lack(i, places[k-1]); (last > 0) != (now > 0) {
					edge := b.crossing(i, places[k-1], x, last, now)
					if now > 0 {
						open = edge
					} else {
						add(open, edge)
						open = math.NaN()
					}
				}
			} else if now > 0 {
				open = x
			}
		}
		if !math.IsNaN(open) {
			add(open, bow)
		}
	}
	kept := out[:0]
	for _, s := range out {
		lack := b.mostLack(s.aft, s.bow)
		if s.bow-s.aft >= leastPiece/2 && lack > b.hull.Design.GunwaleTurn+samePlace {
			s = b.toAFoot(s)
		}
		if s.bow-s.aft >= leastPiece-samePlace {
			kept = append(kept, s)
			continue
		}
		if lack > 0 {
			scant = append(scant, Scant{Aft: s.aft, Bow: s.bow, Lack: lack, Trim: lack <= b.hull.Design.GunwaleTurn+samePlace})
		}
	}
	return kept, scant
}

// crossing is where what is lacking comes to zero between two places along: first by
// the straight line between them, and then by that to the place so found.
func (b *beside) crossing(i int, from, to, atFrom, atTo float64) float64 {
	for range 2 {
		mid := from + (to-from)*atFrom/(atFrom-atTo)
		c := b.columnAlong(mid)
		at := toCover(b.hull, &c) - b.bed[i].Width/2
		if (at > 0) == (atFrom > 0) {
			from, atFrom = mid, at
		} else {
			to, atTo = mid, at
		}
	}
	return from + (to-from)*atFrom/(atFrom-atTo)
}

// shortened returns a stretch cut to the length of the longest strip, if what is cut off
// lacks no more than the bark left to trim.
func (b *beside) shortened(s stretchOf, longest float64) stretchOf {
	if s.bow-s.aft <= longest {
		return s
	}
	trim := b.hull.Design.GunwaleTurn
	core := stretchOf{s.bow, s.aft}
	for _, x := range b.between(s.aft, s.bow) {
		if b.lackAt(x) > trim {
			core.aft, core.bow = min(core.aft, x), max(core.bow, x)
		}
	}
	spare := longest - (core.bow - core.aft)
	if core.bow <= core.aft || spare < 0 {
		return s
	}
	aft := max(s.aft, core.aft-spare/2)
	bow := min(s.bow, aft+longest)
	return stretchOf{max(s.aft, bow-longest), bow}
}

// areaBeside is the area that a strip covers of what the side lacks, with the lap it is
// fitted with, m2.
func (b *beside) areaBeside(p Laid) float64 {
	sum := 0.0
	places := b.between(p.Aft, p.Bow)
	for i := 1; i < len(places); i++ {
		mid := (places[i] + places[i-1]) / 2
		sum += (max(0, b.lackAt(mid)) + fitLap(&b.hull.Design)) * (places[i] - places[i-1])
	}
	return sum
}

// toAFoot makes a stretch that lacks some of a foot as long as that, inboard first.
func (b *beside) toAFoot(s stretchOf) stretchOf {
	more := max(0, leastPiece-(s.bow-s.aft))
	if s.aft+s.bow > 0 {
		s.aft -= more
	} else {
		s.bow += more
	}
	return s
}

// buttCost is how badly a butt between strips stands at a place: a hand clear of gores
// and of the bed's joints, and just past the first thwarts rather than anywhere.
func (m *marks) buttCost(at float64) float64 {
	gap := math.Inf(1)
	for _, all := range [][]float64{m.gores, m.joints} {
		for _, x := range all {
			gap = min(gap, math.Abs(at-x))
		}
	}
	return costSeam + clash(gap) + m.inBay(at) + costPlace*math.Abs(math.Abs(at)-m.bay-pastThwart)
}

// split finds where a stretch is broken into strips no longer than longest, each of
// a foot or more and at least so many of them where the stretch allows: of all ways
// the one whose butts stand best. Those are listed from the stern forward.
func (m *marks) split(s stretchOf, longest, lap float64, least int) (butts []float64, cost float64, ok bool) {
	whole := s.bow - s.aft
	if whole <= longest+samePlace && least <= 1 {
		return nil, 0, true
	}
	places := m.buttPlaces(s, longest, lap)
	type node struct {
		cost float64
		from int
	}
	// best[p][i] is the best way to place i in p pieces, least and more counted alike.
	n := len(places)
	best := make([][]node, least+1)
	for p := range best {
		best[p] = make([]node, n)
		for i := range best[p] {
			best[p][i].cost = math.Inf(1)
		}
	}
	best[0][0].cost = 0
	fromLayer := make([][]int, least+1)
	for p := range fromLayer {
		fromLayer[p] = make([]int, n)
	}
	for i := 1; i < n; i++ {
		at := 0.0
		if i < n-1 {
			at = m.buttCost(places[i])
		}
		for k := range i {
			length := places[i] - places[k]
			if k > 0 {
				length += lap / 2
			}
			if i < n-1 {
				length += lap / 2
			}
			if length > longest+samePlace || length < leastPiece {
				continue
			}
			for p := range best {
				if math.IsInf(best[p][k].cost, 1) {
					continue
				}
				to := min(p+1, least)
				if c := best[p][k].cost + at; c < best[to][i].cost {
					best[to][i] = node{c, k}
					fromLayer[to][i] = p
				}
			}
		}
	}
	p := least
	for p > 0 && math.IsInf(best[p][n-1].cost, 1) {
		p--
	}
	if p == 0 {
		return nil, 0, false
	}
	cost = best[p][n-1].cost
	for i := n - 1; i > 0; {
		k := best[p][i].from
		if k > 0 {
			butts = append(butts, places[k])
		}
		p, i = fromLayer[p][i], k
	}
	sort.Float64s(butts)
	return butts, cost, true
}

// buttPlaces lists where a stretch may be broken, its ends included.
func (m *marks) buttPlaces(s stretchOf, longest, lap float64) []float64 {
	all := append(append([]float64{}, m.gores...), m.joints...)
	sort.Float64s(all)
	places := stands(all, s.aft, s.bow)
	add := func(x float64) {
		if x > s.aft+samePlace && x < s.bow-samePlace {
			places = append(places, x)
		}
	}
	add(m.bay + pastThwart)
	add(-m.bay - pastThwart)
	whole := s.bow - s.aft
	if step := longest - lap; step > leastPiece {
		count := math.Ceil(whole / step)
		for i := 1.0; i < count; i++ {
			add(s.aft + i*step)
			add(s.bow - i*step)
			add(s.aft + whole*i/count)
		}
	}
	sort.Float64s(places)
	kept := places[:1]
	for _, x := range places[1:] {
		if x-kept[len(kept)-1] > samePlace {
			kept = append(kept, x)
		}
	}
	kept[len(kept)-1] = s.bow
	return kept
}
