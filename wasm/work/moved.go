package work

import (
	"strings"

	"barkwright/core/design"
)

// SayMoved returns what the user is told, once, of numbers that differ from those of the
// older page that wrote the boat. It is empty where none differ.
func (w *Work) SayMoved() string {
	var said []string
	for _, m := range w.Moved {
		p, _ := design.Lookup(m.Key)
		said = append(said, p.Label+": "+p.Kind.Format(m.Was, w.System)+" then, "+p.Kind.Format(m.Now,
			w.System)+" now")
	}
	w.Moved = nil
	if said == nil {
		return ""
	}
	return "This boat was written by an older page. What was set stays as it was set; what follows follows today's " +
		"rules. " + strings.Join(said, ". ") +
		". Half girths, ribs, bark and how it floats move with these: print " +
		"again what was printed before."
}
