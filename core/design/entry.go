package design

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"barkwright/core/units"
)

// Read reads an entry for the parameter as typed and returns it in SI with an echo of
// what was understood; now is the value that stands, SI, and what a refusal offers
// where nothing typed can be mended. A number without its unit that is out of range,
// and would be inside it in another unit, is refused with that unit. One past a bound that
// shows as the bound does is the bound.
func (p Param) Read(text string, now float64, s units.System) (v float64, echo string, err error) {
	if p.NoneAtMin && strings.EqualFold(strings.TrimSpace(text), "none") {
		return p.Min, "Read as none", nil
	}
	v, echo, err = p.Kind.Parse(text, s)
	v = p.atBound(v, s)
	var refusal *units.ParseError
	switch {
	case errors.As(err, &refusal):
		return 0, "", p.offer(*refusal, now, s)
	case v < p.Min || v > p.Max:
		if meant := p.meant(text, s); len(meant) > 0 {
			return 0, "", &units.ParseError{Message: fmt.Sprintf("Read as %s. Did you mean %s? This page takes %s to %s.",
				bareUnit(text, s), strings.Join(meant, " or "), p.Kind.Format(p.Min, s), p.Kind.Format(p.Max, s))}
		}
	}
	return v, echo, nil
}

// atBound is the bound that v is past and shows as, or else v. Bounds are told as they show: 6 ft as
// 1829 mm, and 1829 mm is past it.
func (p Param) atBound(v float64, s units.System) float64 {
	bound := p.nearest(v)
	if p.Kind.Format(v, s) == p.Kind.Format(bound, s) {
		return bound
	}
	return v
}

// fractions are the marks of one: nobody writes fractions of a millimetre.
const fractions = "/½¼¾⅛⅜⅝⅞"

// bareUnit is what a length without a unit was read in.
func bareUnit(text string, s units.System) string {
	if s == units.Metric && !strings.ContainsAny(text, fractions) {
		return "millimetres"
	}
	return "inches"
}

// offer makes a refusal's suggestion one that fits the parameter.
func (p Param) offer(refusal units.ParseError, now float64, s units.System) error {
	if refusal.Example {
		refusal.Suggest, refusal.Or = p.spelled(now, s)
	} else if v, _, err := p.Kind.Parse(refusal.Suggest, s); err == nil && (v < p.Min || v > p.Max) {
		refusal.Message += fmt.Sprintf(" %s is %s to %s.", p.Label, p.Kind.Format(p.Min, s), p.Kind.Format(p.Max, s))
		refusal.Suggest = ""
	} else if p.Kind == units.Count && err == nil {
		refusal.Message += " Write the number alone: " + p.Kind.Format(v, s) + "."
		refusal.Suggest = ""
	}
	return &refusal
}

// spelled is a value as it is shown and, where that has feet in it and few inches, in
// inches alone first.
func (p Param) spelled(v float64, s units.System) (first, second string) {
	const inchesSaid = 100 // from eight feet on nobody counts in inches
	text := p.Kind.Format(v, s)
	inches := units.SmallLength.Format(v, s)
	if p.Kind == units.Length && v < inchesSaid*units.Inch && inches != text {
		return inches, text
	}
	return text, ""
}

// meant lists the units in which a number without one would be inside the range, two
// at most, each as it is typed.
func (p Param) meant(text string, s units.System) []string {
	if !p.isLength() {
		return nil
	}
	bare := strings.TrimSpace(text)
	if strings.ContainsFunc(bare, func(r rune) bool { return !strings.ContainsRune("0123456789., -"+fractions, r) }) {
		return nil
	}
	order := []string{"ft", "mm", "m", "cm"}
	if s == units.Metric {
		order = []string{"m", "cm", "in", "ft"}
	}
	var fit []string
	for _, unit := range order {
		fraction := strings.ContainsAny(bare, fractions)
		v, _, err := p.Kind.Parse(bare+" "+unit, s)
		if err == nil && v >= p.Min && v <= p.Max && !(fraction && strings.Contains("mm cm m", unit)) && len(fit) < 2 {
			fit = append(fit, bare+" "+unit)
		}
	}
	return fit
}

func (p Param) isLength() bool {
	switch p.Kind {
	case units.Length, units.SmallLength, units.Offset, units.Thickness:
		return true
	}
	return false
}

// oddBeside are the odd numbers inside the range on either side of an even one.
func (p Param) oddBeside(v float64) []Shown {
	var odd []Shown
	for _, n := range []float64{v - 1, v + 1} {
		if n >= p.Min && n <= p.Max {
			odd = append(odd, Shown{p.Kind, n})
		}
	}
	return odd
}

// outside says that a value is past the range and what the range is.
func (p Param) outside(v float64) Fault {
	how := "little"
	switch long := p.Key == "length"; {
	case long && v > p.Max:
		how = "long"
	case long:
		how = "short"
	case v > p.Max:
		how = "much"
	}
	ends := []Shown{{p.Kind, p.Min}, {p.Kind, p.Max}}
	if math.Abs(v) > showable {
		return NewFault(p.Key, "This is too "+how+"; this page takes %s to %s.", ends...)
	}
	return NewFault(p.Key, "%s is too "+how+"; this page takes %s to %s.", append([]Shown{{p.Kind, v}}, ends...)...)
}
