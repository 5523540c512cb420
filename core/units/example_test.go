package units_test

import (
	"fmt"

	"barkwright/core/units"
)

// A tape's numbers are read as builders write them, kept in metres, and said back.
func ExampleKind_Parse() {
	for _, text := range []string{"15' 3 1/2", "4.66 m", "183 1/2 in", "fifteen feet"} {
		v, echo, err := units.Length.Parse(text, units.Imperial16)
		if err != nil {
			fmt.Println(err)
			continue
		}
		fmt.Printf("%.4f m: %s\n", v, echo)
	}
	// Output:
	// 4.6609 m: Read as 15 ft 3 1/2 in (4661 mm)
	// 4.6600 m: Read as 15 ft 3 7/16 in (4660 mm)
	// 4.6609 m: Read as 15 ft 3 1/2 in (4661 mm)
	// A number is missing before "fifteen". Try 15' 3 1/2".
}

// Text that stands the same for every reader names a length in both systems.
func ExampleKind_Both() {
	fmt.Println(units.SmallLength.Both(1.5 * units.Inch))
	fmt.Println(units.Length.Both(4.5 * units.Foot))
	// Output:
	// 1 1/2 in (38 mm)
	// 4 ft 6 in (1372 mm)
}
