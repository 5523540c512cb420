package units

import (
	"errors"
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
	// Or is a second spelling of Suggest, "" for none.
	Or string
	// Example tells that Suggest is not made from what was typed.
	Example bool
}

// Error returns the message and the suggestion as full sentences.
func (e *ParseError) Error() string {
	if e.Suggest == "" {
		return e.Message
	}
	if e.Or != "" {
		return e.Message + " Try " + e.Suggest + " or " + e.Or + "."
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
	switch {
	case !utf8.ValidString(text):
		return 0, k.refuse("This text cannot be read.", s)
	case utf8.RuneCountInString(text) > longestText:
		return 0, k.refuse(fmt.Sprintf("This is too long: at most %d characters are read.", longestText), s)
	}
	body := tidy(text)
	negative := strings.HasPrefix(body, "-")
	body = strings.TrimSpace(strings.TrimPrefix(body, "-"))
	switch {
	case body == "":
		return 0, k.refuse("Nothing is entered here.", s)
	case body[0] == '-':
		return 0, k.refuse("Only one minus sign is read.", s)
	}
	v, refusal := k.readSize(body, negative, s)
	if refusal != nil {
		if negative && kind.signed && !refusal.Example {
			refusal.Suggest = "−" + refusal.Suggest
		}
		return 0, refusal
	}
	switch {
	case math.Abs(v) > largestRead:
		return 0, k.refuse("This is far too large for a boat.", s)
	case negative && v != 0 && !kind.signed:
		return 0, &ParseError{Message: "This cannot be less than zero.", Suggest: k.Format(-v, s)}
	case kind.whole && v != math.Trunc(v):
		return 0, &ParseError{Message: "This has to be a whole number.", Suggest: k.Format(v, s)}
	}
	return v + 0, nil // −0 is 0
}

// refuse offers an example, for where nothing better is known.
func (k Kind) refuse(message string, s System) *ParseError {
	return &ParseError{Message: message, Suggest: k.example(s), Example: true}
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

// Both returns v in both systems, for text that stands the same for every reader:
// 2 in (51 mm).
func (k Kind) Both(v float64) string {
	return k.worded(v, Imperial16) + " (" + k.worded(v, Metric) + ")"
}

func (k Kind) worded(v float64, s System) string {
	u := k.in(s)
	negative, f, ok := u.split(v, s)
	switch {
	case ok && negative:
		return "−" + f.worded()
	case ok:
		return f.worded()
	}
	return k.Format(v, s)
}

// clearer refuses a text and offers it with one reading of the digits that may be
// two, where that can be read, or else an example.
func (k Kind) clearer(err error, body string, s System) *ParseError {
	var two *twoReadings
	if errors.As(err, &two) {
		plain := strings.Replace(body, two.raw, two.first, 1)
		if _, refusal := k.read(plain, s); refusal == nil {
			return &ParseError{Message: err.Error(), Suggest: plain}
		}
	}
	return k.refuse(err.Error(), s)
}

// judge returns the two readings of a quantity where both can be meant: a point that
// would part thousands is a decimal one where that would make more than there is.
func (k Kind) judge(q quantity, si float64) error {
	if q.other != nil && q.other.parted*si <= kinds[k].most {
		return q.other
	}
	return nil
}
