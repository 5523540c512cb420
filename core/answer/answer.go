// Package answer is every number the page and the paper give: its value, how it
// is known, how it was worked out with the user's own numbers, and where the rule
// comes from. Results, warnings and tables are listed here once; the form of
// showing them is for others.
package answer

import (
	"barkwright/core/stage"
	"slices"

	"barkwright/core/known"
	"barkwright/core/units"
)

// Number is one result.
type Number struct {
	Key  string
	Home stage.Key
	// Short names it where there is room for two or three words; empty where it stands
	// in no such place.
	Short string
	// OnPaper tells that its home's build sheet shows it.
	OnPaper bool
	Kind    units.Kind
	// Value in the kind's SI unit. Where Word is set it is the word's place in its
	// scale.
	Value float64
	// Low and High bound an estimate; both are Value where there is no range.
	Low, High float64
	// Word stands in place of the value: a verdict, or the state of a number that
	// has no value, such as will not fit.
	Word string
	// Absent says that there is no number in this state: Value has no meaning.
	Absent bool
	// Source is how it is known: the basis, and where the rule is written.
	known.Source
	// Up says that too little of it spoils the work: it is rounded upward.
	Up bool
	// Working is the rule in words with the user's numbers.
	Working func(units.System) string

	awaited bool        // it follows when the slider rests
	also    []stage.Key // whose build sheets show it too
	label   string      // with a # for each of named
	named   []term
}

// Label names the number, in the reader's units.
func (n Number) Label(s units.System) string { return filled(n.label, n.named, s) }

// naming gives the numbers that the label speaks of.
func (n *Number) naming(terms ...term) *Number {
	n.named = terms
	return n
}

// Text is the number as shown, with its range where it has one; an estimate no finer
// than it is good for.
func (n Number) Text(s units.System) string {
	if n.Word != "" {
		return n.Word
	}
	format := n.Kind.Format
	switch {
	case n.Up:
		format = n.Kind.RoughUp
	case n.Basis == known.Estimate:
		format = n.Kind.Rough
	}
	if n.Low != n.High {
		low, high := format(n.Low, s), format(n.High, s)
		if low != high {
			return low + " to " + high
		}
	}
	if n.Kind == units.Run && n.Basis == known.Estimate {
		return "about " + format(n.Value, s)
	}
	return format(n.Value, s)
}

// On tells whether the build sheet of a stage shows the number.
func (n Number) On(k stage.Key) bool {
	return n.OnPaper && n.Home == k || slices.Contains(n.also, k)
}

// number starts a computed result without a range.
func number(h stage.Key, key, label string, k units.Kind, v float64, cited string,
	working func(units.System) string) *Number {
	return &Number{
		Key: key, label: label, Home: h, Kind: k, Value: v, Low: v, High: v, Working: working,
		Source: known.Source{Basis: known.Computed, Cited: cited},
	}
}

// short gives a result the name it goes by in the headline.
func (n *Number) short(name string) *Number {
	n.Short = name
	return n
}

// printed starts a computed result that its home's build sheet shows.
func printed(h stage.Key, key, label string, k units.Kind, v float64, cited string,
	working func(units.System) string) *Number {
	n := number(h, key, label, k, v, cited, working)
	n.OnPaper = true
	return n
}

// on puts a result on the build sheets of other homes too.
func (n *Number) on(also ...stage.Key) *Number {
	n.also = also
	return n
}

// by gives a result another basis.
func (n *Number) by(b known.Basis) *Number {
	n.Basis = b
	return n
}

// upward makes a result one that is rounded upward, whatever its basis.
func (n *Number) upward() *Number {
	n.Up = true
	return n
}

// up makes a result an estimate that is rounded upward.
func (n *Number) up() *Number { return n.upward().by(known.Estimate) }

// between makes a result an estimate with a range.
func (n *Number) between(low, high float64) *Number {
	n.Low, n.High, n.Basis = low, high, known.Estimate
	return n
}

// in sets the word shown in place of the value.
func (n *Number) in(word string) *Number {
	n.Word = word
	return n
}

// absent says in a word why there is no number.
func (n *Number) absent(why string) *Number {
	n.Value, n.Low, n.High, n.Absent = 0, 0, 0, true
	return n.in(why)
}
