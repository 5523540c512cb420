package gather

import (
	"math"

	"barkwright/core/design"
	"barkwright/core/frame"
	"barkwright/core/hull"
	"barkwright/core/units"
	"barkwright/core/wood"
)

// Kind is a kind of piece.
type Kind int

// The kinds, in the order of the list.
const (
	Inwales Kind = iota
	Outwales
	Caps
	Ribs
	Stems
	Headboards
	Sheathing
	Thwarts
)

// Piece is one kind of part to be got out: how many, how long and how thick.
type Piece struct {
	Kind Kind
	// Name is what builders call it: each thwart has its own.
	Name  string
	Count int
	// Spares are beyond Count, for those that break.
	Spares int
	// Length of the longest of them with what is trimmed off; Width and Thickness
	// as finished.
	Length, Width, Thickness float64
	// Mass of those that go into the boat.
	Mass Range
	// Height of their middle over the bottom amidships.
	Height float64
	Log    Log
}

// Log is the tree or the part of one that a piece comes from.
type Log int

// The logs, in the order of the list.
const (
	GunwaleLog Log = iota
	// RibLog is that of ribs, headboards and stems of one wood; RibsAloneLog and StemLog
	// are in its place where the stems are of another.
	RibLog
	RibsAloneLog
	StemLog
	SheathingLog
	Hardwood
)

// String names the log by what comes out of it.
func (l Log) String() string {
	return [...]string{"gunwales", "ribs, stems and headboards", "ribs and headboards", "stems", "sheathing", "thwarts"}[l]
}

// noSpecies stands for a hardwood that the bend guide has no figures for.
const noSpecies wood.Species = -1

// species is the wood of a log.
func (l Log) species(d design.Design) wood.Species {
	switch l {
	case GunwaleLog:
		return d.GunwaleStock.Species
	case RibLog, RibsAloneLog:
		return d.RibStock.Species
	case StemLog:
		return d.StemStock.Species
	case SheathingLog:
		return wood.NorthernWhiteCedar
	}
	return noSpecies
}

// ribAndStemLogs are the logs of ribs and headboards and of stems: a bolt of one wood
// gives none of another.
func ribAndStemLogs(d design.Design) (ribs, stems Log) {
	if d.RibStock.Species == d.StemStock.Species {
		return RibLog, RibLog
	}
	return RibsAloneLog, StemLog
}

// Wood says what the log is to be of.
func (l Log) Wood(d design.Design) string {
	if of := l.species(d); of != noSpecies {
		return of.Name()
	}
	return "maple or the like"
}

// Logs lists them in their order.
func Logs() []Log {
	return []Log{GunwaleLog, RibLog, RibsAloneLog, StemLog, SheathingLog, Hardwood}
}

const (
	// EndTrim is what a timber is longer in the rough than finished, at each end. Estimate.
	EndTrim = 2 * units.Inch
	trim    = 2 * EndTrim
	// RibTrim is the same of a rib, until it has been tried: somewhat longer than required
	// (Adney and Chapelle 1964, p. 51); how much, common practice.
	RibTrim = 1 * units.Inch
	// thwartThickness and thwartTaper: 7/8 in stock of 3 in, worked away to about
	// two thirds of its volume. Adney and Chapelle 1964, pp. 38-40; the share is an
	// estimate.
	thwartThickness = 0.875 * units.Inch
	thwartTaper     = 2.0 / 3
)

// spareShare is how many more to split out, by the verdict of the bend. Estimate.
var spareShare = [...]float64{wood.WithinGuide: 0.05, wood.NearLimit: 0.15, wood.TooTight: 0.30, wood.NotChecked: 0}

// ribSpares is spareShare by where the tightest rib that bends whole falls. Estimate.
var ribSpares = [...]float64{wood.EasyRib: 0.05, wood.PublishedRib: 0.15, wood.ColdRib: 0.15,
	wood.TighterThanMost: 0.30, wood.TighterThanAny: 0.30}

func spares(n int, v wood.Verdict) int { return int(math.Ceil(float64(n) * spareShare[v])) }

func pieces(h *hull.Hull, f frame.Frame) []Piece {
	d := h.Design
	top := gunwaleHeight(h)
	gunwale := d.GunwaleStock.Species.Density()
	long := func(kind Kind, name string, length, width, thickness, volume float64, v wood.Verdict) Piece {
		return Piece{Kind: kind, Name: name, Count: 2, Spares: spares(2, v), Length: length + trim, Width: width,
			Thickness: thickness, Mass: weigh(2*volume, gunwale), Height: top, Log: GunwaleLog}
	}
	g := f.Gunwales
	all := []Piece{
		long(Inwales, "inwales", g.Inwale, d.InwaleDepth, d.InwaleThickness, frame.InwaleVolume(h),
			max(g.InwalePlan.Verdict, g.InwaleSheer.Verdict)),
		long(Outwales, "outwales", g.Outwale, d.OutwaleDepth, d.OutwaleThickness,
			g.Outwale*d.OutwaleDepth*d.OutwaleThickness,
			max(g.OutwalePlan.Verdict, g.OutwaleSheer.Verdict, g.OutwaleEnd.Verdict)),
		long(Caps, "caps", g.Cap, d.CapWidth, d.CapThickness, g.CapVolume(h),
			max(g.CapPlan.Verdict, g.CapSheer.Verdict, g.CapEnd.Verdict)),
		ribPieces(h, f),
		stemPieces(h, f),
		headboardPieces(h, f),
		sheathingPieces(h, f),
	}
	return append(all, thwartPieces(f)...)
}

// gunwaleHeight is the mean height of the gunwales over the bottom amidships.
func gunwaleHeight(h *hull.Hull) float64 { return (h.Sheer(0)*2 + h.Sheer(h.GunwaleX)) / 3 }

func ribPieces(h *hull.Hull, f frame.Frame) Piece {
	d := h.Design
	log, _ := ribAndStemLogs(d)
	p := Piece{Kind: Ribs, Name: "ribs", Count: d.Ribs, Width: max(d.RibWidthMid, d.RibWidthEnd),
		Thickness: max(d.RibThickness, d.RibThicknessEnd), Log: log}
	volume, height := 0.0, 0.0
	worst := wood.EasyRib
	for _, r := range f.Ribs {
		n := 2.0
		if r.Alone() {
			n = 1
		}
		v := n * r.Area(d) * r.Thickness
		volume += v
		height += v * r.Height
		p.Length = max(p.Length, r.Length+2*RibTrim)
		if !r.Broken {
			worst = max(worst, r.Bend.Rib(d.RibStock))
		}
	}
	p.Spares = int(math.Ceil(float64(d.Ribs) * ribSpares[worst]))
	p.Mass, p.Height = weigh(volume, d.RibStock.Species.Density()), height/volume
	return p
}

func stemPieces(h *hull.Hull, f frame.Frame) Piece {
	d := h.Design
	v := wood.WithinGuide
	if len(f.Stem.Laminations) > 0 {
		v = f.Stem.Innermost().Verdict
	}
	_, log := ribAndStemLogs(d)
	return Piece{Kind: Stems, Name: "stem-pieces", Count: 2, Spares: spares(2, v), Length: f.Stem.Blank,
		Width: f.Stem.Stock, Thickness: d.StemWidth,
		Mass: weigh(2*f.Stem.Curve*d.StemDepth*d.StemWidth,
			d.StemStock.Species.Density()), Height: d.EndHeight / 2, Log: log}
}

func headboardPieces(h *hull.Hull, f frame.Frame) Piece {
	b := f.Headboard
	log, _ := ribAndStemLogs(h.Design)
	return Piece{Kind: Headboards, Name: "headboards", Count: 2, Length: b.Sprung + trim, Width: b.Width,
		Thickness: frame.HeadboardThickness,
		Mass: weigh(2*b.Sprung*b.Width*frame.HeadboardThickness,
			wood.Cedar.Density()), Height: h.Sheer(b.X) - b.Height/2, Log: log}
}

func sheathingPieces(h *hull.Hull, f frame.Frame) Piece {
	d, s := h.Design, f.Sheathing
	p := Piece{Kind: Sheathing, Name: "sheathing strips", Count: s.Strips, Spares: spares(s.Strips, wood.WithinGuide),
		Width: d.SheathingWidth, Thickness: d.SheathingThickness, Log: SheathingLog}
	for _, r := range s.Regions {
		p.Length = max(p.Length, r.Length+trim)
	}
	p.Mass = weigh(s.Area*d.SheathingThickness, wood.Cedar.Density())
	p.Height = f.Ribs[0].Height
	return p
}

func thwartPieces(f frame.Frame) []Piece {
	var all []Piece
	for i, t := range f.Thwarts {
		n := 2
		if i == 0 {
			n = 1
		}
		all = append(all, Piece{Kind: Thwarts, Name: frame.ThwartName(i, len(f.Thwarts)), Count: n, Length: t.Longest +
			trim, Width: frame.ThwartWidth, Thickness: thwartThickness,
			Mass: weigh(float64(n)*t.EndToEnd*frame.ThwartWidth*thwartThickness*thwartTaper,
				wood.Maple.Density()), Height: t.Height, Log: Hardwood})
	}
	return all
}
