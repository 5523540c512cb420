package units

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
)

// scale is the SI value of a unit and where its zero stands, as in unit.
type scale struct{ si, zero float64 }

// scales holds the spellings of every unit that is not a length, without
// spaces, dots and hyphens and with plain digits for raised ones.
var scales = map[Kind]map[string]scale{
	Area: spelled(map[scale][]string{
		{si: SquareFoot}: {"ft2", "sqft", "squarefoot", "squarefeet"},
		{si: 1}:          {"m2", "sqm", "squaremetre", "squaremetres", "squaremeter", "squaremeters"},
	}),
	Angle: spelled(map[scale][]string{{si: Degree}: {"°", "deg", "degree", "degrees"}}),
	Mass: spelled(map[scale][]string{
		{si: Pound}: {"lb", "lbs", "pound", "pounds"},
		{si: Ounce}: {"oz", "ounce", "ounces"},
		{si: 1}:     {"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"},
		{si: 1e-3}:  {"g", "gram", "grams"},
	}),
	Volume: spelled(map[scale][]string{
		{si: CubicFoot}: {"ft3", "cuft", "cubicfoot", "cubicfeet"},
		{si: Litre}:     {"l", "litre", "litres", "liter", "liters"},
		{si: 1}:         {"m3", "cubicmetre", "cubicmetres", "cubicmeter", "cubicmeters"},
	}),
	Speed: spelled(map[scale][]string{
		{si: MilePerHour}:      {"mph", "mi/h", "milesanhour", "milesperhour"},
		{si: Knot}:             {"kn", "kt", "kts", "knot", "knots"},
		{si: KilometrePerHour}: {"km/h", "kmh", "kph"},
		{si: 1}:                {"m/s"},
	}),
	Force: spelled(map[scale][]string{
		{si: PoundForce}: {"lbf", "lb", "lbs", "pound", "pounds"},
		{si: 1}:          {"n", "newton", "newtons"},
	}),
	Moment: spelled(map[scale][]string{
		{si: FootPound}: {"ftlbf", "ftlb", "lbfft", "lbft", "footpound", "footpounds"},
		{si: 1}:         {"nm", "newtonmetre", "newtonmetres", "newtonmeter", "newtonmeters"},
	}),
	Power: spelled(map[scale][]string{{si: 1}: {"w", "watt", "watts"}}),
	Density: spelled(map[scale][]string{
		{si: PoundPerCubicFoot}: {"lb/ft3", "lbs/ft3"},
		{si: 1}:                 {"kg/m3"},
	}),
	Temperature: spelled(map[scale][]string{
		{Fahrenheit, FreezingFahrenheit}: {"f", "°f", "degf", "degreesf", "fahrenheit", "degreesfahrenheit"},
		{si: 1}:                          {"c", "°c", "degc", "degreesc", "celsius", "degreescelsius"},
	}),
	Percent: spelled(map[scale][]string{{si: 0.01}: {"%", "percent", "pct"}}),
	Strain:  spelled(map[scale][]string{{si: 0.01}: {"%", "percent", "pct"}}),
}

var unitSpelling = strings.NewReplacer(" ", "", ".", "", "·", "", "-", "", "^", "", "²", "2", "³", "3", "º", "°")

// readPlain reads one number and at most one unit.
func (k Kind) readPlain(body string, negative bool, s System) (float64, *ParseError) {
	digits, name := body, ""
	if i := unitStart(body); i >= 0 {
		digits, name = body[:i], body[i:]
	}
	refuse := func(err error) (float64, *ParseError) {
		return 0, k.clearer(err, body, s)
	}
	list, err := tokens(digits, true)
	if err != nil {
		return refuse(err)
	}
	if list[0].kind == end && name != "" {
		return refuse(fmt.Errorf("A number is missing before %q.", name))
	}
	q, rest, err := readQuantity(list)
	if err != nil {
		return refuse(err)
	}
	if rest[0].kind != end {
		return refuse(errors.New("Only one number is read here."))
	}
	u := k.in(s)
	as := scale{u.si, u.zero}
	if name != "" {
		known := false
		if as, known = scales[k][strings.ToLower(unitSpelling.Replace(name))]; !known {
			message := k.unknownUnit(name).Error()
			if kinds[k].known == "" {
				return 0, &ParseError{Message: message, Suggest: strings.TrimSpace(digits)}
			}
			return 0, k.refuse(message, s)
		}
	}
	if err := k.judge(q, as.si); err != nil {
		return refuse(err)
	}
	if negative {
		q.value = -q.value
	}
	return (q.value - as.zero) * as.si, nil
}

// unitStart returns the index at which the unit of a text begins, -1 without a unit. An
// apostrophe between digits parts thousands.
func unitStart(text string) int {
	for i, r := range text {
		between := r == '\'' && i > 0 && isDigit(rune(text[i-1])) && i+1 < len(text) && isDigit(rune(text[i+1]))
		if !between && (unicode.IsLetter(r) || strings.ContainsRune(`°º%'"`, r)) {
			return i
		}
	}
	return -1
}

func (k Kind) unknownUnit(name string) error {
	if kinds[k].known == "" {
		return fmt.Errorf("A %s takes no unit, and %q stands after it.", kinds[k].noun, name)
	}
	return fmt.Errorf("%q is not a unit of %s: use %s.", name, kinds[k].noun, kinds[k].known)
}
