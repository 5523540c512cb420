package sheet

import (
	"slices"

	"barkwright/core/answer"
	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/stage"
)

// pair is a number on a sheet: what it is and what it says.
type pair struct{ label, value string }

// on are the results that a stage's sheet shows, in the order of the work.
func on(all []answer.Number, k stage.Key) []answer.Number {
	return slices.DeleteFunc(slices.Clone(all), func(n answer.Number) bool { return !n.On(k) })
}

// numbers adds results as label, value and how it is known.
func (s *stageSheet) numbers(all []answer.Number) {
	pairs := make([]pair, len(all))
	for i, n := range all {
		pairs[i] = pair{n.Label(s.System), n.Text(s.System)}
		if n.Basis != known.Computed {
			pairs[i].label += " (" + string(n.Basis) + ")"
		}
	}
	s.pairs(pairs)
}

// pairs adds numbers in two columns, or in one on a narrow sheet.
func (f *flow) pairs(all []pair) {
	const gutter, least = 7.0, 80.0
	columns := 1
	if (f.width-gutter)/2 > least {
		columns = 2
	}
	width := (f.width - gutter*float64(columns-1)) / float64(columns)
	for from := 0; from < len(all); from += columns {
		row := all[from:min(from+columns, len(all))]
		labels, values := make([][]string, len(row)), make([][]string, len(row))
		high, words := 0.0, ""
		for i, p := range row {
			room := min(draw.Lettered(p.value, f.letter, true), 0.5*width)
			values[i] = draw.Wrapped(p.value, f.letter, true, room+0.01)
			labels[i] = draw.Wrapped(p.label, f.letter, false, width-room-2.5)
			high = max(high, leading*f.letter*float64(max(len(labels[i]), len(values[i])))+2*f.pad)
			words += p.label + ": " + p.value + ". "
		}
		st := strip{high: high, words: words, draw: func(s *paper, top float64) {
			for i := range row {
				x := float64(i) * (width + gutter)
				s.lines(x, top+f.pad, labels[i], f.letter, false, draw.Start)
				s.lines(x+width, top+f.pad, values[i], f.letter, true, draw.End)
				s.rule(hairLine, x, top+high, x+width, top+high)
			}
		}}
		// Neither the first row nor the last stands alone.
		last := (len(all) - 1) / columns * columns
		st.tied = from < last && (from == 0 || from == last-columns)
		if from == 0 {
			st.space = 2
		}
		f.add(st)
	}
}

// checks adds checks, word first.
func (s *stageSheet) checks(all []answer.Warning) {
	if len(all) == 0 {
		return
	}
	g := grid{title: "Checks", head: []string{"Of", "It stands", "Why, and what helps"}}
	for _, c := range all {
		g.rows = append(g.rows, []square{{text: c.Label, words: true, bold: true},
			{text: shapes[c.State] + " " + c.Word, words: true, bold: true}, {text: c.Text(s.System) + ".", words: true}})
	}
	s.grid(g)
}

// shapes are the states' shapes on paper, beside their words.
var shapes = [...]string{answer.Within: "✓", answer.Near: "◐", answer.Beyond: "⬣", answer.NotChecked: "☐"}
