package refit

import (
	"slices"

	"barkwright/core/record"
)

// Prediction is what the rest of a record predicts for a measurement left out of it.
type Prediction struct {
	record.Datum
	// Index is the datum's place in the record.
	Index int
	// Predicted is the value, Error that less the datum, in metres or a count.
	Predicted, Error float64
}

// Predict leaves out the datum at index i, fits the rest and measures the boat there.
// It returns false where the datum is set aside or its place is unknown without it. It
// takes as long as a fit.
func Predict(rec record.Record, i int) (Prediction, bool) {
	if read(rec.Data, rec.System).aside[i] {
		return Prediction{}, false
	}
	d := rec.Data[i]
	rest := build(read(slices.Delete(slices.Clone(rec.Data), i, i+1), rec.System))
	if _, known := rest.ev.stations.where(d); d.Placed() && !known || d.Number > rest.design.OuterThwarts()+1 {
		return Prediction{}, false
	}
	p := Prediction{Datum: d, Index: i, Predicted: rest.measure(finished(rest.design), d)}
	p.Error = p.Predicted - d.Value
	return p, true
}
