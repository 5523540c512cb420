package pattern

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"barkwright/core/frame"
)

// mostChosen bounds what is read as a choice of ribs, in bytes: every rib of the
// longest boat written out takes under half of it.
const mostChosen = 1000

// ReadRibs reads which ribs' sections are wanted, named as the table of ribs names
// them: "1, 5-8, 12", or "middle" for the one under the middle thwart. The numbers
// come back from the middle outward, each once; nothing written is nil, the usual
// ones. ribs are the boat's, from the middle outward. The error says in one line
// what cannot be read or is not there, and which ribs there are.
func ReadRibs(text string, ribs []frame.Rib) ([]int, error) {
	first, last := ribs[0].Number, ribs[len(ribs)-1].Number
	there := " This boat's ribs are " + nameOfRib(first) + " to " + nameOfRib(last) + "."
	if first == 0 {
		there = " This boat's ribs are the middle one and 1 to " + nameOfRib(last) + "."
	}
	if len(text) > mostChosen {
		return nil, errors.New("This is longer than all the ribs written out." + there)
	}
	wanted := make([]bool, last+1)
	var missing []string
	for _, part := range ribParts(text) {
		from, to, ok := ribSpan(part)
		switch {
		case !ok:
			return nil, fmt.Errorf("%.20q is not read as ribs: write numbers and spans, such as 1, 5-8.%s", part, there)
		case from < first || to > last:
			missing = append(missing, part)
			continue
		}
		for n := from; n <= to; n++ {
			wanted[n] = true
		}
	}
	switch {
	case len(missing) == 1:
		return nil, fmt.Errorf("There is no rib %.20s.%s", missing[0], there)
	case len(missing) > 1:
		return nil, fmt.Errorf("There are no ribs %.60s.%s", strings.Join(missing, ", "), there)
	}
	var chosen []int
	for n, is := range wanted {
		if is {
			chosen = append(chosen, n)
		}
	}
	return chosen, nil
}

// ribParts splits at commas, semicolons and spaces, but for spaces beside a span's
// hyphen or dash.
func ribParts(text string) []string {
	text = strings.NewReplacer("–", "-", "—", "-", "‑", "-", "−", "-", ",", " ", ";",
		" ").Replace(strings.ToLower(text))
	fields := strings.Fields(text)
	var parts []string
	for i, f := range fields {
		if i > 0 && (strings.HasPrefix(f, "-") || strings.HasSuffix(fields[i-1], "-")) {
			parts[len(parts)-1] += f
		} else {
			parts = append(parts, f)
		}
	}
	return parts
}

// ribSpan reads one rib or a span of them, written either way round.
func ribSpan(part string) (from, to int, ok bool) {
	a, b, span := strings.Cut(part, "-")
	from, ok = ribNumber(a)
	if !span || !ok {
		return from, from, ok
	}
	to, ok = ribNumber(b)
	return min(from, to), max(from, to), ok
}

// noRib is a number that no rib has, for one written too large to hold.
const noRib = 1 << 30

func ribNumber(text string) (int, bool) {
	if text == nameOfRib(0) {
		return 0, true
	}
	if text == "" || strings.Trim(text, "0123456789") != "" {
		return 0, false
	}
	n, err := strconv.Atoi(text)
	if err != nil || n == 0 {
		return noRib, true
	}
	return n, true
}

// nameOfRib is a rib's number as builders read it.
func nameOfRib(number int) string {
	if number == 0 {
		return "middle"
	}
	return strconv.Itoa(number)
}

// SectionRibs names the ribs whose sections are drawn for a choice, in order: those
// chosen that the boat has, or its usual ones.
func SectionRibs(f frame.Frame, chosen []int) string {
	var names []string
	for _, r := range sectionRibs(f, chosen) {
		names = append(names, nameOfRib(r.Number))
	}
	return strings.Join(names, ", ")
}

// sectionRibs are the ribs chosen; where there are none, the one nearest the middle,
// the one nearest each other thwart, and the last.
func sectionRibs(f frame.Frame, chosen []int) []frame.Rib {
	var out []frame.Rib
	for _, n := range chosen {
		if at := n - f.Ribs[0].Number; at < len(f.Ribs) && at >= 0 {
			out = append(out, f.Ribs[at])
		}
	}
	if len(out) > 0 {
		return out
	}
	out = append(out, f.Ribs[0])
	add := func(r frame.Rib) {
		if r.Number > out[len(out)-1].Number {
			out = append(out, r)
		}
	}
	for _, t := range f.Thwarts[1:] {
		best := f.Ribs[0]
		for _, r := range f.Ribs {
			if abs(r.Run-t.Run) < abs(best.Run-t.Run) {
				best = r
			}
		}
		add(best)
	}
	add(f.Ribs[len(f.Ribs)-1])
	return out
}

func abs(v float64) float64 { return max(v, -v) }
