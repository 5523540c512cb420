// Package draw holds pictures as data: a display list of plain structs, x right and y down,
// in CSS pixels or millimetres; the named parts a finger can touch; the palette; and the
// same list as SVG or as rounded text for goldens. It knows no browser and no boat.
package draw
