// Package flat draws the bark laid flat: its pieces, gores, sheets and seams, and where it
// must stretch.
package flat
