package answer

import "strconv"

// Names of the pieces of the picture, shared by tables and drawing: a kind and a
// number from the middle outward. Mates share a name.

// RibPart names rib number n, 0 the one under the middle thwart.
func RibPart(n int) string { return "rib." + strconv.Itoa(n) }

// GroupPart names group of lacing i.
func GroupPart(i int) string { return "group." + strconv.Itoa(i) }

// ThwartPart names thwart i, 0 the middle one.
func ThwartPart(i int) string { return "thwart." + strconv.Itoa(i) }

// PostPart names post i, 0 the one under the middle thwart.
func PostPart(i int) string { return "post." + strconv.Itoa(i) }

// CrosspiecePart names crosspiece i of the building frame, 0 the middle one.
func CrosspiecePart(i int) string { return "crosspiece." + strconv.Itoa(i) }

// StakePart names pair of stakes i.
func StakePart(i int) string { return "stake." + strconv.Itoa(i) }

// GorePart names gore i of a side, from the one nearest the middle.
func GorePart(i int) string { return "gore." + strconv.Itoa(i) }

// PanelPart names side panel i of a quarter of the boat, from amidships.
func PanelPart(i int) string { return "panel." + strconv.Itoa(i) }

// JointPart names joint i of the sheets on the bed, from the bow aft.
func JointPart(i int) string { return "joint." + strconv.Itoa(i) }

// SeamPart names seam i of a side panel, from the bow aft.
func SeamPart(i int) string { return "seam." + strconv.Itoa(i) }

// The pieces that are alike at both ends, and those that run the whole length.
const (
	HeadboardPart = "headboard"
	StemPart      = "stem"
	BlockPart     = "block"
	InwalePart    = "inwale"
	OutwalePart   = "outwale"
	CapPart       = "cap"
	SheathingPart = "sheathing"
	BarkPart      = "bark"
	WaterPart     = "water"
	FramePart     = "frame"
	BedPart       = "bed"
)
