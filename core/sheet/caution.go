package sheet

import (
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

// cautions writes the stage's one box of cautions.
func (s *page) cautions() {
	s.raw(`<div class="cautions">`)
	if ask, ok := s.AskFirst(); ok {
		s.caution(ask)
	}
	for _, h := range s.Cautions {
		s.caution(h)
	}
	s.raw("</div>")
}

func (s *page) caution(h stage.Hazard) {
	s.raw(`<p class="caution ` + string(h.Signal) + `"><b>` + string(h.Signal) + `</b> `)
	s.text(h.Text)
	s.raw("</p>")
}
