// Package scene describes pictures as data: a display list of plain structs in
// CSS pixels (x right, y down), the named parts a finger can touch, and the
// same list as SVG or as rounded text for goldens. It knows no browser; paint
// plays the list and WriteSVG prints it.
package scene
