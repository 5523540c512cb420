// Package hands is what pointers do on the picture and on sliders. A mouse drags a
// handle at once. A finger also scrolls the page there: it drags a handle that it has
// tapped before, by the grip over it, which does not scroll; or one that goes sideways,
// as a slider does. The package is pure: the bridge tells it of events.
package hands
