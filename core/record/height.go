package record

import (
	"errors"
	"fmt"
	"regexp"
	"strings"

	"barkwright/core/units"
)

// heightMark stands in a name's words for a height that was cut out of it.
const heightMark = "up"

var (
	anyLength = `[0-9]+(?:[.,][0-9]+)?(?:[ -][0-9]+/[0-9]+|/[0-9]+| ?[½¼¾⅛⅜⅝⅞])?\s*` +
		`(?:mm|cm|inches|inch|in\b\.?|m\b|"|″|”|'')?`
	// A height is said before its word or after it.
	heightFirst = lazily(`(?i)(?:^|[\s,;(])(?:at\s+)?(` + anyLength + `)\s*` +
		`(?:up\b|high\b|(?:in\s+)?height\b|above the base(?:line| line)?\b)`)
	heightLast = lazily(`(?i)\b(?:at\s+)?(?:a\s+)?height(?:\s+of)?\s+(` + anyLength + `)`)
)

// cutHeight cuts a height out of a text, "" where it says none.
func cutHeight(text string) (height, rest string) {
	for _, form := range []*regexp.Regexp{heightFirst(), heightLast()} {
		if m := form.FindStringSubmatchIndex(text); m != nil {
			return strings.TrimSpace(text[m[2]:m[3]]), text[:m[0]] + " " + text[m[1]:]
		}
	}
	return "", text
}

var errNoHeight = errors.New("Say at what height over the base line: 4 up, amidships.")

// parseHeight reads a height that cutHeight found.
func parseHeight(text string, s units.System) (float64, error) {
	if text == "" {
		return 0, errNoHeight
	}
	v, _, err := units.SmallLength.Parse(text, s)
	switch {
	case err != nil:
		return 0, fmt.Errorf("The height %q cannot be read: %w", short(text), err)
	case v <= 0:
		return 0, errNoHeight
	}
	return v, nil
}

// whereWith is a station's cell with the height that the row's name says.
func (l label) whereWith(cell string) string {
	if l.height == "" {
		return cell
	}
	return cell + ", " + l.height + " up"
}

// takeHeight gives a datum that is taken at a height the one its name says.
func (l label) takeHeight(d *Datum, s units.System) (err error) {
	if !l.kind.AtHeight() {
		return nil
	}
	if l.height != "" || d.At.Height == 0 {
		d.At.Height, err = parseHeight(l.height, s)
	}
	return err
}
