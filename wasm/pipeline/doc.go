// Package pipeline is what is known of the boat in hand. A step of a slider gives a
// canoe at once; what takes longer is worked out in pieces afterwards, each in
// slices of about a millisecond, so that the next step never waits for more than
// one. The package decides what is known, what a change has made stale, what comes
// next and what the next search starts from. It has no clock and no screen: whoever
// has them calls Next while there is time, and shows what Next says has changed.
//
// Nothing that belongs to an older design can be read: a piece that is stale reads
// as not known from the moment the new canoe is taken.
package pipeline
