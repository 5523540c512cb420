package flat

import (
	"sort"
	"strings"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/bark"
	"barkwright/core/draw"
	"barkwright/core/units"
	"barkwright/wasm/scene"
)

// cutSheet is a sheet of bark to be drawn with what is cut from it.
type cutSheet struct {
	bark.Sheet
	// number is that of the sheet, or bark.Wanting for a piece that no sheet gives.
	number int
	pieces []bark.Laid
	over   []bark.Offcut
}

// cutSheets lists the sheets, and last each piece that is wanting, as large as the sheet it asks for.
func cutSheets(c core.Canoe) []cutSheet {
	l := c.Bark
	out := make([]cutSheet, len(l.Sheets))
	for i, s := range l.Sheets {
		out[i] = cutSheet{Sheet: s, number: i}
	}
	for _, p := range l.Pieces() {
		if p.Wanting() {
			out = append(out, cutSheet{bark.Sheet{Width: p.Width, Length: p.Length()}, bark.Wanting, []bark.Laid{p}, nil})
			continue
		}
		out[p.Sheet].pieces = append(out[p.Sheet].pieces, p)
	}
	for _, o := range l.Over {
		out[o.Sheet].over = append(out[o.Sheet].over, o)
	}
	return out
}

// SheetCount is how many sheets, and pieces that are wanting, Sheets draws.
func SheetCount(c core.Canoe) int { return len(cutSheets(c)) }

// Sheets draws every sheet of bark with what is cut from it and what is left, at one scale.
func Sheets(c core.Canoe, v scene.View, size draw.Size) draw.List {
	all := cutSheets(c)
	p := pen{Pen: scene.NewPen(v, size)}
	p.List.Title, p.List.Description = "Bark, sheet by sheet", describeSheets(v, all)
	if !p.ReadyFlat(v.Flat) {
		return p.Done()
	}
	p.layRepairs(c)
	places := p.sheetPlaces(all)
	for i, s := range all {
		p.sheet(c, s, places[i])
	}
	// On the bed's first sheet there is the most room.
	p.ScaleBar(places[0].At(0.8*all[0].Length, 0.5*all[0].Width), places[0].Scale)
	return p.Done()
}

func (s cutSheet) name(v scene.View) string {
	if s.number == bark.Wanting {
		return "wanting"
	}
	return "sheet " + units.Count.Format(float64(s.number+1), v.System)
}

// size is a sheet's or a piece's in words.
func (p *pen) size(length, width float64) string {
	return units.Length.RoughUp(length, p.View.System) + " by " + units.Length.RoughUp(width, p.View.System)
}

// sheetPlaces places sheets in rows at the largest scale at which they all have room. A plate's
// origin is a sheet's after port corner on paper: lower left.
func (p *pen) sheetPlaces(all []cutSheet) []scene.Plate {
	t := p.Letter
	long, wide := 0.0, 0.0
	for _, s := range all {
		long, wide = max(long, s.Length), max(wide, s.Width)
	}
	title, pad := 1.8*t, t
	rows, k := 1, 0.0
	for n := 1; n <= len(all); n++ {
		across := float64((len(all) + n - 1) / n)
		rooms := draw.Size{Width: p.List.Width - pad*(across+1), Height: p.List.Height - pad - float64(n)*(title+pad/2)}
		fits := min(rooms.Width/(across*long), rooms.Height/(float64(n)*wide))
		if fits > k {
			rows, k = n, fits
		}
	}
	k = max(1, k)
	across := (len(all) + rows - 1) / rows
	v := p.View.Clamp(draw.Size{Width: p.List.Width, Height: p.List.Height})
	middle := draw.Point{X: p.List.Width / 2, Y: p.List.Height / 2}
	cell := draw.Size{Width: p.List.Width / float64(across), Height: (p.List.Height - pad) / float64(rows)}
	out := make([]scene.Plate, len(all))
	for i, s := range all {
		at := draw.Point{X: cell.Width*(float64(i%across)+0.5) - s.Length*k/2,
			Y: cell.Height*(float64(i/across)+0.5) + title/2 + pad/2 + s.Width*k/2}
		out[i] = scene.Plate{Scale: k * v.Zoom, Origin: draw.Point{X: middle.X + (at.X-middle.X)*v.Zoom + v.PanX,
			Y: middle.Y + (at.Y-middle.Y)*v.Zoom + v.PanY}}
	}
	return out
}

// sheet draws one sheet, its after end to the left.
func (p *pen) sheet(c core.Canoe, s cutSheet, a scene.Plate) {
	at := func(o bark.OnSheet, length, width float64) []draw.Point {
		return a.Place(scene.Rect(o.Along+length/2, length/2, o.Across, o.Across+width))
	}
	whole := at(bark.OnSheet{}, s.Length, s.Width)
	// The larger a piece is, the sooner it is lettered: small ones give way.
	type label struct {
		area float64
		say  func()
	}
	var labels []label
	if s.number != bark.Wanting {
		p.Fill(draw.Ground, whole)
	}
	for _, l := range s.pieces {
		points := at(l.Cut, l.Length(), l.Width)
		switch {
		case l.Wanting():
			p.Fill(draw.Bark, points)
			p.Ring(draw.Ink, scene.StrongWidth, points)
			// Its name stands in a band without a hatch.
			b := draw.BoxOf(points)
			band := min(b.Height()/2, 1.2*p.Letter)
			middle := (b.Top + b.Bottom) / 2
			for _, rows := range [2][2]float64{{b.Top, middle - band}, {middle + band, b.Bottom}} {
				p.Wanting([]draw.Point{{X: b.Left, Y: rows[0]}, {X: b.Right, Y: rows[0]}, {X: b.Right, Y: rows[1]},
					{X: b.Left, Y: rows[1]}})
			}
		case l.Side == bark.OnBed:
			p.bedPiece(c, l, a)
			p.Ring(draw.Ink, scene.StrongWidth, points)
		default:
			p.Area(draw.Bark, draw.Ink, scene.StrongWidth, points)
			p.stripRepairs(c, l, a)
		}
		if name := answer.StripPart(c, l); name != "" {
			p.Part(name, true, points)
		}
		labels = append(labels, label{l.Length() * l.Width, func() { p.pieceName(l, points) }})
	}
	for _, o := range s.over {
		points := at(o.At, o.Length, o.Width)
		p.Dashed(draw.Seam, scene.FineWidth, scene.ShortDash, append(points, points[0])...)
		if o.Length > bark.Hand && o.Width > bark.Hand {
			labels = append(labels, label{o.Length * o.Width, func() {
				p.inside(points, draw.Ground, "left over "+units.Length.Rough(o.Length, p.View.System)+" by "+
					units.Length.Rough(o.Width, p.View.System))
			}})
		}
	}
	sort.SliceStable(labels, func(i, k int) bool { return labels[i].area > labels[k].area })
	for _, l := range labels {
		l.say()
	}
	if s.number != bark.Wanting {
		p.Ring(draw.Ink, p.Outline(a), whole)
	}
	over := a.At(s.Length/2, s.Width)
	n := p.Say(scene.RankTitle, p.sheetTitle(c, s, s.Length*a.Scale), draw.Ink, draw.Paper,
		scene.SpotAt(over.X, over.Y-0.9*p.Letter, draw.Middle))
	n.Text.Bold = true
}

// sheetTitle names a sheet and says as much of it as has room over it.
func (p *pen) sheetTitle(c core.Canoe, s cutSheet, room float64) string {
	title := s.name(p.View)
	more := []string{": " + p.size(s.Length, s.Width)}
	switch {
	case s.number == bark.Wanting:
		more = nil
	case len(s.pieces) == 0:
		more = append(more, ", not used")
	case !c.Bark.Listed:
		more = append(more, ", as set")
	}
	for _, words := range more {
		if draw.Lettered(title+words, p.Letter, true) > room {
			break
		}
		title += words
	}
	return answer.AtStart(title)
}

// bedPiece draws what the boat takes of a sheet on the bed: the bark laid flat as far as the
// sheet's ends, slit at the gores.
func (p *pen) bedPiece(c core.Canoe, l bark.Laid, a scene.Plate) {
	onBed := a
	onBed.Origin = a.At(l.Cut.Along-l.Aft, l.Cut.Across+l.Width/2)
	q := pen{Pen: scene.NewPen(p.View, draw.Size{Width: p.List.Width, Height: p.List.Height})}
	q.Letter, q.Weight = p.Letter, p.Weight
	for _, piece := range p.View.Flat.Pieces() {
		q.flatPiece(c, piece, onBed)
	}
	for _, piece := range p.View.Flat.Pieces() {
		q.flatEdges(c, piece, onBed)
	}
	bed := onTheBed(onBed)
	for _, r := range p.repairs {
		q.repairLines(r, bed)
	}
	low, high := a.At(l.Cut.Along, l.Cut.Across), a.At(l.Cut.Along+l.Length(), l.Cut.Across+l.Width)
	room := draw.Box{Left: low.X, Right: high.X, Top: high.Y, Bottom: low.Y}
	for _, op := range q.List.Ops {
		p.List.Add(draw.Clip(op, room)...)
	}
	for _, r := range p.repairs {
		p.repairNames(r, bed, room)
	}
	if x := p.middleOf(l, onBed); x > 0 {
		p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, draw.Point{X: x, Y: low.Y}, draw.Point{X: x, Y: high.Y})
	}
	p.Dashed(draw.Faint, scene.HairWidth, scene.CentreDash, onBed.At(l.Aft, 0), onBed.At(l.Bow, 0))
}

// middleOf is where the boat's middle lies on a piece, 0 where it does not.
func (p *pen) middleOf(l bark.Laid, onBed scene.Plate) float64 {
	if l.Aft < 0 && l.Bow > 0 {
		return onBed.Origin.X
	}
	return 0
}

// pieceName names a piece and says how large it is cut.
func (p *pen) pieceName(l bark.Laid, points []draw.Point) {
	text := l.Name + ", " + p.size(l.Length(), l.Width)
	n := p.inside(points, draw.Bark, text)
	if l.Wanting() {
		n.Text.Text, n.Text.Role = text+", wanting", draw.Warn
		n.Text.Halo = draw.Paper
	}
	n.Text.Bold = true
}

// inside letters a piece in its middle or elsewhere in it: beside it, the words would be of another.
func (p *pen) inside(points []draw.Point, ground draw.Role, text string) *scene.Note {
	b := draw.BoxOf(points)
	x, y := (b.Left+b.Right)/2, (b.Top+b.Bottom)/2
	n := p.Say(scene.RankPart, text, draw.Ink, ground, scene.SpotAt(x, y, draw.Middle),
		scene.SpotAt(x, y-1.2*p.Letter, draw.Middle), scene.SpotAt(x, y+1.2*p.Letter, draw.Middle),
		scene.SpotAt(b.Left+0.5*p.Letter, y, draw.Start), scene.SpotAt(b.Right-0.5*p.Letter, y, draw.End))
	n.Still = true
	return n
}

// describeSheets says in words what is cut from each sheet.
func describeSheets(v scene.View, all []cutSheet) string {
	var sentences []string
	for _, s := range all {
		var names []string
		for _, l := range s.pieces {
			names = append(names, l.Name)
		}
		switch {
		case s.number == bark.Wanting:
			sentences = append(sentences, "No bark is there for "+strings.Join(names, ", ")+".")
		case len(names) == 0:
			sentences = append(sentences, "Nothing is cut from "+s.name(v)+".")
		default:
			sentences = append(sentences, "From "+s.name(v)+": "+strings.Join(names, ", ")+".")
		}
	}
	return strings.Join(sentences, " ")
}
