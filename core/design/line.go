package design

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode/utf8"

	"barkwright/core/units"
)

// A boat as one line of text: lineMark with the version, then one part for each number that is not
// at its default, and the name; not the notes and the bark on hand. A part is the parameter's code and
// its value: barkwright3_L180_B31.5_Dp305m_nShort. A plain value is in inches,
// pounds or the parameter's own unit, one with m after it in millimetres or
// kilograms. Every character may stand in an address.
//
// What is left out stands at its version's default, so a changed default needs a new
// version.
const (
	lineMark = "barkwright"
	lineJoin = "_"
	lineName = "n"
	// metricMark ends a value written in the metric slider's unit.
	metricMark = "m"
	// MaxLine bounds what is read, in bytes.
	MaxLine = 8 << 10
)

// Line writes the design as one line. Values come back to a billionth of their
// slider's unit: under a nanometre. It fails where a number is not finite.
func Line(d Design) (string, error) {
	parts := []string{lineMark + strconv.Itoa(Version)}
	plain := Default()
	for _, p := range table {
		v := p.get(&d)
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return "", fmt.Errorf("%s is not a number and cannot be written.", p.Label)
		}
		if p.Follows() && p.Owned(d) || !p.Follows() && v != p.get(&plain) {
			parts = append(parts, lineCodes[p.Key]+p.lineValue(v))
		}
	}
	for _, curve := range d.Corrected.Curves() {
		if curve.List.Count != 0 {
			parts = append(parts, curve.code+lineCorrections(curve.List))
		}
	}
	if d.Name != plain.Name {
		parts = append(parts, lineName+escapeName(d.Name))
	}
	return strings.Join(parts, lineJoin), nil
}

// lineValue is the shorter of the value in either system.
func (p Param) lineValue(v float64) string {
	inches := shortest(v / SliderUnit(p, units.Imperial16))
	metric := shortest(v/SliderUnit(p, units.Metric)) + metricMark
	if len(metric) < len(inches) {
		return metric
	}
	return inches
}

// shortest writes x with the fewest decimals, up to nine, that tell it.
func shortest(x float64) string {
	const same = 0.5e-9
	for places := range 9 {
		text := strconv.FormatFloat(x, 'f', places, 64)
		if back, _ := strconv.ParseFloat(text, 64); math.Abs(back-x) <= same {
			return text
		}
	}
	return strconv.FormatFloat(x, 'f', 9, 64)
}

// ReadLine reads a line written by Line, or that line as an address carries it.
// Values out of range are kept for Validate to name. With the design comes what stands
// elsewhere than when an older line was written. The error is one sentence for the user.
func ReadLine(line string) (Design, []Move, error) {
	line = strings.TrimPrefix(strings.TrimSpace(line), "#")
	if len(line) > MaxLine {
		return Design{}, nil, errors.New("This is longer than any boat's line of text.")
	}
	mark, rest, _ := strings.Cut(line, lineJoin)
	version, err := versionOf(mark)
	if err != nil {
		return Design{}, nil, err
	}
	d := DefaultOf(version)
	seen := map[string]bool{}
	for rest != "" {
		var part string
		part, rest, _ = strings.Cut(rest, lineJoin)
		code := part[:len(part)-len(strings.TrimLeftFunc(part, isLetter))]
		if strings.HasPrefix(part, lineName) {
			code = lineName
		}
		if seen[code] {
			return Design{}, nil, fmt.Errorf("The line gives %.20q twice.", code)
		}
		seen[code] = true
		if err := readPart(&d, code, part[len(code):]); err != nil {
			return Design{}, nil, err
		}
	}
	d, moves := Since(version, d)
	return Seated(d), moves, nil
}

func isLetter(r rune) bool { return r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' }

// versionOf reads a line's mark.
func versionOf(mark string) (int, error) {
	number, ours := strings.CutPrefix(mark, lineMark)
	v, err := strconv.Atoi(number)
	switch {
	case !ours || err != nil || v < 1 || number != strconv.Itoa(v):
		return 0, fmt.Errorf("This is not a boat's line of text: one starts with %s%d.", lineMark, Version)
	case v > Version:
		return 0, fmt.Errorf("This line is of version %d and this page reads up to %d: open it with a newer page.", v,
			Version)
	}
	return v, nil
}

func readPart(d *Design, code, value string) error {
	if code == lineName {
		name, whole := unescapeName(value)
		if !whole || !utf8.ValidString(name) {
			return errors.New("The name in the line is damaged.")
		}
		d.Name = name
		return nil
	}
	for _, curve := range d.Corrected.Curves() {
		if code == curve.code {
			list, err := readCorrections(value)
			*curve.List = list
			return err
		}
	}
	p, ok := coded[code]
	if !ok {
		return fmt.Errorf("The line gives %.20q, which no design has.", code)
	}
	system := units.Imperial16
	value, metric := strings.CutSuffix(value, metricMark)
	if metric {
		system = units.Metric
	}
	x, err := strconv.ParseFloat(value, 64)
	v := x * SliderUnit(p, system)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) || p.Whole() &&
		(v != math.Round(v) || math.Abs(v) > math.MaxInt32) {
		return fmt.Errorf("%s: the line gives %.20q, which is not its number.", p.Label, value)
	}
	p.Put(d, v)
	d.Own |= p.own
	return nil
}

// escapeName keeps letters and digits of every script as they are and writes the
// rest so that it may stand in an address.
func escapeName(name string) string {
	var b strings.Builder
	for _, r := range name {
		switch {
		case r >= utf8.RuneSelf || r >= '0' && r <= '9' || r >= 'A' && r <= 'Z' || r >= 'a' && r <= 'z' ||
			strings.ContainsRune("-.!()'", r):
			b.WriteRune(r)
		default:
			fmt.Fprintf(&b, "%%%02X", r)
		}
	}
	return b.String()
}

// unescapeName reads what escapeName wrote, or what a browser made of it: percent-encoded bytes (RFC 3986, 2.1). It
// returns false where a percent sign has no two hexadecimal digits after it. net/url reads the same and puts net/netip
// and unique into the program.
func unescapeName(text string) (string, bool) {
	before, rest, more := strings.Cut(text, "%")
	var b strings.Builder
	b.WriteString(before)
	for more {
		code := rest[:min(len(rest), 2)]
		octet, err := strconv.ParseUint(code, 16, 8)
		if err != nil || len(code) < 2 {
			return "", false
		}
		b.WriteByte(byte(octet))
		before, rest, more = strings.Cut(rest[2:], "%")
		b.WriteString(before)
	}
	return b.String(), true
}
