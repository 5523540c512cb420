package sheet

import "barkwright/core/stage"

// respect is printed on the sheet of the boat.
const respect = "Birchbark canoes are a living technology of Indigenous nations, whose builders are the " +
	"authorities. These sheets come from a geometry and materials calculator and represent no nation's tradition. " +
	"Its starting rules follow one building example printed in 1964; other builders and other nations work otherwise."

// cautions writes the stage's one box of cautions.
func (s *page) cautions() {
	s.raw(`<div class="cautions">`)
	if s.Permission != stage.NotAsked {
		s.caution(stage.Permission)
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
