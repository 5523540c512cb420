// Package geom is the geometry and numerics the boat is built on: vectors,
// conics, Bezier curves, polylines, quadrature, roots and the flattening of a
// slit grid. It knows no boat words and is the only package that may import
// gonum. Lengths are in whatever unit the caller uses, angles in radians.
package geom
