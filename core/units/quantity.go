package units

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"unicode"
)

// tidy brings the spellings keyboards and phones give one mark to one
// spelling: straight quotes, plain hyphens, a plain slash, single spaces.
func tidy(text string) string {
	text = marks.Replace(text)
	text = strings.ReplaceAll(text, "''", `"`)
	return strings.Join(strings.Fields(text), " ")
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

type token struct {
	kind tokenKind
	text string
}

// tokens splits a tidied text into numbers, marks and words, with one end token
// after them. A comma after a word only separates.
func tokens(text string) ([]token, error) {
	var list []token
	runes := []rune(text)
	for i := 0; i < len(runes); {
		start := i
		r := runes[i]
		i++
		switch {
		case r == ' ':
		case isDigit(r) || (r == '.' || r == ',') && i < len(runes) && isDigit(runes[i]):
			for i < len(runes) && (isDigit(runes[i]) || runes[i] == '.' || runes[i] == ',') {
				i++
			}
			list = append(list, token{number, string(runes[start:i])})
		case r == '/':
			list = append(list, token{slash, "/"})
		case r == '-':
			list = append(list, token{hyphen, "-"})
		case r == '\'' || r == '"':
			list = append(list, token{word, string(r)})
		case unicode.IsLetter(r):
			for i < len(runes) && unicode.IsLetter(runes[i]) {
				i++
			}
			list = append(list, token{word, strings.ToLower(string(runes[start:i]))})
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
}

// readQuantity reads the quantity at the start of list and returns the tokens
// after it. A hyphen is only ever a joiner of inches and their fraction.
func readQuantity(list []token) (quantity, []token, error) {
	if list[0].kind != number {
		return quantity{}, nil, fmt.Errorf("A number is missing%s.", before(list[0]))
	}
	if list[1].kind == slash {
		v, rest, err := readFraction(list)
		return quantity{v, true}, rest, err
	}
	v, err := readDecimal(list[0].text)
	if err != nil {
		return quantity{}, nil, err
	}
	rest := list[1:]
	joined := rest
	if rest[0].kind == hyphen {
		joined = rest[1:]
	}
	if joined[0].kind != number || joined[1].kind != slash {
		return quantity{value: v}, rest, nil
	}
	if strings.ContainsAny(list[0].text, ".,") {
		return quantity{}, nil, fmt.Errorf("%s has both decimals and a fraction after it.", list[0].text)
	}
	part, rest, err := readFraction(joined)
	if err != nil {
		return quantity{}, nil, err
	}
	if part >= 1 {
		return quantity{}, nil, fmt.Errorf("The fraction after %s is not less than one.", list[0].text)
	}
	return quantity{v + part, true}, rest, nil
}

func readFraction(list []token) (float64, []token, error) {
	if list[2].kind != number {
		return 0, nil, errors.New("The number under the fraction is missing.")
	}
	over, under := list[0].text, list[2].text
	if strings.ContainsAny(over+under, ".,") {
		return 0, nil, fmt.Errorf("A fraction takes whole numbers, not %s/%s.", over, under)
	}
	n, err := readDecimal(over)
	if err != nil {
		return 0, nil, err
	}
	d, err := readDecimal(under)
	if err != nil {
		return 0, nil, err
	}
	if d == 0 {
		return 0, nil, errors.New("A fraction cannot have zero under the line.")
	}
	return n / d, list[3:], nil
}

// readDecimal reads digits with at most one decimal point or comma. A comma
// with three digits after it may mean thousands: reading it wrongly wastes
// bark, so it is refused, but for a leading zero, which leaves one meaning.
func readDecimal(text string) (float64, error) {
	if strings.Count(text, ".")+strings.Count(text, ",") > 1 || strings.HasSuffix(text, ",") {
		return 0, fmt.Errorf("%s is not one number.", text)
	}
	if before, after, found := strings.Cut(text, ","); found && len(after) == 3 && strings.Trim(before, "0") != "" {
		return 0, fmt.Errorf("%s may mean %s%s or %s.%s: write one of them.", text, before, after, before, after)
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err != nil {
		return 0, fmt.Errorf("%s is not a number.", text)
	}
	return v, nil
}

func before(t token) string {
	if t.kind == end {
		return " at the end"
	}
	return fmt.Sprintf(" before %q", t.text)
}
