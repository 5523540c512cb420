package bark

import "sort"

// splitAll splits stretches into strips no longer than longest: two of each, for the
// two sides, the widest first.
func (l *laying) splitAll(b *beside, stretches []stretchOf, longest float64) (strips []Laid, butts []float64, ok bool) {
	for _, s := range stretches {
		least := 1
		if s.aft < 0 && s.bow > 0 {
			least = max(1, l.d.hull.Design.Panels)
		}
		pieces, at, ok := l.split(b, s, s, longest, longest, least)
		if !ok {
			return nil, nil, false
		}
		butts = append(butts, at...)
		for _, p := range pieces {
			strips = append(strips, p, p)
		}
	}
	sort.SliceStable(strips, func(i, k int) bool { return strips[i].Width > strips[k].Width })
	return strips, butts, true
}

// strips are the pieces of a part of a stretch between butts.
func (l *laying) strips(b *beside, s, part stretchOf, butts []float64) []Laid {
	var out []Laid
	ends := append(append([]float64{part.aft}, butts...), part.bow)
	for i := 1; i < len(ends); i++ {
		out = append(out, l.strip(b, s, ends[i-1], ends[i]))
	}
	return out
}

// split splits a part of a stretch into strips that lie no farther than reach and are cut no
// longer than longest. Where it cannot it returns false and the last strips it came to.
func (l *laying) split(b *beside, s, part stretchOf, reach, longest float64, least int) (
	strips []Laid, butts []float64, ok bool,
) {
	strips = l.strips(b, s, part, nil)
	for {
		at, _, found := l.marks.split(part, reach, fitLap(&l.d.hull.Design), least)
		if !found {
			return strips, butts, false
		}
		strips, butts, ok = l.strips(b, s, part, at), at, true
		shorter := reach
		for _, p := range strips {
			if over := p.Length() - longest; over > samePlace {
				shorter, ok = min(shorter, min(reach, p.Bow-p.Aft)-over), false
			}
		}
		if ok {
			return strips, butts, true
		}
		reach = shorter
	}
}
