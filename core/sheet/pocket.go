package sheet

import (
	"slices"
	"strconv"
	"strings"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/lines"
	"barkwright/core/stage"
)

// pocketLine is a line of a list with what ticks each of its pieces. It may stand for a run of
// lines that say the same: runs are how many.
type pocketLine struct {
	lines.Line
	done []bool
	runs int
}

// leastRun is from how many lines on those that say the same are one, and mostRun the most.
const leastRun, mostRun = 3, 100

// together makes one line of those in a run that say the same but for what they are.
func together(list []pocketLine) []pocketLine {
	var out []pocketLine
	for i := 0; i < len(list); {
		run := list[i]
		n := i + 1
		for n < len(list) && n-i < mostRun && list[n].Figure == run.Figure && list[n].From == run.From &&
			slices.Equal(list[n].Also, run.Also) {
			n++
		}
		if n-i < leastRun {
			n = i + 1
		} else {
			run.What += " to " + answer.InSentence(list[n-1].What) + ": " + strconv.Itoa(n-i) + " alike"
			run.done, run.runs = nil, n-i
			for _, l := range list[i:n] {
				run.done = append(run.done, l.done...)
			}
		}
		out = append(out, run)
		i = n
	}
	return out
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
	return together(out)
}

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
	left, boxesTop := float64(columns)*pitch+air, 0.0
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
	said := top + float64(len(also))*cardLetter*leading
	if l.runs > 0 {
		// Its boxes stand under what it says, as broad as the card.
		columns, boxesTop = int(f.width/pitch), said+0.6
	}
	rows := (len(l.done) + columns - 1) / columns
	high := max(said, boxesTop+float64(rows)*pitch+0.4) + 2*f.pad
	f.add(strip{high: high, words: l.What + ": " + l.Figure + " (" + strings.Join(l.Also, "; ") + ")",
		draw: func(p *paper, y float64) {
			y += f.pad
			for i, done := range l.done {
				p.tick(float64(i%columns)*pitch, y+boxesTop+float64(i/columns)*pitch+0.3, done)
			}
			p.lines(left, y+down, what, plainLetter, true, draw.Start)
			p.lines(f.width, y, figure, size, true, draw.End)
			p.lines(left, y+top, also, cardLetter, false, draw.Start)
			p.rule(hairLine, 0, y+high-f.pad, f.width, y+high-f.pad)
		}})
}
