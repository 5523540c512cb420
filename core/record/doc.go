// Package record holds what was measured of a boat, or of its drawing: the kinds of
// measurement, the words that name them and where they were taken, and the reading
// of tables pasted from elsewhere. Package refit fits a boat to it.
//
// Positions are measured level along the centre line, not along the gunwale's
// curve. Lengths are in metres.
package record
