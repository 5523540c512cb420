package units

import "math"

// Each constant is the SI value of one of the unit it names. The inch and foot
// are as NIST states them for the international foot of July 1959. The other
// definitions are from memory; every value here agrees with the definitions file
// of GNU Units 2.22, to the digits it prints (see the test).
const (
	// Inch is 25.4 mm exactly, since July 1959. NIST on the international foot.
	Inch = 0.0254
	// Foot is 12 inches, 0.3048 m exactly. NIST on the international foot.
	Foot = 0.3048
	// Mile is 5280 feet, exactly. GNU Units 2.22.
	Mile = 5280 * Foot
	// Millimetre, Centimetre and Kilometre follow from the SI prefixes.
	Millimetre = 1e-3
	Centimetre = 1e-2
	Kilometre  = 1e3
	// SquareFoot and CubicFoot follow from the foot.
	SquareFoot = Foot * Foot
	CubicFoot  = Foot * Foot * Foot
	// Litre is a cubic decimetre. GNU Units 2.22.
	Litre = 1e-3
	// Pound is the avoirdupois pound in kilograms, exact. GNU Units 2.22.
	Pound = 0.45359237
	// Ounce is a sixteenth of a pound.
	Ounce = Pound / 16
	// StandardGravity in m/s2, exact by definition (CGPM 1901). GNU Units 2.22.
	StandardGravity = 9.80665
	// PoundForce in newtons, exact: the pound under standard gravity.
	PoundForce = Pound * StandardGravity
	// FootPound is a moment in newton metres: a pound-force at one foot.
	FootPound = PoundForce * Foot
	// PoundPerCubicFoot is a density in kg/m3.
	PoundPerCubicFoot = Pound / CubicFoot
	// MilePerHour in m/s, exact: 0.44704. GNU Units 2.22.
	MilePerHour = Mile / 3600
	// KilometrePerHour in m/s.
	KilometrePerHour = 1.0 / 3.6
	// Knot in m/s: the international nautical mile of 1852 m in an hour. GNU Units 2.22.
	Knot = 1852.0 / 3600
	// Degree in radians.
	Degree = math.Pi / 180
	// Fahrenheit is the size of a degree F in degrees C, and FreezingFahrenheit
	// what a Fahrenheit thermometer reads at 0 degrees C. GNU Units 2.22.
	Fahrenheit         = 5.0 / 9
	FreezingFahrenheit = 32
)
