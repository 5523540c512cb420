// Package inches finds what a metric reader should not meet in a text. Tests of words use it.
package inches

import (
	"regexp"
	"strings"
)

// imperial finds a length in inches or feet, or a mark of either, and the other units of that system. The
// foot of a gore and the word in are none.
var imperial = regexp.MustCompile(`["″′]|\d'|(?i)\b(inch(es)?|feet|ft|yards?|lbs?|lbf|pounds?|mph|miles?)\b|` +
	`°F\b|\d ?in\b`)

// both is a length said in both systems, where a text stands the same for every reader,
// or a share such as 1 in 20.
var both = regexp.MustCompile(`(\d+ ft )?\d[\d./ ]*(to \d+ )?(in|ft) \(\d[\d.]* ((to|of) \d+ )?[cm]?m\b|\d in \d+\b`)

// ownFeet are feet that people and ribs stand on.
var ownFeet = strings.NewReplacer("Keep feet clear", "", "the feet of the last", "", "their feet stand", "")

// In is the first that stands in a text for readers of feet and pounds alone, or empty.
func In(text string) string {
	return imperial.FindString(both.ReplaceAllString(ownFeet.Replace(text), ""))
}
