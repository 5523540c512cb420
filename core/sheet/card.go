package sheet

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/draw"
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

// cards parts a list into cards under its name.
func (s stageSheet) cards(name string, list []pocketLine, cautions bool) []card {
	width, height := cardSize()
	columns := 1
	for _, l := range list {
		if l.runs == 0 {
			columns = max(columns, min(mostBoxes, len(l.done)))
		}
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
