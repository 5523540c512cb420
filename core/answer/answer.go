// Package answer is every number the page and the paper give: its value, how it
// is known, how it was worked out with the user's own numbers, and where the rule
// comes from. Results, warnings and tables are listed here once; the form of
// showing them is for others.
package answer

import "barkwright/core/units"

// Basis is how a number is known.
type Basis string

// The four of them. One is no better than another: what is computed is exact of a shape
// that was assumed, and what is published is one boat's.
const (
	Computed       Basis = "computed from your shape"
	Published      Basis = "from a published rule"
	CommonPractice Basis = "common practice"
	Estimate       Basis = "estimate"
)

// Group is a step of the work that results and tables belong to.
type Group string

// The groups, in the order of the work.
const (
	BarkAndFrame Group = "Bark and frame"
	BedAndSheer  Group = "Bed and sheer heights"
	Gunwales     Group = "Gunwale marks and lacing"
	Ends         Group = "Ends"
	Ribs         Group = "Ribs"
	SeamsAndRoot Group = "Seams and root"
	Materials    Group = "Materials to gather"
	OnTheWater   Group = "On the water"
)

// Groups lists them in their order.
func Groups() []Group {
	return []Group{BarkAndFrame, BedAndSheer, Gunwales, Ends, Ribs, SeamsAndRoot, Materials, OnTheWater}
}

// Number is one result.
type Number struct {
	Key   string
	Group Group
	Kind  units.Kind
	// Value in the kind's SI unit. Where Word is set it is the word's place in its
	// scale.
	Value float64
	// Low and High bound an estimate; both are Value where there is no range.
	Low, High float64
	// Word stands in place of the value: a verdict, or the state of a number that
	// has no value, such as will not fit.
	Word string
	// Absent says that there is no number in this state: Value stands for nothing.
	Absent bool
	Basis  Basis
	// Up says that too little of it spoils the work: it is rounded upward.
	Up bool
	// Working is the rule in words with the user's numbers.
	Working func(units.System) string
	Source  string

	awaited bool   // it follows when the slider rests
	label   string // with a # for each of named
	named   []term
}

// Label names the number, in the reader's units.
func (n Number) Label(s units.System) string { return filled(n.label, n.named, s) }

// naming gives the numbers that the label speaks of.
func (n Number) naming(terms ...term) Number {
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
	case n.Basis == Estimate:
		format = n.Kind.Rough
	}
	if n.Low != n.High {
		low, high := format(n.Low, s), format(n.High, s)
		if low != high {
			return low + " to " + high
		}
	}
	return format(n.Value, s)
}

// number starts a computed result without a range.
func number(g Group, key, label string, k units.Kind, v float64, source string, working func(units.System) string) Number {
	return Number{Key: key, label: label, Group: g, Kind: k, Value: v, Low: v, High: v, Basis: Computed, Working: working, Source: source}
}

// by gives a result another basis.
func (n Number) by(b Basis) Number {
	n.Basis = b
	return n
}

// up makes a result an estimate that is rounded upward.
func (n Number) up() Number {
	n.Up = true
	return n.by(Estimate)
}

// between makes a result an estimate with a range.
func (n Number) between(low, high float64) Number {
	n.Low, n.High, n.Basis = low, high, Estimate
	return n
}

// in sets the word shown in place of the value.
func (n Number) in(word string) Number {
	n.Word = word
	return n
}

// absent says in a word why there is no number.
func (n Number) absent(why string) Number {
	n.Value, n.Low, n.High, n.Absent = 0, 0, 0, true
	return n.in(why)
}
