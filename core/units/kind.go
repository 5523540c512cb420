package units

// Kind is what a number measures. It fixes the SI unit taken by Format and
// given by Parse, named beside each.
type Kind int

const (
	// Length in metres: feet, inches and fractions, or mm.
	Length Kind = iota
	// SmallLength in metres, for timber and root: inches with no feet, or mm.
	SmallLength
	// Thickness in metres, for bark and splits: inches to 1/64, or tenths of a mm.
	Thickness
	// Offset in metres, a Length that may be typed with a minus: fore or aft.
	Offset
	// Run in metres, for totals of root and seam: whole feet, or metres.
	Run
	// Distance in metres, for paddling: miles or km.
	Distance
	// Area in square metres: square feet or square metres.
	Area
	// Angle in radians, shown in degrees.
	Angle
	// Mass in kilograms: pounds or kg.
	Mass
	// Volume in cubic metres: cubic feet or litres.
	Volume
	// Speed in m/s: mph or km/h.
	Speed
	// Force in newtons: pounds-force or N.
	Force
	// Moment in newton metres: foot-pounds or N m.
	Moment
	// Power in watts, in both systems.
	Power
	// Density in kg/m3: pounds per cubic foot or kg/m3.
	Density
	// Temperature in degrees Celsius, the unit the water formulas take: F or C.
	Temperature
	// Ratio is a plain number, shown to three figures.
	Ratio
	// Percent is a share of one (0.15), shown in hundredths (15 %).
	Percent
	// Strain is a share of one (0.0036), shown in hundredths with two more places
	// (0.36 %).
	Strain
	// Count is a whole number.
	Count

	kindCount
)

// Words is the kind of what is told in words alone: nothing is formatted or read by it,
// and asking it to panics.
const Words Kind = -1

// style is how a number is laid out before its unit.
type style int

const (
	decimal style = iota
	figures       // decimals as far as three figures reach, at most places
	feetInches
	inchesOnly
	sixtyFourths // inches only, finer than a tape
)

// unit is one unit a number can be shown in; v shown is v/si + zero.
type unit struct {
	si, zero  float64
	places    int
	style     style
	name      string // as Unit gives it; "" for a plain number
	mark      string // as it stands after a number, where that is not space and name
	ascii     string // as it stands after a number in ASCII, where that is not mark
	one, many string // spoken
}

// shown holds what a kind looks like in both systems; noun and known word its
// errors, example is the SI value they offer where nothing better can be read.
type shown struct {
	imperial, metric unit
	// si names the unit numbers are kept in, in ASCII; "" for a plain number.
	si          string
	noun, known string
	example     float64
	// most is past anything of the kind that is typed here, SI: a point that would
	// have to part thousands to make more is a decimal point. 0 for kinds of small
	// numbers, where every point is one.
	most   float64
	signed bool
	whole  bool
}

const lengthUnits = "ft, in, mm, cm or m"

// A canoe is under 12 m and carries under 3 t: what is past these is no reading of
// what was typed. Choices of this project.
const (
	mostLength = 20
	mostMass   = 5000
	mostCount  = 1000
)

var (
	feetAndInches = unit{si: Inch, style: feetInches, name: "in"}
	millimetres   = unit{si: Millimetre, name: "mm", one: "millimetre", many: "millimetres"}
	degrees       = unit{si: Degree, places: 1, name: "°", mark: "°", ascii: " deg", one: "degree", many: "degrees"}
	watts         = unit{si: 1, name: "W", one: "watt", many: "watts"}
	plain         = unit{si: 1, places: 3, style: figures}
	percent       = unit{si: 0.01, places: 1, name: "%", one: "percent", many: "percent"}
	strain        = unit{si: 0.01, places: 2, name: "%", one: "percent", many: "percent"}
	count         = unit{si: 1}
)

var kinds = [kindCount]shown{
	Length: {si: "m", imperial: feetAndInches, metric: millimetres, noun: "length", known: lengthUnits,
		example: 183.5 * Inch, most: mostLength},
	Offset: {si: "m", imperial: feetAndInches, metric: millimetres, noun: "length", known: lengthUnits,
		example: 6 * Inch, most: mostLength, signed: true},
	Run: {si: "m", imperial: unit{si: Foot, name: "ft", one: "foot", many: "feet"}, metric: unit{si: 1,
		places: 1, name: "m", one: "metre", many: "metres"}, noun: "length", known: lengthUnits, example: 100},
	Distance: {si: "m", imperial: unit{si: Mile, places: 0, name: "mi", one: "mile", many: "miles"},
		metric: unit{si: Kilometre, places: 0, name: "km", one: "kilometre", many: "kilometres"}, noun: "distance",
		known: "mi, km, ft or m", example: 10 * Kilometre},
	SmallLength: {si: "m", imperial: unit{si: Inch, style: inchesOnly, name: "in"}, metric: millimetres,
		noun: "length", known: lengthUnits, example: 1.25 * Inch, most: mostLength},
	Thickness: {si: "m", imperial: unit{si: Inch, style: sixtyFourths, name: "in"},
		metric: unit{si: Millimetre, places: 1, name: "mm", one: "millimetre", many: "millimetres"},
		noun:   "length", known: lengthUnits, example: 0.125 * Inch, most: mostLength},
	Area: {si: "m2", imperial: unit{si: SquareFoot, places: 1, name: "ft²", ascii: " ft2", one: "square foot",
		many: "square feet"},
		metric: unit{si: 1, places: 2, name: "m²", ascii: " m2", one: "square metre", many: "square metres"},
		noun:   "area", known: "ft² or m²", example: 5},
	Angle: {si: "rad", imperial: degrees, metric: degrees, noun: "angle", known: "degrees", example: 45 * Degree,
		signed: true},
	Mass: {si: "kg", imperial: unit{si: Pound, places: 1, name: "lb", one: "pound", many: "pounds"},
		metric: unit{si: 1, places: 1, name: "kg", one: "kilogram", many: "kilograms"},
		noun:   "mass", known: "lb, oz, kg or g", example: 185 * Pound, most: mostMass},
	Volume: {si: "m3", imperial: unit{si: CubicFoot, places: 2, name: "ft³", ascii: " ft3", one: "cubic foot",
		many: "cubic feet"},
		metric: unit{si: Litre, places: 1, name: "L", one: "litre", many: "litres"},
		noun:   "volume", known: "ft³, L or m³", example: 0.3},
	Speed: {si: "m/s", imperial: unit{si: MilePerHour, places: 1, name: "mph", one: "mile an hour",
		many: "miles an hour"},
		metric: unit{si: KilometrePerHour, places: 1, name: "km/h", one: "kilometre an hour",
			many: "kilometres an hour"},
		noun: "speed", known: "mph, knots, km/h or m/s", example: 1.5},
	Force: {si: "N", imperial: unit{si: PoundForce, places: 1, name: "lbf", one: "pound of force",
		many: "pounds of force"},
		metric: unit{si: 1, places: 1, name: "N", one: "newton", many: "newtons"},
		noun:   "force", known: "lbf or N", example: 20},
	Moment: {si: "N m", imperial: unit{si: FootPound, places: 1, name: "ft·lbf", ascii: " ft-lbf", one: "foot-pound",
		many: "foot-pounds"},
		metric: unit{si: 1, places: 1, name: "N·m", ascii: " N m", one: "newton metre", many: "newton metres"},
		noun:   "moment", known: "ft·lbf or N·m", example: 50},
	Power: {si: "W", imperial: watts, metric: watts, noun: "power", known: "W", example: 75},
	Density: {si: "kg/m3", imperial: unit{si: PoundPerCubicFoot, places: 1, name: "lb/ft³", ascii: " lb/ft3",
		one: "pound per cubic foot", many: "pounds per cubic foot"},
		metric: unit{si: 1, name: "kg/m³", ascii: " kg/m3", one: "kilogram per cubic metre",
			many: "kilograms per cubic metre"},
		noun: "density", known: "lb/ft³ or kg/m³", example: 350},
	Temperature: {si: "C", imperial: unit{si: Fahrenheit, zero: FreezingFahrenheit, places: 1, name: "°F",
		ascii: " F", one: "degree Fahrenheit", many: "degrees Fahrenheit"},
		metric: unit{si: 1, places: 1, name: "°C", ascii: " C", one: "degree Celsius", many: "degrees Celsius"},
		noun:   "temperature", known: "C or F", example: 15, signed: true},
	Ratio:   {imperial: plain, metric: plain, noun: "plain number", example: 0.5},
	Percent: {imperial: percent, metric: percent, noun: "percentage", known: "%", example: 0.15},
	Strain:  {imperial: strain, metric: strain, noun: "percentage", known: "%", example: 0.005},
	Count:   {imperial: count, metric: count, noun: "count", example: 5, most: mostCount, whole: true},
}

// in returns the unit a kind is shown in. A kind that does not exist panics.
func (k Kind) in(s System) unit {
	if k < 0 || k >= kindCount {
		panic(noSuchKind)
	}
	if s == Metric {
		return kinds[k].metric
	}
	return kinds[k].imperial
}

// isLength says whether a kind is read by the grammar of feet and inches.
func (k Kind) isLength() bool { return k >= Length && k <= Distance }
