package bark

import "barkwright/core/hull"

// Across is the greatest breadth of bark asked for between two places along the flat bark.
func (l *Layout) Across(h *hull.Hull, aft, bow float64) float64 {
	d := newDemand(h, l.columns, bottomRun(h), l.FlatLength)
	return d.most(d.full, aft, bow)
}
