package gather

import (
	"slices"

	"barkwright/core/bark"
	"barkwright/core/frame"
	"barkwright/core/geom"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// List is everything to gather and what the boat made of it weighs.
type List struct {
	Pieces []Piece
	// Bolts are the bolts the pieces are split from, and Logs how many logs of the
	// design's size they are cut from.
	Bolts []BoltNeed
	Logs  int
	// Billets is how many billets the ribs are split from, four to each.
	Billets int
	Gear    []Gear
	Bark    Skin
	Root    Bundle
	Pitch   Range
	Pegs    Pegs
	// Weight is of the finished boat, and Centre where its middle is.
	Weight Range
	Centre geom.Vec3
}

// Range is an estimate with its two ends.
type Range struct{ Low, Typical, High float64 }

func (r Range) plus(o Range) Range {
	return Range{r.Low + o.Low, r.Typical + o.Typical, r.High + o.High}
}

// Skin is the bark to gather, and the mass of what stays in the boat: the skin with
// its laps, and the bark doubled under the gunwales.
type Skin struct {
	Sheets        int
	Width, Length float64
	Tree          bark.Tree
	Mass, Doubled Range
}

// Bundle is the root to gather for lacing and seams together.
type Bundle struct {
	bark.Root
	Strands Strands
	Mass    Range
}

// Pegs are the hardwood pegs of the whole boat: of outwales and caps, and one down through
// each tenon of a thwart (Adney and Chapelle 1964, pp. 38-40).
type Pegs struct{ Outwales, Caps, Thwarts int }

// All is how many there are together.
func (p Pegs) All() int { return p.Outwales + p.Caps + p.Thwarts }

const (
	// RibsPerBillet: a billet two ribs thick and two wide gives four. Adney and
	// Chapelle 1964, p. 18.
	RibsPerBillet = 4
	// PitchBand is how wide a seam is payed and pitchThick how thick, on pitchFaces
	// faces of it: inside before the sheathing, outside last (Adney and Chapelle 1964,
	// pp. 50, 53). No amount is printed in any source looked at: width and thickness
	// are estimates, the thickness half as much more or less.
	PitchBand   = 1.5 * units.Inch
	pitchThick  = 1.0 / 16 * units.Inch
	pitchFaces  = 2
	pitchSpread = 0.5
	// doubledBelow is how far under the outwale the bark is doubled: the strip put on
	// there is trimmed to about 2 in below it (Adney and Chapelle 1964, p. 148). The
	// lacing's turns go round it too.
	doubledBelow = 2 * units.Inch
	// CapPegs is how far apart the pegs of the caps stand, about a foot. Adney and
	// Chapelle 1964, pp. 117, 150.
	CapPegs = 12 * units.Inch
)

// Gather rolls up the materials of a boat.
func Gather(h *hull.Hull, f frame.Frame, b bark.Layout) List {
	d := h.Design
	l := List{Pieces: pieces(h, f)}
	ribs := 0
	for _, p := range l.Pieces {
		if p.Kind == Ribs {
			ribs += p.Count + p.Spares
		}
	}
	l.Billets = (ribs + RibsPerBillet - 1) / RibsPerBillet
	l.Bolts = boltNeeds(d, l.Pieces)
	l.Logs = logCount(d, l.Bolts, d.CedarClear)
	l.Gear = gear(h, f)
	l.Pegs = Pegs{Outwales: f.Lacing.Pegs, Caps: 2 * int(f.Gunwales.Cap/CapPegs), Thwarts: 2 * d.Thwarts}
	l = l.OnBark(h, f, b)
	l.weigh(h, f)
	return l
}

// OnBark is the list with the bark, root and pitch of another layout. The boat's weight
// stays: layouts of one boat differ by grams.
func (l List) OnBark(h *hull.Hull, f frame.Frame, b bark.Layout) List {
	l.Bark = skin(h, f, b)
	l.Root = bundle(h, f, b)
	l.Pitch = pitch(b)
	return l
}

// sheetsUsed counts the sheets that pieces are cut from.
func sheetsUsed(b bark.Layout) int {
	used := map[int]bool{}
	for _, p := range b.Pieces() {
		if !p.Wanting() {
			used[p.Sheet] = true
		}
	}
	return len(used)
}

func skin(h *hull.Hull, f frame.Frame, b bark.Layout) Skin {
	d := h.Design
	density := wood.BirchBark.Density()
	// Two sides; what is left to trim at the edge is cut off.
	strip := 2 * f.Gunwales.Inwale * (max(d.InwaleDepth, d.OutwaleDepth) + doubledBelow)
	return Skin{
		Sheets: sheetsUsed(b), Width: b.SheetWidth, Length: d.SheetLength, Tree: b.Needs.TreeSheet,
		Mass:    weigh((b.Needs.SkinArea+b.Needs.Laps)*d.BarkThickness, density),
		Doubled: weigh(strip*d.BarkThickness, density),
	}
}

func bundle(h *hull.Hull, f frame.Frame, b bark.Layout) Bundle {
	d := h.Design
	r := Bundle{Root: bark.NewRoot(f.Lacing.Total+b.Root.Split, d.RootWaste)}
	r.Strands = CutStrands(d.RootLength, f.Lacing.Count, f.Lacing.Group, b.Seams, d.RootWaste)
	r.Mass = weigh(r.Split*d.RootWidth*d.RootWidth*frame.RootThickness, wood.Root.Density())
	return r
}

func pitch(b bark.Layout) Range {
	seams := 0.0
	for _, s := range b.Seams {
		seams += s.Length
	}
	m := weigh(seams*pitchFaces*PitchBand*pitchThick, wood.Pitch.Density())
	return Range{m.Low * (1 - pitchSpread), m.Typical, m.High * (1 + pitchSpread)}
}

// weigh adds the boat up. Bark and pitch are taken at the height of the sheathing: the
// skin's own middle.
func (l *List) weigh(h *hull.Hull, f frame.Frame) {
	skin := f.Ribs[0].Height
	moment := 0.0
	add := func(m Range, height float64) {
		l.Weight = l.Weight.plus(m)
		moment += m.Typical * height
	}
	for _, p := range l.Pieces {
		add(p.Mass, p.Height)
	}
	add(l.Bark.Mass, skin)
	add(l.Bark.Doubled, gunwaleHeight(h))
	add(l.Root.Mass, h.Sheer(0))
	add(l.Pitch, skin)
	l.Centre = geom.Vec3{Z: moment / l.Weight.Typical}
}

func weigh(volume float64, density wood.Density) Range {
	return Range{volume * density.Low, volume * density.Typical, volume * density.High}
}

// Count is how many pieces of some kinds there are, their spares with them where asked for.
func (l List) Count(spares bool, kinds ...Kind) int {
	n := 0
	for _, p := range l.Pieces {
		if slices.Contains(kinds, p.Kind) {
			n += p.Count
			if spares {
				n += p.Spares
			}
		}
	}
	return n
}
