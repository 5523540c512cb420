// Package wood answers what a piece of wood, bark, root or pitch will do: whether
// it takes a bend, how thin it must be split to take it, how far it opens again,
// how hard it is to bend and what it weighs. Every constant stands here once,
// beside its source and a word on how sure it is.
//
// # Units
//
// Metres, kilograms, newtons, pascals. A bend's radius is measured at the middle
// of the thickness of the one piece that is checked, never at the face of a
// bundle; R/t is that radius over that thickness, and the strain t/(2R) is the
// nominal one at the piece's faces.
//
// # How sure
//
// The guide is for a trial piece first and is no guarantee. No published bend
// test on northern white-cedar was found; the hot rows rest on a simple model,
// one abstract on southern pine and radii measured off small published drawings.
// Sources are named in full at their first use in species.go and guide.go;
// "from memory" means recalled and not looked up again.
package wood
