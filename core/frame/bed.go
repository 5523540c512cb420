package frame

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/shape"
	"barkwright/core/units"
)

// Bed is what the bark is set up on.
type Bed struct {
	// Crosspieces of what the bark is folded up round, of one half from the middle
	// outward: the building frame's, or the thwarts of a boat built on its gunwales.
	Crosspieces []Crosspiece
	// Stakes of one quarter, from the middle outward: each stands for a pair, one
	// to port and one to starboard, and has its like aft.
	Stakes []Stake
	// StakeCount is for the whole bed.
	StakeCount int
	// Posts of one half, from the middle outward.
	Posts []Post
	// Breadth is how broad the ground is levelled.
	Breadth float64
	// Slack is how much longer the bark lies on the bed between the heels than the
	// finished bottom is; less than 0 where it is shorter. An estimate.
	Slack float64
}

// Crosspiece is a bar of the building frame.
type Crosspiece struct{ X, OutToOut, Clear float64 }

// Stake holds the bark up outside the frame.
type Stake struct {
	X, Y float64
	// Beyond marks one past the end of the frame.
	Beyond bool
}

// Post holds the gunwale at its sheer.
type Post struct {
	X float64
	// Length from the bark to the underside of the inwale.
	Length float64
	// Under says what stands over it.
	Under string
}

const (
	// Batten is the width of the building frame's long battens: about 1 1/4
	// in square for an 18 ft canoe. Adney and Chapelle 1964, p. 54.
	Batten = 1.25 * units.Inch
	// StakeSpacing is how far apart the stakes stand at most, and stakeOff how far
	// off the frame. Adney and Chapelle 1964, pp. 40-41: about 24 in, about 1 in.
	StakeSpacing = 24 * units.Inch
	stakeOff     = 1 * units.Inch
	// stakeLast is how far the last pair but one stands from the frame's end, and
	// stakePairHalf half the space in the pair there and beyond. Same pages: about
	// 12 in, 1 1/2 in.
	stakeLast     = 12 * units.Inch
	stakePairHalf = 0.75 * units.Inch
	// BedBroader is how much broader than what is weighed down on it the bed is: about
	// 3 1/2 ft under gunwales 33 in out to out. Same pages, and p. 38.
	BedBroader = 9 * units.Inch
)

// stakesBeyond are how far past the frame's end two more pairs stand: about 12
// and 18 in. Adney and Chapelle 1964, pp. 40-41.
var stakesBeyond = [2]float64{12 * units.Inch, 18 * units.Inch}

// stakesApart is how near two pairs beyond the frame come where the bark ends short of
// their places: one nearer is left out. A choice of this project.
const stakesApart = 3 * units.Inch

func newBed(h *hull.Hull, thwarts []Thwart) Bed {
	var b Bed
	b.Crosspieces = crosspieces(h, thwarts)
	b.Stakes = stakes(h, thwarts)
	b.StakeCount = 4 * len(b.Stakes)
	b.Breadth = 2*h.FrameHalfBreadth(0) + BedBroader
	b.Posts = posts(h, thwarts)
	b.Slack = 2 * (bedLength(h) - bottomLength(h))
	return b
}

// heelPieces is in how many pieces the bed and the bottom are measured to the heel.
const heelPieces = 60

func bedLength(h *hull.Hull) float64 {
	return geom.Length3(func(x float64) geom.Vec3 { return geom.Vec3{X: x, Z: BedHeight(h, x)} }, 0, h.HeelX, heelPieces)
}

func bottomLength(h *hull.Hull) float64 {
	return geom.Length3(func(x float64) geom.Vec3 { return geom.Vec3{X: x, Z: h.Bottom(x)} }, 0, h.HeelX, heelPieces)
}

func posts(h *hull.Hull, thwarts []Thwart) []Post {
	var out []Post
	for i, t := range thwarts {
		out = append(out, Post{t.X, PostLength(h, t.X), ThwartName(i, len(thwarts))})
	}
	return append(out, Post{h.GunwaleX, PostLength(h, h.GunwaleX), "gunwale end"})
}

// ThwartName is what builders call thwart i of n, counted from the middle outward.
func ThwartName(i, n int) string {
	switch {
	case i == 0:
		return "middle thwart"
	case i == n-1:
		return "end thwart"
	case n == 3:
		return "first thwart"
	}
	return [...]string{1: "first thwart", 2: "second thwart", 3: "third thwart"}[i]
}

// BedHeight is the height of the bed with its end blocks under the bark at x, over
// the bed's own ends and the ground beyond them.
func BedHeight(h *hull.Hull, x float64) float64 {
	d := &h.Design
	return d.BedCrown*crownShare(h, x) + d.EndBlocking*shape.Power(math.Abs(x)/h.HeelX, d.RockerSpread)
}

// crownShare is the share of the crown that the bed has at x.
func crownShare(h *hull.Hull, x float64) float64 {
	t := 2 * x / h.Design.BedLength
	return max(0, 1-t*t)
}

// PostLength is the length of a post at x that holds the gunwale at its finished
// height over the heels: it stands on the bark, on the bed.
func PostLength(h *hull.Hull, x float64) float64 {
	d := &h.Design
	atHeel := BedHeight(h, h.HeelX) - h.Bottom(h.HeelX)
	return UnderInwale(h, x) - d.BarkThickness - BedHeight(h, x) + atHeel
}

// crosspieces stand where the thwarts inside the frame do, and half-way between
// the last of them and the frame's end. The gunwales' own are the thwarts, each between
// inwales.
func crosspieces(h *hull.Hull, thwarts []Thwart) []Crosspiece {
	end, batten, onFrame := h.FrameEnd(), Batten, h.Design.BuiltOn == design.OnFrame
	if !onFrame {
		batten = h.Design.InwaleThickness
	}
	var out []Crosspiece
	last := 0.0
	add := func(x float64) {
		w := 2 * h.FrameHalfBreadth(x)
		out = append(out, Crosspiece{x, w, max(0, w-2*batten)})
		last = x
	}
	for _, t := range thwarts {
		if t.X < end {
			add(t.X)
		}
	}
	if onFrame {
		add((last + end) / 2)
	}
	return out
}

// stakes stand no farther apart than StakeSpacing in each bay. From the thwarts they
// stand half of that space, so that no stake comes at a thwart.
func stakes(h *hull.Hull, thwarts []Thwart) []Stake {
	end := h.FrameEnd()
	var out []Stake
	add := func(x float64) {
		out = append(out, Stake{X: x, Y: max(stakePairHalf, h.FrameHalfBreadth(x)+stakeOff)})
	}
	bay := func(from, to float64) {
		n := int(math.Ceil((to - from) / StakeSpacing))
		for i := range n {
			add(from + (to-from)*(float64(i)+0.5)/float64(n))
		}
	}
	from := 0.0
	for _, t := range thwarts[1:] {
		if t.X < end {
			bay(from, t.X)
			from = t.X
		}
	}
	switch rest := end - from; {
	case rest > stakeLast+StakeSpacing/2:
		bay(from, end-stakeLast)
		add(end - stakeLast)
	case rest > stakeLast+thwartRoom/2:
		add(end - stakeLast)
	case rest > thwartRoom:
		// The last thwart stands about where the stake would.
		add((from + end) / 2)
	}
	out = append(out, Stake{X: end, Y: stakePairHalf})
	for _, past := range stakesBeyond {
		x := min(end+past, h.HeelX+h.FlatPastHeel()+hull.FlatSpread)
		if x >= out[len(out)-1].X+stakesApart {
			out = append(out, Stake{X: x, Y: stakePairHalf, Beyond: true})
		}
	}
	return out
}
