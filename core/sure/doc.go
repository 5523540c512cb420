// Package sure tells how far the figures that are cut may be off, where the sizes set come out
// within what the design says: by slopes, each size by itself, and the squares added.
package sure
