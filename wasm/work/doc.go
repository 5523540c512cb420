// Package work is the boat under the user's hands: what the form holds, what is
// wrong with it, the last canoe that could be built, and every change undone and
// redone. It is pure Go; the page's controls are joined to it by the bridge.
package work
