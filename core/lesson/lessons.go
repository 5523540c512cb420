package lesson

import "sync"

// lessons are all of them, in their order, made when they are first asked for: the page opens
// without them.
var lessons = sync.OnceValue(func() []Lesson {
	return []Lesson{depth(), gores(), frame(), rocker(), sheet(), stem(), root(), endRibs(), leave(), log()}
})
