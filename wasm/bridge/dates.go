//go:build js

package bridge

import (
	"strconv"
	"sync"
	"syscall/js"
	"time"

	"barkwright/core/tally"
)

// dates are written as the reader's own browser writes them. How is asked with the first date: the page opens
// without any, and the first format takes the browser 18 ms.
func dates() tally.Dates {
	written := func(parts map[string]any) func(time.Time) string {
		parts["timeZone"] = "UTC"
		format := sync.OnceValue(func() js.Value {
			return js.Global().Get("Intl").Get("DateTimeFormat").New(js.Undefined(), parts)
		})
		return func(t time.Time) string {
			return format().Call("format", t.UnixMilli()).String()
		}
	}
	return tally.Dates{Long: written(map[string]any{"day": "numeric", "month": "long", "year": "numeric"}),
		Brief: written(map[string]any{"day": "numeric", "month": "short"})}
}

// today is the day on the user's calendar.
func today() string {
	d := js.Global().Get("Date").New()
	text := func(n, digits int) string {
		t := strconv.Itoa(n)
		for len(t) < digits {
			t = "0" + t
		}
		return t
	}
	return text(d.Call("getFullYear").Int(), 4) + "-" + text(d.Call("getMonth").Int()+1, 2) + "-" + text(d.Call("getDate").Int(), 2)
}
