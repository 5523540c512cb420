// Package pattern draws full-size patterns in millimetres, cuts them into sheets of paper
// that go together again, or lays them along a roll, and proves the scale of a print.
package pattern
