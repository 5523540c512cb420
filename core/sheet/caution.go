package sheet

import (
	"barkwright/core/draw"
	"barkwright/core/known"
	"barkwright/core/stage"
)

// respect is printed on the sheet of the boat.
const respect = "Birchbark canoes are a living technology of Indigenous nations, whose builders are the " +
	"authorities. These sheets come from a geometry and materials calculator and represent no nation's tradition. " +
	"Its starting rules follow one building example and boats measured off drawings, all in one book (" +
	known.BarkCanoes + "). Indigenous builders made those boats; the book tells whose. Other builders and other nations " +
	"work otherwise, and they are the authority: change anything to match the person who teaches you. No community has " +
	"reviewed these sheets."

// cautions adds the stage's one box of cautions, each with its word beside it.
func (s *stageSheet) cautions() {
	all := s.Cautions
	if ask, ok := s.AskFirst(); ok {
		all = append([]stage.Hazard{ask}, all...)
	}
	if len(all) == 0 {
		return
	}
	const pad, gap = 2.0, 1.0
	signal := 0.0
	for _, h := range all {
		signal = max(signal, draw.Lettered(signalWord(h), s.letter, true)+3)
	}
	var texts [][]string
	high, words, rim := 2*pad-gap, "", ruleLine
	for _, h := range all {
		lines := draw.Wrapped(h.Text, s.letter, false, s.width-2*pad-signal)
		texts = append(texts, lines)
		high += leading*s.letter*float64(len(lines)) + gap
		words += string(h.Signal) + ": " + h.Text + " "
		if h.Signal == stage.Danger || h.Signal == stage.Warning {
			rim = 2 * ruleLine
		}
	}
	letter, width := s.letter, s.width
	s.add(strip{high: high, words: words, draw: func(on *paper, top float64) {
		on.box(0, top, width, high, rim)
		y := top + pad
		for i, h := range all {
			on.lines(pad, y, []string{signalWord(h)}, letter, true, draw.Start)
			on.lines(pad+signal, y, texts[i], letter, false, draw.Start)
			y += leading*letter*float64(len(texts[i])) + gap
		}
	}})
}

// signalWord is the hazard's word with the sign of alert where someone can be hurt.
func signalWord(h stage.Hazard) string {
	if h.Signal == stage.Notice {
		return string(h.Signal)
	}
	return "⚠ " + string(h.Signal)
}
