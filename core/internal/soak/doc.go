// Package soak walks random boats through everything that is worked out, shown, drawn
// and printed of them, and looks for what stops, is no number or is not worked out. A
// few in its tests, as many as asked for in make soak.
package soak
