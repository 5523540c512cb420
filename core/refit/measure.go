package refit

import (
	"barkwright/core/design"
	"barkwright/core/record"
)

// Measure stands a design beside a record, as Fit does with the boat it finds, and
// fits nothing: what the user makes of the boat afterwards is seen against what
// was measured.
func Measure(d design.Design, rec record.Record) []Row {
	b := &boat{reading: read(rec.Data, rec.System), design: d}
	return b.rows()
}
