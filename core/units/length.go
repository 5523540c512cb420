package units

import (
	"errors"
	"fmt"
	"math"
	"strings"
)

// measure is one unit a length may be typed in.
type measure struct {
	metres float64
	metric bool
}

var (
	foot = measure{metres: Foot}
	inch = measure{metres: Inch}
)

var measures = spelled(map[measure][]string{
	{metres: Mile}:            {"mi", "mile", "miles"},
	foot:                      {"'", "ft", "foot", "feet"},
	inch:                      {`"`, "in", "inch", "inches"},
	{Kilometre, true}:         {"km", "kilometre", "kilometres", "kilometer", "kilometers"},
	{metres: 1, metric: true}: {"m", "metre", "metres", "meter", "meters"},
	{Centimetre, true}:        {"cm", "centimetre", "centimetres", "centimeter", "centimeters"},
	{Millimetre, true}:        {"mm", "millimetre", "millimetres", "millimeter", "millimeters"},
})

// spelled turns units with their spellings into a look-up by spelling.
func spelled[U comparable](spellings map[U][]string) map[string]U {
	table := map[string]U{}
	for u, words := range spellings {
		for _, w := range words {
			table[w] = u
		}
	}
	return table
}

// part is one quantity of a length with its unit; bare where none was written.
type part struct {
	quantity
	measure
	bare bool
}

// readLength reads a length as feet and inches and with its thousands parted by
// spaces or apostrophes; what may be both, such as 1 000 or 1'000, is refused.
func (k Kind) readLength(body string, s System) (float64, *ParseError) {
	v, refusal := k.readLengthAs(body, false, s)
	parted, refusedParted := k.readLengthAs(body, true, s)
	switch {
	case refusedParted != nil:
		return v, refusal
	case refusal != nil:
		return parted, nil
	case v != parted:
		list, _ := tokens(body, true)
		two := &twoReadings{raw: body, first: strings.Replace(body, list[0].raw, list[0].text, 1),
			second: k.worded(v, Imperial16)}
		return 0, k.clearer(two, body, s)
	}
	return v, nil
}

func (k Kind) readLengthAs(body string, grouped bool, s System) (float64, *ParseError) {
	refuse := func(err error) (float64, *ParseError) {
		return 0, k.clearer(err, body, s)
	}
	list, err := tokens(body, grouped)
	if err != nil {
		return refuse(err)
	}
	if meant, message := feetDashInches(list); meant > 0 {
		return 0, &ParseError{Message: message, Suggest: k.Format(meant, systemOf([]part{{measure: foot}}, s))}
	}
	parts, err := k.readParts(list)
	if err != nil {
		return refuse(err)
	}
	if err := k.nameBare(parts, s); err != nil {
		return refuse(err)
	}
	total := 0.0
	for _, p := range parts {
		if err := k.judge(p.quantity, p.metres); err != nil {
			return refuse(err)
		}
		total += p.value * p.metres
	}
	if err := disagreement(parts); err != "" {
		if mixed(parts) || total > largestRead {
			return 0, k.refuse(err, s)
		}
		return 0, &ParseError{Message: err, Suggest: k.Format(total, systemOf(parts, s))}
	}
	return total, nil
}

// feetDashInches tells feet and inches joined by a hyphen, as 15-6, from inches joined
// to their fraction: what it comes to, 0 where the text is no such thing, and what is
// wrong with it.
func feetDashInches(list []token) (metres float64, message string) {
	if list[0].kind != number || list[1].kind != hyphen || list[2].kind != number || list[3].kind == slash {
		return 0, ""
	}
	feet, _, err := readDecimal(list[0])
	if err != nil || feet != math.Trunc(feet) {
		return 0, ""
	}
	inches, rest, err := readQuantity(list[2:])
	if err != nil || inches.value >= inchesInFoot || rest[0].kind == word && measures[rest[0].text] != inch {
		return 0, ""
	}
	return feet*Foot + inches.value*Inch, fmt.Sprintf("A hyphen joins only inches and their fraction, or stands after "+
		"feet: %s-%s may mean feet and inches.", list[0].raw, list[2].raw)
}

func (k Kind) readParts(list []token) ([]part, error) {
	var parts []part
	for list[0].kind != end {
		if list[0].kind == hyphen {
			return nil, errors.New("A hyphen stands only before a fraction or after feet.")
		}
		q, rest, err := readQuantity(list)
		if err != nil {
			return nil, err
		}
		p := part{quantity: q, bare: true}
		if rest[0].kind == word {
			m, known := measures[rest[0].text]
			if !known {
				return nil, fmt.Errorf("%q is not a unit of %s: use %s.", rest[0].text, kinds[k].noun, kinds[k].known)
			}
			p.measure, p.bare = m, false
			rest = rest[1:]
			if rest[0].kind == hyphen && rest[1].kind == number {
				rest = rest[1:]
			}
		}
		parts = append(parts, p)
		list = rest
	}
	return parts, nil
}

// nameBare gives the quantities written without a unit their unit: alone the
// current one, after feet inches, two together feet and inches. Nobody writes
// fractions of a millimetre, so a fraction alone is of an inch.
func (k Kind) nameBare(parts []part, s System) error {
	last := len(parts) - 1
	final := &parts[last]
	switch {
	case last == 0 && final.bare:
		u := k.in(s)
		final.measure = measure{u.si, s == Metric}
		if u.si == Millimetre && final.fraction {
			final.measure = inch
		}
	case last == 1 && parts[0].bare && (final.bare || final.measure == inch):
		if s == Metric && final.bare && !final.fraction {
			return errors.New("Two numbers need their units.")
		}
		parts[0].measure, final.measure = foot, inch
	case last > 0 && final.bare && !parts[last-1].bare && parts[last-1].measure == foot:
		final.measure = inch
	}
	for _, p := range parts {
		if p.metres == 0 {
			return fmt.Errorf("One of the numbers needs its unit: %s.", kinds[k].known)
		}
	}
	return nil
}

// disagreement returns why the parts of a length do not add up to one, or "".
func disagreement(parts []part) string {
	if mixed(parts) {
		return "Feet and inches do not mix with metric units in one length."
	}
	for i := 1; i < len(parts); i++ {
		large, small := parts[i-1], parts[i]
		switch {
		case small.metres >= large.metres:
			return "The larger unit comes first, and each unit once."
		case large.value != math.Trunc(large.value):
			return "Only the last number may have decimals or a fraction."
		case small.measure == inch && large.measure == foot && small.value >= inchesInFoot:
			return fmt.Sprintf("%s inches make a foot or more.", roundedText(small.value, 4))
		case small.value*small.metres >= large.metres:
			return "The smaller unit makes up one or more of the larger."
		}
	}
	return ""
}

func mixed(parts []part) bool {
	for _, p := range parts {
		if p.metric != parts[0].metric {
			return true
		}
	}
	return false
}

// systemOf returns the system to suggest in: the user's own where it suits what
// was typed.
func systemOf(parts []part, s System) System {
	switch {
	case parts[0].metric:
		return Metric
	case s == Metric:
		return Imperial16
	}
	return s
}
