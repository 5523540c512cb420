package work

// RowByKey is the row of n that a key goes to from row at, and whether the key is one
// that goes from row to row.
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
