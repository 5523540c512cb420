package design

// Scaled returns the design with every length of the hull and of its building frame and
// bed times k. Bark, timbers, root and crew stay as they are.
func (d Design) Scaled(k float64) Design {
	for _, length := range []*float64{
		&d.Length, &d.Overhang, &d.Beam, &d.GreatestBeam, &d.Depth,
		&d.GunwaleEndHeight, &d.Rocker,
		&d.FrameWidth, &d.FrameLength, &d.TurnWidth, &d.Ease, &d.BedLength, &d.BedCrown, &d.EndBlocking,
		&d.EndHeight, &d.HeadSetback, &d.HeelLength, &d.Headboard,
	} {
		*length *= k
	}
	d.Corrected = d.Corrected.scaled(k)
	return d
}
