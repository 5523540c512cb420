package refit_test

import (
	"fmt"

	"barkwright/core/record"
	"barkwright/core/refit"
	"barkwright/core/units"
)

// What was measured of a canoe is read as it is written down and a design found that has
// it; what the record does not say is held by a rule. The boat is made up.
func ExampleFit() {
	_, data, refused := record.Read("length overall\t16'\nbeam inside the gunwales\t33\ndepth to inwale\t12 1/2\n"+
		"length of the paddle\t60", 0, units.Imperial16)
	for _, r := range refused {
		fmt.Println("not read:", r.Text)
	}
	f := refit.Fit(record.Record{Data: data})
	for _, row := range f.Rows {
		fmt.Println(row.Datum.Named(units.Imperial16)+":", units.Length.Format(row.Model, units.Imperial16)+",", row.State)
	}
	for _, h := range f.Held[:2] {
		fmt.Println("held:", h.Key, "by", h.Rule(units.Imperial16))
	}
	// Output:
	// not read: length of the paddle	60
	// Length overall: 16' 0", inside tolerance
	// Beam inside the gunwales: 2' 9", inside tolerance
	// Depth to the inwale: 1' 0 1/2", inside tolerance
	// held: overhang by 0.043 of the length overall
	// held: greatestBeam by the starting value
}
