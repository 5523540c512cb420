// Package design is what the user sets: one Design in SI units, the table of its
// parameters, what cannot be built, the starting boats and how a design is
// written down.
//
// Params is the only place where a parameter's name, range, step and default
// stand; the form, the limits, the JSON and the tests come from it.
//
// A dependent parameter follows others until it is set: Set marks it as owned,
// Reset ties it again, and Follow brings every tied one up to date.
package design
