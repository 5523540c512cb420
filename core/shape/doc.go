// Package shape is the curves that the design's own rules and the hull both need:
// the plan and the sheer of the gunwales, what a tape along them reads, and the section
// of the bark across them. It knows lengths and shares only; design sets them and hull
// builds on them.
package shape
