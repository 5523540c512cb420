package shape

// blunt keeps the plan smooth amidships: t^a with a under 2 would have a knuckle
// there. A choice of this project.
const blunt = 0.01

// Rise is t^power made smooth at t = 0, from 0 there to 1 at t = 1.
type Rise struct{ power, low, span float64 }

// NewRise is the rise of a power of 1 or more.
func NewRise(p float64) Rise {
	low := Power(blunt, p/2)
	return Rise{p, low, Power(1+blunt, p/2) - low}
}

// At is the rise at t, 0 to 1.
func (r Rise) At(t float64) float64 { return (Power(t*t+blunt, r.power/2) - r.low) / r.span }

// Slope is the derivative by t.
func (r Rise) Slope(t float64) float64 {
	return r.power * t * Power(t*t+blunt, r.power/2-1) / r.span
}

// Bend returns the rise at t with its first and second derivative by t.
func (r Rise) Bend(t float64) (at, first, second float64) {
	u := t*t + blunt
	power := Power(u, r.power/2)
	slope := r.power * power / (u * r.span)
	return (power - r.low) / r.span, slope * t, slope * (1 + (r.power-2)*t*t/u)
}

// TaperBend returns Taper at t with its first and second derivative by t, all 0 at t = 1
// and beyond.
func (r Rise) TaperBend(t, fine float64) (at, first, second float64) {
	if t >= 1 {
		return 0, 0, 0
	}
	rise, slope, bend := r.Bend(t)
	left := 1 - rise
	at = Power(left, fine)
	each := fine * at / left
	return at, -each * slope, each * ((fine-1)*slope*slope/left - bend)
}

// Taper is a half-breadth plan from 1 amidships to 0 at t = 1 and beyond.
func (r Rise) Taper(t, fine float64) float64 {
	if t >= 1 {
		return 0
	}
	return Power(1-r.At(t), fine)
}
