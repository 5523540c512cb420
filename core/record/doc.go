// Package record takes what was measured of a boat, or of its drawing, and finds
// the design that rebuilds it.
//
// Gaps are normal: what the record leaves out is held at a rule of proportion
// and said to be so. What contradicts itself is named and left out of the fit
// until it is put right; nothing is averaged in silence.
//
// # What it cannot show
//
// The boat drawn here is the same fore and aft and to port and starboard. Where a
// record gives one figure forward and another aft, the fit stands between the two
// in proportion to their tolerances and says how far apart they are: a boat with
// one end fuller or higher than the other, a twist, or a keel line deeper aft
// cannot be told from a mean of its ends.
//
// Positions are measured level along the centre line, not along the gunwale's
// curve. Lengths in metres.
package record
