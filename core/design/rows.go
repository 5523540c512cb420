package design

import (
	"math"

	"barkwright/core/stage"
	"barkwright/core/units"
)

// table is built once from the rows below and never changed.
var table = tie(boatRows(), sheerRows(), bedRows(), endRows(), timberRows(), rootRows(), crewRows(), withinRows())

// tie joins the groups and gives each dependent row its bit.
func tie(groups ...[]Param) []Param {
	var all []Param
	bit := Owned(1)
	for _, rows := range groups {
		for _, p := range rows {
			if p.follow != nil {
				p.own = bit
				bit <<= 1
			}
			all = append(all, p)
		}
	}
	return all
}

// ownedBy is the bit of a dependent row.
func ownedBy(key string) Owned {
	p, _ := Lookup(key)
	return p.own
}

// row fills what every row of the table needs.
func row(home stage.Key, key, label, help string) Param {
	return Param{Home: home, Key: key, Label: label, Help: help}
}

// hull makes the row a length of the hull: inches, steps 1/4 in and 5 mm.
func (p Param) hull(inches, least, most float64, at func(*Design) *float64) Param {
	p.Kind = units.Length
	return p.inches(inches, least, most, 0.25, 0.005, at)
}

// timber makes the row a size of timber, bark or root: steps 1/16 in and 1 mm.
func (p Param) timber(inches, least, most float64, at func(*Design) *float64) Param {
	p.Kind = units.SmallLength
	return p.inches(inches, least, most, 1.0/16, 0.001, at)
}

// signed lets a length be entered below zero.
func (p Param) signed() Param {
	p.Kind = units.Offset
	return p
}

func (p Param) inches(value, least, most, step, metric float64, at func(*Design) *float64) Param {
	p.Default, p.Min, p.Max = value*units.Inch, least*units.Inch, most*units.Inch
	p.StepInch, p.StepMetric = step*units.Inch, metric
	p.get, p.put = number(at)
	return p
}

// shape makes the row a plain number.
func (p Param) shape(value, least, most, step float64, at func(*Design) *float64) Param {
	p.Kind = units.Ratio
	p.Default, p.Min, p.Max, p.StepInch, p.StepMetric = value, least, most, step, step
	p.get, p.put = number(at)
	return p
}

// wholes makes the row a count.
func (p Param) wholes(value, least, most int, at func(*Design) *int) Param {
	p.Kind = units.Count
	p.Default, p.Min, p.Max, p.StepInch, p.StepMetric = float64(value), float64(least), float64(most), 1, 1
	p.get, p.put = wholeNumber(at)
	return p
}

// choices makes the row a choice among named options, the first by default.
func choices[T ~int](p Param, options []string, at func(*Design) *T) Param {
	p.Kind, p.Options = units.Count, options
	p.Max, p.StepInch, p.StepMetric = float64(len(options)-1), 1, 1
	p.get, p.put = wholeNumber(at)
	return p
}

// follows makes the row a dependent one. The rule may use only rows above it and
// rows that do not follow.
func (p Param) follows(rule func(Design) float64) Param {
	p.follow = rule
	return p
}

// exactly makes the row a dependent one whose value is not rounded to a step: the
// same as another row's, or solved from others.
func (p Param) exactly(rule func(Design) float64) Param {
	p.exact = true
	return p.follows(rule)
}

// quantity makes the row a number of a kind with its own steps, all SI.
func (p Param) quantity(k units.Kind, value, least, most float64, steps [2]float64, at func(*Design) *float64) Param {
	p.Kind = k
	p.Default, p.Min, p.Max, p.StepInch, p.StepMetric = value, least, most, steps[0], steps[1]
	p.get, p.put = number(at)
	return p
}

// names lists the options of a choice.
func names[T any](all []T, name func(T) string) []string {
	out := make([]string, len(all))
	for i, v := range all {
		out[i] = name(v)
	}
	return out
}

func number(at func(*Design) *float64) (func(*Design) float64, func(*Design, float64)) {
	return func(d *Design) float64 { return *at(d) },
		func(d *Design, v float64) { *at(d) = v }
}

func wholeNumber[T ~int](at func(*Design) *T) (func(*Design) float64, func(*Design, float64)) {
	return func(d *Design) float64 { return float64(*at(d)) },
		func(d *Design, v float64) { *at(d) = T(math.Round(v)) }
}
