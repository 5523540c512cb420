// Package afloat answers how the boat floats, how it stands, what it carries and
// what it costs to move, from transverse stations of the bark's outer face alone.
//
// # Axes
//
// Those of package hull: metres, x forward from amidships, y to port, z up.
// Heel is positive to starboard, trim positive by the bow (bow down); radians.
//
// # How good the numbers are
//
// A station is a polyline, so its area falls short of a curve's by about
// 1/(6 n^2) for n chords to the quarter: 0.01 % at 40. Along x the rule of
// weights.go is of the fourth order where the sections change smoothly; where
// the waterplane meets a raked end between two stations the error is of the
// second order in that one interval. Draught and trim are solved far inside
// 0.1 mm, at which displacement is within about 0.3 kg for a boat of 4.5 m.
//
// # Limits
//
// Calm water and a rigid load. A boat with water over its gunwale is named
// swamped, not followed further. Thin-ship waves are theory outside its range at
// a canoe's beam. Results are a teaching estimate, not a rating.
package afloat
