package gather

import (
	"math"

	"barkwright/core/bark"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/wood"
)

// List is everything to gather and what the boat made of it weighs.
type List struct {
	Pieces []Piece
	Logs   []LogNeed
	// Billets is how many billets the ribs are split from, four to each.
	Billets int
	Bark    Skin
	Root    Bundle
	Pitch   Range
	Pegs    int
	// Weight is of the finished boat, and Centre where its middle is.
	Weight Range
	Centre geom.Vec3
}

// LogNeed is one log: the clear length and the girth it must have at least, if one
// log is to give all that comes from it.
type LogNeed struct {
	Log      Log
	Clear    float64
	Diameter float64
	Girth    float64
	Volume   float64 // of the finished pieces and spares
}

// Skin is the bark to gather.
type Skin struct {
	Sheets        int
	Width, Length float64
	Tree          bark.Tree
	Mass          Range
}

// Bundle is the root to gather for lacing and seams together.
type Bundle struct {
	bark.Root
	Mass Range
}

const (
	// ribsPerBillet: a billet two ribs thick and two wide gives four. Adney and
	// Chapelle 1964, p. 18.
	ribsPerBillet = 4
	// splitLoss is how much larger a piece is split than finished: a quarter each
	// way. Estimate.
	splitLoss = 1.25
	// logYield is the share of a log's section that gives clear heartwood stock.
	// Estimate.
	logYield = 0.3
	// pitchTypical and the other two are kg of pitch a metre of seam. No amount is
	// printed in any source looked at: estimate.
	pitchLow, pitchTypical, pitchHigh = 0.03, 0.06, 0.09
	// rootThickness is the thickness of a split root as a share of its width.
	// Estimate; the lacing's turns are measured on the same.
	rootThickness = 0.5
)

// Gather rolls up the materials of a boat.
func Gather(h hull.Hull, f frame.Frame, b bark.Layout) List {
	d := h.Design
	l := List{Pieces: pieces(h, f), Pegs: f.Lacing.Pegs}
	ribs := d.Ribs
	for _, p := range l.Pieces {
		if p.Name == "ribs" {
			ribs += p.Spares
		}
	}
	l.Billets = (ribs + ribsPerBillet - 1) / ribsPerBillet
	l.Logs = logNeeds(l.Pieces)
	l.Bark = Skin{Sheets: b.Needs.Sheets, Width: d.SheetWidth, Length: d.SheetLength, Tree: b.Needs.TreeSheet,
		Mass: weigh(b.Needs.Area*d.BarkThickness, wood.BirchBark.Density())}
	l.Root = bundle(h, f, b)
	seams := 0.0
	for _, s := range b.Seams {
		seams += s.Length
	}
	l.Pitch = Range{seams * pitchLow, seams * pitchTypical, seams * pitchHigh}
	l.weigh(h, f)
	return l
}

func bundle(h hull.Hull, f frame.Frame, b bark.Layout) Bundle {
	d := h.Design
	r := Bundle{Root: bark.NewRoot(f.Lacing.Total+b.Root.Split, d.RootWaste)}
	r.Mass = weigh(r.Split*d.RootWidth*d.RootWidth*rootThickness, wood.Root.Density())
	return r
}

// weigh adds the boat up. Bark, root and pitch are taken at the height of the
// sheathing: the skin's own middle.
func (l *List) weigh(h hull.Hull, f frame.Frame) {
	skin := ribHeight(h, f.Ribs[0])
	moment := 0.0
	add := func(m Range, height float64) {
		l.Weight.Low += m.Low
		l.Weight.Typical += m.Typical
		l.Weight.High += m.High
		moment += m.Typical * height
	}
	for _, p := range l.Pieces {
		add(p.Mass, p.Height)
	}
	add(l.Bark.Mass, skin)
	add(l.Root.Mass, h.Sheer(0))
	add(l.Pitch, skin)
	l.Centre = geom.Vec3{Z: moment / l.Weight.Typical}
}

func logNeeds(pieces []Piece) []LogNeed {
	var all []LogNeed
	for _, log := range Logs() {
		n := LogNeed{Log: log}
		section := 0.0
		for _, p := range pieces {
			if p.Log != log {
				continue
			}
			k := float64(p.Count + p.Spares)
			n.Clear = math.Max(n.Clear, p.Length)
			n.Volume += k * p.Length * p.Width * p.Thickness
		}
		if n.Clear > 0 {
			section = n.Volume / n.Clear
		}
		n.Diameter = math.Sqrt(4 * section * splitLoss * splitLoss / (math.Pi * logYield))
		n.Girth = math.Pi * n.Diameter
		all = append(all, n)
	}
	return all
}
