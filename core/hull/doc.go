// Package hull turns a design into the finished boat's shape: plan, sheer,
// bottom, sections, ends and the grid of its skin.
//
// # Axes
//
// Metres. x runs forward from amidships, y to port, z up from the outside of
// the bark at its lowest point amidships. The boat is the same fore and aft and
// the same to port and starboard, so every question is asked of x >= 0, y >= 0
// and mirrored by the caller.
//
// # Which edge
//
// The surface is the bark's outer face. Half-breadth of the plan is to the
// inside of the gunwales; the sheer is the top of the inwale. Lengths along a
// gunwale are true lengths along its inner top edge from its middle: what a
// tape laid on the wood reads.
package hull
