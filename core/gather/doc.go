// Package gather rolls up what to bring in from the woods: by log, by root and by
// tree, with the weight of the finished boat. Lengths in metres, masses in
// kilograms. Yields, spares and pitch are estimates and say so.
package gather
