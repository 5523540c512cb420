package work

import (
	"barkwright/core/answer"
	"barkwright/core/hull"
	"barkwright/core/record"
)

// mended are the repairs of a log as they were worked out for a boat.
type mended struct {
	hull     *hull.Hull
	notebook *record.Notebook
	all      []answer.Mended
}

// Repairs are those of the log worked out for the boat that stands, once for each boat and log.
func (w *Work) Repairs() []answer.Mended {
	c := w.Canoe()
	if m := &w.mended; m.hull != c.Hull || m.notebook != w.Notebook {
		*m = mended{c.Hull, w.Notebook, answer.Repairs(c, w.Season(), w.Notebook.Log)}
	}
	return w.mended.all
}
