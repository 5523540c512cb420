// Package frame answers what wood goes into the hull and where: gunwales and
// their lacing, thwarts, ribs, headboards, stems and sheathing, and what the bark
// is built on: building frame, bed, stakes and posts.
//
// The boat is the same fore and aft and to port and starboard: lists run from the
// middle outward for one half or one quarter, and say what they count.
//
// Lengths in metres. A place along a gunwale is a run: the true length along its
// curve from its middle, what a tape laid on the wood reads.
package frame
