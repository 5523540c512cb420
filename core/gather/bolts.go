package gather

import (
	"sort"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/wood"
)

// BoltState says whether a trunk gives the pieces at all.
type BoltState int

// The states of a need of bolts.
const (
	Found BoltState = iota
	// TooShort is a trunk with less clear length than the pieces have.
	TooShort
	// TooThin is one with no room between heart and sapwood for one of them.
	TooThin
)

// BoltNeed is the bolts that one family of pieces is split from: those that come from
// one log. The bolts are as long as the longest piece.
type BoltNeed struct {
	Log    Log
	Wood   string
	Length float64
	State  BoltState
	Uses   []BoltUse
	// Bolts is how many, and Left the share of the last one that is not needed.
	Bolts int
	Left  float64
}

// BoltUse is one kind of piece within a need: how it is split and how many of the
// bolt's sectors it takes.
type BoltUse struct {
	Piece   Piece
	Riving  Riving
	Sectors int
}

// Share is the share of a bolt that the use takes.
func (u BoltUse) Share() float64 { return float64(u.Sectors) / float64(u.Riving.Sectors) }

// TrunkOf is the trunk that the design has to hand.
func TrunkOf(d design.Design) Trunk {
	return Trunk{Diameter: d.CedarDiameter, Clear: d.CedarClear, Heart: d.CedarHeart, Sapwood: d.CedarSapwood}
}

// boltNeeds splits the pieces with their spares out of bolts of the trunk.
func boltNeeds(d design.Design, pieces []Piece) []BoltNeed {
	trunk := TrunkOf(d)
	var all []BoltNeed
	for _, log := range Logs() {
		n := BoltNeed{Log: log, Wood: log.Wood(d)}
		share := 0.0
		for _, p := range pieces {
			if p.Log != log || p.Count == 0 {
				continue
			}
			n.Length = max(n.Length, p.Length)
			u := BoltUse{Piece: p, Riving: trunk.Rive(p.Width, p.Thickness)}
			if each := u.Riving.Each(); each > 0 {
				u.Sectors = (p.Count + p.Spares + each - 1) / each
				share += u.Share()
			} else {
				n.State = TooThin
			}
			n.Uses = append(n.Uses, u)
		}
		switch {
		case len(n.Uses) == 0:
			continue
		case n.State == TooThin:
		case n.Length > trunk.Clear:
			n.State = TooShort
		default:
			n.Bolts = int(geom.Ceil(share))
			n.Left = float64(n.Bolts) - share
		}
		all = append(all, n)
	}
	return all
}

// logCount is how many logs of a clear length the bolts are cut from, those of one
// wood together: the longest first, each from the first log with room for it.
func logCount(d design.Design, needs []BoltNeed, clear float64) int {
	lengths := map[wood.Species][]float64{}
	for _, n := range needs {
		of := n.Log.species(d)
		for range n.Bolts {
			lengths[of] = append(lengths[of], n.Length)
		}
	}
	logs := 0
	for _, all := range lengths {
		sort.Sort(sort.Reverse(sort.Float64Slice(all)))
		var left []float64
		for _, l := range all {
			i := 0
			for i < len(left) && left[i] < l {
				i++
			}
			if i == len(left) {
				left = append(left, clear)
			}
			left[i] -= l
		}
		logs += len(left)
	}
	return logs
}

// FromOneLog is how many of a piece one log gives if all of it goes to them: bolts end
// to end, each split into as many as it gives.
func (t Trunk) FromOneLog(p Piece) (bolts, pieces int) {
	bolts = int(t.Clear / p.Length)
	return bolts, bolts * t.Rive(p.Width, p.Thickness).Count()
}
