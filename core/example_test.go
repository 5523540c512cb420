package core_test

import (
	"fmt"

	"barkwright/core"
	"barkwright/core/answer"
	"barkwright/core/design"
	"barkwright/core/units"
)

// From what a builder types to what is cut: a length is read, put into the boat that the
// page opens with, and the canoe worked out. Whatever is answered says how it is known.
func ExampleEvaluate() {
	d := design.Default()
	length, _ := design.Lookup("length")
	v, echo, err := length.Kind.Parse("15 ft", units.Imperial16)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(length.Label+":", echo)
	canoe := core.Evaluate(length.Set(d, v))

	for _, n := range answer.Headlined(answer.All(canoe)) {
		fmt.Printf("%-16s %-12s %s\n", n.Short, n.Text(units.Imperial16), n.Basis)
	}
	ribs, _ := answer.MakeTable(canoe, "ribs")
	for _, row := range ribs.Rows[:3] {
		fmt.Println("rib", row.Cells[0].Text, "is finished at", ribs.Columns[1].Format(row.Cells[1], units.Imperial16))
	}
	// Output:
	// Length overall: Read as 15 ft 0 in (4572 mm)
	// Ribs             40           common practice
	// Longest rib      4' 2 5/16"   computed from your shape
	// Sheer, ends      1' 8"        computed from your shape
	// Freeboard        7"           estimate
	// Split root       about 700 ft estimate
	// Seams            46 ft        computed from your shape
	// Bark width       4' 8 1/2"    computed from your shape
	// Stem radius      11 3/8"      computed from your shape
	// rib 1 is finished at 4' 2 5/16"
	// rib 2 is finished at 4' 2 1/16"
	// rib 3 is finished at 4' 1 9/16"
}

// What cannot be built is named, all of it at once, with the control and a value that
// would do.
func ExampleValidate() {
	d := design.Default()
	d.Length = 4
	d.Ribs = 7
	for _, fault := range core.Validate(d) {
		fmt.Println(fault.Key+":", fault.Message(units.Metric))
	}
	// Output:
	// ribs: 7 is too little; this page takes 8 to 110.
	// frameLength: The building frame has to be 51 mm shorter than the gunwales, which are 3543 mm from end to end. 3490 mm or less fits.
}
