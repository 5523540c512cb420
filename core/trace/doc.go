// Package trace reads lengths off a picture by points pressed on it. It knows no image and
// no boat: points come in the picture's pixels, x to the right and y down, and lengths go out
// in metres. How far each may be off follows from the spread of every point, of every
// lettered length and of the paper, moved one at a time.
package trace
