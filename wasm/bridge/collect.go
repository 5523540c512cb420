//go:build js

package bridge

import "runtime"

// collect frees what the steps so far have left, if they have used up half of what the collector lets
// be used. It is called while the page stands still: there is one thread, so the step that the
// collector came in would take 15 to 25 ms longer, and at half a megabyte a step it would come in one of 130.
func collect() {
	var m runtime.MemStats
	runtime.ReadMemStats(&m)
	if m.HeapAlloc > m.NextGC/2 {
		runtime.GC()
	}
}
