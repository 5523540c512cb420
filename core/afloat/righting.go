package afloat

// ArmPoint is one heel of a righting curve.
type ArmPoint struct {
	Attitude
	// Firm says that no water has come over the gunwale up to this heel.
	Firm bool
}

// RightingCurve is the righting arm by heel to starboard, the boat free to sink and
// trim at each.
//
// State is Floats where the curve has a firm part; Swamped where water is over the
// gunwale before any heel; Overloaded or NotConverged where there is no curve, and
// then Points is empty. Points after the boat swamps are those of a boat decked at
// the sheer: to be drawn as not firm, or left out.
type RightingCurve struct {
	State   State
	Points  []ArmPoint
	Swamps  bool     // water comes over at or before 90 degrees
	Swamped Attitude // there; its Waterplane.Heel is the angle
	Most    Attitude // the largest arm of the firm part
	// Vanishes says that the arm falls to zero at VanishAt, rad, before water
	// comes over.
	Vanishes bool
	VanishAt float64
}

const badHeelSteps = "afloat: a righting curve needs at least two steps"

// Righting returns the righting curve from 0 to 90 degrees in equal steps. It
// panics on fewer than two.
func (b *Body) Righting(load Load, water Water, steps int) RightingCurve {
	if steps < 2 {
		panic(badHeelSteps)
	}
	t := b.tilt(0)
	plane := t.level(load, water)
	if load.Mass > t.immerse(b.LowestSheer(), 0).volume*water.Density {
		return RightingCurve{State: Overloaded}
	}
	at := func(heel float64, start Waterplane) Attitude {
		t.turn(heel)
		a, _ := t.attitude(load, water, start)
		return a
	}
	c := RightingCurve{Points: make([]ArmPoint, 0, steps+1)}
	firm := true
	for i := 0; i <= steps; i++ {
		a := at(mostHeel*float64(i)/float64(steps), plane)
		if a.State == NotConverged {
			return RightingCurve{State: NotConverged}
		}
		plane = a.Waterplane
		if firm && a.State == Swamped {
			firm, c.Swamps, c.Swamped = false, true, a
			if i == 0 {
				c.State = Swamped
			} else {
				low := c.Points[i-1].Attitude
				c.Swamped = closeIn(low, a, func(a Attitude) float64 { return -a.Freeboard }, at)
			}
		}
		c.Points = append(c.Points, ArmPoint{a, firm})
	}
	c.findMost(at)
	c.findVanishing(at)
	return c
}

// findMost sets the largest arm of the firm part: the largest of its points and of
// the place where it ends, or the top of the parabola through a point and its
// neighbours where that is higher.
func (c *RightingCurve) findMost(at func(float64, Waterplane) Attitude) {
	k := -1
	for i, p := range c.Points {
		if p.Firm && (k < 0 || p.Arm > c.Points[k].Arm) {
			k = i
		}
	}
	if k < 0 {
		return
	}
	c.Most = c.Points[k].Attitude
	if c.Swamps && c.Swamped.Arm > c.Most.Arm {
		c.Most = c.Swamped
	}
	if k == 0 || k+1 >= len(c.Points) || !c.Points[k+1].Firm {
		return
	}
	before, mid, after := c.Points[k-1].Arm, c.Points[k].Arm, c.Points[k+1].Arm
	step := c.Points[k+1].Waterplane.Heel - c.Points[k].Waterplane.Heel
	shift := step / 2 * (before - after) / (before - 2*mid + after)
	if top := at(c.Points[k].Waterplane.Heel+shift, c.Points[k].Waterplane); top.State == Floats && top.Arm > c.Most.Arm {
		c.Most = top
	}
}

// findVanishing sets the heel past the largest arm where the arm falls to zero,
// if the boat is still dry there.
func (c *RightingCurve) findVanishing(at func(float64, Waterplane) Attitude) {
	if !(c.Most.Arm > 0) {
		return
	}
	last := c.Most
	for _, p := range c.Points {
		if p.Waterplane.Heel <= last.Waterplane.Heel {
			continue
		}
		next := p.Attitude
		if !p.Firm {
			next = c.Swamped
		}
		if next.Arm < 0 {
			gone := closeIn(last, next, func(a Attitude) float64 { return -a.Arm }, at)
			c.Vanishes, c.VanishAt = gone.State == Floats, gone.Waterplane.Heel
			return
		}
		if !p.Firm {
			return
		}
		last = next
	}
}
