package work

import (
	"strconv"

	"barkwright/core/design"
	"barkwright/core/units"
)

// Stands is where a parameter's control stands, in SI, and what it follows from where it
// shows a number and takes none.
func (w *Work) Stands(p design.Param) (v float64, why string) {
	if v, why, follows := design.ReadOut(w.Entered, p.Key); follows {
		return v, why
	}
	return p.Get(&w.Entered), ""
}

// Control is how a control shows a value: the slider's own, or the place in a list to
// choose from; the text in its field; and what is spoken of the slider.
type Control struct{ Slider, Text, Spoken string }

// Control shows a parameter's value, in SI.
func (w *Work) Control(p design.Param, v float64) Control {
	if p.Options != nil {
		return Control{Slider: strconv.Itoa(int(v))}
	}
	c := Control{Decimal(v / design.SliderUnit(p, w.System)), p.Format(v, w.System), p.Kind.Spoken(v, w.System)}
	if p.NoneAtMin && v <= p.Min {
		c.Spoken = c.Text
	}
	return c
}

// Range is a slider's least, most and step.
func (w *Work) Range(p design.Param) (least, most, step string) {
	one := design.SliderUnit(p, w.System)
	return Decimal(p.Min / one), Decimal(p.Max / one), Decimal(p.Step(w.System) / one)
}

// SetSlider puts a parameter at what its slider or its list stands at.
func (w *Work) SetSlider(p design.Param, at float64) {
	if p.Options == nil {
		at *= design.SliderUnit(p, w.System)
	}
	w.Set(p.Key, at)
}

// Format writes a parameter's value as entered.
func (w *Work) Format(p design.Param) string { return p.Format(p.Get(&w.Entered), w.System) }

// Decimal writes a number for an attribute, without its last bits.
func Decimal(v float64) string { return units.Trimmed(v, 6) }
