package find

import (
	"maps"
	"slices"
)

// Everyday lists the everyday words that stand for words of the trade.
func Everyday() []string { return slices.Sorted(maps.Keys(everyday)) }
