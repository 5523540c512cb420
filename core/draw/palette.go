package draw

import (
	"fmt"
)

// Role says what a colour is for; a Palette says which colour that is.
type Role string

// The roles. Paper is the ground everything else must stand out from.
const (
	Paper Role = "paper" // the ground
	Ink   Role = "ink"   // outlines and lettering
	Faint Role = "faint" // centre lines, dimension lines
	Bark  Role = "bark"  // the skin, filled
	// The inside of the boat, as its sides turn from the light.
	Inside      Role = "inside"
	InsideHalf  Role = "inside in half shade"
	InsideShade Role = "inside in shade"
	Seam        Role = "seam"   // gores, joints, laps
	Cedar       Role = "cedar"  // gunwales, ribs, thwarts, filled
	Root        Role = "root"   // lacing and sewing
	Frame       Role = "frame"  // building frame, stakes, posts
	Ground      Role = "ground" // building bed, filled
	Water       Role = "water"  // the water line
	Warn        Role = "warn"   // near or past a limit, always with a word or a shape
	Mark        Role = "mark"   // the part touched, and handles
	Pinned      Role = "pinned" // the boat compared with, always dashed
)

// Colour is a plain opaque sRGB colour.
type Colour struct{ R, G, B uint8 }

// Hex is the colour as SVG and CSS write it.
func (c Colour) Hex() string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

// Palette gives every role its colour.
type Palette map[Role]Colour

// Of is the role's colour. An unknown role is a mistake in the program.
func (p Palette) Of(r Role) Colour {
	c, ok := p[r]
	if !ok {
		panic("draw: no colour for role " + string(r))
	}
	return c
}

// Screen is ink on pale bark. Line roles keep 3:1 on paper and on every filled
// role, lettering 4.5:1 (WCAG 2.2, 1.4.11 and 1.4.3); a test holds them to it.
func Screen() Palette {
	return Palette{
		Paper:       {0xfb, 0xf6, 0xea},
		Ink:         {0x24, 0x1c, 0x15},
		Faint:       {0x7a, 0x6c, 0x5c},
		Bark:        {0xed, 0xd9, 0xb4},
		Inside:      {0xf8, 0xf1, 0xe0},
		InsideHalf:  {0xf2, 0xe8, 0xd4},
		InsideShade: {0xec, 0xe0, 0xc8},
		Seam:        {0x5a, 0x2f, 0x1c},
		Cedar:       {0xe3, 0xb9, 0x85},
		Root:        {0x6e, 0x3b, 0x12},
		Frame:       {0x3d, 0x52, 0x3a},
		Ground:      {0xe6, 0xe0, 0xd0},
		Water:       {0x1c, 0x55, 0x7a},
		Warn:        {0x9c, 0x1f, 0x14},
		Mark:        {0x7a, 0x1f, 0x6a},
		Pinned:      {0x4a, 0x4a, 0x6a},
	}
}

// Sun is for sunlight: white and one pale band, nothing soft. Lines and lettering keep
// 7:1 (WCAG 2.2, 1.4.6) on paper and on every filled role.
func Sun() Palette {
	white, band := Colour{0xff, 0xff, 0xff}, Colour{0xff, 0xf3, 0xcf}
	return Palette{
		Paper: white, Inside: white, InsideHalf: white,
		Bark: band, InsideShade: band, Cedar: band, Ground: band,
		Ink:    {},
		Faint:  {0x3a, 0x2f, 0x22},
		Seam:   {0x4a, 0x24, 0x08},
		Root:   {0x4a, 0x24, 0x08},
		Frame:  {0x0f, 0x3d, 0x2a},
		Water:  {0x0d, 0x2f, 0x57},
		Warn:   {0x7d, 0x0f, 0x06},
		Mark:   {0x5c, 0x12, 0x50},
		Pinned: {0x2a, 0x2a, 0x50},
	}
}

// Print is black on white with greys for the filled roles; it needs no colour.
func Print() Palette {
	p := Palette{}
	for role := range Screen() {
		p[role] = Colour{}
	}
	p[Paper] = Colour{0xff, 0xff, 0xff}
	p[Bark], p[Ground] = Colour{0xf4, 0xf4, 0xf4}, Colour{0xf4, 0xf4, 0xf4}
	p[Inside], p[InsideHalf], p[InsideShade] = Colour{0xff, 0xff, 0xff}, Colour{0xfa, 0xfa, 0xfa}, Colour{0xf0, 0xf0, 0xf0}
	p[Cedar] = Colour{0xe0, 0xe0, 0xe0}
	p[Faint] = Colour{0x6b, 0x6b, 0x6b}
	return p
}
