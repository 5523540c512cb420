// Package lesson holds short lessons as data: a question, what to set, what to watch, what is
// found and why, and the claims that it makes. A claim is an inequality between results, worked
// out with the boat in hand, so that a lesson says where it does not hold.
package lesson
