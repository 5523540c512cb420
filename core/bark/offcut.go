package bark

import (
	"slices"
	"sort"
)

// Offcut is a piece of a sheet from which nothing is cut, m.
type Offcut struct {
	Sheet         int
	Length, Width float64
	At            OnSheet
}

// OnSheet is the corner of a piece nearest to its sheet's, m: along the sheet's length from its
// after end, and across its width.
type OnSheet struct{ Along, Across float64 }

// offcut is a piece of bark that strips may be cut from.
type offcut struct {
	Offcut
	from Source
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
		if o.Width < width-samePlace || o.Length < length-samePlace {
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
		s.left = append(s.left, offcut{Offcut: Offcut{Sheet: len(s.sheets), Width: s.more.Width, Length: s.more.Length}})
		s.sheets = append(s.sheets, s.more)
		best = len(s.left) - 1
	}
	o := s.left[best]
	s.left = slices.Delete(s.left, best, best+1)
	besideIt, beyond := o, o
	besideIt.Width, besideIt.At.Across = o.Width-width, o.At.Across+width
	beyond.Length, beyond.At.Along = o.Length-length, o.At.Along+length
	if s.across {
		besideIt.Length = length
	} else {
		beyond.Width = width
	}
	s.left = append(s.left, besideIt, beyond)
	return o, true
}

func less(a, b offcut) bool {
	if a.Width != b.Width {
		return a.Width < b.Width
	}
	return a.Length < b.Length
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
		if o.Width >= width && o.Length >= leastPiece {
			out = append(out, o.Length)
		}
	}
	sort.Sort(sort.Reverse(sort.Float64Slice(out)))
	return slices.Compact(out)
}
