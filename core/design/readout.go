package design

// ReadOut returns, for a parameter that other choices decide, its value in SI and one
// sentence for the user that says what decides it. It returns false for a parameter that
// can be set.
func ReadOut(d Design, key string) (v float64, why string, is bool) {
	switch key {
	case "turnWidth":
		return d.turnReadOut()
	case "ease":
		return d.easeReadOut()
	}
	if d.BuiltOn != OnGunwales {
		return 0, "", false
	}
	const frame = "The gunwales with their thwarts are the frame."
	switch key {
	case "frameWidth":
		return d.OutsideBreadth() - 2*d.BarkThickness, frame, true
	case "frameLength":
		return 2 * d.HalfGunwale(), frame, true
	case "frameFull":
		return d.BeamFull, frame, true
	case "frameFine":
		return d.BeamFine, frame, true
	}
	return 0, "", false
}

func (d *Design) turnReadOut() (float64, string, bool) {
	switch {
	case d.Bulges():
		return 2 * d.corner(), "Found from the greatest breadth of bark.", true
	case d.BuiltOn == OnGunwales:
		return 2 * d.corner(), "Found from the bark folded up round the gunwale frame.", true
	}
	return 0, "", false
}

func (d *Design) easeReadOut() (float64, string, bool) {
	switch {
	case d.BuiltOn == OnGunwales && !d.Bulges():
		return d.EaseLeft(), "Bark folded up round the gunwale frame all goes round the finished boat.", true
	case !d.Bulges() && !d.TurnSet():
		return 0, "", false
	case !d.GirthsAgree():
		return d.EaseLeft(), "The frame and the section do not agree: this is the bark on the bed less the bark round the " +
			"finished half.", true
	}
	return d.EaseLeft(), "What the section set leaves: the bark on the bed less the bark round the finished half.", true
}

// corner is the half-breadth of the turn line.
func (d *Design) corner() float64 {
	o := d.Midsection()
	return o.Corner
}
