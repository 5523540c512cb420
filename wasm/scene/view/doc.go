// Package view draws the boat from above and from the side, on the bed and finished, with
// sections, handles and what was measured, and heeled over; it reads out the part
// touched. Draw draws it in any state.
package view
