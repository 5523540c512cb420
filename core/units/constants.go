package units

import "math"

// Each constant is the SI value of one of the unit it names. NIST SP 811 is
// A. Thompson, B. N. Taylor, Guide for the Use of the International System of
// Units, NIST Special Publication 811 (2008), appendix B, where factors in bold
// are exact.
const (
	// Inch is 25.4 mm exactly, since July 1959. NIST SP 811, appendix B.
	Inch = 0.0254
	// Foot is 12 inches, 0.3048 m exactly. NIST SP 811, appendix B.
	Foot = 0.3048
	// Mile is 5280 feet, exactly. NIST SP 811, appendix B.
	Mile = 5280 * Foot
	// Millimetre, Centimetre and Kilometre follow from the SI prefixes.
	Millimetre = 1e-3
	Centimetre = 1e-2
	Kilometre  = 1e3
	// SquareFoot and CubicFoot follow from the foot.
	SquareFoot = Foot * Foot
	CubicFoot  = Foot * Foot * Foot
	// Litre is a cubic decimetre. NIST SP 811, table 6.
	Litre = 1e-3
	// Pound is the avoirdupois pound in kilograms, exact. NIST SP 811, appendix B.
	Pound = 0.45359237
	// Ounce is a sixteenth of a pound.
	Ounce = Pound / 16
	// StandardGravity in m/s2, exact by definition (CGPM 1901). NIST SP 811, appendix B.
	StandardGravity = 9.80665
	// PoundForce in newtons, exact: the pound under standard gravity.
	PoundForce = Pound * StandardGravity
	// FootPound is a moment in newton metres: a pound-force at one foot.
	FootPound = PoundForce * Foot
	// PoundPerCubicFoot is a density in kg/m3.
	PoundPerCubicFoot = Pound / CubicFoot
	// MilePerHour in m/s, exact: 0.44704. NIST SP 811, appendix B.
	MilePerHour = Mile / 3600
	// KilometrePerHour in m/s.
	KilometrePerHour = 1.0 / 3.6
	// Knot in m/s: the international nautical mile of 1852 m in an hour. NIST SP 811, table 8.
	Knot = 1852.0 / 3600
	// Degree in radians.
	Degree = math.Pi / 180
	// Fahrenheit is the size of a degree F in degrees C, and FreezingFahrenheit
	// what a Fahrenheit thermometer reads at 0 degrees C. NIST SP 811, appendix B.
	Fahrenheit         = 5.0 / 9
	FreezingFahrenheit = 32
)
