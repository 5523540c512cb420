package work

// RowByKey returns the row of n that a key leads to from row at. ok is false for a key
// that does not move between rows.
func RowByKey(key string, at, n int) (to int, ok bool) {
	switch key {
	case "ArrowDown":
		to = at + 1
	case "ArrowUp":
		to = at - 1
	case "Home":
		to = 0
	case "End":
		to = n - 1
	default:
		return at, false
	}
	return max(0, min(to, n-1)), true
}
