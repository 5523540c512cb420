package units

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf8"
)

const (
	// longestText is in runes; the longest sensible entry is under 40.
	longestText = 64
	// largestRead bounds what is read, in SI units of any kind, well inside what
	// can be shown.
	largestRead = 1e6
)

// ParseError says in a plain sentence why an entry could not be read, and what
// to type instead. Suggest can always itself be read.
type ParseError struct {
	Message string
	Suggest string
}

// Error returns the message and the suggestion as full sentences.
func (e *ParseError) Error() string {
	if e.Suggest == "" {
		return e.Message
	}
	return e.Message + " Try " + e.Suggest + "."
}

// Parse reads a number of this kind as typed, with or without a unit, and
// returns it in the SI unit of the kind with an echo of what was understood, such
// as: Read as 15 ft 3 1/2 in (4661 mm). A number without a unit is read in Unit(s);
// two such lengths, or one and a fraction after it, are feet and inches. A refusal
// is a *ParseError.
func (k Kind) Parse(text string, s System) (v float64, echo string, err error) {
	k.in(s)
	v, refusal := k.read(text, s)
	if refusal != nil {
		return 0, "", refusal
	}
	return v, k.echo(v, s), nil
}

func (k Kind) read(text string, s System) (float64, *ParseError) {
	kind := kinds[k]
	example := k.example(s)
	switch {
	case !utf8.ValidString(text):
		return 0, &ParseError{"This text cannot be read.", example}
	case utf8.RuneCountInString(text) > longestText:
		return 0, &ParseError{fmt.Sprintf("This is too long: at most %d characters are read.", longestText), example}
	}
	body := tidy(text)
	negative := strings.HasPrefix(body, "-")
	body = strings.TrimSpace(strings.TrimPrefix(body, "-"))
	switch {
	case body == "":
		return 0, &ParseError{"Nothing is entered here.", example}
	case body[0] == '-':
		return 0, &ParseError{"Only one minus sign is read.", example}
	}
	v, refusal := k.readSize(body, negative, s)
	if refusal != nil {
		if negative && kind.signed && refusal.Suggest != example {
			refusal.Suggest = "−" + refusal.Suggest
		}
		return 0, refusal
	}
	switch {
	case math.Abs(v) > largestRead:
		return 0, &ParseError{"This is far too large for a boat.", example}
	case negative && v != 0 && !kind.signed:
		return 0, &ParseError{"This cannot be less than zero.", k.Format(-v, s)}
	case kind.whole && v != math.Trunc(v):
		return 0, &ParseError{"This has to be a whole number.", k.Format(v, s)}
	}
	return v, nil
}

// readSize reads a tidied text without its sign, and returns the SI value with
// the sign put back: a thermometer's zero is not zero in SI.
func (k Kind) readSize(body string, negative bool, s System) (float64, *ParseError) {
	if k.isLength() {
		v, refusal := k.readLength(body, s)
		if negative {
			v = -v
		}
		return v, refusal
	}
	return k.readPlain(body, negative, s)
}

// example returns an entry that can be read, for where nothing better is known.
func (k Kind) example(s System) string { return k.Format(kinds[k].example, s) }

// echo says what was understood in the user's system and then in the other one,
// where the two differ.
func (k Kind) echo(v float64, s System) string {
	other := Metric
	if s == Metric {
		other = Imperial16
	} else {
		s = Imperial16
	}
	first, second := k.worded(v, s), k.worded(v, other)
	if first == second {
		return "Read as " + first
	}
	return fmt.Sprintf("Read as %s (%s)", first, second)
}

func (k Kind) worded(v float64, s System) string {
	u := k.in(s)
	switch {
	case u.style == feetInches || u.style == inchesOnly:
		negative, f := u.split(v, s)
		if negative {
			return "−" + f.worded()
		}
		return f.worded()
	case k == Thickness && s != Metric:
		return u.text(v, s, "−", " in")
	}
	return k.Format(v, s)
}

// clearer returns the text with the commas for thousands taken out where that
// can be read, or else an example.
func (k Kind) clearer(body string, s System) string {
	if hasThousands(body) {
		plain := strings.ReplaceAll(body, ",", "")
		if _, refusal := k.read(plain, s); refusal == nil {
			return plain
		}
	}
	return k.example(s)
}

// hasThousands says whether every comma in text, and there is one, stands
// between a digit and exactly three more.
func hasThousands(text string) bool {
	pieces := strings.Split(text, ",")
	for i, piece := range pieces[1:] {
		digits := len(piece) - len(strings.TrimLeft(piece, "0123456789"))
		if digits != 3 || !strings.ContainsAny(lastByte(pieces[i]), "0123456789") {
			return false
		}
	}
	return len(pieces) > 1
}

func lastByte(text string) string { return text[max(0, len(text)-1):] }
