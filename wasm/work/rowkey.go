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

// ButtonByKey is the button of a toolbar that a key moves to from one of n.
func ButtonByKey(key string, at, n int) (to int, ok bool) {
	switch key {
	case "ArrowRight", "ArrowDown":
		return (at + 1) % n, true
	case "ArrowLeft", "ArrowUp":
		return (at + n - 1) % n, true
	case "Home":
		return 0, true
	case "End":
		return n - 1, true
	}
	return at, false
}
