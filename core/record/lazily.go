package record

import (
	"regexp"
	"sync"
)

// lazily is a regular expression that is compiled when it is first asked for: records are read
// seldom, and the page would compile all of them before its first picture.
func lazily(pattern string) func() *regexp.Regexp {
	return sync.OnceValue(func() *regexp.Regexp { return regexp.MustCompile(pattern) })
}
