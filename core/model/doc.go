// Package model makes a model of a canoe that a class can sew. It is not the boat drawn smaller:
// card, sticks and strips are thicker at scale than bark, gunwales and ribs are, so the boat is
// worked out again with the model's own thicknesses, and drawn at 1 to its scale.
package model
