// Package solid draws the canoe in three-quarter view: as it is when done, and as far as it is
// made. What hides what is known, since the boat is a shell seen from over its rail: fixed
// layers are painted one after another, and faces by their depth only within one.
package solid
