package units

import (
	"errors"
	"fmt"
	"strings"
	"unicode"
)

// tidy brings the spellings keyboards and phones give one mark to one
// spelling: characters of ASCII's width, straight quotes, plain hyphens, a plain slash, single
// spaces.
func tidy(text string) string {
	text = marks.Replace(strings.Map(narrow, text))
	text = strings.ReplaceAll(text, "''", `"`)
	return strings.Join(strings.Fields(text), " ")
}

// narrow is the ASCII character of a full-width one (Unicode Standard, block Halfwidth and Fullwidth
// Forms), and any other as it is.
func narrow(r rune) rune {
	const first, last, ascii = '！', '～', '!'
	if r >= first && r <= last {
		return r - first + ascii
	}
	return r
}

var marks = strings.NewReplacer(
	"′", "'", "’", "'", "‘", "'", "‛", "'", "´", "'", "`", "'", "ʹ", "'",
	"″", `"`, "”", `"`, "“", `"`, "„", `"`, "‟", `"`, "ʺ", `"`,
	"−", "-", "–", "-", "‐", "-", "‑", "-",
	"⁄", "/", "∕", "/",
	"½", " 1/2", "¼", " 1/4", "¾", " 3/4",
	"⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8",
	"⅓", " 1/3", "⅔", " 2/3", "⅙", " 1/6", "⅚", " 5/6",
)

type tokenKind int

const (
	end tokenKind = iota
	number
	slash
	hyphen
	word
)

// token of a number holds it without the marks between its thousands, and in raw
// as it was typed.
type token struct {
	kind      tokenKind
	text, raw string
	// grouped tells that spaces or apostrophes parted the thousands, so that a comma
	// or a point in it is the decimal one.
	grouped bool
}

// tokens splits a tidied text into numbers, marks and words, with one end token
// after them. A comma after a word only separates. Where grouped is set, a space or
// an apostrophe before exactly three digits parts thousands.
func tokens(text string, grouped bool) ([]token, error) {
	var list []token
	runes := []rune(text)
	for i := 0; i < len(runes); {
		start := i
		r := runes[i]
		i++
		switch {
		case r == ' ':
		case isDigit(r) || (r == '.' || r == ',') && i < len(runes) && isDigit(runes[i]):
			groups := start
			if grouped {
				groups = endOfGroups(runes, start)
			}
			i = max(i, groups)
			for i < len(runes) && (isDigit(runes[i]) || runes[i] == '.' || runes[i] == ',') {
				i++
			}
			raw := string(runes[start:i])
			list = append(list, token{number, groupMarks.Replace(raw), raw, groups > start})
		case r == '/':
			list = append(list, token{kind: slash, text: "/"})
		case r == '-':
			list = append(list, token{kind: hyphen, text: "-"})
		case r == '\'' || r == '"':
			list = append(list, token{kind: word, text: string(r)})
		case unicode.IsLetter(r):
			for i < len(runes) && unicode.IsLetter(runes[i]) {
				i++
			}
			list = append(list, token{kind: word, text: strings.ToLower(string(runes[start:i]))})
			if i < len(runes) && runes[i] == '.' {
				i++
			}
		case r == ',' && len(list) > 0 && list[len(list)-1].kind == word:
		default:
			return nil, fmt.Errorf(`"%c" is not understood here.`, r)
		}
	}
	return append(list, token{}), nil
}

func isDigit(r rune) bool { return r >= '0' && r <= '9' }

// quantity is a number as written: 15.5, 3 1/2, 3-1/2 or 3/4.
type quantity struct {
	value    float64
	fraction bool
	// other says what else the digits may mean, nil for nothing.
	other *twoReadings
}

// readQuantity reads the quantity at the start of list and returns the tokens
// after it. A hyphen is only ever a joiner of inches and their fraction.
func readQuantity(list []token) (quantity, []token, error) {
	if list[0].kind != number {
		return quantity{}, nil, fmt.Errorf("A number is missing%s.", before(list[0]))
	}
	if list[1].kind == slash {
		v, rest, err := readFraction(list)
		return quantity{value: v, fraction: true}, rest, err
	}
	v, other, err := readDecimal(list[0])
	if err != nil {
		return quantity{}, nil, err
	}
	rest := list[1:]
	joined := rest
	if rest[0].kind == hyphen {
		joined = rest[1:]
	}
	if joined[0].kind != number || joined[1].kind != slash {
		return quantity{value: v, other: other}, rest, nil
	}
	if strings.ContainsAny(list[0].text, ".,") {
		return quantity{}, nil, fmt.Errorf("%s has both decimals and a fraction after it.", list[0].raw)
	}
	part, rest, err := readFraction(joined)
	if err != nil {
		return quantity{}, nil, err
	}
	if part >= 1 {
		return quantity{}, nil, fmt.Errorf("The fraction after %s is not less than one.", list[0].raw)
	}
	return quantity{value: v + part, fraction: true}, rest, nil
}

func readFraction(list []token) (float64, []token, error) {
	if list[2].kind != number {
		return 0, nil, errors.New("The number under the fraction is missing.")
	}
	over, under := list[0].raw, list[2].raw
	if strings.ContainsAny(over+under, ".,") {
		return 0, nil, fmt.Errorf("A fraction takes whole numbers, not %s/%s.", over, under)
	}
	n, _, err := readDecimal(list[0])
	if err != nil {
		return 0, nil, err
	}
	d, _, err := readDecimal(list[2])
	if err != nil {
		return 0, nil, err
	}
	if d == 0 {
		return 0, nil, errors.New("A fraction cannot have zero under the line.")
	}
	return n / d, list[3:], nil
}

func before(t token) string {
	if t.kind == end {
		return " at the end"
	}
	return fmt.Sprintf(" before %q", t.text)
}
