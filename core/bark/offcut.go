package bark

import (
	"slices"
	"sort"
)

// offcut is a piece of bark that strips may be cut from.
type offcut struct {
	sheet         int
	from          Source
	width, length float64
}

// stock is the bark there is for strips, and whether more sheets may be brought.
type stock struct {
	left   []offcut
	sheets []Sheet
	// across tells that a strip is cut off across the piece first, so that what is left
	// beside it is no longer than it is; otherwise along it.
	across bool
	// more is a sheet of the size that can be had beyond those listed. With a width of 0
	// no more can be had.
	more Sheet
}

// cut takes a strip out of what is left. It returns false where no piece is wide and
// long enough. It takes the piece that wastes least width and then least length.
func (s *stock) cut(width, length float64) (offcut, bool) {
	best := -1
	for i, o := range s.left {
		if o.width < width-samePlace || o.length < length-samePlace {
			continue
		}
		if best < 0 || less(o, s.left[best]) {
			best = i
		}
	}
	if best < 0 {
		if s.more.Width < width-samePlace || s.more.Length < length-samePlace {
			return offcut{}, false
		}
		s.left = append(s.left, offcut{sheet: len(s.sheets), width: s.more.Width, length: s.more.Length})
		s.sheets = append(s.sheets, s.more)
		best = len(s.left) - 1
	}
	o := s.left[best]
	s.left = slices.Delete(s.left, best, best+1)
	besideIt := offcut{o.sheet, o.from, o.width - width, o.length}
	beyond := offcut{o.sheet, o.from, width, o.length - length}
	if s.across {
		besideIt.length, beyond.width = length, o.width
	}
	s.left = append(s.left, besideIt, beyond)
	return o, true
}

func less(a, b offcut) bool {
	if a.width != b.width {
		return a.width < b.width
	}
	return a.length < b.length
}

func (s *stock) clone() stock {
	c := *s
	c.left, c.sheets = slices.Clone(s.left), slices.Clone(s.sheets)
	return c
}

// lengths lists the lengths of what is wide enough, the longest first.
func (s *stock) lengths(width float64) []float64 {
	var out []float64
	if s.more.Width >= width {
		out = append(out, s.more.Length)
	}
	for _, o := range s.left {
		if o.width >= width && o.length >= leastPiece {
			out = append(out, o.length)
		}
	}
	sort.Sort(sort.Reverse(sort.Float64Slice(out)))
	return slices.Compact(out)
}
