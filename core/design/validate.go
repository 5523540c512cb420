package design

import (
	"math"
	"unicode/utf8"

	"barkwright/core/units"
)

// The longest texts, in characters: a name fits one line of a printed sheet, the
// notes half of one. Choices of this project.
const (
	MaxName  = 80
	MaxNotes = 2000
)

// Validate returns everything about a design that is out of range or cannot be
// built, as far as algebra alone can tell; hull and frame know the rest. It returns nil
// for a design without faults.
func Validate(d Design) []Fault {
	faults := append(textFaults(d), onHandFaults(d.OnHand)...)
	near, clean := d, true
	for i := range table {
		p := &table[i]
		if p.free(&d) {
			continue
		}
		if wrong := p.faults(&d); wrong != nil {
			faults, clean = append(faults, wrong...), false
			p.put(&near, p.nearest(p.get(&d)))
		}
	}
	if clean {
		for i := range table {
			if p := &table[i]; p.free(&d) {
				faults = append(faults, p.faults(&d)...)
			}
		}
	} else {
		// The relations are asked of the nearest numbers in range, so that one
		// absurd number is not reported at every control.
		near = Follow(near)
	}
	return append(faults, relationFaults(near)...)
}

// nearest is the value in range that stands in for a faulty one.
func (p Param) nearest(v float64) float64 {
	if math.IsNaN(v) {
		return p.Default
	}
	return max(p.Min, min(p.Max, v))
}

func textFaults(d Design) []Fault {
	var faults []Fault
	for _, text := range []struct {
		key, label, value string
		most              int
	}{{"name", "The name", d.Name, MaxName}, {"notes", "The text of the notes", d.Notes, MaxNotes}} {
		if n := utf8.RuneCountInString(text.value); n > text.most {
			faults = append(faults, NewFault(text.key, text.label+" is %s characters long; %s are kept.",
				Shown{units.Count, float64(n)}, Shown{units.Count, float64(text.most)}))
		}
		if !utf8.ValidString(text.value) {
			faults = append(faults, NewFault(text.key, text.label+" is not readable text."))
		}
	}
	return faults
}

// showable bounds the numbers written out in a fault, in SI; nothing a control
// offers comes near it.
const showable = 1e6

func (p *Param) faults(d *Design) []Fault {
	v := p.get(d)
	switch {
	case math.IsNaN(v):
		return []Fault{NewFault(p.Key, "This is not a number.")}
	case p.NoneAtMin && v == 0:
		return nil
	case p.Options != nil && (v < p.Min || v > p.Max):
		return []Fault{NewFault(p.Key, "There is no such choice.")}
	case v < p.Min:
		return []Fault{p.outside(v)}
	case v > p.Max:
		return []Fault{p.outside(v)}
	case p.Odd && math.Mod(v, 2) == 0:
		odd := p.oddBeside(v)
		sentence := "%s is even: one stands amidships and the rest in pairs. Take %s."
		if len(odd) > 1 {
			sentence = "%s is even: one stands amidships and the rest in pairs. Take %s or %s."
		}
		return []Fault{NewFault(p.Key, sentence, append([]Shown{{p.Kind, v}}, odd...)...)}
	}
	return nil
}
