package afloat

import "math"

// Paddling is who drives the boat and how hard.
type Paddling struct {
	Paddlers int
	// Power at the paddle, W each, with its range.
	Least, Power, Most float64
}

// Day is the speed at which the crew could hold a smooth hull of the boat's shape, as an
// estimate, and how far they come in paddlingDay without wind, waves, current or rests.
// Seams, ribs, steering and a bark hull's roughness are not in it.
//
// The slow end takes the least power, the worse paddle and the most push near that
// speed; the fast end the most power, the better paddle and the least wave part near it,
// or the last speed of the curve where they come to more. The distance runs from what
// loaded canoes are commonly paddled at to the fast end. The rest
// holds only with OnCurve: the curve of resistance reaches the crew's power.
type Day struct {
	OnCurve                   bool
	Speed                     float64 // m/s
	SpeedLow, SpeedHigh       float64
	Distance                  float64 // m
	DistanceLow, DistanceHigh float64
}

// DayOn returns the day on a curve of resistance made by Towed.Curve.
func DayOn(curve []Resistance, p Paddling) Day {
	crew := float64(p.Paddlers)
	mid, ok := speedOn(curve, crew*p.Power*PaddleEfficiency, Resistance.Theory)
	low, okLow := speedOn(curve, crew*p.Least*LeastPaddleEfficiency, Resistance.High)
	high, okHigh := speedOn(curve, crew*p.Most*MostPaddleEfficiency,
		func(r Resistance) float64 { return r.Friction + r.WaveLow })
	if !ok || !okLow {
		return Day{}
	}
	if !okHigh {
		high = curve[len(curve)-1].Speed
	}
	slow := min(low, CommonPace)
	return Day{true, mid, low, high, (slow + high) / 2 * paddlingDay, slow * paddlingDay, high * paddlingDay}
}

// speedOn returns the first speed of the curve at which the resistance takes a power.
// Resistance goes nearly as a power of speed, so between speeds 5 % apart the curve is
// joined by straight lines on logarithms. The error is well below 1 %.
func speedOn(curve []Resistance, power float64, force func(Resistance) float64) (float64, bool) {
	for i := 0; i+1 < len(curve); i++ {
		a, b := curve[i], curve[i+1]
		pa, pb := force(a)*a.Speed, force(b)*b.Speed
		if pa <= power && power < pb {
			share := math.Log(power/pa) / math.Log(pb/pa)
			return a.Speed * math.Pow(b.Speed/a.Speed, share), true
		}
	}
	return 0, false
}
