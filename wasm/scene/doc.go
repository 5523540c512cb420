// Package scene holds what every picture of a boat is drawn with: how it is looked at,
// the pen that letters and weighs lines, and the curves and names that pictures share.
// What is drawn stands in view, flat and raise. It knows no browser: a picture is a
// draw.List.
package scene
