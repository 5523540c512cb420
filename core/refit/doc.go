// Package refit finds the design that rebuilds a recorded boat, and brings a design
// to what a tape reads of it as it is built.
//
// Gaps are normal. What the record leaves out is held by a rule of proportion, and
// the result says so. What contradicts itself is named and left out of the fit until
// it is put right. Nothing is averaged in silence.
//
// # What it cannot show
//
// The boat drawn here is the same fore and aft and to port and starboard. Where a
// record gives one figure forward and another aft, the fit stands between the two
// in proportion to their tolerances and says how far apart they are. A boat with
// one end fuller or higher than the other, a twist, or a keel line deeper aft
// cannot be told from the mean of its ends.
package refit
