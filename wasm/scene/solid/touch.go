package solid

import (
	"barkwright/core/geom"
	"barkwright/wasm/scene"
)

// InsideParts make the inside of a surface touchable, where nothing that lies on it is: each side
// from its top edge to the bottom and the ends' profiles.
func (p *Solid) InsideParts(s Surface, name string) {
	if p.First > Inner {
		return
	}
	for _, side := range [2]float64{1, -1} {
		var top, foot []geom.Vec3
		for c := 1 - s.Cols; c < s.Cols; c++ {
			top, foot = append(top, s.mated(c, s.Rows-1, side)), append(foot, s.mated(c, 0, side))
		}
		p.Pen.Surface(name, p.Place(scene.Between(top, foot)))
	}
}

// mated is a point of a surface on a side of the boat: column c forward, column -c aft.
func (s *Surface) mated(c, r int, side float64) geom.Vec3 {
	if c < 0 {
		return InPlace(s.At(-c, r, geom.After), [2]float64{-1, side})
	}
	return InPlace(s.At(c, r, geom.After), [2]float64{1, side})
}

// OutsideParts make what is seen of a surface's outside touchable. It hides what was made touchable
// before.
func (p *Solid) OutsideParts(s Surface, f *Facing, name string) {
	for i, m := range scene.Quarters {
		var low, high []geom.Vec3
		flush := func() {
			if len(low) > 1 {
				p.Cover(name, p.Place(scene.Between(high, low)))
			}
			low, high = nil, nil
		}
		for c := range s.Cols {
			from, to, seen := f.outside(i, c)
			if !seen {
				flush()
				continue
			}
			low = append(low, InPlace(s.between(c, from), m))
			high = append(high, InPlace(s.between(c, to), m))
		}
		flush()
	}
}

// outside is from where to where up a column of a quarter its outside is seen, in rows.
func (f *Facing) outside(quarter, c int) (from, to float64, seen bool) {
	rows := f[quarter][geom.After][c]
	for r, inside := range rows {
		if inside > 0 {
			continue
		}
		if !seen {
			from, seen = float64(r), true
			if r > 0 {
				from -= inside / (inside - rows[r-1])
			}
		}
		to = float64(r)
		if r+1 < len(rows) && rows[r+1] > 0 {
			to += inside / (inside - rows[r+1])
		}
	}
	return from, to, seen
}

// between is a point of a column between its rows.
func (s *Surface) between(c int, row float64) geom.Vec3 {
	r := min(int(row), s.Rows-2)
	return s.At(c, r, geom.After).Lerp(s.At(c, r+1, geom.After), row-float64(r))
}
