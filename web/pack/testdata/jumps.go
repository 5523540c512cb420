// A program with every way that Go jumps within a function. It prints what it comes to.
package main

import (
	"runtime"
	"sync"
)

func main() {
	println(loops(9), ways(7), crossed(5), crossed(6), number(1.5, 40))
	println(recovered(3), recovered(12), named(), many(4))
	println(resumed(), selected(), deep(100000), text("bark and root"))
	for i := range 9 {
		print(chosen(i), " ")
	}
	println(outOfRange([]int{1, 2}, 2), divided(6, 0), nothing(nil))
	next, stop := counted()
	println(next(), next(), next(), stop)
	panic("the end")
}

// loops has loops in one another, left and gone on with from inside.
func loops(n int) int {
	sum := 0
outer:
	for i := range n {
		for j := 0; ; j++ {
			switch {
			case j == i:
				continue outer
			case i*j > 20:
				break outer
			case j%2 == 0:
				continue
			}
			for k := j; k > 0; k /= 2 {
				sum += k
			}
		}
	}
	return sum
}

// ways has a loop with two ways in and calls inside.
func ways(n int) int {
	i, sum := 0, 0
	if n%2 == 1 {
		goto odd
	}
even:
	sum += twice(i)
	i++
odd:
	sum += 3 * i
	i++
	if i < n {
		goto even
	}
	return sum
}

// crossed is the same without a call.
func crossed(n int) int {
	i, sum := 0, 0
	if n%2 == 1 {
		goto odd
	}
even:
	sum += i
	i++
odd:
	sum += 3 * i
	i++
	if i < n {
		goto even
	}
	return sum
}

//go:noinline
func twice(n int) int { return 2 * n }

// number sums a series until its terms are small, and shows it to a millionth.
func number(x float64, most int) int {
	sum, term := 0.0, 1.0
	for i := 1; i < most; i++ {
		sum += term
		if term *= x / float64(i); term < 1e-12 || -term > 1e12 {
			break
		}
	}
	return int(sum * 1e6)
}

// recovered is stopped in the midst of its loop.
func recovered(n int) (sum int) {
	defer func() {
		if r := recover(); r != nil {
			sum = -sum - r.(int)
		}
	}()
	for i := range n {
		defer func() { sum += i }()
		if i > 9 {
			panic(i)
		}
		sum += twice(i)
	}
	return sum
}

func named() (n int) {
	for n = 0; n < 100; n++ {
		if func() (stop bool) {
			defer func() { stop = recover() != nil }()
			if n == 7 {
				var none []int
				none[n] = n
			}
			return false
		}() {
			return 10 * n
		}
	}
	return n
}

// many is resumed in loops after others have run.
func many(n int) int {
	var all sync.WaitGroup
	var mu sync.Mutex
	sum := 0
	for i := range n {
		all.Add(1)
		go func() {
			defer all.Done()
			for j := range 50 {
				if j%7 == i {
					runtime.Gosched()
				}
				mu.Lock()
				sum += i * j
				mu.Unlock()
			}
		}()
	}
	all.Wait()
	return sum
}

func resumed() int {
	in, out := make(chan int), make(chan int, 3)
	go func() {
		defer close(out)
		for v := range in {
			for k := v; k > 0; k-- {
				if out <- k; k == 2 {
					break
				}
			}
		}
	}()
	go func() {
		for i := range 6 {
			in <- i
		}
		close(in)
	}()
	sum := 0
	for v := range out {
		sum = 3*sum + v
		sum %= 9973
	}
	return sum
}

func selected() int {
	a, b, done := make(chan int), make(chan int), make(chan bool)
	go func() {
		for i := range 20 {
			if i%3 == 0 {
				a <- i
			} else {
				b <- i
			}
		}
		close(done)
	}()
	sum := 0
	for {
		select {
		case v := <-a:
			sum += v
		case v := <-b:
			sum += 100 * v
		case <-done:
			return sum
		}
	}
}

// deep needs its stack to grow.
func deep(n int) int {
	var room [8]int
	room[n%8] = n
	if n == 0 {
		return 1
	}
	return (deep(n-1) + room[n%8]) % 1009
}

func text(s string) int {
	seen := map[rune]int{}
	for i, r := range s {
		if r == ' ' {
			continue
		}
		seen[r] += i
	}
	most := 0
	for _, n := range seen {
		most = max(most, n)
	}
	return most
}

func chosen(i int) string {
	switch i {
	case 0, 3:
		return "rib"
	case 1:
		fallthrough
	case 2:
		return "stem"
	case 5, 6, 7:
		if i == 6 {
			break
		}
		return "gore"
	default:
		return "bark"
	}
	return "root"
}

func outOfRange(list []int, i int) (n int) {
	defer func() {
		if recover() != nil {
			n = len(list)
		}
	}()
	return list[i]
}

func divided(a, b int) (n int) {
	defer func() {
		if recover() != nil {
			n = -1
		}
	}()
	return a / b
}

func nothing(p *int) (n int) {
	defer func() {
		if recover() != nil {
			n = -2
		}
	}()
	return *p
}

// counted keeps what it counts in a closure.
func counted() (next func() int, stop int) {
	n := 0
	next = func() int {
		for {
			if n++; n%3 != 0 {
				return n
			}
		}
	}
	for range 4 {
		stop += next()
	}
	return next, stop
}
