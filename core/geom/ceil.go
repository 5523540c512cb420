package geom

import "math"

// rounding is how far past a whole number a quotient still counts as that number. Quotients of lengths are off by
// some 1e-15 of themselves, and what is counted stays under a million: 1e-9 is wide against that, and narrow against
// any step of a tape.
const rounding = 1e-9

// Ceil returns the least whole number that v does not pass by more than rounding. math.Ceil counts one too many where
// a length goes into another without a rest: 72 in over 24 in, both in metres, is 3.0000000000000004.
func Ceil(v float64) float64 { return math.Ceil(v - rounding) }

// Floor returns the greatest whole number that v does not fall short of by more than rounding.
func Floor(v float64) float64 { return math.Floor(v + rounding) }
