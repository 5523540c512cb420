// A program that needs all that is known of its functions but files and lines: its
// stack is grown, searched for what lives, and unwound by a panic.
package main

import "runtime"

type node struct {
	next  *node
	value int
}

//go:noinline
func deep(n int, list *node) int {
	if n == 0 {
		runtime.GC()
		var none []int
		return none[list.value]
	}
	here := &node{list, n}
	sum := deep(n-1, here)
	return sum + here.value
}

func main() {
	defer func() {
		fault := recover()
		runtime.GC()
		pc, file, line, _ := runtime.Caller(0)
		println(fault.(error).Error(), runtime.FuncForPC(pc).Name(), file, line)
	}()
	println(deep(2000, nil))
}
