// Package whatif asks what a control would change: the results that matter over its range
// near a boat, and what an inch of each dimension costs. Everything is worked out in pieces, so
// that whoever has a clock can stop in between.
package whatif
