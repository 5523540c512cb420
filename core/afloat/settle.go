package afloat

import "math"

// settle returns the attitude at which the boat comes to rest when it heels from
// upright towards the heavy side, or to starboard where neither is. It steps
// in heel until the righting arm turns positive, then closes in on that heel. The
// attitude's state is Swamped if water comes over the gunwale first or no heel to
// 90 degrees holds the boat.
func (b *Body) settle(load Load, water Water, upright Attitude) Attitude {
	mirrored := load.Centre.Y > 0
	if mirrored {
		load.Centre.Y = -load.Centre.Y
		upright = mirror(upright)
	}
	t := b.tilt(0)
	at := func(heel float64, start Waterplane) Attitude {
		t.turn(heel)
		a, _ := t.attitude(load, water, start)
		return a
	}
	low, rest := upright, upright
	for i := 1; i <= searchSteps; i++ {
		rest = at(mostHeel*float64(i)/searchSteps, low.Waterplane)
		if rest.State == NotConverged {
			return rest
		}
		if rest.State == Swamped || rest.Arm >= 0 {
			break
		}
		low = rest
	}
	wet := rest.State == Swamped
	if rest.Arm >= 0 {
		inner := closeIn(low, rest, func(a Attitude) float64 { return a.Arm }, at)
		if inner.State == Floats {
			rest, wet = inner, false
		}
	}
	if wet {
		rest = closeIn(low, rest, func(a Attitude) float64 { return -a.Freeboard }, at)
		rest.State = Swamped
	} else if rest.Arm < -restArm {
		rest.State = Swamped
	}
	if mirrored {
		rest = mirror(rest)
	}
	return rest
}

// restArm is the righting arm taken as zero, m: the search in heel ends nearer.
const restArm = 1e-6

// closeIn finds, between two attitudes, the heel at which value passes from
// negative to positive: the chord's root, with the value at an end that stays put
// halved so that both ends move (the Illinois rule).
func closeIn(low, high Attitude, value func(Attitude) float64, at func(float64, Waterplane) Attitude) Attitude {
	vl, vh := value(low), value(high)
	mid := high
	for high.Waterplane.Heel-low.Waterplane.Heel > angleTolerance {
		share := min(max(vl/(vl-vh), leastShare), 1-leastShare)
		mid = at(low.Waterplane.Heel+share*(high.Waterplane.Heel-low.Waterplane.Heel), low.Waterplane)
		if mid.State == NotConverged {
			return mid
		}
		switch v := value(mid); {
		case math.Abs(v) < valueTolerance:
			return mid
		case v < 0:
			low, vl, vh = mid, v, vh/2
		default:
			high, vh, vl = mid, v, vl/2
		}
	}
	return mid
}

// leastShare keeps a tried heel off the ends of its bracket, where an upright boat
// has a righting arm of zero too.
const leastShare = 1e-3

func mirror(a Attitude) Attitude {
	a.Waterplane.Heel = -a.Waterplane.Heel
	a.Arm = -a.Arm
	a.Buoyancy.Y = -a.Buoyancy.Y
	a.FreeboardAt.Y = -a.FreeboardAt.Y
	return a
}
