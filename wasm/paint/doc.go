// Package paint puts a display list in the page: with Ebitengine where the
// browser has WebGL2, and as SVG where it has none or loses it. It is the only
// package that imports Ebitengine. mesh, below it, builds the triangles and is
// tested without a screen.
package paint
