package core

import "barkwright/core/design"

// Spread is the design at one end of the section's spread, whole: what follows follows. Where the girth is not by
// rule, or the boat is built on its gunwales, the bilge alone differs.
func Spread(d design.Design, way float64) design.Design {
	spread(way)(&d)
	return design.Follow(d)
}
