package afloat

import "math"

// Paddling is who drives the boat and how hard.
type Paddling struct {
	Paddlers int
	Power    float64 // W at the paddle, each
}

// Day is how far the crew goes in PaddlingDay without wind, waves, current or
// rests, as an estimate: Speed and Distance in the middle, and their range.
//
// The slow end takes the worse paddle and the most push near that speed; the fast
// end the better paddle and the least wave part near it. No result is better than
// about 5 %. State is Floats where it holds, NoSuchSpeed where the crew's power is
// off the curve given.
type Day struct {
	State                     State
	Speed                     float64 // m/s
	SpeedLow, SpeedHigh       float64
	Distance                  float64 // m
	DistanceLow, DistanceHigh float64
}

// DayOn returns the day on a curve of pushes made by Towed.Curve.
func DayOn(curve []Push, p Paddling) Day {
	power := float64(p.Paddlers) * p.Power
	mid, ok := speedOn(curve, power*PaddleEfficiency, Push.Theory)
	low, okLow := speedOn(curve, power*LeastPaddleEfficiency, Push.High)
	high, okHigh := speedOn(curve, power*MostPaddleEfficiency, func(p Push) float64 { return p.Friction + p.WaveLow })
	if !ok || !okLow || !okHigh {
		return Day{State: NoSuchSpeed}
	}
	return Day{Floats, mid, low, high, mid * PaddlingDay, low * PaddlingDay, high * PaddlingDay}
}

// speedOn returns the first speed of the curve at which the push takes a power. Push
// goes nearly as a power of speed, so between speeds 5 % apart the curve is joined
// by straight lines on logarithms; what that leaves is well below 1 %.
func speedOn(curve []Push, power float64, push func(Push) float64) (float64, bool) {
	for i := 0; i+1 < len(curve); i++ {
		a, b := curve[i], curve[i+1]
		pa, pb := push(a)*a.Speed, push(b)*b.Speed
		if pa <= power && power < pb {
			share := math.Log(power/pa) / math.Log(pb/pa)
			return a.Speed * math.Pow(b.Speed/a.Speed, share), true
		}
	}
	return 0, false
}
