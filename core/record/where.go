package record

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"barkwright/core/units"
)

// Sided tells whether a measurement of the kind may be of one half of the boat.
func (k Kind) Sided() bool {
	return k.Placed() || k.Numbered() || k == HeadboardPosition || k == EndHeight
}

// Numbered tells whether the kind is of a thwart by its number and of no station.
func (k Kind) Numbered() bool { return k == ThwartPosition || k == Bay }

// Where says in words where the datum was taken, as ReadWhere reads it. It returns ""
// for kinds that are measured at one place only.
func (d Datum) Where(s units.System) string {
	var words []string
	if d.AtHeight() {
		words = append(words, units.SmallLength.Format(d.At.Height, s)+" up")
	}
	switch {
	case d.Kind == Bay:
		words = append(words, strconv.Itoa(d.Number)+" from the middle")
	case d.Kind == ThwartPosition:
		words = append(words, "thwart "+strconv.Itoa(d.Number), d.At.From.String())
	case d.Kind == HeadboardPosition:
		words = append(words, d.At.From.String())
	case !d.Placed():
	case d.Number > 0:
		words = append(words, "at thwart "+strconv.Itoa(d.Number))
	case d.At.From == FromMiddle && d.At.Distance == 0:
		words = append(words, "amidships")
	case d.At.From == FromGunwaleEnd && d.At.Distance == 0:
		words = append(words, "at the gunwale end")
	default:
		words = append(words, units.Length.Format(d.At.Distance, s)+" "+d.At.From.String())
	}
	if side := d.At.Side.String(); side != "" {
		words = append(words, side)
	}
	return strings.Join(words, ", ")
}

// Named is what the datum is of and where it was taken.
func (d Datum) Named(s units.System) string {
	if where := d.Where(s); where != "" {
		return d.Kind.String() + ", " + where
	}
	return d.Kind.String()
}

// Errors of a place that cannot be read.
var (
	errWhichThwart = errors.New("Say which thwart, counted from the middle: 1, 2, 3.")
	errNoPlace     = errors.New("Say where: amidships, at thwart 1, or a distance such as 24 from the middle, 10 from " +
		"the end, aft.")
)

// ReadWhere reads where a measurement of a kind was taken: a thwart by its number,
// amidships, or a distance from the middle or an end; at what height, where it was taken
// at one; and, for one half of the boat only, forward or aft. Bare numbers are inches, or
// mm where the system is Metric.
func ReadWhere(k Kind, text string, s units.System) (number int, at Place, err error) {
	if !k.Sided() {
		return 0, Place{}, nil
	}
	height := 0.0
	if k.AtHeight() {
		var said string
		said, text = cutHeight(text)
		if height, err = parseHeight(said, s); err != nil {
			return 0, Place{}, err
		}
	}
	set := wordsOf(text)
	before, after := cutAtOrigin(text)
	at = Place{From: originOf(after), Side: readSide(set), Height: height}
	here := wordsOf(before)
	switch {
	case k.Numbered() || k.Placed() && anyOf(here, thwarts):
		for w := range here {
			number = max(number, numbers[w])
		}
		switch {
		case number == 0 && k.Placed() && anyOf(here, middles):
			at.From = FromMiddle
		case number == 0:
			return 0, Place{}, errWhichThwart
		case !k.Numbered():
			at.From = FromMiddle
		}
	case k.Placed() && !strings.ContainsAny(text, "0123456789") &&
		(anyOf(set, gunwale) && anyOf(set, ends) || k.atEnds() && anyOf(here, ends)):
		at.From = FromGunwaleEnd
	case !k.Placed() || anyOf(here, middles) && !strings.ContainsAny(before, "0123456789"):
	default:
		distance := strings.Trim(withoutWords(before), " ,;")
		if distance == "" {
			return 0, Place{}, errNoPlace
		}
		v, _, err := units.Offset.Parse(distance, s)
		if err != nil {
			return 0, Place{}, fmt.Errorf("The distance %q cannot be read: %w", short(distance), err)
		}
		at.Distance = v
		if v < 0 {
			at.Distance, at.Side = -v, Aft
		}
	}
	return number, at, nil
}

// cutAtOrigin parts a text at the word from, or of, that an origin stands behind.
func cutAtOrigin(text string) (before, after string) {
	words := strings.Fields(strings.ToLower(text))
	for i, w := range words {
		if w == "from" || w == "of" {
			return strings.Join(words[:i], " "), strings.Join(words[i+1:], " ")
		}
	}
	return strings.Join(words, " "), ""
}

// withoutWords takes the words for a half of the boat and for the way inboard out of
// a text.
func withoutWords(text string) string {
	var kept []string
	for _, w := range strings.Fields(text) {
		if readSide(wordsOf(w)) == BothEnds && strings.Trim(w, ",;") != "inboard" {
			kept = append(kept, w)
		}
	}
	return strings.Join(kept, " ")
}
