package sheet

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/draw"
	"barkwright/core/lines"
	"barkwright/core/stage"
)

// Cards for a pocket: what the bench lists at a stage, in large letters, a quarter of a page
// each, to be cut apart.

// A page holds cardsAcross by cardsDown cards. cardEdge is the air at a card's edges, mm, and
// cardHead the room of what stands at its head.
const (
	cardsAcross, cardsDown = 2, 2
	cardEdge               = 4.0
	cardHead               = 16.0
	figureLetter           = 16 * point // read at arm's length
	cardLetter             = 9 * point
)

// card is one card, as broad and high as its room inside its edges.
type card struct {
	paper
	words string
}

// cardSize is a card's room inside its edges, mm.
func cardSize() (width, height float64) {
	return pageWidth/cardsAcross - 2*cardEdge, pageHeight/cardsDown - 2*cardEdge
}

// Cards draws what the bench lists at the stages named in the job as cards, several on a page.
func Cards(j Job) []draw.List {
	var cards []card
	for _, key := range j.Cards {
		if st, place, ok := stage.Lookup(key); ok {
			cards = append(cards, j.cardsOf(st, place)...)
		}
	}
	var pages []draw.List
	const each = cardsAcross * cardsDown
	of := strconv.Itoa((len(cards) + each - 1) / each)
	for on := range slices.Chunk(cards, each) {
		p := newPaper("Cards to cut apart, page " + strconv.Itoa(len(pages)+1) + " of " + of)
		var words []string
		wide, high := pageWidth/cardsAcross, pageHeight/cardsDown
		for i, c := range on {
			at := draw.Point{X: float64(i%cardsAcross)*wide + cardEdge, Y: float64(i/cardsAcross)*high + cardEdge}
			p.Put(c.List, at, 1)
			words = append(words, c.words)
		}
		p.cutLine(draw.Point{X: wide}, draw.Point{X: wide, Y: pageHeight})
		p.cutLine(draw.Point{Y: high}, draw.Point{X: pageWidth, Y: high})
		p.Description = strings.Join(words, "\n")
		pages = append(pages, p.List)
	}
	return pages
}

// cutLine is where a page is cut.
func (p *paper) cutLine(from, to draw.Point) {
	p.Add(draw.Stroke{Role: draw.Ink, Points: []draw.Point{from, to}, Width: hairLine, Dash: []float64{3, 2}})
}

// cardsOf are the cards of a stage: its cautions on the first, then its lists. Two lists of the
// same figures are one.
func (j Job) cardsOf(st *stage.Stage, place int) []card {
	var out []card
	had := map[string]bool{}
	for _, b := range st.Bench {
		what := b.Table
		for _, f := range b.Figures {
			what += " " + f.Column
		}
		if had[what] {
			continue
		}
		had[what] = true
		s := stageSheet{Job: j, Stage: st}
		if l := s.pocketList(b); len(l) > 0 {
			out = append(out, s.cards(strconv.Itoa(place)+". "+b.Name, l, len(out) == 0)...)
		}
	}
	return out
}

// pocketLine is a line of a list with what ticks each of its pieces.
type pocketLine struct {
	lines.Line
	done []bool
}

// pocketList is a list with its alike pieces on one line.
func (s stageSheet) pocketList(b stage.Bench) []pocketLine {
	each := lines.Make(s.Canoe, b, s.System).Lines
	b.Apart = false
	var out []pocketLine
	for _, l := range lines.Make(s.Canoe, b, s.System).Lines {
		p := pocketLine{Line: l}
		for _, piece := range each {
			if piece.Key == l.Key || strings.HasPrefix(piece.Key, l.Key+"/") {
				_, done := s.Log.Done(b.Step, piece.Key)
				p.done = append(p.done, done)
			}
		}
		out = append(out, p)
	}
	return out
}

// cards parts a list into cards under its name.
func (s stageSheet) cards(name string, list []pocketLine, cautions bool) []card {
	width, height := cardSize()
	columns := 1
	for _, l := range list {
		columns = max(columns, min(mostBoxes, len(l.done)))
	}
	on := arrange(func(f fit) []strip {
		s.flow = flow{fit: fit{letter: cardLetter, pad: f.pad}, width: width}
		if cautions {
			s.cautions()
		}
		said, alike := listWords(list)
		from := len(s.strips)
		if said != "" {
			s.paragraph(said, cardLetter, 1)
			s.tie(0, true)
		}
		again := slices.Clone(s.strips[from:]) // on every card
		for i, l := range list {
			if l.Alike != "" && l.Alike == alike {
				l.Also = l.Also[1:]
			}
			s.pocketLine(l, columns)
			if i > 0 {
				s.strips[len(s.strips)-1].head = again
			}
		}
		return s.strips
	}, height-cardHead)
	out := make([]card, len(on))
	for i, strips := range on {
		c := card{paper: paper{draw.List{Width: width, Height: height}}}
		c.cardHead(s.Job, name, strconv.Itoa(i+1)+" of "+strconv.Itoa(len(on)))
		words := []string{name}
		for _, st := range strips {
			st.draw(&c.paper, cardHead+st.top)
			if st.words != "" {
				words = append(words, st.words)
			}
		}
		c.words = strings.Join(words, "\n")
		out[i] = c
	}
	return out
}

// cardHead says which list and boat a card is of.
func (p *paper) cardHead(j Job, name, of string) {
	const gap = 3.0
	room := p.Width - draw.Lettered(of, smallLetter, false) - gap
	p.lines(0, 0, []string{cut(name, plainLetter, true, room)}, plainLetter, true, draw.Start)
	p.lines(p.Width, 0.4, []string{of}, smallLetter, false, draw.End)
	said := strings.TrimSpace(j.Head.Mark() + " " + j.Head.Date)
	room = p.Width - draw.Lettered(said, leastCardLetter, false) - gap
	p.lines(0, 6, []string{cut(j.Head.Boat, leastCardLetter, false, room)}, leastCardLetter, false, draw.Start)
	p.lines(p.Width, 6, []string{said}, leastCardLetter, false, draw.End)
	p.lines(0, 9.8, []string{cut(j.System.Rounding(), leastCardLetter, false, p.Width)}, leastCardLetter, false, draw.Start)
	p.rule(ruleLine, 0, cardHead-1.6, p.Width, cardHead-1.6)
}

// leastCardLetter is what a card's head is lettered with, mm.
const leastCardLetter = 8 * point

// listWords say once what the lines of a list say: what all their figures are measured from,
// and which pieces are alike off amidships. They return the latter too.
func listWords(list []pocketLine) (said, alike string) {
	from := list[0].From
	for _, l := range list {
		if l.From != from {
			from = ""
		}
	}
	// Amidships there are fewer, and that line says so.
	alike = list[len(list)-1].Alike
	if from != "" {
		said = "Figures: " + from + ". "
	}
	if alike != "" {
		said += alike + " unless said."
	}
	return strings.TrimSpace(said), alike
}

// mostBoxes are how many boxes stand beside one another.
const mostBoxes = 2

// pocketLine adds one line: a box for each of its pieces in so many columns, what it is, and
// its figure large.
func (f *flow) pocketLine(l pocketLine, columns int) {
	const pitch, air = tickSize + 0.6, 2.0
	left := float64(columns)*pitch + air
	size := figureLetter
	for size > plainLetter && draw.Lettered(l.Figure, size, true) > 0.55*(f.width-left) {
		size -= point
	}
	figure := draw.Wrapped(l.Figure, size, true, 0.55*(f.width-left))
	broad := 0.0
	for _, line := range figure {
		broad = max(broad, draw.Lettered(line, size, true))
	}
	what := draw.Wrapped(l.What, plainLetter, true, f.width-left-broad-air)
	also := draw.Wrapped(strings.Join(l.Also, "; "), cardLetter, false, f.width-left)
	// Both begin on lines of one middle.
	down := (size - plainLetter) * leading / 2
	top := max(float64(len(figure))*size*leading, down+float64(len(what))*plainLetter*leading)
	rows := (len(l.done) + columns - 1) / columns
	high := max(top+float64(len(also))*cardLetter*leading, float64(rows)*pitch+0.4) + 2*f.pad
	f.add(strip{high: high, words: l.What + ": " + l.Figure + " (" + strings.Join(l.Also, "; ") + ")",
		draw: func(p *paper, y float64) {
			y += f.pad
			for i, done := range l.done {
				p.tick(float64(i%columns)*pitch, y+float64(i/columns)*pitch+0.3, done)
			}
			p.lines(left, y+down, what, plainLetter, true, draw.Start)
			p.lines(f.width, y, figure, size, true, draw.End)
			p.lines(left, y+top, also, cardLetter, false, draw.Start)
			p.rule(hairLine, 0, y+high-f.pad, f.width, y+high-f.pad)
		}})
}
