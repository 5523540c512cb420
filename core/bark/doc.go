// Package bark works out the skin: where it is slit and pieced, how long the
// seams are and what root sews them, how wide a sheet and so how thick a tree it
// takes, and the shape of the sheet on the bed.
//
// # Axes and terms
//
// Metres. On the hull as in package hull. On the sheet laid flat x runs along
// the bed's centre line from amidships forward and y out to the port edge. Boats
// are the same fore and aft and on both sides, so the forward port quarter says it
// all; where a list covers a whole side it runs from the after end forward.
//
// A gore is a slit from its foot, a little outside the building frame, to the
// edge, lapped or trimmed and sewn when the side is turned up. A side panel is bark
// sewn to the sheet's long edge where the sheet is too narrow. A joint sews sheets
// end to end; the end seams close the two sides on the stems.
//
// # How much stretch bark bears
//
// No published limit was found for birch bark. The limit used to suggest a number
// of gores is an estimate that the user sets.
package bark
