package hull

import (
	"barkwright/core/design"
	"barkwright/core/shape"
)

// Lines is a design's plan, sheer and bottom as far as the heel, enough for
// HalfBeam, Sheer and Bottom and far quicker than New: for searches that ask for
// thousands of boats. Its end, gunwale, edge and turn line are empty.
func Lines(d design.Design) *Hull {
	plan := d.Gunwale()
	return &Hull{
		Design: d, GunwaleX: d.HalfGunwale(), HeelX: d.HeelX(), HeadX: d.HeadX(),
		plan: plan, frameRise: shape.NewRise(d.FrameFull), endSlope: plan.EndSlope(),
	}
}

// Profile is Lines with the end's profile.
func Profile(d design.Design) *Hull {
	h := Lines(d)
	h.End = h.newEnd()
	return h
}
